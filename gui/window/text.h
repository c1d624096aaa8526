// SPDX-License-Identifier: MIT
#pragma once

#include <wx/string.h>

#include <string>
#include <string_view>

namespace tangmark::window {

/// The one border between the program's UTF-8 and wx. Any other conversion depends on the locale
/// and turns text with accents into nothing.
inline wxString shown(std::string_view utf8) {
  return wxString::FromUTF8(utf8.data(), utf8.size());
}
inline std::string typed(const wxString& text) {
  return text.utf8_string();
}

}  // namespace tangmark::window
