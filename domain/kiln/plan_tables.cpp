// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_tables.h"

#include <algorithm>
#include <cmath>

namespace tangmark::kiln {

PlanTables::PlanTables(const PlanCase& a_case) : case_(a_case) {
  add_blades();
  add_kilns();
  add_windows();
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
      ops_.push_back(f);
    }
  }
}

void PlanTables::add_kilns() {
  std::map<std::string, int> circuits;
  for (const PlanKiln& k : case_.kilns) {
    KilnFacts facts{k, -1, std::nullopt, nullptr};
    if (k.circuit) facts.circuit = circuits.try_emplace(*k.circuit, static_cast<int>(circuits.size()))
                                       .first->second;
    if (k.state)
      facts.left = KilnLeft{std::max(0, k.state->free_at_min), k.state->off_at_min, k.state->off_c};
    std::vector<double>& curve = coasting_[k.time_constant_min];
    // After 64 time constants nothing measurable is left of the heat.
    const int minutes = std::min(case_.horizon_min, 64 * k.time_constant_min) + 1;
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

int PlanTables::window_end(int minute) const {
  auto w = static_cast<std::size_t>(window_at_[static_cast<std::size_t>(minute / 64)]);
  while (w < case_.windows.size() && case_.windows[w].second <= minute) ++w;
  return w < case_.windows.size() ? case_.windows[w].second : minute;
}

double PlanTables::coasted(const KilnFacts& k, const KilnLeft& left, int minutes) const {
  const auto m = static_cast<std::size_t>(minutes);
  const double part = m < k.coasting->size()
                          ? (*k.coasting)[m]
                          : std::exp(-static_cast<double>(minutes) / k.kiln.time_constant_min);
  return case_.ambient_c + (left.off_c - case_.ambient_c) * part;
}

int PlanTables::heating(int kiln, const std::optional<KilnLeft>& left, int start,
                        int temp_c) const {
  const KilnFacts& k = this->kiln(kiln);
  const int rate = k.kiln.heat_c_per_h;
  if (!left) {
    const auto need = divided_up(static_cast<std::int64_t>(temp_c - case_.ambient_c) * 60, rate);
    return need <= start ? static_cast<int>(need) : -1;
  }
  const int idle = start - left->off_min;
  if (start < left->end_min || idle < 0) return -1;
  const double now = coasted(k, *left, idle);
  if (now > temp_c + plan_tolerance_c) return -1;
  const double wanted = temp_c - plan_tolerance_c;
  if (now >= wanted) return 0;
  // From the coldest it can be, heating takes longest; from the temperature found then, shortest.
  const int limit = start - left->end_min;
  int high = std::min(static_cast<int>((wanted - now) * 60 / rate) + 1, idle);
  auto reaches = [&](int h) { return coasted(k, *left, idle - h) + rate * h / 60.0 >= wanted; };
  int low = static_cast<int>((wanted - coasted(k, *left, idle - high)) * 60 / rate);
  low = std::clamp(low, 0, high);
  if (!reaches(high)) return -1;
  while (low < high) {
    const int middle = low + (high - low) / 2;
    if (reaches(middle)) high = middle;
    else low = middle + 1;
  }
  return low <= limit ? low : -1;
}

int PlanTables::ready(int kiln, const std::optional<KilnLeft>& left, int temp_c) const {
  const KilnFacts& k = this->kiln(kiln);
  if (!left)
    return static_cast<int>(
        divided_up(static_cast<std::int64_t>(temp_c - case_.ambient_c) * 60, k.kiln.heat_c_per_h));
  int start = left->end_min;
  if (left->off_c > temp_c) {
    const double above = std::max(temp_c - case_.ambient_c + plan_tolerance_c, plan_tolerance_c);
    const double cooling = k.kiln.time_constant_min * std::log((left->off_c - case_.ambient_c) / above);
    start = std::max(start, left->off_min + static_cast<int>(cooling));
  }
  const double found = coasted(k, *left, start - left->off_min);
  if (found < temp_c) {
    const int heated =
        left->end_min + static_cast<int>((temp_c - plan_tolerance_c -
                                          coasted(k, *left, left->end_min - left->off_min)) *
                                         60 / k.kiln.heat_c_per_h);
    start = std::max(start, heated);
  }
  while (heating(kiln, left, start, temp_c) < 0) ++start;
  return start;
}

}  // namespace tangmark::kiln
