// SPDX-License-Identifier: MIT
#include "domain/commission/promise_simulation.h"

#include <algorithm>
#include <cmath>

#include "domain/commission/promise_run.h"

namespace tangmark::commission {
namespace {

constexpr Share least_survival = Share::percent(5);

void check(Problems& found, const QueuedBlade& blade) {
  const std::string name = "blade " + std::to_string(blade.key);
  if (blade.next > blade.route.size() || blade.restart_at > blade.route.size())
    found.push_back({name, "The route of this blade has no such operation.",
                     "Check where the blade stands on its route."});
  for (const QueuedOperation& op : blade.route)
    if (op.survival < least_survival || op.survival > Share::whole())
      found.push_back({name + ", " + op.name,
                       "A survival below 5 % or above 100 % cannot be planned with.",
                       "Check the losses of this operation."});
}

/// The instant that at least `part` of the runs have met: the order statistic, never between two.
std::int64_t met_by(std::vector<std::int64_t>& ready, double part) {
  const auto rank =
      static_cast<std::size_t>(std::ceil(part * static_cast<double>(ready.size()) - 1e-9));
  const auto at = ready.begin() + static_cast<std::ptrdiff_t>(std::max<std::size_t>(rank, 1) - 1);
  std::nth_element(ready.begin(), at, ready.end());
  return *at;
}

}  // namespace

Problems faults_of(const PromiseQueue& queue, Runs runs) {
  Problems found;
  if (runs.count < 1 || runs.count > 100'000)
    found.push_back({"runs", "The queue is played from 1 to 100,000 times.", "Give 1000."});
  if (!(queue.pace.median > 0.05 && queue.pace.median < 20))
    found.push_back({"pace",
                     "The shop's pace must lie between a twentieth and twenty times the "
                     "estimates.",
                     "Check the record of hours."});
  for (const QueuedBlade& blade : queue.blades) check(found, blade);
  return found;
}

Forecast forecast_of(CommissionId commission, std::vector<std::int64_t> ready,
                     const PromiseQueue& queue, const BenchCalendar& calendar) {
  const std::int64_t s50 = met_by(ready, 0.50), s80 = met_by(ready, 0.80),
                     s95 = met_by(ready, 0.95);
  Forecast f{commission,
             calendar.instant_of(s50),
             calendar.instant_of(s80),
             calendar.instant_of(s95),
             calendar.date_of(s50),
             calendar.date_of(s80),
             calendar.date_of(s95),
             std::nullopt};
  for (const GivenPromise& given : queue.promises)
    if (given.commission == commission) f.promised = given.day;
  if (!f.promised) return f;
  const date::local_days promised(*f.promised);
  const Instant end_of_day = queue.zone.at(CalendarDate(promised + date::days(1)), Duration{});
  const std::int64_t limit = calendar.calendar_of(end_of_day);
  const auto late = std::count_if(ready.begin(), ready.end(), [&](auto s) { return s >= limit; });
  f.late_part = static_cast<double>(late) / static_cast<double>(ready.size());
  f.days_late = std::max(0, static_cast<int>((date::local_days(f.p80) - promised).count()));
  return f;
}

Outcome<std::vector<Forecast>> forecast(const PromiseQueue& queue, Runs runs) {
  Gather form;
  const auto calendar = BenchCalendar::from(queue.week, queue.now, queue.zone);
  for (const Problem& p : calendar.problems()) form.add(p);
  for (const Problem& p : faults_of(queue, runs)) form.add(p);
  if (form.refused()) return form.problems();
  PlayedQueue played = play(queue, *calendar, runs, std::nullopt);
  std::vector<Forecast> forecasts;
  for (std::size_t c = 0; c < played.commissions.size(); ++c)
    forecasts.push_back(
        forecast_of(played.commissions[c], std::move(played.ready[c]), queue, *calendar));
  return forecasts;
}

}  // namespace tangmark::commission
