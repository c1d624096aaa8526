// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/quote_view.h"
#include "gui/window/canvas.h"

namespace tangmark::window {

/// Where the price goes: one bar whose height is the price, a heavy line at the floor, every part
/// named and figured beside it; and below, what moves the price most.
class BarCanvas final : public Canvas {
 public:
  explicit BarCanvas(wxWindow* parent);
  void show_parts(std::vector<desk::PricePart> parts);
  void show_movers(std::vector<desk::Mover> movers, std::string currency);

 private:
  void draw(wxGraphicsContext& gc, wxSize size) override;
  void draw_bar(wxGraphicsContext& gc, double top, double bottom, double right);
  void draw_movers(wxGraphicsContext& gc, double top, double right);
  void say_all();
  std::vector<desk::PricePart> parts_;
  std::vector<desk::Mover> movers_;
  std::string currency_;
};

}  // namespace tangmark::window
