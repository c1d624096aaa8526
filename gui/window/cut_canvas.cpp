// SPDX-License-Identifier: MIT
#include "gui/window/cut_canvas.h"

#include <wx/graphics.h>

#include <algorithm>

namespace tangmark::window {
namespace {

constexpr int bar_high_px = 34;
constexpr int cut_row_px = 46;
constexpr int tag_px = 132;

}  // namespace

CutCanvas::CutCanvas(wxWindow* parent) : Canvas(parent, Depth::window) {}

void CutCanvas::show(desk::CutDrawing drawing) {
  drawing_ = std::move(drawing);
  const int rows = std::clamp(static_cast<int>(drawing_.bars.size()), 1, 7);
  SetMinSize({-1, rows * look().sizes.of(cut_row_px) + look().sizes.gap(2)});
  GetParent()->Layout();
  says(desk::in_words(drawing_));
  Refresh();
}

void CutCanvas::draw_bar(wxGraphicsContext& gc, const desk::DrawnBar& bar, double y, double left,
                         double px_per_mm) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double high = sizes.of(bar_high_px);
  const Pen strong{sizes.text(), true, p.ink};
  const Pen grey{sizes.note(), false, p.second_ink};
  draw_text(gc, bar.tag, 2, y, strong);
  draw_text(gc, bar.length, 2, y + sizes.of(18), grey);
  gc.SetPen(wxPen(colour(p.second_ink), 1));
  gc.SetBrush(wxBrush(colour(p.window)));
  gc.DrawRectangle(left, y, static_cast<double>(bar.length_mm) * px_per_mm, high);
  double end = left;
  for (const desk::DrawnBlank& blank : bar.blanks) {
    const double x = left + static_cast<double>(blank.from_mm) * px_per_mm;
    const double wide = static_cast<double>(blank.length_mm) * px_per_mm;
    gc.SetPen(wxPen(colour(p.accent), 1));
    gc.SetBrush(wxBrush(colour(p.raised)));
    gc.DrawRectangle(x, y, wide, high);
    const double room = wide - sizes.gap(1);
    draw_text(gc, shortened(gc, blank.label, grey, room), x + sizes.of(4), y + sizes.of(1), grey);
    draw_text(gc, shortened(gc, blank.length, grey, room), x + sizes.of(4), y + sizes.of(16), grey);
    end = x + wide;
  }
  const double room = left + static_cast<double>(bar.length_mm) * px_per_mm - end - sizes.gap(1);
  if (!bar.left.empty() && room > sizes.of(40))
    draw_text(gc, shortened(gc, bar.left, grey, room), end + sizes.of(6), y + sizes.of(8), grey);
}

void CutCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  const Sizes& sizes = look().sizes;
  const double left = sizes.of(tag_px);
  const double wide = std::max(1.0, size.x - left - 4.0);
  const double px_per_mm =
      wide / static_cast<double>(std::max<std::int64_t>(1, drawing_.longest_mm));
  double y = sizes.gap(1);
  for (const desk::DrawnBar& bar : drawing_.bars) {
    draw_bar(gc, bar, y, left, px_per_mm);
    y += sizes.of(cut_row_px);
  }
}

}  // namespace tangmark::window
