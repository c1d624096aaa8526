// SPDX-License-Identifier: MIT
#include "db/store/plan_case.h"

#include <algorithm>
#include <cmath>

#include "db/row.h"
#include "db/store/bench_time_store.h"
#include "db/store/kiln_store.h"
#include "db/store/outside_work_store.h"
#include "db/store/plan_step.h"
#include "db/store/settings_store.h"
#include "domain/kiln/kiln_fit.h"

namespace tangmark::db {
namespace {

using namespace std::chrono_literals;
using std::chrono::minutes;

// A blade is cooled by hand and wiped before it goes into the temper oven. Common practice.
constexpr int after_quench_min = 10;
// Cold to room temperature between two tempers. Common practice, no source.
constexpr int between_tempers_min = 30;
// An oven is warm for tempering within half an hour; one that is full is free again after a temper
// of two hours, and a blade that waits too long already goes in then at the latest. Common
// practice, no source.
constexpr int oven_warm_up_min = 30;
constexpr int late_temper_min = 4 * 60;
constexpr std::int64_t flow_mc_per_min = 1;

// The instant when so much bench work is done, working whenever somebody is there.
Instant after_bench_work(const std::vector<std::pair<Instant, Instant>>& spans, Instant from,
                         Duration work) {
  Instant at = from;
  for (const auto& [a, b] : spans) {
    if (work <= 0s) break;
    const Instant begin = std::max(a, at);
    if (begin >= b) continue;
    const Duration done = std::min<Duration>(work, b - begin);
    at = begin + done;
    work -= done;
  }
  return work > 0s ? at + work : at;
}

class CaseMaker {
 public:
  CaseMaker(const ShopFile& shop, Instant from, Keep keep, int days)
      : shop_(shop),
        settings_(load_settings(shop)),
        keep_(keep),
        end_(from + date::days(days)),
        spans_(attended_spans(load_bench_time(shop), settings_.zone, from, end_)) {
    made_.origin = std::chrono::floor<minutes>(from);
    made_.zone = settings_.zone;
    made_.unit = settings_.temperature_unit;
    // Minor units are hundredths here as everywhere in the planner: only their proportions count.
    made_.moved_mc = settings_.cost_of_moved_firing.minor() * 1000;
    made_.a_case.name = "shop";
    made_.a_case.horizon_min = days * 24 * 60;
  }

  ShopCase make() {
    add_prices();
    for (const auto& [a, b] : spans_)
      made_.a_case.windows.emplace_back(
          minute_up(a), static_cast<int>(std::chrono::floor<minutes>(b - made_.origin).count()));
    add_kilns();
    add_blades();
    allow_for_loads();
    add_baths(shop_, made_);
    add_booked(shop_, keep_, made_);
    return std::move(made_);
  }

 private:
  int minute_up(Instant at) const { return whole_minutes(at - made_.origin); }

  void add_prices() {
    auto& prices = made_.a_case.prices;
    prices.energy_cents_per_kwh = settings_.electricity_per_kwh.minor();
    prices.attention_mc_per_min = settings_.hourly_rate.minor() * 1000 / 60;
    prices.flow_mc_per_min = flow_mc_per_min;
  }

  void add_kilns() {
    const auto today = settings_.zone.date_of(made_.origin);
    for (const kiln::KeptKiln& k : all_kilns(shop_)) {
      if (k.out_of_use_on && *k.out_of_use_on <= today) continue;
      kiln::PlanKiln plan;
      plan.id = k.name;
      plan.slots = static_cast<int>(k.slots);
      plan.max_length_mm = static_cast<int>(k.usable_length.nanometres() / 1'000'000);
      plan.lowest_c = static_cast<int>(k.low.whole_celsius());
      plan.highest_c = static_cast<int>(k.high.whole_celsius());
      plan.heat_c_per_h = static_cast<int>(k.heat_per_h.kelvins());
      plan.time_constant_min = whole_minutes(k.tau);
      plan.heat_w = k.heat_w;
      plan.hold_mw_per_c = k.hold_mw_per_c;
      plan.load_min = whole_minutes(k.load);
      plan.unload_min = whole_minutes(k.unload);
      plan.circuit = k.circuit;
      take_hands(k);
      plan.state = heating_now(k);
      if (!plan.state) plan.state = how_it_was_left(k);
      if (k.values_from == "plate") made_.plate_kilns.push_back(k.name);
      made_.kilns.emplace(k.name, k.id);
      made_.models.emplace(k.name, k);
      made_.a_case.kilns.push_back(std::move(plan));
    }
  }

  /// A firing that runs is unloaded, or its blades are quenched, before its end.
  void take_hands(const kiln::KeptKiln& k) {
    const auto last = last_run(shop_, k.id, made_.origin);
    if (!last || last->state != kiln::FiringState::running || last->ends_at <= made_.origin) return;
    const int end = minute_up(last->ends_at);
    const int busy = last->kind == kiln::FiringKind::harden
                         ? quench_min * static_cast<int>(last->blades.size())
                         : whole_minutes(k.unload);
    if (busy > 0) made_.a_case.hands_taken.emplace_back(std::max(0, end - busy), end);
  }

  std::optional<kiln::PlanKilnState> how_it_was_left(const kiln::KeptKiln& k) const {
    const auto last = last_run(shop_, k.id, made_.origin);
    if (!last) return std::nullopt;
    const bool runs_on = last->state == kiln::FiringState::running;
    const Instant planned_end = last->actual_end.value_or(last->ends_at);
    const Instant end = runs_on ? std::max(planned_end, made_.origin) : planned_end;
    // Colder than the room's breath after eight time constants: as good as never fired.
    if (made_.origin - end > 8 * k.tau) return std::nullopt;
    const bool annealed = last->kind == kiln::FiringKind::anneal && last->cool_to;
    const int off_c = static_cast<int>((annealed ? *last->cool_to : last->set).whole_celsius());
    return kiln::PlanKilnState{off_c, made_.minute(end), std::max(0, minute_up(end))};
  }

  void allow_for_loads() {
    for (kiln::PlanKiln& k : made_.a_case.kilns) {
      int hottest = 0;
      for (const kiln::PlanBlade& blade : made_.a_case.blades)
        for (const kiln::PlanOperation& op : blade.operations)
          if (op.target_c <= k.highest_c) hottest = std::max(hottest, op.target_c);
      const auto effect =
          kiln::load_effect(made_.models.at(k.id), Temperature::celsius(hottest), k.slots);
      k.load_min += whole_minutes(effect.back_at_heat);
      // A joule for each blade over a thousand degrees is a sixtieth of a milliwatt minute for one.
      const auto thousand = Temperature::celsius(made_.a_case.ambient_c + 1000);
      k.load_mw_min_per_c =
          kiln::load_effect(made_.models.at(k.id), thousand, 1).energy.joules() / 60;
    }
  }

  // Switched on for the firing that is next: by now it is so far up the way to its heat.
  std::optional<kiln::PlanKilnState> heating_now(const kiln::KeptKiln& k) const {
    for (const kiln::KeptFiring& firing : booked_firings(shop_)) {
      if (firing.kiln != k.id || firing.heat_from > made_.origin ||
          firing.starts_at <= made_.origin)
        continue;
      const double hours =
          std::chrono::duration<double, std::ratio<3600>>(firing.starts_at - made_.origin).count();
      const double celsius = firing.set.in_celsius() - k.heat_per_h.kelvins() * hours;
      return kiln::PlanKilnState{std::max(20, static_cast<int>(std::ceil(celsius))), 0, 0};
    }
    return std::nullopt;
  }

  // A blade in a kiln right now: its step counts as done when that firing ends.
  std::optional<std::pair<blade::RouteStepId, Instant>> running_step(blade::BladeId id) const {
    Query q(
        shop_,
        "SELECT b.route_step_id, f.ends_at FROM firing_blade b JOIN firing f ON f.id = b.firing_id "
        "WHERE b.blade_id = ? AND f.state = 'running' AND b.route_step_id IS NOT NULL");
    q.bind(id);
    if (!q.next()) return std::nullopt;
    return std::pair(q.id<blade::RouteStepId>("route_step_id"),
                     std::max(q.instant("ends_at"), made_.origin));
  }

  struct LastHeat {
    Instant at;
    bool quench;
  };
  std::optional<LastHeat> last_heat(blade::BladeId id) const {
    Query q(shop_,
            "SELECT operation, coalesce(time_out, ended_at, started_at) AS at FROM log_entry WHERE "
            "blade_id = ? "
            "AND operation IN('harden','temper','snap temper') AND id NOT IN "
            "(SELECT supersedes_id FROM log_entry WHERE supersedes_id IS NOT NULL) "
            "ORDER BY at DESC, id DESC LIMIT 1");
    q.bind(id);
    if (!q.next()) return std::nullopt;
    return LastHeat{q.instant("at"), q.text("operation") == "harden"};
  }

  // Out of the shop: nothing is fired before it is back, and what is done there is not done here.
  struct Outside {
    std::string operation, who;
    std::optional<Instant> back;
  };
  std::optional<Outside> outside(blade::BladeId id) const {
    for (const commission::KeptOutsideWork& work : outside_work_of_blade(shop_, id)) {
      if (work.back_at) continue;
      std::optional<Instant> back;
      if (work.due_back) back = settings_.zone.at(*work.due_back, 24h);
      return Outside{work.operation, work.who, back};
    }
    return std::nullopt;
  }

  void add_blades() {
    Query q(shop_,
            "SELECT b.id, b.number, b.length_nm, coalesce((SELECT p.day FROM promise p "
            "JOIN item i ON i.commission_id = p.commission_id WHERE i.id = b.item_id "
            "ORDER BY p.id DESC LIMIT 1), b.due) AS due FROM blade b WHERE b.scrapped_at IS NULL "
            "AND b.finished_at IS NULL AND b.delivered_at IS NULL ORDER BY b.number");
    while (q.next())
      add_blade(q.id<blade::BladeId>("id"), std::to_string(q.integer("number")),
                q.length("length_nm"), q.maybe_date("due"));
  }

  /// What lies between one heat of a blade and the next.
  struct Between {
    Duration bench{}, waiting{};
    std::string before;  ///< the operation that the last heat was
    void begin(const std::string& operation) { *this = {{}, {}, operation}; }
  };

  void add_blade(blade::BladeId id, const std::string& number, Length length,
                 std::optional<CalendarDate> due) {
    const auto out = outside(id);
    if (out && !out->back) {
      made_.left_aside.push_back("Blade " + number + " is out at " + out->who +
                                 " with no day on which it is due back, so it is not planned.");
      return;
    }
    kiln::PlanBlade plan;
    plan.id = number;
    plan.length_mm = static_cast<int>((length.nanometres() + 999'999) / 1'000'000);
    ShopCase::Chain chain{id, {}, {}};
    const Between after = add_chain(plan, chain, out ? out->operation : std::string());
    if (plan.operations.empty()) return;
    if (out) plan.release_min = std::max(plan.release_min, minute_up(*out->back));
    const Instant day_end = due ? settings_.zone.at(*due, 24h) : end_;
    // What is left after the last firing must fit before the day: bench work takes about three
    // times as long by the calendar as by the clock (8 h of 24; common practice, no source).
    plan.due_min = std::max(plan.release_min, minute_up(day_end - 3 * after.bench - after.waiting));
    plan.late_mc_per_min =
        std::max<std::int64_t>(1, settings_.shop_cost_of_late_day.minor() * 1000 / (24 * 60));
    made_.chains.emplace(number, std::move(chain));
    made_.a_case.blades.push_back(std::move(plan));
  }

  /// The heats ahead of a blade; `elsewhere` is the operation it is out for. What comes after the
  /// last.
  Between add_chain(kiln::PlanBlade& plan, ShopCase::Chain& chain, const std::string& elsewhere) {
    const auto running = running_step(chain.blade);
    Between between;
    for (const PlanStep& step : open_steps(shop_, chain.blade)) {
      if (!elsewhere.empty() && step.operation == elsewhere && plan.operations.empty()) {
        between.begin(step.operation);
      } else if (running && step.id == running->first) {
        plan.previous_end_min = minute_up(running->second);
        between.begin(step.operation);
      } else if (step.heat == blade::Heat::none) {
        between.bench += step.bench;
        between.waiting += step.waiting;
      } else if (!step.temperature) {
        made_.left_aside.push_back("Blade " + plan.id + ": its " + step.operation +
                                   " has no temperature yet, so nothing after it is planned.");
        break;
      } else {
        add_heat(plan, chain, step, between);
        between.begin(step.operation);
      }
    }
    return between;
  }

  void add_heat(kiln::PlanBlade& plan, ShopCase::Chain& chain, const PlanStep& step,
                const Between& between) {
    kiln::PlanOperation op = plan_operation(step);
    if (plan.operations.empty())
      set_release(plan, chain.blade, between.bench, between.waiting, between.before, op, step);
    else
      set_gap(op, between.before, between.bench + between.waiting, step);
    plan.operations.push_back(op);
    chain.steps.push_back(step.id);
    chain.names.push_back(step.operation);
  }

  void set_release(kiln::PlanBlade& plan, blade::BladeId id, Duration bench, Duration waiting,
                   const std::string& running_before, kiln::PlanOperation& op,
                   const PlanStep& step) {
    plan.release_min =
        std::max(0, minute_up(after_bench_work(spans_, made_.origin, bench) + waiting));
    if (plan.previous_end_min)
      plan.release_min = std::max(plan.release_min, *plan.previous_end_min);
    const bool temper = step.operation == "temper" || step.operation == "snap temper";
    if (!temper) return;
    bool quenched = running_before == "harden";
    if (!plan.previous_end_min)
      if (const auto heat = last_heat(id)) {
        plan.previous_end_min = made_.minute(heat->at);
        quenched = heat->quench;
      }
    if (!plan.previous_end_min) return;
    op.shortest_gap_min = running_before == "temper" ? between_tempers_min : after_quench_min;
    if (quenched) op.longest_gap_min = longest_wait(*plan.previous_end_min, step);
  }

  // How long a blade that has left its bath already may wait for its first temper: by the limit,
  // or, where nobody could keep that any more, until soon after somebody is there.
  int longest_wait(int quenched_min, const PlanStep& step) const {
    const int limit =
        std::max(after_quench_min, whole_minutes(step.gap_max.value_or(settings_.temper_limit)));
    const auto& windows = made_.a_case.windows;
    const int there = windows.empty() ? 0 : std::max(0, windows.front().first);
    if (quenched_min + limit >= there + oven_warm_up_min) return limit;
    return there + late_temper_min - quenched_min;
  }

  void set_gap(kiln::PlanOperation& op, const std::string& before, Duration between,
               const PlanStep& step) const {
    op.shortest_gap_min = whole_minutes(between);
    const bool temper = step.operation == "temper" || step.operation == "snap temper";
    if (temper && before == "harden") {
      op.shortest_gap_min = std::max(op.shortest_gap_min, after_quench_min);
      op.longest_gap_min = std::max(op.shortest_gap_min,
                                    whole_minutes(step.gap_max.value_or(settings_.temper_limit)));
    } else if (temper) {
      op.shortest_gap_min = std::max(op.shortest_gap_min, between_tempers_min);
      if (step.gap_max)
        op.longest_gap_min = std::max(op.shortest_gap_min, whole_minutes(*step.gap_max));
    } else if (step.gap_max) {
      op.longest_gap_min = std::max(op.shortest_gap_min, whole_minutes(*step.gap_max));
    }
  }

  const ShopFile& shop_;
  commission::ShopSettings settings_;
  Keep keep_;
  Instant end_;
  std::vector<std::pair<Instant, Instant>> spans_;
  ShopCase made_;
};

}  // namespace

int ShopCase::minute(Instant when) const {
  return static_cast<int>(std::chrono::floor<minutes>(when - origin).count());
}

ShopCase shop_case(const ShopFile& shop, Instant from, Keep keep, int days) {
  return CaseMaker(shop, from, keep, days).make();
}

kiln::BookedPlan ShopCase::booked() const {
  kiln::BookedPlan plan;
  plan.moved_mc = moved_mc;
  for (const Movable& one : movable)
    if (one.planned) plan.firings.push_back(*one.planned);
  return plan;
}

kiln::PlanWords ShopCase::words() const {
  return {[origin = origin, zone = zone](int minute) {
            return to_text(origin + std::chrono::minutes(minute), zone);
          },
          [unit = unit](int celsius) { return to_text(Temperature::celsius(celsius), unit); }};
}

}  // namespace tangmark::db
