// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>

namespace tangmark::reports {

/// The ToUnicode character map of a font whose codes are the characters themselves (ISO 32000-1,
/// 9.10.3), holding only the characters used, so that readers give back the words of a page.
/// Characters beyond the basic plane are left out: such text is refused before.
std::string unicode_map(const std::set<char32_t>& characters);

}  // namespace tangmark::reports
