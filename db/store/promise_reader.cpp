// SPDX-License-Identifier: MIT
#include "db/store/promise_reader.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/item_store.h"
#include "db/store/promise_record.h"
#include "db/store/promise_store.h"
#include "db/store/quote_item.h"
#include "db/store/settings_store.h"
#include "domain/blade/operation.h"

namespace tangmark::db {
namespace {

using namespace commission;

BenchWeek read_week(const ShopFile& shop) {
  BenchWeek week;
  Query hours(shop, "SELECT weekday, from_s, to_s FROM bench_hours ORDER BY from_s");
  bool first = true;
  while (hours.next()) {
    const auto sunday_first = static_cast<std::size_t>(hours.integer("weekday") % 7);
    week.bench[sunday_first] += hours.duration("to_s") - hours.duration("from_s");
    if (first) week.day_starts = hours.duration("from_s");
    first = false;
  }
  Query off(shop, "SELECT day FROM day_off ORDER BY day");
  while (off.next()) week.days_off.push_back(off.date("day"));
  return week;
}

// What the record says about times, read once for a whole queue.
class Times {
 public:
  explicit Times(const ShopFile& shop)
      : outside_late(outside_lateness(shop)),
        outside(outside_duration(shop)),
        hold(hold_duration(shop)),
        shop_(shop) {}

  double quarter_factor(std::optional<ModelId> model, const std::string& operation) {
    const auto key = std::pair(model ? model->row() : 0, operation);
    const auto known = factors_.find(key);
    if (known != factors_.end()) return known->second;
    return factors_.emplace(key, quarter_factor_of(shop_, model, operation)).first->second;
  }

  const Spread outside_late, outside, hold;

 private:
  const ShopFile& shop_;
  std::map<std::pair<std::int64_t, std::string>, double> factors_;
};

QueuedOperation queued(const ModelStep& step, double quarter_factor) {
  QueuedOperation operation;
  operation.name = step.operation;
  operation.bench = Spread::around(step.hands_on + step.attended, quarter_factor);
  operation.wait = Spread::exactly(step.unattended);
  operation.survival = step.survival;
  const auto known = blade::trade_operation(step.operation);
  if (known && known->heat != blade::Heat::none)
    operation.before = Spread::between(Duration{}, std::chrono::hours(24), std::chrono::hours(72));
  return operation;
}

// A booked firing begins at its time, and binds nobody once the maker's part of it is done.
void book(const Query& row, const ModelStep& step, QueuedOperation& operation) {
  const auto starts = row.maybe_instant("booked_from"), ends = row.maybe_instant("booked_to");
  if (!starts || !ends) return;
  operation.booked = Booked{*starts, Spread()};
  operation.wait = Spread::exactly(
      std::max(Duration{}, *ends - *starts - step.hands_on - step.attended));
}

// A blade in work with its own route; what is done or skipped counts as past.
void read_blade_route(const ShopFile& shop, std::int64_t blade, std::optional<ModelId> model,
                      Times& times, QueuedBlade& queue_blade) {
  Query query(shop, R"(
SELECT route_step.*, firing.starts_at AS booked_from, firing.ends_at AS booked_to FROM route_step
LEFT JOIN firing ON firing.id = (SELECT firing.id FROM firing_blade
    JOIN firing ON firing.id = firing_blade.firing_id
    WHERE firing_blade.route_step_id = route_step.id AND firing.state IN('booked', 'running')
    ORDER BY firing.starts_at LIMIT 1)
WHERE blade_id = ? ORDER BY position)");
  query.bind(blade);
  while (query.next()) {
    if (!query.is_null("skipped_why")) continue;
    ModelStep step{.model = ModelId{1}};  // only its times are read
    step.operation = query.text("operation");
    step.hands_on = query.duration("hands_on_s");
    step.attended = query.duration("attended_s");
    step.unattended = query.duration("unattended_s");
    step.survival = query.share("survival_ppm");
    queue_blade.route.push_back(queued(step, times.quarter_factor(model, step.operation)));
    book(query, step, queue_blade.route.back());
    if (!query.is_null("done_at")) queue_blade.next = queue_blade.route.size();
  }
}

// Talk and drawings are not done again for a lost blade: it begins anew at the first operation of
// the trade on its route.
std::size_t first_steel_work(const std::vector<QueuedOperation>& route) {
  for (std::size_t i = 0; i < route.size(); ++i)
    if (blade::trade_operation(route[i].name)) return i;
  return 0;
}

// Holds and outside work end in the evening of their day, the latter as late as its like; without a
// day they last as long as their like from now on. The latest of them counts.
std::optional<Booked> waits_until(const ShopFile& shop, ItemId item, const PromiseQueue& queue,
                                  const Times& times) {
  Query query(shop, R"(
SELECT until AS day, 0 AS outside FROM hold WHERE item_id = ?1 AND ended_at IS NULL
UNION ALL
SELECT due_back, 1 FROM outside_work LEFT JOIN blade ON blade.id = outside_work.blade_id
WHERE back_at IS NULL AND (outside_work.item_id = ?1 OR blade.item_id = ?1))");
  query.bind(item);
  std::optional<Booked> latest;
  while (query.next()) {
    const bool outside = query.yes("outside");
    const auto day = query.maybe_date("day");
    const Instant evening = day ? queue.zone.at(*day, std::chrono::hours(17)) : queue.now;
    const Booked one{std::max(evening, queue.now), !day     ? (outside ? times.outside : times.hold)
                                                   : outside ? times.outside_late
                                                             : Spread()};
    if (!latest || one.at + one.late.quantile(0.5) > latest->at + latest->late.quantile(0.5))
      latest = one;
  }
  return latest;
}

void add_item(const ShopFile& shop, const KeptItem& item, Times& times, PromiseQueue& queue) {
  if (!item.commission || item.cancelled_on) return;
  Query blades(
      shop,
      "SELECT id, finished_at FROM blade WHERE item_id = ? AND scrapped_at IS NULL ORDER BY id");
  blades.bind(item.id);
  bool any = false;
  while (blades.next()) {
    any = true;
    QueuedBlade blade{.key = static_cast<std::uint64_t>(blades.integer("id")) * 2,
                      .commission = *item.commission,
                      .route = {}};
    read_blade_route(shop, blades.integer("id"), item.model, times, blade);
    blade.restart_at = first_steel_work(blade.route);
    if (!blades.is_null("finished_at")) blade.next = blade.route.size();
    blade.not_before = waits_until(shop, item.id, queue, times);
    queue.blades.push_back(std::move(blade));
  }
  if (any) return;
  QueuedBlade blade{.key = static_cast<std::uint64_t>(item.id.row()) * 2 + 1,
                    .commission = *item.commission,
                    .route = {}};
  for (const ModelStep& step : route_of_item(shop, item))
    blade.route.push_back(queued(step, times.quarter_factor(item.model, step.operation)));
  blade.restart_at = first_steel_work(blade.route);
  blade.not_before = waits_until(shop, item.id, queue, times);
  if (!blade.route.empty()) queue.blades.push_back(std::move(blade));
}

std::vector<KeptCommission> in_order_of_work(const ShopFile& shop,
                                             std::optional<CommissionId> asked, QueuePlace place) {
  struct Place {
    int standing;  // a rush before all others, one only asked about behind them
    CalendarDate promised, accepted;
    KeptCommission commission;
  };
  const CalendarDate never = date::year{9999} / 12 / 31;
  std::vector<Place> places;
  for (KeptCommission& commission : list_commissions(shop)) {
    const bool is_asked = asked && commission.id == *asked && !is_under_way(commission.state);
    if (!is_under_way(commission.state) && !is_asked) continue;
    const auto promise = standing_promise(shop, commission.id);
    const bool rush = asked && commission.id == *asked && place == QueuePlace::rush;
    places.push_back({rush ? -1 : is_asked ? 1 : 0, promise ? promise->day : never,
                      commission.accepted_on.value_or(never), std::move(commission)});
  }
  std::sort(places.begin(), places.end(), [](const Place& a, const Place& b) {
    return std::tie(a.standing, a.promised, a.accepted, a.commission.number) <
           std::tie(b.standing, b.promised, b.accepted, b.commission.number);
  });
  std::vector<KeptCommission> ordered;
  for (Place& place : places) ordered.push_back(std::move(place.commission));
  return ordered;
}

}  // namespace

PromiseQueue read_promise_queue(const ShopFile& shop, Instant now,
                                std::optional<CommissionId> asked, QueuePlace place) {
  const ShopSettings settings = load_settings(shop);
  PromiseQueue queue{.now = now,
                     .zone = settings.zone,
                     .week = read_week(shop),
                     .pace = pace_on_record(shop).pace,
                     .blades = {},
                     .promises = {}};
  Times times(shop);
  for (const KeptCommission& commission : in_order_of_work(shop, asked, place)) {
    for (const KeptItem& item : items_of(shop, commission.id)) add_item(shop, item, times, queue);
    if (const auto promise = standing_promise(shop, commission.id))
      queue.promises.push_back({commission.id, promise->day});
  }
  return queue;
}

Outcome<PromiseAnswer> answer_promise(const ShopFile& shop, const KeptCommission& commission,
                                      Instant now, Runs runs, QueuePlace place) {
  return promise_answer(read_promise_queue(shop, now, commission.id, place), commission.id, runs);
}

std::optional<CalendarDate> forecast_day(const ShopFile& shop, const KeptCommission& commission,
                                         Instant now) {
  const auto answer = answer_promise(shop, commission, now, Runs{});
  if (!answer) return std::nullopt;
  return answer->forecast.p80;
}

}  // namespace tangmark::db
