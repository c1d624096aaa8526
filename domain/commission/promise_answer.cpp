// SPDX-License-Identifier: MIT
#include "domain/commission/promise_answer.h"

#include <algorithm>
#include <array>

#include "domain/commission/promise_run.h"

namespace tangmark::commission {
namespace {

constexpr std::size_t causes = 5;

std::array<double, causes> calendar_parts(const TimeSpent& t, double calendar_per_bench) {
  const auto of_bench = [&](std::int64_t s) { return static_cast<double>(s) * calendar_per_bench; };
  return {of_bench(t.own_work), of_bench(t.own_again), of_bench(t.others_work - t.others_again),
          of_bench(t.others_again), static_cast<double>(t.waits)};
}

double median(std::vector<double> figures) {
  const auto middle = figures.begin() + static_cast<std::ptrdiff_t>(figures.size() / 2);
  std::nth_element(figures.begin(), middle, figures.end());
  return *middle;
}

std::vector<LateShare> late_causes(const PlayedQueue& played,
                                   const std::vector<std::int64_t>& ready,
                                   double calendar_per_bench) {
  std::vector<std::array<double, causes>> parts;
  for (const TimeSpent& t : played.followed) parts.push_back(calendar_parts(t, calendar_per_bench));
  std::array<double, causes> usual{};
  for (std::size_t c = 0; c < causes; ++c) {
    std::vector<double> column;
    for (const auto& row : parts) column.push_back(row[c]);
    usual[c] = median(std::move(column));
  }
  std::vector<std::int64_t> ordered = ready;
  std::sort(ordered.begin(), ordered.end());
  const std::int64_t limit = ordered[ordered.size() * 4 / 5];
  std::array<int, causes> first{};
  int late = 0;
  for (std::size_t run = 0; run < ready.size(); ++run) {
    if (ready[run] < limit) continue;
    std::array<double, causes> over = parts[run];
    for (std::size_t c = 0; c < causes; ++c) over[c] -= usual[c];
    const auto largest = std::max_element(over.begin(), over.end());
    if (*largest <= 0) continue;
    ++late;
    ++first[static_cast<std::size_t>(largest - over.begin())];
  }
  std::vector<LateShare> shares;
  for (std::size_t c = 0; c < causes; ++c)
    if (first[c] > 0) shares.push_back({static_cast<LateCause>(c), first[c] / double(late)});
  std::stable_sort(shares.begin(), shares.end(),
                   [](const LateShare& a, const LateShare& b) { return a.part > b.part; });
  return shares;
}

PromiseQueue without(const PromiseQueue& queue, CommissionId commission) {
  PromiseQueue rest = queue;
  std::erase_if(rest.blades, [&](const QueuedBlade& b) { return b.commission == commission; });
  return rest;
}

std::size_t place_of(const PlayedQueue& played, CommissionId commission) {
  return static_cast<std::size_t>(
      std::find(played.commissions.begin(), played.commissions.end(), commission) -
      played.commissions.begin());
}

std::vector<Harm> harms(const PlayedQueue& with, const PlayedQueue& without,
                        const PromiseQueue& queue, const BenchCalendar& calendar) {
  std::vector<Harm> harmed;
  for (std::size_t c = 0; c < without.commissions.size(); ++c) {
    const CommissionId id = without.commissions[c];
    const Forecast before = forecast_of(id, without.ready[c], queue, calendar);
    const Forecast after = forecast_of(id, with.ready[place_of(with, id)], queue, calendar);
    if (after.p80 <= before.p80) continue;
    const bool breaks =
        before.promised && before.p80 <= *before.promised && after.p80 > *before.promised;
    harmed.push_back({id, before.p80, after.p80, before.promised, breaks});
  }
  return harmed;
}

}  // namespace

std::string_view sentence(LateCause cause) {
  switch (cause) {
    case LateCause::own_work:
      return "its own hours run over";
    case LateCause::own_losses:
      return "a blade of it is lost and begun again";
    case LateCause::others_work:
      return "the work ahead of it takes longer";
    case LateCause::others_losses:
      return "blades ahead of it are lost and begun again";
    case LateCause::waits:
      return "it waits longer for cures, the kiln or work elsewhere";
  }
  return {};
}

Outcome<PromiseAnswer> promise_answer(const PromiseQueue& queue, CommissionId commission,
                                      Runs runs) {
  Gather form;
  const auto calendar = BenchCalendar::from(queue.week, queue.now, queue.zone);
  for (const Problem& p : calendar.problems()) form.add(p);
  for (const Problem& p : faults_of(queue, runs)) form.add(p);
  const PromiseQueue rest = without(queue, commission);
  if (rest.blades.size() == queue.blades.size())
    form.add({"commission", "This commission has no blade in the queue.",
              "Add an item with its operations to it first."});
  if (form.refused()) return form.problems();

  const PlayedQueue with = play(queue, *calendar, runs, commission);
  const PlayedQueue without = play(rest, *calendar, runs, std::nullopt);
  const std::vector<std::int64_t>& ready = with.ready[place_of(with, commission)];
  return PromiseAnswer{forecast_of(commission, ready, queue, *calendar),
                       harms(with, without, queue, *calendar),
                       late_causes(with, ready, calendar->calendar_per_bench())};
}

}  // namespace tangmark::commission
