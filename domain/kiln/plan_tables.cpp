// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_tables.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tangmark::kiln {

namespace {
constexpr int remembered_time_constants = 4;  // of idling, up to which answers are kept
}  // namespace

PlanTables::PlanTables(const PlanCase& a_case) : case_(a_case) {
  add_blades();
  add_kilns();
  add_windows();
  number_temperatures();
  add_least_costs();
}

void PlanTables::add_blades() {
  for (std::size_t b = 0; b < case_.blades.size(); ++b) {
    const PlanBlade& blade = case_.blades[b];
    const int first = static_cast<int>(ops_.size());
    const int count = static_cast<int>(blade.operations.size());
    blades_.push_back({first, count, blade.release_min, blade.due_min, blade.late_mc_per_min});
    for (int i = 0; i < count; ++i) {
      const PlanOperation& o = blade.operations[static_cast<std::size_t>(i)];
      OpFacts f{static_cast<int>(b), i, o.kind, o.target_c, o.lowest_c, o.highest_c,
                o.shortest_soak_min, o.longest_soak_min, o.quench_min,
                o.kind == PlanKind::harden || !o.unattended, o.cool_c_per_h, o.cool_to_c,
                o.shortest_gap_min, o.longest_gap_min.value_or(never),
                i > 0 ? first + i - 1 : -1, i + 1 < count ? first + i + 1 : -1};
      if (o.kind != PlanKind::harden) f.quench = 0;
      for (std::size_t k = 0; k < case_.baths.size() && o.kind == PlanKind::harden; ++k)
        if (case_.baths[k].id == o.bath) f.bath = static_cast<int>(k), f.warms_mk = o.warms_mk;
      ops_.push_back(f);
    }
  }
}

void PlanTables::add_kilns() {
  std::map<std::string, int> circuits;
  for (const PlanKiln& k : case_.kilns) {
    KilnFacts facts{k, -1, std::nullopt, nullptr};
    if (k.circuit)
      facts.circuit =
          circuits.try_emplace(*k.circuit, static_cast<int>(circuits.size())).first->second;
    if (k.state)
      facts.left = KilnLeft{std::max(0, k.state->free_at_min), k.state->off_at_min, k.state->off_c};
    std::vector<double>& curve = coasting_[k.time_constant_min];
    // After 64 time constants nothing measurable is left of the heat.
    const int minutes = 64 * k.time_constant_min + 1;
    for (int m = static_cast<int>(curve.size()); m < minutes; ++m)
      curve.push_back(std::exp(-static_cast<double>(m) / k.time_constant_min));
    facts.coasting = &curve;
    kilns_.push_back(facts);
  }
  circuits_ = static_cast<int>(circuits.size());
  for (const OpFacts& op : ops_)
    for (const KilnFacts& k : kilns_)
      serves_.push_back(case_.blades[static_cast<std::size_t>(op.blade)].length_mm <=
                            k.kiln.max_length_mm &&
                        std::max(op.lowest_c, k.kiln.lowest_c) <=
                            std::min(op.highest_c, k.kiln.highest_c));
}

void PlanTables::add_windows() {
  std::size_t w = 0;
  for (int minute = 0; minute <= case_.horizon_min + 64; minute += 64) {
    while (w < case_.windows.size() && case_.windows[w].second <= minute) ++w;
    window_at_.push_back(static_cast<int>(w));
  }
}

void PlanTables::add_least_costs() {
  std::vector<int> shortest(ops_.size(), never);
  for (std::size_t i = 0; i < ops_.size(); ++i) {
    const OpFacts& op = ops_[i];
    for (const KilnFacts& k : kilns_) {
      const int tail = op.kind == PlanKind::harden ? op.quench : k.kiln.unload_min;
      const int at_heat = k.kiln.load_min + op.shortest_soak +
                          (op.kind == PlanKind::anneal ? 0 : tail);
      const int coldest = std::max(op.lowest_c, case_.ambient_c);
      const auto watt_min = holding_w(case_.ambient_c, k.kiln, coldest) * at_heat +
                            load_watt_min(case_.ambient_c, k.kiln, coldest, 1);
      least_firing_.push_back(energy_mc(watt_min, case_.prices.energy_cents_per_kwh) +
                              case_.prices.attention_mc_per_min * (k.kiln.load_min + tail));
      int cooling = 0;
      if (op.kind == PlanKind::anneal)
        cooling = std::max(0, op.lowest_c - op.cool_to_c) * 60 / op.cool_c_per_h;
      least_length_.push_back(k.kiln.load_min + op.shortest_soak + cooling + tail);
      shortest[i] = std::min(shortest[i], least_length_.back());
    }
  }
  least_after_.assign(ops_.size(), 0);
  for (std::size_t i = ops_.size(); i-- > 0;)
    if (const int next = ops_[i].after; next >= 0) {
      const auto n = static_cast<std::size_t>(next);
      least_after_[i] = ops_[n].gap_min + shortest[n] + least_after_[n];
    }
}

std::int64_t PlanTables::least_blade_mc(int op, int end) const {
  const BladeFacts& blade = this->blade(this->op(op).blade);
  end += least_after_[static_cast<std::size_t>(op)];
  return blade.late_mc * std::max(0, end - blade.due) +
         case_.prices.flow_mc_per_min * (end - blade.release);
}

int PlanTables::latest_end(int blade, std::int64_t most_mc) const {
  const BladeFacts& b = this->blade(blade);
  const std::int64_t flow = case_.prices.flow_mc_per_min;
  const std::int64_t unpaid = most_mc + flow * b.release + b.late_mc * b.due;
  // Before it is due only time in work costs, after that both.
  std::int64_t end = never;
  if (flow > 0) end = std::min(end, most_mc / flow + b.release);
  if (flow + b.late_mc > 0 && end > b.due)
    end = std::min(end, std::max<std::int64_t>(b.due, unpaid / (flow + b.late_mc)));
  return static_cast<int>(std::clamp<std::int64_t>(end, -1, never));
}

int PlanTables::in_window(int from, int length) const {
  if (from < 0) from = 0;
  if (from > case_.horizon_min) return never;
  auto w = static_cast<std::size_t>(window_at_[static_cast<std::size_t>(from / 64)]);
  // An empty span may also stand at the very end of a window.
  if (length == 0 && w > 0 && case_.windows[w - 1].second >= from) return from;
  for (; w < case_.windows.size(); ++w) {
    const int start = std::max(from, case_.windows[w].first);
    if (start + length <= case_.windows[w].second) return start;
  }
  return never;
}

int PlanTables::latest_in_window(int until, int length) const {
  until = std::min(until, case_.horizon_min);
  if (until < 0) return -1;
  auto w = static_cast<std::size_t>(window_at_[static_cast<std::size_t>(until / 64)]);
  for (w = std::min(w + 1, case_.windows.size()); w-- > 0;) {
    const int start = std::min(until, case_.windows[w].second - length);
    if (start >= case_.windows[w].first) return start;
  }
  return -1;
}

int PlanTables::window_end(int minute) const {
  auto w = static_cast<std::size_t>(window_at_[static_cast<std::size_t>(minute / 64)]);
  while (w < case_.windows.size() && case_.windows[w].second <= minute) ++w;
  return w < case_.windows.size() ? case_.windows[w].second : minute;
}

double PlanTables::coasted(const KilnFacts& k, const KilnLeft& left, int minutes) const {
  // Past the end of the table nothing is left that a double could show beside the room.
  const auto m = std::min(static_cast<std::size_t>(minutes), k.coasting->size() - 1);
  const double part = (*k.coasting)[m];
  return case_.ambient_c + (left.off_c - case_.ambient_c) * part;
}

void PlanTables::number_temperatures() {
  std::set<int> used;
  for (const OpFacts& op : ops_) {
    used.insert(op.target_c);
    if (op.kind == PlanKind::anneal) used.insert(op.cool_to_c);
  }
  for (const KilnFacts& k : kilns_)
    if (k.left) used.insert(k.left->off_c);
  if (used.empty()) return;
  coldest_ = *used.begin();
  temperature_number_.assign(static_cast<std::size_t>(*used.rbegin() - coldest_ + 1), -1);
  for (int t : used) temperature_number_[static_cast<std::size_t>(t - coldest_)] = temperatures_++;
  passages_.resize(kilns_.size() * static_cast<std::size_t>(temperatures_ * temperatures_));
}

PlanTables::Passage& PlanTables::passage(int kiln, int off_c, int temp_c) const {
  const int from = temperature_number_[static_cast<std::size_t>(off_c - coldest_)];
  const int to = temperature_number_[static_cast<std::size_t>(temp_c - coldest_)];
  return passages_[static_cast<std::size_t>((kiln * temperatures_ + from) * temperatures_ + to)];
}

int PlanTables::found_heating(const KilnFacts& k, const KilnLeft& left, int idle,
                              int temp_c) const {
  const int rate = k.kiln.heat_c_per_h;
  const double now = coasted(k, left, idle);
  if (now > temp_c + plan_tolerance_c) return -1;
  const double wanted = temp_c - plan_tolerance_c;
  if (now >= wanted) return 0;
  // From the coldest it can be, heating takes longest; from the temperature found then, shortest.
  int high = std::min(static_cast<int>((wanted - now) * 60 / rate) + 1, idle);
  auto reaches = [&](int h) { return coasted(k, left, idle - h) + rate * h / 60.0 >= wanted; };
  int low = static_cast<int>((wanted - coasted(k, left, idle - high)) * 60 / rate);
  low = std::clamp(low, 0, high);
  if (high == idle && !reaches(high)) return -1;
  while (low < high) {
    const int middle = low + (high - low) / 2;
    if (reaches(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/// A kiln that is nearly cold needs a minute or two less than a cold one; when, is found once.
int PlanTables::long_idle_heating(const KilnFacts& k, Passage& known, const KilnLeft& left,
                                  int idle, int temp_c) const {
  const int shortest = remembered_time_constants * k.kiln.time_constant_min;
  const int longest = static_cast<int>(k.coasting->size());
  if (idle >= longest) return found_heating(k, left, idle, temp_c);
  if (known.cold == unknown) {
    known.cold = found_heating(k, left, longest, temp_c);
    const int warm = found_heating(k, left, shortest, temp_c);
    for (int h = known.cold; known.cold >= 0 && warm >= 0 && h > warm; --h) {
      int low = shortest;  // here less than h minutes will do
      int high = known.colder_after.empty() ? longest : known.colder_after.back() + 1;
      while (high - low > 1) {
        const int middle = low + (high - low) / 2;
        if (found_heating(k, left, middle, temp_c) < h) low = middle;
        else high = middle;
      }
      known.colder_after.push_back(low);
    }
    if (known.cold < 0 || warm < 0) known.cold = -1;
  }
  if (known.cold < 0) return found_heating(k, left, idle, temp_c);
  int heating = known.cold;
  for (int last : known.colder_after) {
    if (idle > last) break;
    --heating;
  }
  return heating;
}

int PlanTables::heating(int kiln, const std::optional<KilnLeft>& left, int start,
                        int temp_c) const {
  const KilnFacts& k = this->kiln(kiln);
  if (!left) {
    const auto need = divided_up(static_cast<std::int64_t>(temp_c - case_.ambient_c) * 60,
                                 k.kiln.heat_c_per_h);
    return need <= start ? static_cast<int>(need) : -1;
  }
  const int idle = start - left->off_min;
  if (start < left->end_min || idle < 0) return -1;
  Passage& known = passage(kiln, left->off_c, temp_c);
  int found;
  if (idle >= remembered_time_constants * k.kiln.time_constant_min) {
    found = long_idle_heating(k, known, *left, idle, temp_c);
  } else {
    if (static_cast<std::size_t>(idle) >= known.heating.size())
      known.heating.resize(static_cast<std::size_t>(idle / 256 + 1) * 256, unknown);
    int& kept = known.heating[static_cast<std::size_t>(idle)];
    if (kept == unknown) kept = found_heating(k, *left, idle, temp_c);
    found = kept;
  }
  return found <= start - left->end_min ? found : -1;
}

int PlanTables::found_ready(int kiln, const KilnLeft& left, int temp_c) const {
  const KilnFacts& k = this->kiln(kiln);
  int start = left.end_min;
  if (left.off_c > temp_c) {
    const double above = temp_c - case_.ambient_c + plan_tolerance_c;
    const double cooling =
        k.kiln.time_constant_min * std::log((left.off_c - case_.ambient_c) / above);
    start = std::max(start, left.off_min + static_cast<int>(cooling));
  }
  if (coasted(k, left, start - left.off_min) < temp_c) {
    const double empty = coasted(k, left, left.end_min - left.off_min);
    start = std::max(start, left.end_min + static_cast<int>((temp_c - plan_tolerance_c - empty) *
                                                            60 / k.kiln.heat_c_per_h));
  }
  while (heating(kiln, left, start, temp_c) < 0) ++start;
  return start;
}

int PlanTables::ready(int kiln, const std::optional<KilnLeft>& left, int temp_c) const {
  if (!left)
    return static_cast<int>(divided_up(static_cast<std::int64_t>(temp_c - case_.ambient_c) * 60,
                                       this->kiln(kiln).kiln.heat_c_per_h));
  if (left->end_min != left->off_min) return found_ready(kiln, *left, temp_c);
  Passage& known = passage(kiln, left->off_c, temp_c);
  if (known.ready == unknown) {
    const int ready = found_ready(kiln, *left, temp_c);
    known.ready = ready - left->off_min;
  }
  return left->off_min + known.ready;
}

}  // namespace tangmark::kiln
