// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <optional>

#include "db/listing/kiln_rows.h"
#include "db/store/plan_case.h"
#include "gui/desk/kiln_board.h"

namespace tangmark::desk {

/// A firing being moved, beside all that is booked: made once, asked for every place it is held
/// over.
struct MovingFiring {
  std::int64_t number = 0;
  Instant asked_at;
  db::ShopCase shop;
  db::FiringRow row;
  std::optional<kiln::PlanFiring> candidate;
  std::vector<db::KilnRow> kilns;
};

/// What the kiln place keeps between looks, until the shop changes.
struct KilnMemory {
  Duration shift{};                               ///< the board begins so much later than usual
  std::map<std::int64_t, BoardCurve> recorded{};  ///< by firing number, thinned for drawing
  std::optional<MovingFiring> moving{};
  void shop_changed() {
    recorded.clear();
    moving.reset();
  }
};

}  // namespace tangmark::desk
