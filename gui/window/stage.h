// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "gui/desk/place_view.h"
#include "gui/window/surface.h"

namespace tangmark::window {

class CutCanvas;
class FamilyCanvas;
class KilnCanvas;
class LifeCanvas;
class PageCanvas;
class QuotePanel;
class SheetPanel;

/// What stands beside the list: the sheet of the thing selected, with the picture of its place.
class Stage final : public Surface {
 public:
  struct Answers {
    std::function<void(const desk::Deed&)> perform;
    std::function<Outcome<desk::QuoteLive>(const desk::QuoteTyped&)> quote;
    std::function<void(const std::string& firing)> firing_selected;
    std::function<desk::MoveTrial(const std::string&, const std::string&, Instant)> firing_trial;
    std::function<void(const std::string&, const std::string&, Instant)> firing_dropped;
    std::function<std::string(const std::string&, const std::string&, Instant, const std::string&)>
        firing_all_the_same;
  };
  Stage(wxWindow* parent, Answers answers);
  void show(const desk::PlaceView& view);
  void focus_picture();
  /// Within the picture, where it has two parts: the price and the figures of a quote.
  void focus_other_part();

 private:
  void lay_out(const desk::Picture& picture);
  SheetPanel* sheet_;
  KilnCanvas* kiln_;
  LifeCanvas* life_;
  FamilyCanvas* family_;
  CutCanvas* cuts_;
  PageCanvas* page_;
  QuotePanel* quote_;
  Rule* between_;
  std::size_t laid_out_ = 99;
};

}  // namespace tangmark::window
