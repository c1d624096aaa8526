// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/share.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::stock {

/// So much of a piece or lot promised to an item: a length of a bar, a mass of a billet or ingot, a
/// quantity of a handle lot. None of the three: the whole of it.
struct Reservation {
  commission::ItemId item;
  std::optional<PieceId> piece{};
  std::optional<LotId> lot{};
  std::optional<Length> length{};
  std::optional<Mass> mass{};
  std::optional<Share> quantity{};
  Instant at{};
  std::optional<Instant> released_at{};
  friend bool operator==(const Reservation&, const Reservation&) = default;
};
using KeptReservation = Kept<Reservation, ReservationId>;

}  // namespace tangmark::stock
