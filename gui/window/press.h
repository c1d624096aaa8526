// SPDX-License-Identifier: MIT
#pragma once

#include <wx/button.h>

#include <string>

namespace tangmark::window {

enum class PressKind { main, plain, quiet };

/// A target to press, large enough for a gloved finger, with the key that does the same after it.
class Press final : public wxButton {
 public:
  Press(wxWindow* parent, const std::string& label, PressKind kind, const std::string& key = {});
  void say(const std::string& label, const std::string& key);

 private:
  PressKind kind_;
};

}  // namespace tangmark::window
