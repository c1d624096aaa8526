// SPDX-License-Identifier: MIT
// What hands do on the kiln board: a firing selected, dragged, and moved with the keys.
#include <algorithm>
#include <cmath>

#include "gui/window/firing_reason.h"
#include "gui/window/kiln_canvas.h"

namespace tangmark::window {

std::optional<KilnCanvas::Hit> KilnCanvas::hit(wxPoint at) const {
  for (std::size_t lane = 0; lane < board_.lanes.size(); ++lane) {
    if (at.y < lane_top(lane) || at.y >= lane_top(lane) + lane_height()) continue;
    const auto& firings = board_.lanes[lane].firings;
    for (std::size_t i = 0; i < firings.size(); ++i) {
      if (at.x >= x_of(firings[i].busy_from) - 4 && at.x <= x_of(firings[i].busy_to) + 4) {
        return Hit{lane, i};
      }
    }
  }
  for (const TagPlace& tags : tag_places_) {
    if (tags.where.Contains(wxPoint2DDouble(at))) return tags.of;
  }
  return std::nullopt;
}

std::optional<KilnCanvas::Hit> KilnCanvas::find(const std::string& id) const {
  for (std::size_t lane = 0; lane < board_.lanes.size(); ++lane) {
    const auto& firings = board_.lanes[lane].firings;
    for (std::size_t i = 0; i < firings.size(); ++i) {
      if (firings[i].id == id) return Hit{lane, i};
    }
  }
  return std::nullopt;
}

const desk::BoardFiring* KilnCanvas::selected() const {
  const auto at = find(board_.selected);
  return at ? &board_.lanes[at->lane].firings[at->firing] : nullptr;
}

void KilnCanvas::on_down(wxMouseEvent& event) {
  SetFocus();
  if (held_) put_back();
  if (const auto at = hit(event.GetPosition())) {
    const desk::BoardFiring& firing = board_.lanes[at->lane].firings[at->firing];
    board_.selected = firing.id;
    drag_ = Drag{*at, event.GetX(), false, board_.lanes[at->lane].id, firing.start};
    CaptureMouse();
    Refresh();
    return;
  }
  event.Skip();
}

void KilnCanvas::on_motion(wxMouseEvent& event) {
  if (!drag_ || !event.LeftIsDown()) return;
  if (!drag_->moved && std::abs(event.GetX() - drag_->grabbed_x) < 4) return;
  const desk::BoardFiring& firing = board_.lanes[drag_->from.lane].firings[drag_->from.firing];
  if (!firing.may_move) return;
  drag_->moved = true;
  trial_lane_ = drag_->from.lane;
  for (std::size_t lane = 0; lane < board_.lanes.size(); ++lane) {
    if (event.GetY() >= lane_top(lane) && event.GetY() < lane_top(lane) + lane_height())
      trial_lane_ = lane;
  }
  drag_->kiln = board_.lanes[trial_lane_].id;
  drag_->start = time_at(x_of(firing.start) + event.GetX() - drag_->grabbed_x);
  trial_ = answers_.trial(firing.id, drag_->kiln, drag_->start);
  Refresh();
}

void KilnCanvas::on_up(wxMouseEvent&) {
  if (!drag_) return;
  if (HasCapture()) ReleaseMouse();
  const Drag drag = *drag_;
  const std::string id = board_.lanes[drag.from.lane].firings[drag.from.firing].id;
  drag_.reset();
  if (drag.moved && trial_) {
    held_ = Held{id, trial_lane_, drag.start};
    return let_go();
  }
  trial_.reset();
  Refresh();
  CallAfter([this, id] { answers_.selected(id); });
}

// Lanes that find no room on the board are scrolled to.
void KilnCanvas::on_wheel(wxMouseEvent& event) {
  if (event.GetWheelAxis() == wxMOUSE_WHEEL_HORIZONTAL || event.ShiftDown()) {
    const bool later = event.GetWheelRotation() < 0;
    answers_.perform(desk::PlaceWork{later ? "board later" : "board earlier", {}});
    return;
  }
  const double by = -event.GetWheelRotation() / 120.0 * lane_height() / 2;
  const double room = lanes_room();
  const double most =
      std::max(0.0, static_cast<double>(board_.lanes.size()) * lane_height() - room);
  if (most <= 0) return event.Skip();
  scrolled_ = std::clamp(scrolled_ + by, 0.0, most);
  Refresh();
}

void KilnCanvas::see_selected() {
  const double most =
      std::max(0.0, static_cast<double>(board_.lanes.size()) * lane_height() - lanes_room());
  scrolled_ = std::clamp(scrolled_, 0.0, most);
  const auto at = find(board_.selected);
  if (!at || lanes_room() < lane_height()) return;
  const double top = static_cast<double>(at->lane) * lane_height();
  scrolled_ =
      std::clamp(scrolled_, std::max(0.0, top + lane_height() - lanes_room()), std::max(0.0, top));
}

void KilnCanvas::step_selection(int by) {
  std::vector<const desk::BoardFiring*> all;
  for (const desk::BoardLane& lane : board_.lanes) {
    for (const desk::BoardFiring& firing : lane.firings) all.push_back(&firing);
  }
  if (all.empty()) return;
  std::sort(all.begin(), all.end(), [](auto* a, auto* b) { return a->start < b->start; });
  const auto at =
      std::find_if(all.begin(), all.end(), [this](auto* f) { return f->id == board_.selected; });
  auto next = at == all.end() ? 0 : (at - all.begin()) + by;
  next = std::clamp<std::ptrdiff_t>(next, 0, static_cast<std::ptrdiff_t>(all.size()) - 1);
  const std::string id = all[static_cast<std::size_t>(next)]->id;
  CallAfter([this, id] { answers_.selected(id); });
}

// The firing of the next lane with any that is nearest in time.
void KilnCanvas::step_lane(int by) {
  const auto at = find(board_.selected);
  if (!at) return step_selection(0);
  const Instant start = board_.lanes[at->lane].firings[at->firing].start;
  for (auto lane = static_cast<std::ptrdiff_t>(at->lane) + by;
       lane >= 0 && lane < static_cast<std::ptrdiff_t>(board_.lanes.size()); lane += by) {
    const auto& firings = board_.lanes[static_cast<std::size_t>(lane)].firings;
    if (firings.empty()) continue;
    const auto apart = [&](const desk::BoardFiring& f) {
      return f.start < start ? start - f.start : f.start - start;
    };
    const auto nearest =
        std::min_element(firings.begin(), firings.end(),
                         [&](const auto& a, const auto& b) { return apart(a) < apart(b); });
    const std::string id = nearest->id;
    CallAfter([this, id] { answers_.selected(id); });
    return;
  }
}

void KilnCanvas::hold(Duration by, int lanes) {
  const auto at = find(board_.selected);
  if (!at || reason_->asks()) return;
  const desk::BoardFiring& firing = board_.lanes[at->lane].firings[at->firing];
  if (!held_) held_ = Held{firing.id, at->lane, firing.start};
  held_->start += by;
  const auto lane = static_cast<std::ptrdiff_t>(held_->lane) + lanes;
  const auto last = static_cast<std::ptrdiff_t>(board_.lanes.size()) - 1;
  held_->lane = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(lane, 0, last));
  try_held();
}

void KilnCanvas::try_held() {
  trial_lane_ = held_->lane;
  trial_ = answers_.trial(held_->firing, board_.lanes[held_->lane].id, held_->start);
  std::string words = "Kilns along time. Firing " + held_->firing + " is held: " + trial_->sentence;
  for (const std::string& reason : trial_->reasons) words += " " + reason;
  says(words);
  Refresh();
}

// Where it may stand it becomes a proposal; where a rule breaks it waits for a reason, or goes
// back.
void KilnCanvas::let_go() {
  if (!held_ || !trial_) return;
  const Held held = *held_;
  const std::string kiln = board_.lanes[held.lane].id;
  if (trial_->may) {
    put_back();
    CallAfter([this, held, kiln] { answers_.dropped(held.firing, kiln, held.start); });
    return;
  }
  const int y = static_cast<int>(lane_top(held.lane) + lane_height() * 0.6);
  reason_->ask(*trial_, {static_cast<int>(x_of(held.start)), y});
  Refresh();
}

void KilnCanvas::put_back() {
  const bool asked = reason_->asks();
  held_.reset();
  trial_.reset();
  drag_.reset();
  reason_->Hide();
  if (asked) SetFocus();
  says(desk::in_words(board_));
  Refresh();
}

void KilnCanvas::keep_or_release() {
  const auto* firing = selected();
  if (firing == nullptr || held_) return;
  if (!firing->may_move && !firing->kept) return;
  answers_.perform(
      desk::DoNow{firing->kept ? "unlock_firing" : "lock_firing", {{"firing", firing->id}}});
}

void KilnCanvas::on_key(wxKeyEvent& event) {
  using std::chrono::minutes;
  const bool move = event.AltDown() || event.ShiftDown();
  const minutes step{event.ControlDown() ? 5 : 15};
  switch (event.GetKeyCode()) {
    case WXK_LEFT: move ? hold(-step, 0) : step_selection(-1); return;
    case WXK_RIGHT: move ? hold(step, 0) : step_selection(1); return;
    case WXK_UP: move ? hold({}, -1) : step_lane(-1); return;
    case WXK_DOWN: move ? hold({}, 1) : step_lane(1); return;
    case WXK_PAGEUP: answers_.perform(desk::PlaceWork{"board earlier", {}}); return;
    case WXK_PAGEDOWN: answers_.perform(desk::PlaceWork{"board later", {}}); return;
    case WXK_HOME: answers_.perform(desk::PlaceWork{"board now", {}}); return;
    case 'L': keep_or_release(); return;
    case WXK_ESCAPE:
      if (drag_ && HasCapture()) ReleaseMouse();
      if (trial_) return put_back();
      break;
    default: break;
  }
  event.Skip();
}

}  // namespace tangmark::window
