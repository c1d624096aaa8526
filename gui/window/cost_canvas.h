// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/quote_view.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

/// The lines of a cost, in groups with their sums. Scrolls when they are more than fit.
class CostCanvas final : public Canvas {
 public:
  explicit CostCanvas(wxWindow* parent);
  void show(const desk::QuoteView& view);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  void move(int by_px);
  int row_height() const;
  std::vector<desk::QuoteRow> rows_;
  std::string currency_;
  int down_ = 0;
};

}  // namespace tangmark::window
