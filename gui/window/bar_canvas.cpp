// SPDX-License-Identifier: MIT
#include "gui/window/bar_canvas.h"

#include <wx/graphics.h>

#include <algorithm>
#include <cmath>

namespace tangmark::window {
namespace {

constexpr int bar_px = 96;
constexpr int mover_px = 42;

}  // namespace

BarCanvas::BarCanvas(wxWindow* parent) : Canvas(parent, Depth::window) {
  SetMinSize({look().sizes.of(320), look().sizes.of(240)});
}

void BarCanvas::show_parts(std::vector<desk::PricePart> parts) {
  parts_ = std::move(parts);
  say_all();
  Refresh();
}

void BarCanvas::show_movers(std::vector<desk::Mover> movers, std::string currency) {
  movers_ = std::move(movers);
  currency_ = std::move(currency);
  say_all();
  Refresh();
}

void BarCanvas::say_all() {
  std::string text = "Where the price goes.";
  for (const desk::PricePart& part : parts_) text += " " + part.name + " " + part.amount + ".";
  text += " What moves the price most.";
  for (const desk::Mover& mover : movers_) {
    text += " " + mover.name + ", " + mover.range + ": " + mover.low_text + " to " +
            mover.high_text + ".";
  }
  says(text);
}

void BarCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  const Sizes& sizes = look().sizes;
  const Pen strong{sizes.text(), true, look().palette.ink};
  const Pen grey{sizes.text(), false, look().palette.second_ink};
  const double movers =
      movers_.empty() ? 0 : sizes.of(32) + sizes.of(mover_px) * static_cast<double>(movers_.size());
  const double told = draw_text(gc, "Where the price goes", 0, sizes.of(2), strong);
  draw_text(gc, currency_, told + sizes.of(6), sizes.of(2), grey);
  draw_bar(gc, sizes.of(30), size.y - movers - sizes.gap(2), size.x - 1.0);
  if (!movers_.empty()) draw_movers(gc, size.y - movers, size.x - 1.0);
}

void BarCanvas::draw_bar(wxGraphicsContext& gc, double top, double bottom, double right) {
  double sum = 0;
  for (const desk::PricePart& part : parts_) sum += std::max(0.0, part.size);
  if (sum <= 0 || bottom - top < 40) return;
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double left = sizes.gap(1), wide = sizes.of(bar_px);
  const double label_x = left + wide + sizes.of(34);
  const double line_high =
      std::min<double>(sizes.of(22), (bottom - top) / static_cast<double>(parts_.size()));
  std::vector<double> middles;
  double y = bottom;
  double floor_y = bottom;
  for (std::size_t i = 0; i < parts_.size(); ++i) {
    const double high = (bottom - top) * std::max(0.0, parts_[i].size) / sum;
    y -= high;
    middles.push_back(y + high / 2);
    if (parts_[i].margin) {
      gc.SetPen(wxPen(colour(p.accent), 2, wxPENSTYLE_SHORT_DASH));
      gc.SetBrush(wxBrush(colour(p.raised)));
      floor_y = y + high;
    } else {
      gc.SetPen(*wxTRANSPARENT_PEN);
      gc.SetBrush(wxBrush(colour(desk::cost_grey(i))));
    }
    gc.DrawRectangle(left, y + 1, wide, std::max(1.0, high - 1.5));
  }
  gc.SetPen(wxPen(colour(p.ink), 3));
  gc.StrokeLine(0, floor_y, left + wide + sizes.gap(1), floor_y);
  // Names are pushed apart upward from the lowest so that none overlap.
  double lowest = bottom - line_high / 2;
  std::vector<double> at(parts_.size());
  for (std::size_t i = 0; i < parts_.size(); ++i) {
    at[i] = std::min(middles[i], lowest);
    lowest = at[i] - line_high;
  }
  double least = top + line_high / 2;
  for (std::size_t i = parts_.size(); i-- > 0;) {
    at[i] = std::max(at[i], least);
    least = at[i] + line_high;
  }
  for (std::size_t i = 0; i < parts_.size(); ++i) {
    const Pen pen{sizes.text(), parts_[i].margin, p.ink};
    gc.SetPen(wxPen(colour(p.second_ink), 1));
    gc.StrokeLine(left + wide + 2, middles[i], label_x - sizes.of(18), at[i]);
    gc.StrokeLine(label_x - sizes.of(18), at[i], label_x - sizes.of(6), at[i]);
    const double figure =
        draw_text(gc, parts_[i].amount, right, at[i] - sizes.of(10), pen, Anchor::end);
    draw_text(gc, shortened(gc, parts_[i].name, pen, right - label_x - figure - sizes.gap(1)),
              label_x, at[i] - sizes.of(10), pen);
  }
}

void BarCanvas::draw_movers(wxGraphicsContext& gc, double top, double right) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const Pen strong{sizes.text(), true, p.ink}, plain{sizes.text(), false, p.ink};
  const Pen note{sizes.note(), false, p.second_ink};
  const double told = draw_text(gc, "What moves the price most", 0, top, strong);
  draw_text(gc, "floor, " + currency_, told + sizes.of(6), top,
            {sizes.text(), false, p.second_ink});
  double most = 1;
  for (const desk::Mover& m : movers_) most = std::max({most, std::abs(m.low), std::abs(m.high)});
  const double name = std::min(sizes.of(136) * 1.0, right * 0.36), figure = sizes.of(60);
  const double reach = std::max(20.0, (right - name) / 2 - figure);
  const double zero = name + figure + reach;
  double y = top + sizes.of(28);
  for (const desk::Mover& mover : movers_) {
    draw_text(gc, shortened(gc, mover.name, strong, name), 0, y, strong);
    draw_text(gc, shortened(gc, mover.range, note, name), 0, y + sizes.of(19), note);
    const double from = zero + reach * mover.low / most, to = zero + reach * mover.high / most;
    gc.SetPen(*wxTRANSPARENT_PEN);
    gc.SetBrush(wxBrush(colour(desk::cost_grey(1))));
    gc.DrawRectangle(from, y + 2, std::max(1.0, to - from), sizes.of(20));
    draw_text(gc, mover.low_text, from - sizes.of(6), y, plain, Anchor::end);
    draw_text(gc, mover.high_text, to + sizes.of(6), y, plain);
    y += sizes.of(mover_px);
  }
  gc.SetPen(wxPen(colour(p.ink), 2));
  gc.StrokeLine(zero, top + sizes.of(24), zero, y - sizes.of(10));
}

}  // namespace tangmark::window
