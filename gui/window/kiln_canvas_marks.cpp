// SPDX-License-Identifier: MIT
// What stands over and under the curves of the kiln board: conflicts, a firing held at another
// place, and the key.
#include <wx/graphics.h>

#include <algorithm>

#include "gui/window/firing_reason.h"
#include "gui/window/kiln_canvas.h"

namespace tangmark::window {

Pen KilnCanvas::note_pen() {
  return {look().sizes.note(), false, look().palette.ink};
}

Pen KilnCanvas::text_pen(bool strong) {
  return {look().sizes.text(), strong, look().palette.ink};
}

// Hatched where the rule breaks, with the words of the first: no meaning hangs on a colour. The
// sheet below has all the sentences.
void KilnCanvas::draw_conflicts(wxGraphicsContext& gc, std::size_t lane) {
  bool said = false;
  for (const desk::BoardConflict& conflict : board_.lanes[lane].conflicts) {
    hatch(gc, conflict, lane);
    if (!said) said = say_conflict(gc, conflict, lane);
  }
}

void KilnCanvas::hatch(wxGraphicsContext& gc, const desk::BoardConflict& conflict,
                       std::size_t lane) {
  const Sizes& sizes = look().sizes;
  const double top = lane_top(lane) + sizes.of(caption_px);
  const double foot = lane_top(lane) + lane_height() - lane_gap();
  const double from = x_of(conflict.from), to = std::max(from + sizes.of(8), x_of(conflict.to));
  gc.PushState();
  gc.Clip(from, top, to - from, foot - top);
  gc.SetPen(wxPen(colour(look().palette.ink), 2));
  for (double x = from - (foot - top); x < to; x += sizes.of(8))
    gc.StrokeLine(x, foot, x + foot - top, top);
  gc.PopState();
  gc.SetPen(wxPen(colour(look().palette.ink), 2));
  gc.SetBrush(*wxTRANSPARENT_BRUSH);
  gc.DrawRectangle(from, top, to - from, foot - top);
}

// False where there is no room for words: too far right.
bool KilnCanvas::say_conflict(wxGraphicsContext& gc, const desk::BoardConflict& conflict,
                              std::size_t lane) {
  const Sizes& sizes = look().sizes;
  const double top = lane_top(lane) + sizes.of(caption_px);
  const double at = std::max(x_of(conflict.from), left() + 2);
  if (at + sizes.of(60) > GetClientSize().x) return false;
  const Pen pen{sizes.note(), true, look().palette.ink};
  const std::string words = shortened(gc, "Does not fit: " + conflict.sentence, pen,
                                      GetClientSize().x - at - sizes.gap(2));
  gc.SetPen(wxPen(colour(look().palette.ink), 1));
  gc.SetBrush(wxBrush(colour(look().palette.raised)));
  gc.DrawRectangle(at, top, text_width(gc, words, pen) + sizes.gap(1), sizes.of(20));
  draw_text(gc, words, at + sizes.of(4), top + 1, pen);
  return true;
}

void KilnCanvas::stroke_trial(wxGraphicsContext& gc) {
  const desk::Palette& p = look().palette;
  gc.SetPen(wxPen(colour(trial_->may ? p.accent : p.ink), 3,
                  trial_->may ? wxPENSTYLE_SOLID : wxPENSTYLE_SHORT_DASH));
  stroke(gc, trial_->there.planned, trial_lane_);
}

void KilnCanvas::draw_trial(wxGraphicsContext& gc) {
  if (!trial_) return;
  stroke_trial(gc);
  if (reason_->asks()) return;
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  std::vector<std::string> lines{trial_->sentence};
  lines.insert(lines.end(), trial_->reasons.begin(), trial_->reasons.end());
  if (held_) lines.push_back("Enter lets it go here, Escape puts it back.");
  double width = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    width = std::max(width, text_width(gc, lines[i], text_pen(i == 0)));
  }
  const double height = static_cast<double>(lines.size()) * sizes.of(21) + sizes.gap(2);
  const double wide = width + sizes.gap(4);
  const double x =
      std::clamp(x_of(trial_->there.start), left(), std::max(left(), GetClientSize().x - wide));
  double y = lane_top(trial_lane_) + lane_height();
  if (y + height > GetClientSize().y) y = std::max(0.0, lane_top(trial_lane_) - height);
  gc.SetPen(wxPen(colour(trial_->may ? p.accent : p.ink), 1));
  gc.SetBrush(wxBrush(colour(p.raised)));
  gc.DrawRectangle(x, y, wide, height);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    draw_text(gc, lines[i], x + sizes.gap(2),
              y + sizes.gap(1) + static_cast<double>(i) * sizes.of(21), text_pen(i == 0));
  }
}

void KilnCanvas::draw_key(wxGraphicsContext& gc) {
  const Sizes& sizes = look().sizes;
  const double y = std::min<double>(lane_top(board_.lanes.size() - 1) + lane_height(),
                                    GetClientSize().y - sizes.of(foot_px) + sizes.of(4));
  const std::string marks =
      "White: you at the bench. Thick: recorded. Dashed: old place. Hatched: does not fit.";
  draw_text(gc, marks, sizes.of(inset_px), y, note_pen());
  double x = GetClientSize().x - sizes.of(inset_px);
  for (auto key = board_.key.rbegin(); key != board_.key.rend(); ++key) {
    x -= text_width(gc, key->figure, note_pen());
    draw_text(gc, key->figure, x, y, note_pen());
    x -= sizes.of(25);
    gc.SetPen(wxPen(colour(look().palette.ink), 1));
    gc.SetBrush(wxBrush(colour(desk::tint(key->celsius, look().ground))));
    gc.DrawRectangle(x, y + 2, sizes.of(19), sizes.of(13));
    x -= sizes.gap(1);
  }
  // Where both do not fit beside each other the unit alone stays: "°F:" of "Colour of ..., °F:".
  const double room = x - sizes.of(inset_px) - text_width(gc, marks, note_pen()) - sizes.gap(2);
  const std::string& title = board_.key_title;
  const std::string words =
      text_width(gc, title, note_pen()) <= room ? title : title.substr(title.rfind(' ') + 1);
  draw_text(gc, words, x - sizes.of(4), y, note_pen(), Anchor::end);
}

}  // namespace tangmark::window
