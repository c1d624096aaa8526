// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/energy.h"
#include "domain/measure/length.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// One kiln or oven in use.
struct KilnRow {
  std::int64_t id = 0;
  std::string name, kind, circuit;
  int slots = 0;
  Length usable_length;
  Temperature low, high;
  TemperatureDifference heat_per_hour;
  Duration time_constant{};
  std::int64_t heat_w = 0, hold_mw_per_c = 0;
  Duration load{}, unload{};
  std::optional<CalendarDate> checked_on;
  std::optional<std::int64_t> check_days;
};
std::vector<KilnRow> kiln_rows(const ShopFile& shop);

/// One firing with its blades in their order.
struct FiringRow {
  std::int64_t number = 0;
  std::int64_t kiln_id = 0;
  std::string kiln, kind, state;
  Temperature set;
  Duration soak{}, rest{};
  std::optional<TemperatureDifference> cool_per_hour;
  std::optional<Temperature> cool_to;
  Instant heat_from, starts_at, ends_at;
  std::optional<Instant> actual_start, actual_end;
  bool locked = false;
  bool recorded = false;
  Energy energy;
  struct Member {
    std::int64_t blade = 0;
    std::string operation;
    std::optional<Duration> soak_least, soak_most;
    std::optional<Instant> in, out;
  };
  std::vector<Member> members;
};
/// Firings that end after `from` and begin before `to`, cancelled ones left out, by start.
std::vector<FiringRow> firing_rows(const ShopFile& shop, Instant from, Instant to);
std::optional<FiringRow> firing_row(const ShopFile& shop, std::int64_t number);
/// Every firing, newest first; without members.
std::vector<FiringRow> all_firings(const ShopFile& shop);

/// When somebody is at the bench, as the shop says it.
struct BenchHoursRow {
  int weekday = 1;  ///< 1 Monday to 7 Sunday
  Duration from{}, to{};
};
std::vector<BenchHoursRow> bench_hours(const ShopFile& shop);
std::vector<CalendarDate> days_off(const ShopFile& shop);

}  // namespace tangmark::db
