// SPDX-License-Identifier: MIT
#include "gui/window/life_canvas.h"

#include <wx/graphics.h>
#include <wx/sizer.h>

#include <algorithm>

namespace tangmark::window {
namespace {

constexpr int event_px = 118;
constexpr int row_px = 92;
constexpr int line_px = 18;  // from the top of a row to its line

}  // namespace

LifeCanvas::LifeCanvas(wxWindow* parent) : Canvas(parent, Depth::window) {
  Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
    fit();
    event.Skip();
  });
}

void LifeCanvas::show(desk::LifeLine life) {
  life_ = std::move(life);
  says(desk::in_words(life_));
  fit();
  Refresh();
}

int LifeCanvas::across(int width) const {
  return std::max(1, (width - look().sizes.gap(2)) / look().sizes.of(event_px));
}

void LifeCanvas::fit() {
  const int count = std::max<int>(1, static_cast<int>(life_.events.size()));
  const int per_row = across(std::max(200, GetClientSize().x));
  const int rows = (count + per_row - 1) / per_row;
  const int height = rows * look().sizes.of(row_px);
  if (GetMinSize().y != height) {
    SetMinSize({-1, height});
    CallAfter([this] { GetParent()->Layout(); });
  }
}

void LifeCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const int per_row = across(size.x);
  const double first = sizes.gap(1);
  for (std::size_t i = 0; i < life_.events.size(); ++i) {
    const int row = static_cast<int>(i) / per_row, column = static_cast<int>(i) % per_row;
    const double x = first + column * sizes.of(event_px);
    const double y = row * sizes.of(row_px) + sizes.of(line_px);
    const bool last = i + 1 == life_.events.size();
    if (!last) {
      const bool done = life_.events[i].done && life_.events[i + 1].done;
      gc.SetPen(wxPen(colour(done ? p.ink : p.second_ink), done ? 3 : 1));
      const bool turns = column + 1 == per_row;
      gc.StrokeLine(x, y, turns ? size.x : x + sizes.of(event_px), y);
      if (turns) gc.StrokeLine(0, y + sizes.of(row_px), first, y + sizes.of(row_px));
    }
  }
  for (std::size_t i = 0; i < life_.events.size(); ++i) {
    const int row = static_cast<int>(i) / per_row, column = static_cast<int>(i) % per_row;
    draw_event(gc, life_.events[i], first + column * sizes.of(event_px),
               row * sizes.of(row_px) + sizes.of(line_px));
  }
}

void LifeCanvas::draw_event(wxGraphicsContext& gc, const desk::LifeEvent& event, double x,
                            double y) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double size = sizes.of(event.celsius ? 18 : 12);
  const desk::Rgb fill = event.celsius ? desk::tint(*event.celsius, look().ground)
                         : event.done  ? p.ink
                                       : p.window;
  gc.SetPen(wxPen(colour(event.done ? p.ink : p.second_ink), event.finding ? 3 : 1));
  gc.SetBrush(wxBrush(colour(fill)));
  if (event.finding) {
    gc.SetBrush(wxBrush(colour(p.raised)));
  }
  gc.DrawRectangle(x, y - size / 2, size, size);
  const double room = sizes.of(event_px) - sizes.gap(1);
  const Pen title{sizes.text(), event.done, p.ink}, grey{sizes.note(), false, p.second_ink};
  draw_text(gc, shortened(gc, event.title, title, room), x, y + sizes.of(12), title);
  draw_text(gc, shortened(gc, event.note, grey, room), x, y + sizes.of(33), grey);
  draw_text(gc, shortened(gc, event.when, grey, room), x, y + sizes.of(50), grey);
}

}  // namespace tangmark::window
