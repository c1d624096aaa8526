// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string_view>
#include <vector>

#include "gui/desk/offer.h"
#include "gui/window/surface.h"

class wxBoxSizer;

namespace tangmark::window {

class Words;

/// The next line: one sentence, why, and at most two actions. Enter does the first.
class NextLineBar final : public Surface {
 public:
  NextLineBar(wxWindow* parent, std::function<void(const desk::Deed&)> perform);
  void show(const desk::NextLine& next);
  /// While a form is open it has the Enter key, and the actions here step back.
  void step_back(bool back);
  /// Does the offer that has this key ("Enter", "Ctrl Enter", "Esc"), when there is one.
  bool perform_key(std::string_view key);

 private:
  void perform_offer(std::size_t position);
  void fit();
  std::function<void(const desk::Deed&)> perform_;
  desk::NextLine next_;
  Words* sentence_;
  Words* why_;
  wxBoxSizer* offers_;
};

}  // namespace tangmark::window
