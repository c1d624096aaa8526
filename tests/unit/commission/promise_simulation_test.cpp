// SPDX-License-Identifier: MIT
#include "domain/commission/promise_simulation.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace tangmark;
using namespace tangmark::commission;
using namespace std::chrono_literals;
using namespace date::literals;

namespace {

const Instant start = date::sys_days(2026_y / 11 / 23);  // a Monday, midnight

/// A shop that never closes, so that bench time is calendar time.
PromiseQueue an_open_shop() {
  PromiseQueue queue;
  queue.now = start;
  queue.week.bench.fill(24h);
  queue.week.day_starts = 0h;
  return queue;
}

QueuedOperation an_operation(Spread bench, Share survival = Share::whole()) {
  QueuedOperation op;
  op.name = "operation";
  op.bench = bench;
  op.survival = survival;
  return op;
}

QueuedBlade a_blade(std::uint64_t key, std::vector<QueuedOperation> route) {
  return {key, CommissionId(static_cast<std::int64_t>(key)), std::move(route)};
}

Forecast only(const PromiseQueue& queue, Runs runs = {}) {
  return forecast(queue, runs)->front();
}

double hours_to(Instant at) {
  return double((at - start).count()) / 3600;
}

}  // namespace

TEST_CASE("fixed hours are done one after the other, and every run says the same") {
  PromiseQueue queue = an_open_shop();
  queue.blades = {
      a_blade(1, {an_operation(Spread::exactly(3h)), an_operation(Spread::exactly(4h))}),
      a_blade(2, {an_operation(Spread::exactly(5h))})};
  const auto f = *forecast(queue, {100, 7});
  CHECK(f[0].at50 == start + 7h);
  CHECK(f[0].at95 == start + 7h);
  CHECK(f[1].at50 == start + 12h);
}

TEST_CASE("a sum of independent times has the mean and the spread it must have") {
  // Forty triangular times of a = 1, b = 2, c = 6 h: mean (a + b + c) / 3, variance
  // (a^2 + b^2 + c^2 - ab - ac - bc) / 18 (any table of distributions).
  PromiseQueue queue = an_open_shop();
  std::vector<QueuedOperation> route(40, an_operation(Spread::between(1h, 2h, 6h)));
  queue.blades = {a_blade(1, route)};
  const double variance = (1 + 4 + 36 - 1 * 2 - 1 * 6 - 2 * 6) / 18.0 * 40;
  const Forecast f = only(queue, {20'000, 3});
  // Source: central limit theorem; normal quantiles 0, 0.8416 and 1.6449 from printed tables.
  CHECK(hours_to(f.at50) == Approx(120).margin(0.4));
  CHECK(hours_to(f.at80) == Approx(120 + 0.8416 * std::sqrt(variance)).margin(0.4));
  CHECK(hours_to(f.at95) == Approx(120 + 1.6449 * std::sqrt(variance)).margin(0.6));
}

TEST_CASE("one log-normal time has its own quantiles") {
  PromiseQueue queue = an_open_shop();
  queue.blades = {a_blade(1, {an_operation(Spread::around(10h, 1.5))})};
  const Forecast f = only(queue, {20'000, 5});
  for (const auto& [at, part] : {std::pair{f.at50, 0.5}, {f.at80, 0.8}, {f.at95, 0.95}})
    CHECK(hours_to(at) ==
          Approx(double(Spread::around(10h, 1.5).quantile(part).count()) / 3600).epsilon(0.02));
}

TEST_CASE("a blade lost at its quench is begun again: a geometric number of tries") {
  // Two hours a try, 70 % survive: done in 1 try with 0.70, in 2 with 0.91, in 3 with 0.973.
  PromiseQueue queue = an_open_shop();
  queue.blades = {a_blade(1, {an_operation(Spread::exactly(1h)),
                              an_operation(Spread::exactly(1h), Share::percent(70))})};
  const Forecast f = only(queue, {10'000, 11});
  CHECK(f.at50 == start + 2h);
  CHECK(f.at80 == start + 4h);
  CHECK(f.at95 == start + 6h);
}

TEST_CASE("a lost blade begins at its steel work and not with the talk about it") {
  PromiseQueue queue = an_open_shop();
  QueuedBlade blade = a_blade(1, {an_operation(Spread::exactly(10h)),
                                  an_operation(Spread::exactly(1h), Share::percent(60))});
  blade.restart_at = 1;
  queue.blades = {blade};
  CHECK(only(queue, {5'000, 1}).at80 == start + 12h);  // 0.6, then 0.84
}

TEST_CASE("a single queue of arrivals follows Lindley's recursion") {
  // Source: Lindley (1952): wait of the next = max(0, wait + service - time between arrivals).
  PromiseQueue queue = an_open_shop();
  const std::vector<int> arrives{0, 1, 2, 9, 10, 30}, takes{4, 3, 1, 2, 5, 1};
  for (std::size_t i = 0; i < arrives.size(); ++i) {
    QueuedBlade blade =
        a_blade(i + 1, {an_operation(Spread::exactly(std::chrono::hours(takes[i])))});
    blade.not_before = Booked{start + std::chrono::hours(arrives[i]), {}};
    queue.blades.push_back(blade);
  }
  const auto f = *forecast(queue, {10, 1});
  int wait = 0;
  for (std::size_t i = 0; i < arrives.size(); ++i) {
    CHECK(f[i].at50 == start + std::chrono::hours(arrives[i] + wait + takes[i]));
    if (i + 1 < arrives.size()) wait = std::max(0, wait + takes[i] - (arrives[i + 1] - arrives[i]));
  }
}

TEST_CASE("while glue cures the maker works on the next blade") {
  PromiseQueue queue = an_open_shop();
  QueuedOperation glue = an_operation(Spread::exactly(1h));
  glue.wait = Spread::exactly(24h);
  queue.blades = {a_blade(1, {glue, an_operation(Spread::exactly(2h))}),
                  a_blade(2, {an_operation(Spread::exactly(5h))})};
  const auto f = *forecast(queue, {10, 1});
  CHECK(f[0].at50 == start + 27h);
  CHECK(f[1].at50 == start + 6h);
}

TEST_CASE("the last wait counts before the knife is ready") {
  PromiseQueue queue = an_open_shop();
  QueuedOperation oil = an_operation(Spread::exactly(1h));
  oil.wait = Spread::exactly(48h);
  queue.blades = {a_blade(1, {oil})};
  CHECK(only(queue).at50 == start + 49h);
}

TEST_CASE("a booked firing holds the first time through; a blade begun again waits for the next") {
  PromiseQueue queue = an_open_shop();
  QueuedOperation harden = an_operation(Spread::exactly(1h), Share::percent(50));
  harden.booked = Booked{start + 72h, {}};
  harden.before = Spread::exactly(10h);
  queue.blades = {a_blade(1, {harden})};
  const Forecast f = only(queue, {10'000, 2});
  // 73 h the first time, then 10 + 1 h each.
  CHECK(f.at50 <= start + 84h);
  CHECK(f.at80 == start + 73h + 22h);  // 0.5, 0.75, 0.875
}

TEST_CASE("work due back from elsewhere that comes on a day off is done that day") {
  PromiseQueue queue = an_open_shop();
  queue.week.bench = {0h, 8h, 8h, 8h, 8h, 8h, 0h};
  queue.week.day_starts = 9h;
  QueuedOperation back;
  back.name = "engraver";
  back.booked = Booked{date::sys_days(2026_y / 11 / 28) + 12h, {}};  // a Saturday, no bench time
  queue.blades = {a_blade(1, {back})};
  CHECK(only(queue).p50 == 2026_y / 11 / 28);
}

TEST_CASE("weekends and days off carry the date over") {
  PromiseQueue queue = an_open_shop();
  queue.week.bench = {0h, 4h, 4h, 4h, 4h, 4h, 0h};
  queue.week.day_starts = 9h;
  queue.week.days_off = {2026_y / 11 / 30};
  queue.blades = {a_blade(1, {an_operation(Spread::exactly(22h))})};
  // Twenty hours to Friday the 27th, Monday off, two hours on Tuesday.
  CHECK(only(queue).p50 == 2026_y / 12 / 1);
}

TEST_CASE("the shop's pace makes the whole queue late together") {
  PromiseQueue queue = an_open_shop();
  std::vector<QueuedOperation> route(50, an_operation(Spread::exactly(2h)));
  queue.blades = {a_blade(1, route)};
  queue.pace = {1.2, 1.25};
  const Forecast f = only(queue, {20'000, 9});
  CHECK(hours_to(f.at50) == Approx(120).epsilon(0.01));
  CHECK(hours_to(f.at80) ==
        Approx(120 * std::exp(std::log(1.25) / 0.67449 * 0.84162)).epsilon(0.02));
}

TEST_CASE("the same seed gives the same dates and another seed nearly the same") {
  PromiseQueue queue = an_open_shop();
  for (std::uint64_t key = 1; key <= 10; ++key)
    queue.blades.push_back(
        a_blade(key, {an_operation(Spread::around(8h, 1.4), Share::percent(90))}));
  CHECK(*forecast(queue, {1000, 4}) == *forecast(queue, {1000, 4}));
  const auto a = *forecast(queue, {10'000, 4}), b = *forecast(queue, {10'000, 5});
  CHECK(a != b);
  CHECK(std::abs(hours_to(a.back().at80) - hours_to(b.back().at80)) < 12);
}

TEST_CASE("a promise is measured against its whole day") {
  PromiseQueue queue = an_open_shop();
  queue.blades = {a_blade(1, {an_operation(Spread::exactly(40h))})};
  queue.promises = {{CommissionId(1), 2026_y / 11 / 24}};  // forty hours end on it
  CHECK(only(queue).late_part == 0);
  CHECK(only(queue).days_late == 0);
  queue.promises = {{CommissionId(1), 2026_y / 11 / 23}};
  CHECK(only(queue).late_part == 1);
  CHECK(only(queue).days_late == 1);
  CHECK(only(queue).promised == CalendarDate(2026_y / 11 / 23));
}

TEST_CASE("a finished commission is ready now, and a broken queue is refused with its blade") {
  PromiseQueue queue = an_open_shop();
  QueuedBlade blade = a_blade(3, {an_operation(Spread::exactly(1h))});
  blade.next = 1;
  queue.blades = {blade};
  CHECK(only(queue).at80 == start);
  queue.blades[0].next = 2;
  CHECK(forecast(queue, {}).problem().field == "blade 3");
  queue.blades[0].next = 0;
  queue.blades[0].route[0].survival = Share::percent(1);
  CHECK(forecast(queue, {}).problem().field == "blade 3, operation");
  queue.blades[0].route[0].survival = Share::whole();
  CHECK(forecast(queue, {0, 1}).problem().field == "runs");
  queue.week.bench.fill(0h);
  CHECK(forecast(queue, {}).problem().field == "bench hours");
}
