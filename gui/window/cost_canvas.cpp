// SPDX-License-Identifier: MIT
#include "gui/window/cost_canvas.h"

#include <wx/graphics.h>

#include <algorithm>

namespace tangmark::window {
namespace {

constexpr int head_px = 24;

}  // namespace

CostCanvas::CostCanvas(wxWindow* parent) : Canvas(parent, Depth::window) {
  takes_keys();
  SetMinSize({look().sizes.of(440), look().sizes.of(200)});
  Bind(wxEVT_MOUSEWHEEL, [this](wxMouseEvent& event) { move(-event.GetWheelRotation() / 2); });
  Bind(wxEVT_KEY_DOWN, [this](wxKeyEvent& event) {
    switch (event.GetKeyCode()) {
      case WXK_DOWN: move(row_height()); return;
      case WXK_UP: move(-row_height()); return;
      default: event.Skip();
    }
  });
}

// Rows are as high as the text wants, and closer when all of them then fit.
int CostCanvas::row_height() const {
  const Sizes& sizes = look().sizes;
  const int count = std::max<int>(1, static_cast<int>(rows_.size()));
  const int room = (GetClientSize().y - sizes.of(head_px)) / count;
  return std::clamp(room, sizes.of(22), sizes.of(24));
}

void CostCanvas::show(const desk::QuoteView& view) {
  rows_ = view.rows;
  notes_ = view.notes;
  currency_ = view.currency;
  down_ = 0;
  says(desk::in_words(view));
  Refresh();
}

void CostCanvas::move(int by_px) {
  down_ = std::clamp(down_ + by_px, 0, std::max(0, all_px_ - GetClientSize().y));
  Refresh();
}

double CostCanvas::draw_notes(wxGraphicsContext& gc, double y, double width) {
  if (notes_.empty()) return y;
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double x = sizes.gap(1);
  y += sizes.gap(2);
  draw_text(gc, "Worked from", x, y, {sizes.text(), true, p.ink});
  y += sizes.of(24);
  const Pen pen{sizes.note(), false, p.second_ink};
  for (const std::string& note : notes_) {
    for (const std::string& line : wrapped(gc, note, pen, width - x)) {
      draw_text(gc, line, x, y, pen);
      y += sizes.of(18);
    }
    y += sizes.of(4);
  }
  return y;
}

void CostCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double right = size.x - sizes.gap(1);
  const double each = right - sizes.of(96), unit = each - sizes.of(112), much = unit - sizes.of(6);
  const Pen grey{sizes.note(), false, p.second_ink};
  const double head = sizes.of(head_px);
  double y = head - down_;
  for (std::size_t i = 0; i < rows_.size(); ++i, y += row_height()) {
    const desk::QuoteRow& row = rows_[i];
    if (y < head - row_height() || y > size.y) continue;
    const bool strong = row.head || row.total;
    const Pen pen{sizes.text(), strong, p.ink};
    if (strong) {
      gc.SetPen(wxPen(colour(row.total ? p.ink : p.line), row.total ? 2 : 1));
      gc.StrokeLine(0, y, size.x, y);
    }
    const double x = sizes.gap(1) + (strong ? 0 : sizes.of(4));
    const double room = (row.how_much.empty() ? each : much - sizes.of(60)) - x - sizes.gap(1);
    draw_text(gc, shortened(gc, row.text, pen, room), x, y + 1, pen);
    draw_text(gc, row.how_much, much, y + 1, pen, Anchor::end);
    draw_text(gc, row.unit, unit, y + 1, {sizes.text(), false, p.second_ink});
    draw_text(gc, row.each, each, y + 1, pen, Anchor::end);
    draw_text(gc, row.amount, right, y + 1, pen, Anchor::end);
  }
  all_px_ = static_cast<int>(draw_notes(gc, y, right)) + down_;
  gc.SetPen(*wxTRANSPARENT_PEN);
  gc.SetBrush(wxBrush(colour(p.window)));
  gc.DrawRectangle(0, 0, size.x, head);
  draw_text(gc, "Line", sizes.gap(1), sizes.of(2), grey);
  draw_text(gc, "How much", much + sizes.of(12), sizes.of(2), grey, Anchor::end);
  draw_text(gc, "Each " + currency_, each, sizes.of(2), grey, Anchor::end);
  draw_text(gc, "Cost " + currency_, right, sizes.of(2), grey, Anchor::end);
}

}  // namespace tangmark::window
