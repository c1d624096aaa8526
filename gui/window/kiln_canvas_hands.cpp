// SPDX-License-Identifier: MIT
// What hands do on the kiln board: a firing selected, dragged, and moved with the keys.
#include <algorithm>
#include <cmath>

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
    if (event.GetY() >= lane_top(lane) && event.GetY() < lane_top(lane) + lane_height()) trial_lane_ = lane;
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
  trial_.reset();
  Refresh();
  CallAfter([this, drag, id] {
    if (drag.moved) {
      answers_.dropped(id, drag.kiln, drag.start);
    } else {
      answers_.selected(id);
    }
  });
}

void KilnCanvas::step_selection(int by) {
  std::vector<const desk::BoardFiring*> all;
  for (const desk::BoardLane& lane : board_.lanes) {
    for (const desk::BoardFiring& firing : lane.firings) all.push_back(&firing);
  }
  if (all.empty()) return;
  std::sort(all.begin(), all.end(), [](auto* a, auto* b) { return a->start < b->start; });
  const auto at = std::find_if(all.begin(), all.end(), [this](auto* f) { return f->id == board_.selected; });
  auto next = at == all.end() ? 0 : (at - all.begin()) + by;
  next = std::clamp<std::ptrdiff_t>(next, 0, static_cast<std::ptrdiff_t>(all.size()) - 1);
  const std::string id = all[static_cast<std::size_t>(next)]->id;
  CallAfter([this, id] { answers_.selected(id); });
}

void KilnCanvas::nudge(Duration by) {
  const auto at = find(board_.selected);
  if (!at) return;
  const desk::BoardFiring& firing = board_.lanes[at->lane].firings[at->firing];
  if (!firing.may_move) return;
  const std::string id = firing.id, kiln = board_.lanes[at->lane].id;
  const Instant start = firing.start + by;
  CallAfter([this, id, kiln, start] { answers_.dropped(id, kiln, start); });
}

void KilnCanvas::on_key(wxKeyEvent& event) {
  const bool move = event.AltDown() || event.ShiftDown();
  switch (event.GetKeyCode()) {
    case WXK_LEFT: move ? nudge(-std::chrono::minutes{15}) : step_selection(-1); return;
    case WXK_RIGHT: move ? nudge(std::chrono::minutes{15}) : step_selection(1); return;
    case WXK_ESCAPE:
      if (drag_ && HasCapture()) ReleaseMouse();
      if (trial_) {
        drag_.reset();
        trial_.reset();
        Refresh();
        return;
      }
      break;
    default: break;
  }
  event.Skip();
}

}  // namespace tangmark::window
