// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "reports/page.h"

namespace tangmark::reports {

/// Finds free room for small labels in a drawing: inside its bounds, clear of the lines and of the
/// labels placed before.
class LabelPlace {
 public:
  explicit LabelPlace(const Box& bounds) : bounds_(bounds) {}
  void keep_clear_of(const Box& box) { boxes_.push_back(box); }
  void keep_clear_of(const std::vector<Place>& line);

  /// The first free place of this size around the anchor: right, left, below, above, then further
  /// out; the place is taken then. None when all are taken.
  std::optional<Box> take(Place anchor, Points distance, Points width, Points height);

 private:
  bool is_free(const Box& box) const;

  Box bounds_;
  std::vector<Box> boxes_;
  std::vector<std::vector<Place>> lines_;
};

/// Whether two boxes share more than a hair.
bool overlap(const Box& a, const Box& b, Points hair = 0.01);
/// Whether a straight stroke crosses a box.
bool crosses(Place from, Place to, const Box& box);

}  // namespace tangmark::reports
