// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "db/shop_file.h"
#include "domain/commission/commission_id.h"
#include "domain/commission/promise_queue.h"

namespace tangmark::db {

/// How the finished work of the last 30 blades turned out against what is planned for its like
/// today: logged hours over the model's hours (the blade's own route where it has no model). The
/// median is drawn toward 1, which counts as three blades; below three blades it is 1. How far that
/// shop-wide figure may be off is the spread of the record over the root of its count: the rest of
/// the spread is each blade's own and stands in its operations.
struct PaceOnRecord {
  commission::Pace pace;
  std::size_t n = 0;
};
PaceOnRecord pace_on_record(const ShopFile& shop);

/// A quarter of the times an operation of a model takes its planned time times this, or more: by
/// the record where it holds four pieces, else 1.25 (common practice, no source).
double quarter_factor_of(const ShopFile& shop, std::optional<commission::ModelId> model,
                         std::string_view operation);

/// How late work done elsewhere comes back after its day, and how long it takes without one; by the
/// record where three are on it, else a guess (up to a week late, one to six weeks away; common
/// practice, no source).
commission::Spread outside_lateness(const ShopFile& shop);
commission::Spread outside_duration(const ShopFile& shop);

/// How long a hold without a day lasts: by the record where three have ended, else two days to
/// three weeks, a week most often (common practice, no source).
commission::Spread hold_duration(const ShopFile& shop);

/// Hours logged a week over the last eight full weeks that have any; none when nothing was logged.
std::optional<Duration> logged_a_week(const ShopFile& shop, Instant now);

}  // namespace tangmark::db
