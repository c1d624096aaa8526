// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "gui/desk/quote_view.h"
#include "gui/window/surface.h"

class wxBoxSizer;
class wxChoice;
class wxFlexGridSizer;
class wxTextCtrl;

namespace tangmark::window {

class BarCanvas;
class CostCanvas;
class OddsCanvas;
class Press;
class Words;

/// The quote desk: cost lines at the left, each figure changed in its place; where the price goes
/// in the middle; the price, how it comes about and its answers at the right, live while typing;
/// and the promise with its odds.
class QuotePanel final : public Surface {
 public:
  struct Answers {
    std::function<Outcome<desk::QuoteLive>(const desk::QuoteTyped&)> live;
    std::function<void(const desk::Deed&)> perform;
  };
  QuotePanel(wxWindow* parent, Answers answers);
  void show(const desk::QuoteView& view);
  void focus_price();
  /// From the price to the figures of the build-up, and back.
  void focus_other();

 private:
  void build_price(wxBoxSizer* right);
  void build_offers(wxBoxSizer* left);
  void price_typed();
  void share_typed();
  void way_chosen();
  void work_out(const desk::QuoteTyped& typed, bool price_follows);
  void show_live(const desk::QuoteLive& live);
  void show_ways();
  void show_answer(const desk::PriceAnswer& answer);
  void show_offers(const std::vector<desk::Offer>& offers);
  void fact(wxFlexGridSizer* grid, const std::string& label, Words*& value, Words*& note);

  Answers answers_;
  desk::QuoteTyped typed_;
  std::string list_words_;
  CostCanvas* cost_;
  BarCanvas* bar_;
  OddsCanvas* odds_;
  wxTextCtrl* price_;
  wxTextCtrl* share_;
  wxChoice* way_;
  Words *currency_, *share_unit_, *sentence_;
  Words *margin_ = nullptr, *margin_note_ = nullptr;
  Words *earned_ = nullptr, *earned_note_ = nullptr;
  Words *floor_ = nullptr, *floor_note_ = nullptr;
  Words *deposit_ = nullptr, *deposit_note_ = nullptr;
  Words *total_ = nullptr, *total_note_ = nullptr;
  std::vector<desk::Offer> offers_;
  std::vector<Press*> presses_;
};

}  // namespace tangmark::window
