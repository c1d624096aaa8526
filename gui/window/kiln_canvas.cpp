// SPDX-License-Identifier: MIT
#include "gui/window/kiln_canvas.h"

#include <wx/graphics.h>

#include <algorithm>
#include <cmath>

#include "gui/window/firing_reason.h"
#include "gui/window/text.h"

namespace tangmark::window {
namespace {

constexpr int names_px = 132;      // the column of kiln names
constexpr int hours_head_px = 40;  // the row of hours
constexpr int low_lane_px = 56;
constexpr auto step = std::chrono::minutes{5};

}  // namespace

KilnCanvas::KilnCanvas(wxWindow* parent, Answers answers)
    : Canvas(parent, Depth::window), answers_(std::move(answers)) {
  takes_keys();
  reason_ = new FiringReason(this, {[this](const std::string& why) {
                                      const Held held = held_.value_or(Held{});
                                      const std::string kiln = board_.lanes[held.lane].id;
                                      const std::string refusal =
                                          answers_.all_the_same(held.firing, kiln, held.start, why);
                                      if (refusal.empty()) put_back();
                                      return refusal;
                                    },
                                    [this] { put_back(); }});
  Bind(wxEVT_KEY_DOWN, &KilnCanvas::on_key, this);
  // Before the frame: its Enter and Escape are for the next line.
  Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
    const int key = event.GetKeyCode();
    const bool enter = key == WXK_RETURN || key == WXK_NUMPAD_ENTER;
    if (held_ && !reason_->asks() && (enter || key == WXK_ESCAPE))
      return enter ? let_go() : put_back();
    event.Skip();
  });
  Bind(wxEVT_MOUSEWHEEL, &KilnCanvas::on_wheel, this);
  Bind(wxEVT_LEFT_DOWN, &KilnCanvas::on_down, this);
  Bind(wxEVT_MOTION, &KilnCanvas::on_motion, this);
  Bind(wxEVT_LEFT_UP, &KilnCanvas::on_up, this);
  Bind(wxEVT_MOUSE_CAPTURE_LOST, [this](wxMouseCaptureLostEvent&) {
    drag_.reset();
    trial_.reset();
    Refresh();
  });
}

void KilnCanvas::show(desk::KilnBoard board) {
  // A firing that is held, or waits for its reason, is not taken out of the hand by a clock's tick.
  const bool same =
      held_ && board.selected == held_->firing && board.lanes.size() == board_.lanes.size();
  board_ = std::move(board);
  if (same) {
    Refresh();
    return;
  }
  put_back();
  see_selected();
  says(desk::in_words(board_));
  Refresh();
}

double KilnCanvas::left() const {
  return look().sizes.of(names_px);
}

double KilnCanvas::x_of(Instant at) const {
  const double span = static_cast<double>((board_.to - board_.from).count());
  const double share = span > 0 ? static_cast<double>((at - board_.from).count()) / span : 0;
  return left() + share * (GetClientSize().x - left());
}

Instant KilnCanvas::time_at(double x) const {
  const double share = (x - left()) / std::max(1.0, GetClientSize().x - left());
  const double seconds = share * static_cast<double>((board_.to - board_.from).count());
  const auto at = board_.from + Duration{static_cast<std::int64_t>(seconds)};
  const auto count = at.time_since_epoch().count();
  const auto unit = Duration{step}.count();
  return Instant{Duration{(count + unit / 2) / unit * unit}};
}

double KilnCanvas::lanes_room() const {
  return GetClientSize().y - look().sizes.of(hours_head_px) - look().sizes.of(foot_px);
}

double KilnCanvas::lane_height() const {
  const Sizes& sizes = look().sizes;
  const auto lanes = std::max<std::size_t>(1, board_.lanes.size());
  return std::clamp(lanes_room() / static_cast<double>(lanes), 1.0 * sizes.of(low_lane_px),
                    1.0 * sizes.of(160));
}

// With many kilns the lanes are low: closer together, their words in smaller letters.
bool KilnCanvas::lanes_are_low() const {
  return lane_height() < look().sizes.of(76);
}

double KilnCanvas::lane_gap() const {
  return look().sizes.gap(lanes_are_low() ? 1 : 2);
}

double KilnCanvas::curve_height() const {
  return lane_height() - look().sizes.of(caption_px) - lane_gap() -
         (lanes_are_low() ? 0 : look().sizes.gap(1));
}

double KilnCanvas::lane_top(std::size_t lane) const {
  return look().sizes.of(hours_head_px) + static_cast<double>(lane) * lane_height() - scrolled_;
}

double KilnCanvas::y_of(double celsius, std::size_t lane) const {
  const double foot = lane_top(lane) + lane_height() - lane_gap();
  const double height = curve_height();
  const double top = std::max(100.0, board_.lanes[lane].top_celsius);
  return foot - std::clamp(celsius / top, 0.0, 1.05) * height;
}

void KilnCanvas::draw(wxGraphicsContext& gc, wxSize) {
  tag_places_.clear();
  if (board_.lanes.empty()) return;
  const Sizes& size = look().sizes;
  gc.PushState();
  gc.Clip(0, size.of(hours_head_px), GetClientSize().x,
          GetClientSize().y - size.of(hours_head_px) - size.of(foot_px));
  draw_ground(gc);
  for (std::size_t lane = 0; lane < board_.lanes.size(); ++lane) draw_lane(gc, lane);
  gc.ResetClip();
  gc.PopState();
  draw_hours(gc);
  draw_trial(gc);
  const double now = x_of(board_.now);
  if (now >= left() && now <= GetClientSize().x) {
    const Sizes& sizes = look().sizes;
    const desk::Palette& p = look().palette;
    const double bottom =
        std::min<double>(lane_top(board_.lanes.size() - 1) + lane_height() - lane_gap(),
                         GetClientSize().y - sizes.of(foot_px));
    gc.SetPen(wxPen(colour(p.accent), 2));
    gc.StrokeLine(now, sizes.of(18), now, bottom);
    const Pen pen{sizes.note(), true, p.on_accent};
    const double width = text_width(gc, board_.now_text, pen) + sizes.gap(2);
    const double x = std::clamp(now - width / 2, left(), GetClientSize().x - width);
    gc.SetPen(*wxTRANSPARENT_PEN);
    gc.SetBrush(wxBrush(colour(p.accent)));
    gc.DrawRectangle(x, sizes.of(16), width, sizes.of(20));
    draw_text(gc, board_.now_text, x + sizes.gap(1), sizes.of(17), pen);
  }
  draw_key(gc);
}

void KilnCanvas::draw_ground(wxGraphicsContext& gc) {
  const desk::Palette& p = look().palette;
  const double right = GetClientSize().x;
  for (std::size_t lane = 0; lane < board_.lanes.size(); ++lane) {
    const double top = lane_top(lane), height = lane_height() - lane_gap();
    gc.SetPen(*wxTRANSPARENT_PEN);
    gc.SetBrush(wxBrush(colour(p.unattended)));
    gc.DrawRectangle(left(), top, right - left(), height);
    gc.SetBrush(wxBrush(colour(p.attended)));
    for (const desk::BoardSpan& span : board_.attended) {
      const double from = std::max(left(), x_of(span.from)), to = std::min(right, x_of(span.to));
      if (to > from) gc.DrawRectangle(from, top, to - from, height);
    }
    gc.SetPen(wxPen(colour(p.line), 1));
    for (const desk::BoardTick& tick : board_.ticks) {
      gc.StrokeLine(x_of(tick.at), top, x_of(tick.at), top + height);
    }
    gc.SetPen(wxPen(colour(p.ink), 1));
    gc.StrokeLine(left(), top + height, right, top + height);
  }
}

void KilnCanvas::draw_hours(wxGraphicsContext& gc) {
  const Sizes& sizes = look().sizes;
  const desk::Palette& p = look().palette;
  const double right = GetClientSize().x;
  const double now_width =
      text_width(gc, board_.now_text, {sizes.note(), true, p.ink}) + sizes.gap(2);
  double taken = 0;
  for (const desk::BoardTick& tick : board_.ticks) {
    const Pen pen{sizes.note(), tick.day, tick.day ? p.ink : p.second_ink};
    const double width = text_width(gc, tick.text, pen);
    const double x = std::clamp(x_of(tick.at) - width / 2, left(), right - width);
    const bool under_now = std::abs(x + width / 2 - x_of(board_.now)) < (width + now_width) / 2;
    if (x < taken || under_now) continue;
    draw_text(gc, tick.text, x, sizes.of(18), pen);
    taken = x + width + sizes.gap(1);
  }
}

// The name of a kiln and how it stands; what is too long for the column is written smaller.
void KilnCanvas::draw_name(wxGraphicsContext& gc, std::size_t lane) {
  const Sizes& sizes = look().sizes;
  const desk::BoardLane& kiln = board_.lanes[lane];
  const bool low = lanes_are_low();
  const double top = lane_top(lane), x = sizes.of(inset_px), width = left() - x - sizes.gap(1);
  const auto write = [&](const std::string& words, Pen pen, int down) {
    if (text_width(gc, words, pen) > width) pen.size_px = sizes.note();
    draw_text(gc, shortened(gc, words, pen, width), x, top + sizes.of(down), pen);
  };
  const Pen grey{sizes.note(), false, look().palette.second_ink};
  write(kiln.name, text_pen(true), low ? 0 : 4);
  write(kiln.now, low ? note_pen() : text_pen(false), low ? 18 : 24);
  write(kiln.state, grey, low ? 33 : 46);
}

void KilnCanvas::draw_lane(wxGraphicsContext& gc, std::size_t lane) {
  const desk::BoardLane& kiln = board_.lanes[lane];
  const double top = lane_top(lane);
  draw_name(gc, lane);
  gc.PushState();
  gc.Clip(left(), top, GetClientSize().x - left(), lane_height());
  for (const desk::BoardFiring& firing : kiln.firings) draw_firing(gc, firing, lane);
  Taken taken;
  for (std::size_t i = 0; i < kiln.firings.size(); ++i) {
    const bool last = i + 1 == kiln.firings.size();
    const double room_to = last ? GetClientSize().x : x_of(kiln.firings[i + 1].start);
    draw_tags(gc, {lane, i}, room_to, taken);
  }
  draw_conflicts(gc, lane);
  gc.PopState();
}

void KilnCanvas::stroke(wxGraphicsContext& gc, const desk::BoardCurve& curve, std::size_t lane) {
  if (curve.size() < 2) return;
  wxGraphicsPath path = gc.CreatePath();
  path.MoveToPoint(x_of(curve.front().at), y_of(curve.front().celsius, lane));
  for (const desk::CurvePoint& point : curve)
    path.AddLineToPoint(x_of(point.at), y_of(point.celsius, lane));
  gc.StrokePath(path);
}

// The area under the curve as columns two pixels wide, each in the colour of the steel then.
void KilnCanvas::draw_glow(wxGraphicsContext& gc, const desk::BoardFiring& firing,
                           std::size_t lane) {
  const desk::BoardCurve& curve = firing.planned;
  if (curve.size() < 2) return;
  const double foot = lane_top(lane) + lane_height() - lane_gap();
  gc.SetPen(*wxTRANSPARENT_PEN);
  const double first = std::max(left(), x_of(curve.front().at));
  const double last = std::min<double>(GetClientSize().x, x_of(curve.back().at));
  std::size_t piece = 0;
  const wxAntialiasMode before = gc.GetAntialiasMode();
  gc.SetAntialiasMode(wxANTIALIAS_NONE);
  for (double x = std::floor(first); x < last; x += 2) {
    while (piece + 2 < curve.size() && x_of(curve[piece + 1].at) < x + 1) ++piece;
    const double x0 = x_of(curve[piece].at), x1 = x_of(curve[piece + 1].at);
    const double share = x1 > x0 ? std::clamp((x + 1 - x0) / (x1 - x0), 0.0, 1.0) : 1;
    const double celsius =
        curve[piece].celsius + share * (curve[piece + 1].celsius - curve[piece].celsius);
    const double y = y_of(celsius, lane);
    gc.SetBrush(wxBrush(colour(desk::tint(celsius, look().ground))));
    gc.DrawRectangle(x, y, 2, std::max(0.0, foot - y));
  }
  gc.SetAntialiasMode(before);
}

void KilnCanvas::draw_firing(wxGraphicsContext& gc, const desk::BoardFiring& firing,
                             std::size_t lane) {
  const desk::Palette& p = look().palette;
  const bool chosen = firing.id == board_.selected;
  if (!firing.old_place.empty()) {
    gc.SetPen(wxPen(colour(p.second_ink), 1, wxPENSTYLE_SHORT_DASH));
    stroke(gc, firing.old_place, lane);
  }
  draw_glow(gc, firing, lane);
  gc.SetPen(wxPen(colour(firing.proposed || chosen ? p.accent : p.ink),
                  firing.proposed || chosen ? 3 : 1));
  stroke(gc, firing.planned, lane);
  if (!firing.recorded.empty()) {
    gc.SetPen(wxPen(colour(p.ink), 3));
    stroke(gc, firing.recorded, lane);
  }
}

// Tags that would run into the next firing are written as plain numbers instead, in lines.
double KilnCanvas::draw_numbers(wxGraphicsContext& gc, const desk::BoardFiring& firing, double x,
                                double foot, double room, int rows) {
  const Sizes& sizes = look().sizes;
  const Pen pen{sizes.note(), true, look().palette.ink};
  std::string all;
  for (const std::string& number : firing.blades) all += number + " ";
  std::vector<std::string> lines = wrapped(gc, all, pen, room - sizes.of(6));
  // Where even one a line is too many they go on beside the firing: none is left out.
  while (static_cast<int>(lines.size()) > rows + 1) {
    room += sizes.of(8);
    lines = wrapped(gc, all, pen, room - sizes.of(6));
  }
  double widest = 0;
  for (const std::string& line : lines) widest = std::max(widest, text_width(gc, line, pen));
  // Two lines in a low lane stay below the temperature that stands over the firing.
  const bool low = lanes_are_low();
  const double line_high = sizes.of(low ? 14 : 17);
  const double tall = static_cast<double>(lines.size()) * line_high + sizes.of(low ? 2 : 4);
  gc.SetPen(wxPen(colour(look().palette.ink), 1));
  gc.SetBrush(wxBrush(colour(look().palette.raised)));
  gc.DrawRoundedRectangle(x + 0.5, foot - tall + 0.5, widest + sizes.of(6), tall, 2);
  double y = foot - tall + (low ? -sizes.of(1) : sizes.of(2));
  for (const std::string& line : lines) {
    draw_text(gc, line, x + sizes.of(3), y, pen);
    y += line_high;
  }
  return x + widest + sizes.of(8);
}

// A caption that would run over the next firing keeps its figure only: "805 °C" of "805 °C harden".
void KilnCanvas::draw_caption(wxGraphicsContext& gc, Hit of, double room_to, Taken& taken) {
  const Sizes& sizes = look().sizes;
  const desk::BoardFiring& firing = board_.lanes[of.lane].firings[of.firing];
  const bool strong = firing.proposed || firing.id == board_.selected;
  const std::string kept = firing.kept ? ", kept" : "";
  const Pen pen{sizes.note(), true, strong ? look().palette.accent : look().palette.ink};
  const double from = x_of(firing.start);
  const std::size_t unit = firing.caption.find("\u00B0");
  const std::string figure =
      unit == std::string::npos ? firing.caption : firing.caption.substr(0, unit + 3);
  const double room = std::min<double>(room_to, GetClientSize().x) - std::max(left() + 2, from);
  const std::string whole = firing.caption + kept;
  const std::string words = text_width(gc, whole, pen) <= room ? whole : figure;
  const double width = text_width(gc, words, pen);
  const double at = std::max(left() + 2, std::min(from, GetClientSize().x - width));
  if (at < taken.caption) return;
  draw_text(gc, words, at, lane_top(of.lane) + sizes.of(lanes_are_low() ? 0 : 2), pen);
  taken.caption = at + width + sizes.of(2);
}

void KilnCanvas::draw_tags(wxGraphicsContext& gc, Hit of, double room_to, Taken& taken) {
  const std::size_t lane = of.lane;
  const desk::BoardFiring& firing = board_.lanes[lane].firings[of.firing];
  const Sizes& sizes = look().sizes;
  const double from = x_of(firing.start);
  draw_caption(gc, of, room_to, taken);
  const double foot = lane_top(lane) + lane_height() - lane_gap() - sizes.of(4);
  const double tall = curve_height();
  const int rows = std::clamp(static_cast<int>(tall / (tag_height() + 2)), 1, 3);
  const auto count = static_cast<int>(firing.blades.size());
  const int across = (count + rows - 1) / rows;
  double x = std::max({from + 2, left() + 2, taken.tags});
  double wide = 0;
  for (const std::string& number : firing.blades) wide = std::max(wide, tag_width(gc, number) + 3);
  if (x + across * wide > room_to) {
    taken.tags = draw_numbers(gc, firing, x, foot + 2, room_to - x, rows);
    tag_places_.push_back({of, {x, foot - tall, taken.tags - x, tall}});
    return;
  }
  for (int column = 0; column < across; ++column) {
    double widest = 0;
    for (int row = 0; row < rows; ++row) {
      const int at = column + row * across;
      if (at >= count) continue;
      const std::string& number = firing.blades[static_cast<std::size_t>(at)];
      widest = std::max(widest, draw_tag(gc, number, x, foot - (row + 1) * (tag_height() + 2.0)));
    }
    x += widest + 3;
  }
  tag_places_.push_back(
      {of, {from, foot - rows * (tag_height() + 2.0), x - from, rows * (tag_height() + 2.0)}});
  taken.tags = x;
}

}  // namespace tangmark::window
