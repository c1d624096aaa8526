// SPDX-License-Identifier: MIT
#pragma once

#include <catch2/catch.hpp>

#include <initializer_list>
#include <string>

#include "db/actions/action.h"
#include "db/shop_file.h"
#include "domain/measure/when.h"

namespace tangmark::test {

/// A Wednesday morning; tests move the clock by hand.
inline constexpr Instant bench_day =
    date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(8);

/// A shop in memory and the clock on its wall.
struct ShopOnTheBench {
  db::ShopFile shop = db::ShopFile::in_memory(bench_day);
  Instant now = bench_day;

  /// Does an action that must succeed; its number.
  std::string did(std::string_view action, const db::Given& given);
  /// Does an action; whatever it answers.
  Outcome<db::ActionResult> tries(std::string_view action, const db::Given& given) {
    return db::perform(shop, action, given, now);
  }
};

/// Every row of every table as text, for "nothing changed" checks.
std::string content_of(const db::ShopFile& shop);

}  // namespace tangmark::test
