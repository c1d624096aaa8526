// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include "domain/measure/outcome.h"
#include "gui/desk/quote_view.h"
#include "gui/window/surface.h"

class wxFlexGridSizer;
class wxTextCtrl;

namespace tangmark::window {

class BarCanvas;
class CostCanvas;
class OddsCanvas;
class Words;

/// The quote desk: cost lines at the left, where the price goes in the middle, the price and its
/// answers at the right, live while typing, and the promise with its odds.
class QuotePanel final : public Surface {
 public:
  using AskPrice = std::function<Outcome<desk::PriceAnswer>(const std::string& typed)>;
  QuotePanel(wxWindow* parent, AskPrice ask);
  void show(const desk::QuoteView& view);
  /// What stands in the price field.
  std::string price() const;
  void focus_price();
  /// The desk is left: the next time it begins with the price of the draft.
  void leave();

 private:
  void price_changed();
  void show_answer(const desk::PriceAnswer& answer);
  void fact(wxFlexGridSizer* grid, const std::string& label, Words*& value, Words*& note);

  AskPrice ask_;
  std::string shown_for_;  ///< the commission whose price stands in the field
  CostCanvas* cost_;
  BarCanvas* bar_;
  OddsCanvas* odds_;
  wxTextCtrl* price_;
  Words* currency_;
  Words *margin_ = nullptr, *margin_note_ = nullptr;
  Words *earned_ = nullptr, *earned_note_ = nullptr;
  Words *floor_ = nullptr, *floor_note_ = nullptr;
  Words *deposit_ = nullptr, *deposit_note_ = nullptr;
  Words *total_ = nullptr, *total_note_ = nullptr;
  Words* sentence_;
};

}  // namespace tangmark::window
