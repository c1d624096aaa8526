// SPDX-License-Identifier: MIT
#include "tests/reference/kiln/plan_exact_firings.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace tangmark::kiln::exact {
namespace {

std::int64_t hold_w(const PlanCase& c, const PlanKiln& k, int temp_c) {
  return k.hold_mw_per_c * (temp_c - c.ambient_c) / 1000;
}

bool in_one_window(const PlanCase& c, int from, int to) {
  return std::any_of(c.windows.begin(), c.windows.end(),
                     [&](const auto& w) { return w.first <= from && to <= w.second; });
}

bool hands_free(const PlanCase& c, int from, int to) {
  return std::none_of(c.hands_taken.begin(), c.hands_taken.end(), [&](const auto& taken) {
    return from < to && taken.first < to && from < taken.second;
  });
}

/// All firings of a case.
class Firings {
 public:
  explicit Firings(const PlanCase& c) : case_(c) {}

  std::vector<Firing> run() {
    std::vector<Op> ops;
    for (const PlanBlade& b : case_.blades)
      for (int i = 0; i < static_cast<int>(b.operations.size()); ++i) ops.push_back({&b, i});
    for (const Op& a : ops) {
      add_set({a});
      for (const Op& b : ops)
        if (a.blade != b.blade && a.facts().kind == b.facts().kind &&
            (a < b || a.facts().kind == PlanKind::harden))
          add_set({a, b});
    }
    return std::move(all_);
  }

 private:
  void add_set(const std::vector<Op>& ops) {
    std::set<int> temps;
    int longest = 0;
    for (const Op& op : ops) {
      temps.insert(op.facts().target_c);
      longest = std::max(longest, op.facts().longest_soak_min);
    }
    for (int k = 0; k < static_cast<int>(case_.kilns.size()); ++k) {
      const PlanKiln& kiln = case_.kilns[static_cast<std::size_t>(k)];
      if (static_cast<int>(ops.size()) > kiln.slots) continue;
      for (int temp : temps)
        if (suits(kiln, temp, ops))
          for (int start = 0; start < case_.horizon_min; ++start)
            for (int soak = 0; soak <= longest; ++soak) add(k, temp, start, soak, ops);
    }
  }

  static bool suits(const PlanKiln& kiln, int temp, const std::vector<Op>& ops) {
    return kiln.lowest_c <= temp && temp <= kiln.highest_c &&
           std::all_of(ops.begin(), ops.end(), [&](const Op& op) {
             return op.facts().lowest_c <= temp && temp <= op.facts().highest_c &&
                    op.blade->length_mm <= kiln.max_length_mm;
           });
  }

  void add(int k, int temp, int start, int soak, const std::vector<Op>& ops) {
    const PlanKiln& kiln = case_.kilns[static_cast<std::size_t>(k)];
    Firing f{k, temp, start, start + kiln.load_min, 0, 0, temp, 0, ops, {}, 0};
    const int soaked = f.loaded + soak;
    if (ops[0].facts().kind == PlanKind::harden) return add_harden(kiln, soak, std::move(f));
    for (const Op& op : ops)
      if (soak < op.facts().shortest_soak_min || soak > op.facts().longest_soak_min) return;
    if (ops[0].facts().kind == PlanKind::soak) {
      f.tail = soaked;
      f.off = f.end = soaked + kiln.unload_min;
      f.cost = hold_w(case_, kiln, temp) * (f.end - start);
      return finish(kiln, std::move(f));
    }
    int rate = 1'000'000, to = 1'000'000;
    for (const Op& op : ops)
      rate = std::min(rate, op.facts().cool_c_per_h), to = std::min(to, op.facts().cool_to_c);
    const int cooling = static_cast<int>(std::ceil(std::max(0, temp - to) * 60.0 / rate - 1e-9));
    f.off = soaked + cooling;
    f.off_c = to;
    f.cost = hold_w(case_, kiln, temp) * (soaked - start) +
             hold_w(case_, kiln, (temp + to) / 2) * cooling;
    for (int rest = 0; f.off + rest + kiln.unload_min <= case_.horizon_min; ++rest) {
      Firing rested = f;
      rested.tail = f.off + rest;
      rested.end = rested.tail + kiln.unload_min;
      finish(kiln, std::move(rested));
    }
  }

  void add_harden(const PlanKiln& kiln, int soak, Firing f) {
    f.tail = f.loaded + soak;
    int waited = 0;
    for (const Op& op : f.ops) {
      const int soaks = soak + (kiln.staggered ? 0 : waited);
      if (soaks < op.facts().shortest_soak_min || soaks > op.facts().longest_soak_min) return;
      waited += op.facts().quench_min;
      f.ends.push_back(f.tail + waited);
    }
    if (kiln.staggered) f.loaded += waited - f.ops.back().facts().quench_min;
    if (f.loaded > f.tail) return;
    f.off = f.end = f.tail + waited;
    f.cost = hold_w(case_, kiln, f.temp_c) * (f.end - f.start);
    finish(kiln, std::move(f));
  }

  /// What holds for every kind: hours, hands, the end, release; and the rest of the cost.
  void finish(const PlanKiln&, Firing f) {
    if (f.ends.empty()) f.ends.assign(f.ops.size(), f.end);
    if (f.end > case_.horizon_min || !in_one_window(case_, f.start, f.loaded) ||
        !in_one_window(case_, f.tail, f.end) || !hands_free(case_, f.start, f.loaded) ||
        !hands_free(case_, f.tail, f.end))
      return;
    f.cost += case_.prices.attention_mc_per_min * (f.loaded - f.start + f.end - f.tail);
    for (std::size_t i = 0; i < f.ops.size(); ++i) {
      const PlanBlade& blade = *f.ops[i].blade;
      const PlanOperation& op = f.ops[i].facts();
      if ((op.kind == PlanKind::harden || !op.unattended) && !in_one_window(case_, f.start, f.end))
        return;
      if (f.ops[i].index == 0 && !may_begin(blade, op, f.start)) return;
      if (f.ops[i].last())
        f.cost += blade.late_mc_per_min * std::max(0, f.ends[i] - blade.due_min) +
                  case_.prices.flow_mc_per_min * (f.ends[i] - blade.release_min);
    }
    all_.push_back(std::move(f));
  }

  static bool may_begin(const PlanBlade& blade, const PlanOperation& op, int start) {
    if (start < blade.release_min) return false;
    if (!blade.previous_end_min) return true;
    const int gap = start - *blade.previous_end_min;
    return gap >= op.shortest_gap_min && (!op.longest_gap_min || gap <= *op.longest_gap_min);
  }

  const PlanCase& case_;
  std::vector<Firing> all_;
};

}  // namespace

std::vector<Firing> firings_of(const PlanCase& a_case) { return Firings(a_case).run(); }

}  // namespace tangmark::kiln::exact
