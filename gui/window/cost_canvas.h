// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/quote_view.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

/// The lines of a cost, in groups with their sums. Scrolls when they are more than fit. Below them stands what they were worked from.
class CostCanvas final : public Canvas {
 public:
  explicit CostCanvas(wxWindow* parent);
  void show(const desk::QuoteView& view);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  /// Draws what the figures were worked from; returns where it ends.
  double draw_notes(wxGraphicsContext& gc, double y, double width);
  void move(int by_px);
  int row_height() const;
  std::vector<desk::QuoteRow> rows_;
  std::vector<std::string> notes_;
  std::string currency_;
  int down_ = 0;
  int all_px_ = 0;  ///< height of everything, as drawn last
};

}  // namespace tangmark::window
