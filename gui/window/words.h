// SPDX-License-Identifier: MIT
#pragma once

#include <wx/stattext.h>

#include <string>

namespace tangmark::window {

/// How a text stands on the ground. The sizes are three; see Sizes.
enum class Voice { text, strong, grey, note, heading, problem };

/// A text that may break over lines. Give it its width and it takes the height it needs.
class Words final : public wxStaticText {
 public:
  Words(wxWindow* parent, const std::string& text, Voice voice);
  void say(const std::string& text);
  void speak_as(Voice voice);
  /// Takes at most this width and as many lines as the text needs there.
  void fit(int width);
  void right_aligned();
};

}  // namespace tangmark::window
