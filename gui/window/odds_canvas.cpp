// SPDX-License-Identifier: MIT
#include "gui/window/odds_canvas.h"

#include <wx/graphics.h>

#include <algorithm>
#include <cmath>

namespace tangmark::window {
namespace {

double line_height(const Pen& pen) {
  return std::ceil(pen.size_px * 1.3);
}

}  // namespace

OddsCanvas::OddsCanvas(wxWindow* parent) : Canvas(parent, Depth::panel) {
  SetMinSize({look().sizes.of(320), look().sizes.of(220)});
}

void OddsCanvas::show(desk::PromiseView promise, bool ready) {
  promise_ = std::move(promise);
  ready_ = ready;
  std::string text =
      "Promise date " + promise_.day + ". " + promise_.sentence + " " + promise_.from;
  for (const desk::OddsMark& mark : promise_.marks) text += " " + mark.day + ": " + mark.odds + ".";
  for (const std::string& note : promise_.notes) text += " " + note;
  says(text);
  Refresh();
}

double OddsCanvas::draw_wrapped(wxGraphicsContext& gc, const std::string& text, double y,
                                double width, const Pen& pen) {
  for (const std::string& line : wrapped(gc, text, pen, width)) {
    draw_text(gc, line, look().sizes.gap(2), y, pen);
    y += line_height(pen);
  }
  return y;
}

void OddsCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  gc.SetPen(wxPen(colour(p.line), 1));
  gc.SetBrush(*wxTRANSPARENT_BRUSH);
  gc.DrawRectangle(0.5, 0.5, size.x - 1, size.y - 1);
  const double width = size.x - sizes.gap(4);
  draw_text(gc, "Promise date", sizes.gap(2), sizes.gap(2), {sizes.text(), true, p.ink});
  draw_text(gc, promise_.day, size.x - sizes.gap(2), sizes.of(12), {sizes.heading(), true, p.ink},
            Anchor::end);
  double y = sizes.of(46);
  if (!ready_) {
    const std::string& known = promise_.sentence;
    draw_wrapped(gc, known.empty() ? "Counting how often each day is met." : known, y, width,
                 {sizes.text(), false, p.second_ink});
    return;
  }
  y = draw_wrapped(gc, promise_.sentence, y, width, {sizes.text(), true, p.ink});
  const Pen small{sizes.note(), false, p.second_ink};
  y = draw_wrapped(gc, promise_.from, y, width, small);
  // The curve has what the notes leave; without room for it they follow at once.
  double notes = 0;
  for (const std::string& note : promise_.notes)
    notes += static_cast<double>(wrapped(gc, note, small, width).size()) * line_height(small);
  const double labels = sizes.of(44), bottom = size.y - notes - labels - sizes.gap(1);
  if (bottom - y > sizes.of(28)) {
    draw_curve(gc, y + sizes.of(6), bottom, size.x);
    y = bottom + labels;
  }
  for (const std::string& note : promise_.notes) y = draw_wrapped(gc, note, y, width, small);
}

void OddsCanvas::draw_curve(wxGraphicsContext& gc, double top, double bottom, double width) {
  if (promise_.curve.size() < 2) return;
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double left = sizes.gap(2), right = width - sizes.gap(2);
  const double first = promise_.curve.front().days, last = promise_.curve.back().days;
  const auto x_of = [&](double days) {
    return last > first ? left + (days - first) / (last - first) * (right - left) : left;
  };
  const auto y_of = [&](double share) { return bottom - share * (bottom - top); };
  gc.SetPen(wxPen(colour(p.second_ink), 1));
  gc.StrokeLine(left, bottom, right, bottom);
  wxGraphicsPath path = gc.CreatePath();
  path.MoveToPoint(x_of(first), y_of(promise_.curve.front().share));
  for (const desk::OddsPoint& point : promise_.curve)
    path.AddLineToPoint(x_of(point.days), y_of(point.share));
  gc.SetPen(wxPen(colour(p.ink), 2));
  gc.StrokePath(path);
  const std::vector<double> centres = label_centres(gc, x_of, left, right);
  for (std::size_t i = 0; i < promise_.marks.size(); ++i) {
    const desk::OddsMark& mark = promise_.marks[i];
    const desk::Rgb c = mark.offered ? p.accent : p.second_ink;
    const double x = x_of(mark.days), y = y_of(mark.share);
    gc.SetPen(wxPen(colour(c), mark.offered ? 3 : 1));
    gc.StrokeLine(x, y, x, bottom);
    gc.SetBrush(wxBrush(colour(c)));
    gc.DrawEllipse(x - 4, y - 4, 8, 8);
    const Pen day{sizes.text(), mark.offered, p.ink}, odds{sizes.note(), false, p.second_ink};
    draw_text(gc, mark.day, centres[i], bottom + sizes.of(4), day, Anchor::centre);
    draw_text(gc, mark.odds, centres[i], bottom + sizes.of(23), odds, Anchor::centre);
  }
}

// Each label under its day, pushed apart to the right, then back where the last would leave the
// card.
std::vector<double> OddsCanvas::label_centres(wxGraphicsContext& gc,
                                              const std::function<double(double)>& x_of,
                                              double left, double right) const {
  const Sizes& sizes = look().sizes;
  const std::size_t count = promise_.marks.size();
  std::vector<double> centres(count), halves(count);
  double from = left;
  for (std::size_t i = 0; i < count; ++i) {
    const desk::OddsMark& mark = promise_.marks[i];
    const Pen day{sizes.text(), mark.offered, {}}, odds{sizes.note(), false, {}};
    halves[i] = std::max(text_width(gc, mark.day, day), text_width(gc, mark.odds, odds)) / 2;
    centres[i] = std::max(x_of(mark.days), from + halves[i]);
    from = centres[i] + halves[i] + sizes.gap(1);
  }
  double to = right;
  for (std::size_t i = count; i-- > 0;) {
    centres[i] = std::min(centres[i], to - halves[i]);
    to = centres[i] - halves[i] - sizes.gap(1);
  }
  return centres;
}

}  // namespace tangmark::window
