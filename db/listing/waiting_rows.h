// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// Something that an item of a commission waits for.
struct HoldRow {
  std::int64_t id = 0;
  std::string item;  ///< its title
  std::string what;  ///< "epoxy to cure"
  Instant since;
  std::optional<CalendarDate> until;
};
/// The waits of a commission that are not over, oldest first.
std::vector<HoldRow> open_holds(const ShopFile& shop, std::int64_t commission);

/// A part that went out of the shop to be worked on.
struct OutsideRow {
  std::int64_t id = 0;
  std::string operation, who;
  Instant sent_at;
  std::optional<CalendarDate> due_back;
  std::optional<Instant> back_at;
};
/// Outside work on the items of a commission and on their blades, oldest first.
std::vector<OutsideRow> outside_rows(const ShopFile& shop, std::int64_t commission);

/// Material promised to an item and not freed.
struct ReservationRow {
  std::int64_t id = 0;
  std::string item;     ///< its title
  std::string material; ///< the tag of a piece, or "lot 9"
};
/// The reservations of a commission's items, oldest first.
std::vector<ReservationRow> open_reservations(const ShopFile& shop, std::int64_t commission);

}  // namespace tangmark::db
