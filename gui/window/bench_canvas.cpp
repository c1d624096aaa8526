// SPDX-License-Identifier: MIT
#include "gui/window/bench_canvas.h"

#include <wx/graphics.h>

#include <algorithm>

namespace tangmark::window {
namespace {

constexpr int second_ms = 1000;
constexpr double wide = 1366,
                 high = 768;  // the sheet it was drawn for; all sizes follow the window
constexpr desk::Rgb on_heat{0x12, 0x16, 0x18};

desk::Palette night() {
  return desk::palette(desk::Ground::dark);
}

}  // namespace

BenchCanvas::BenchCanvas(wxWindow* parent, Answers answers)
    : Canvas(parent, Depth::window), answers_(std::move(answers)), timer_(this) {
  takes_keys();
  BenchCanvas::dress();
  Bind(wxEVT_TIMER, [this](wxTimerEvent&) { look_again(); });
  Bind(wxEVT_KEY_DOWN, &BenchCanvas::on_key, this);
  Bind(wxEVT_LEFT_UP, [this](wxMouseEvent& event) {
    const wxPoint2DDouble here(event.GetX(), event.GetY());
    if (target_.Contains(here)) return record();
    if (put_off_target_.Contains(here)) return put_off();
    if (trouble_.Contains(here)) return trouble();
    if (undo_target_.Contains(here)) return undo();
    if (leave_.Contains(here)) CallAfter([this] { answers_.leave(); });
  });
}

void BenchCanvas::dress() {
  SetBackgroundColour(colour(night().window));  // always dark: the glow of the steel must be seen
  Refresh();
}

void BenchCanvas::begin() {
  put_off_.clear();
  look_again();
  timer_.Start(second_ms);
  SetFocus();
}

void BenchCanvas::end() {
  timer_.Stop();
}

void BenchCanvas::look_again() {
  view_ = answers_.look(put_off_);
  says(desk::in_words(view_));
  Refresh();
}

void BenchCanvas::record() {
  if (!view_.record) return;
  CallAfter([this, deed = desk::Deed(*view_.record)] {
    answers_.perform(deed);
    look_again();
  });
}

void BenchCanvas::trouble() {
  if (!view_.trouble) return;
  CallAfter([this, deed = desk::Deed(*view_.trouble)] { answers_.perform(deed); });
}

void BenchCanvas::put_off() {
  if (view_.put_off.empty()) return;
  std::erase(put_off_, view_.number);
  put_off_.push_back(view_.number);
  look_again();
}

void BenchCanvas::undo() {
  if (!view_.undo) return;
  CallAfter([this, deed = desk::Deed(*view_.undo)] {
    answers_.perform(deed);
    look_again();
  });
}

void BenchCanvas::on_key(wxKeyEvent& event) {
  switch (event.GetKeyCode()) {
    case WXK_SPACE:
      return record();
    case 'N':
      return put_off();
    case 'S':
      return trouble();
    case 'U':
      return undo();
    case WXK_ESCAPE:
      CallAfter([this] { answers_.leave(); });
      return;
    default:
      event.Skip();
  }
}

void BenchCanvas::box(wxGraphicsContext& gc, const wxRect2DDouble& where, desk::Rgb fill) {
  gc.SetPen(*wxTRANSPARENT_PEN);
  gc.SetBrush(wxBrush(colour(fill)));
  gc.DrawRoundedRectangle(where.m_x, where.m_y, where.m_width, where.m_height, at(4));
}

double BenchCanvas::text(wxGraphicsContext& gc, const std::string& words, double x, double y,
                         int px, bool strong, desk::Rgb ink, double room) {
  Pen pen{static_cast<int>(at(px)), strong, ink};
  // A long word shrinks before it is cut: a number half seen is worse than a smaller one.
  while (room > 0 && pen.size_px > at(22) && text_width(gc, words, pen) > room) pen.size_px -= 2;
  return draw_text(gc, room > 0 ? shortened(gc, words, pen, room) : words, x, y, pen);
}

void BenchCanvas::draw(wxGraphicsContext& gc, wxSize size) {
  scale_ = std::min(size.x / wide, size.y / high);
  const double right_wide = at(414), gap = at(24);
  const double left_wide = size.x - 3 * gap - right_wide;
  const desk::Palette p = night();
  double x = gap + text(gc, view_.heading, gap, at(18), 22, true, p.ink) + at(8);
  text(gc, view_.clock, x, at(18), 22, false, p.second_ink);
  const Pen small{static_cast<int>(at(22)), false, p.second_ink};
  const std::string leave = "Leave the bench  Esc";
  const double leave_wide = text_width(gc, leave, small);
  leave_ = {size.x - gap - leave_wide, at(8), leave_wide, at(44)};
  draw_text(gc, leave, size.x - gap, at(18), small, Anchor::end);
  draw_text(gc, view_.progress, size.x - gap - leave_wide - at(24), at(18), small, Anchor::end);
  draw_turn(gc, left_wide);
  draw_tiles(gc, left_wide);
  draw_targets(gc, left_wide);
  draw_order(gc, 2 * gap + left_wide, right_wide);
  draw_wait(gc, 2 * gap + left_wide, right_wide);
}

void BenchCanvas::draw_turn(wxGraphicsContext& gc, double width) {
  const desk::Palette p = night();
  const double x = at(24), y = at(60), tall = at(276);
  box(gc, {x, y, width, tall}, p.panel);
  double words = x + at(32);
  if (!view_.number.empty()) {
    const double tile = at(330);
    const desk::Rgb glow = desk::tint(view_.celsius.value_or(20), desk::Ground::dark);
    box(gc, {x, y, tile, tall}, glow);
    const bool dark_ink = desk::contrast(on_heat, glow) >= desk::contrast(p.ink, glow);
    const desk::Rgb ink = dark_ink ? on_heat : p.ink;
    Pen big{static_cast<int>(at(190)), true, ink};
    while (text_width(gc, view_.number, big) > tile - at(24)) big.size_px -= 6;
    draw_text(gc, view_.number, x + tile / 2, y + at(118) - big.size_px * 0.68, big,
              Anchor::centre);
    draw_text(gc, view_.tint_words, x + tile / 2, y + tall - at(48),
              {static_cast<int>(at(24)), true, ink}, Anchor::centre);
    words = x + tile + at(32);
  }
  const double room = x + width - words - at(16);
  // The sentence breaks at its comma, where the hand pauses too.
  const auto comma = view_.sentence.find(", ");
  const std::string first =
      comma == std::string::npos ? view_.sentence : view_.sentence.substr(0, comma + 1);
  text(gc, first, words, y + at(20), 56, true, p.ink, room);
  if (comma != std::string::npos)
    text(gc, view_.sentence.substr(comma + 2), words, y + at(86), 56, true, p.ink, room);
  const Pen plain{static_cast<int>(at(26)), false, p.ink};
  double line_y = y + at(170);
  for (const std::string& line : wrapped(gc, view_.advice, plain, room)) {
    draw_text(gc, line, words, line_y, plain);
    line_y += at(36);
  }
}

void BenchCanvas::draw_tiles(wxGraphicsContext& gc, double width) {
  if (view_.tiles.empty()) return;
  const desk::Palette p = night();
  const double gap = at(16), each = (width - 2 * gap) / 3, y = at(352);
  for (std::size_t i = 0; i < view_.tiles.size(); ++i) {
    const desk::BenchTile& tile = view_.tiles[i];
    const double x = at(24) + static_cast<double>(i) * (each + gap);
    box(gc, {x, y, each, at(152)}, p.raised);
    text(gc, tile.label, x + at(20), y + at(10), 22, false, p.second_ink, each - at(40));
    const double unit = tile.unit.empty() ? 0 : at(52);
    const double figure =
        text(gc, tile.value, x + at(20), y + at(38), 56, true, p.ink, each - at(40) - unit);
    text(gc, tile.unit, x + at(28) + figure, y + at(68), 26, false, p.second_ink);
    text(gc, tile.note, x + at(20), y + at(114), 22, false, p.ink, each - at(40));
  }
}

void BenchCanvas::draw_targets(wxGraphicsContext& gc, double width) {
  const desk::Palette p = night();
  target_ = put_off_target_ = trouble_ = undo_target_ = {};
  if (!view_.target.empty()) {
    const wxRect2DDouble where(at(24), at(518), width, at(138));
    if (view_.record) {
      target_ = where;
      box(gc, where, p.accent);
      text(gc, view_.target, where.m_x + at(40), where.m_y + at(32), 56, true, p.on_accent,
           width - at(340));
      const Pen how{static_cast<int>(at(26)), false, p.on_accent};
      draw_text(gc, "Space, foot switch,", where.GetRight() - at(40), where.m_y + at(36), how,
                Anchor::end);
      draw_text(gc, "or touch here", where.GetRight() - at(40), where.m_y + at(70), how,
                Anchor::end);
    } else {
      box(gc, where, p.panel);
      text(gc, "The kiln is not loaded yet", where.m_x + at(40), where.m_y + at(46), 40, false,
           p.second_ink);
    }
  }
  if (!view_.put_off.empty()) {
    put_off_target_ = lesser_target(gc, 0, width, view_.put_off + "  N");
  }
  if (view_.trouble) trouble_ = lesser_target(gc, 1, width, "Something is wrong  S");
  if (view_.undo) undo_target_ = lesser_target(gc, 2, width, view_.undo_words + "  U");
}

// One of the three outlined targets below the main one.
wxRect2DDouble BenchCanvas::lesser_target(wxGraphicsContext& gc, int place, double width,
                                          const std::string& words) {
  const desk::Palette p = night();
  const double gap = at(16), each = (width - 2 * gap) / 3;
  const wxRect2DDouble where(at(24) + place * (each + gap), at(672), each, at(80));
  gc.SetPen(wxPen(colour(p.second_ink), static_cast<int>(at(2))));
  gc.SetBrush(*wxTRANSPARENT_BRUSH);
  gc.DrawRoundedRectangle(where.m_x, where.m_y, where.m_width, where.m_height, at(4));
  text(gc, words, where.m_x + at(12), where.m_y + at(22), 26, true, p.ink, each - at(24));
  return where;
}

void BenchCanvas::draw_order(wxGraphicsContext& gc, double left, double width) {
  const desk::Palette p = night();
  double y = at(60);
  const std::size_t most = 4;
  // The blade at hand is always among the four that are seen.
  std::size_t first = 0;
  for (std::size_t i = 0; i < view_.order.size(); ++i) {
    if (view_.order[i].here && i > 1)
      first = std::min(i - 1, view_.order.size() - std::min(view_.order.size(), most));
  }
  for (std::size_t i = first; i < std::min(first + most, view_.order.size()); ++i) {
    const desk::BenchBlade& blade = view_.order[i];
    box(gc, {left, y, width, at(101)}, blade.here ? p.raised : p.panel);
    if (blade.here) box(gc, {left, y, at(8), at(101)}, p.accent);
    text(gc, blade.number, left + at(20), y + at(16), 56, true, blade.done ? p.second_ink : p.ink,
         at(100));
    text(gc, blade.state, left + at(124), y + at(8), 22, true, p.ink, width - at(140));
    for (std::size_t line = 0; line < blade.lines.size(); ++line) {
      text(gc, blade.lines[line], left + at(124), y + at(36 + 28 * static_cast<double>(line)), 22,
           false, p.second_ink, width - at(140));
    }
    y += at(102);
  }
}

void BenchCanvas::draw_wait(wxGraphicsContext& gc, double left, double width) {
  if (view_.wait.empty()) return;
  const desk::Palette p = night();
  const double y = at(484);
  box(gc, {left, y, width, at(268)}, p.raised);
  text(gc, view_.wait_label, left + at(20), y + at(12), 22, false, p.second_ink, width - at(40));
  text(gc, view_.wait, left + at(20), y + at(42), 72, true, p.ink, width - at(40));
  double line = y + at(142);
  const Pen plain{static_cast<int>(at(22)), false, p.ink};
  for (const std::string& note : view_.wait_notes) {
    for (const std::string& part : wrapped(gc, note, plain, width - at(40))) {
      draw_text(gc, part, left + at(20), line, plain);
      line += at(30);
    }
  }
}

}  // namespace tangmark::window
