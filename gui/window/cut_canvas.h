// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/cut_drawing.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

/// The bars of a cutting plan to one scale, with their blanks, kerfs and what is left.
class CutCanvas final : public Canvas {
 public:
  explicit CutCanvas(wxWindow* parent);
  void show(desk::CutDrawing drawing);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  void draw_bar(wxGraphicsContext& gc, const desk::DrawnBar& bar, double y, double left,
                double px_per_mm);
  desk::CutDrawing drawing_;
};

}  // namespace tangmark::window
