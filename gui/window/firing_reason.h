// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include "gui/desk/kiln_board.h"
#include "gui/window/surface.h"

class wxBoxSizer;
class wxTextCtrl;

namespace tangmark::window {

class Words;

/// Stands on the board where a firing was let go and a rule breaks: the reasons and, where the
/// maker may do it all the same, a field for why. Enter does it, Escape puts the firing back.
class FiringReason final : public Surface {
 public:
  struct Answers {
    /// Empty when done; else the sentence why not.
    std::function<std::string(const std::string& why)> all_the_same;
    std::function<void()> put_back;
  };
  FiringReason(wxWindow* parent, Answers answers);
  /// Shows itself with its upper left corner near a point of the board, and takes the keyboard.
  void ask(const desk::MoveTrial& trial, wxPoint near);
  bool asks() const { return IsShown(); }

 private:
  void answer();
  void refill(const desk::MoveTrial& trial);
  Answers answers_;
  wxBoxSizer* says_;
  Words* because_;
  wxTextCtrl* why_;
  wxWindow* do_it_;
  wxWindow* put_back_;
  Words* refusal_;
};

}  // namespace tangmark::window
