// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/shop_file.h"
#include "domain/commission/commission.h"
#include "domain/commission/promise_answer.h"

namespace tangmark::db {

/// Where a commission that is not accepted yet would stand: behind all others, or as a rush before
/// them.
enum class QueuePlace { last, rush };

/// The queue as the shop file has it: open blades with what is left of their routes, items that
/// have no blade yet with their model's route, in the order promised, then accepted; bench hours
/// and days off; booked firings, holds and outside work as fixed days, the last as late as its like
/// on record; the pace and the spread of hours that the log shows (promise_record.h). `asked` joins
/// at the end when it is not accepted yet; as a rush it goes before all others, accepted or not.
/// Assumptions: a kiln step with nothing booked waits up to three days for a kiln day (common
/// practice, no source); a lost blade begins again at the first work on its steel.
commission::PromiseQueue read_promise_queue(const ShopFile& shop, Instant now,
                                            std::optional<commission::CommissionId> asked,
                                            QueuePlace place = QueuePlace::last);

/// When a commission is ready and whom it harms. Refuses a shop without bench hours and a
/// commission whose items have no route.
Outcome<commission::PromiseAnswer> answer_promise(const ShopFile& shop,
                                                  const commission::KeptCommission& commission,
                                                  Instant now, commission::Runs runs,
                                                  QueuePlace place = QueuePlace::last);

/// The day met in 80 of 100 runs; none when nothing can be forecast.
std::optional<CalendarDate> forecast_day(const ShopFile& shop,
                                         const commission::KeptCommission& commission, Instant now);

}  // namespace tangmark::db
