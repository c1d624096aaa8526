// SPDX-License-Identifier: MIT
#include "reports/label_place.h"

#include <algorithm>
#include <array>

namespace tangmark::reports {

bool overlap(const Box& a, const Box& b, Points hair) {
  return a.x + hair < b.right() && b.x + hair < a.right() && a.y + hair < b.bottom() &&
         b.y + hair < a.bottom();
}

// Cuts the stroke by each side of the box in turn. Source: Liang and Barsky, ACM Transactions on
// Graphics 3 (1984) 1.
bool crosses(Place from, Place to, const Box& box) {
  double enter = 0;
  double leave = 1;
  const double dx = to.x - from.x;
  const double dy = to.y - from.y;
  const std::array<std::array<double, 2>, 4> sides{{{-dx, from.x - box.x},
                                                    {dx, box.right() - from.x},
                                                    {-dy, from.y - box.y},
                                                    {dy, box.bottom() - from.y}}};
  for (const auto& [toward, room] : sides) {
    if (toward == 0) {
      if (room < 0) return false;
    } else if (toward < 0) {
      enter = std::max(enter, room / toward);
    } else {
      leave = std::min(leave, room / toward);
    }
  }
  return enter <= leave;
}

void LabelPlace::keep_clear_of(const std::vector<Place>& line) {
  lines_.push_back(line);
}

bool LabelPlace::is_free(const Box& box) const {
  if (box.x < bounds_.x || box.y < bounds_.y || box.right() > bounds_.right() ||
      box.bottom() > bounds_.bottom()) {
    return false;
  }
  for (const Box& taken : boxes_) {
    if (overlap(taken, box)) return false;
  }
  for (const std::vector<Place>& line : lines_) {
    for (std::size_t i = 1; i < line.size(); ++i) {
      if (crosses(line[i - 1], line[i], box)) return false;
    }
  }
  return true;
}

std::optional<Box> LabelPlace::take(Place anchor, Points distance, Points width, Points height) {
  for (const double out : {1.0, 2.0, 3.5, 5.0}) {
    const Points d = distance * out;
    const std::array<Place, 8> corners{{{anchor.x + d, anchor.y - height / 2},
                                        {anchor.x - d - width, anchor.y - height / 2},
                                        {anchor.x - width / 2, anchor.y + d},
                                        {anchor.x - width / 2, anchor.y - d - height},
                                        {anchor.x + d, anchor.y + d},
                                        {anchor.x - d - width, anchor.y + d},
                                        {anchor.x + d, anchor.y - d - height},
                                        {anchor.x - d - width, anchor.y - d - height}}};
    for (const Place& corner : corners) {
      const Box box{corner.x, corner.y, width, height};
      if (!is_free(box)) continue;
      boxes_.push_back(box);
      return box;
    }
  }
  return std::nullopt;
}

}  // namespace tangmark::reports
