// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/life_line.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

/// A blade's life on one line, from bar to buyer. What was done is a thick line, what is planned a
/// thin one; a long life goes on in further lines.
class LifeCanvas final : public Canvas {
 public:
  explicit LifeCanvas(wxWindow* parent);
  void show(desk::LifeLine life);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  void draw_event(wxGraphicsContext& gc, const desk::LifeEvent& event, double x, double y);
  int across(int width) const;
  void fit();
  desk::LifeLine life_;
};

}  // namespace tangmark::window
