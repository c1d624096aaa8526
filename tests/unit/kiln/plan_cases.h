// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <utility>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_chance.h"

namespace tangmark::kiln {

/// Two blades, one kiln, one oven: small enough to be worked by hand.
inline PlanCase hand_worked_case() {
  PlanOperation harden{.kind = PlanKind::harden, .target_c = 800, .lowest_c = 795,
                       .highest_c = 810, .shortest_soak_min = 10, .longest_soak_min = 20,
                       .unattended = false, .quench_min = 4};
  PlanOperation temper{.target_c = 200, .lowest_c = 190, .highest_c = 210,
                       .shortest_soak_min = 120, .longest_soak_min = 150, .shortest_gap_min = 20,
                       .longest_gap_min = 120};
  PlanCase c{.name = "by hand", .horizon_min = 1440, .ambient_c = 20, .prices = {30, 500, 1},
             .windows = {{0, 600}}};
  c.kilns.push_back({"K1", 2, 450, 100, 1100, 600, 90, 2400, 1000, 5, 5, {}, {}});
  c.kilns.push_back({"OV", 4, 450, 50, 260, 600, 40, 1200, 1500, 5, 5, {}, {}});
  c.blades.push_back({"A", 250, 0, 240, 50, {harden, temper}, {}});
  c.blades.push_back({"B", 250, 0, 300, 50, {harden, temper}, {}});
  return c;
}

inline FiringPlan hand_worked_plan() {
  return {"by hand",
          {{"K1", PlanKind::harden, 800, 78, 10, 0, {{"A", 0}, {"B", 0}}},
           {"OV", PlanKind::soak, 200, 121, 120, 0, {{"A", 1}, {"B", 1}}}}};
}

/// Cases of many shapes, some of them with blades that no plan can hold.
class CaseMaker {
 public:
  explicit CaseMaker(std::uint64_t seed) : chance_(seed), loading_(seed), beyond_(seed + 77) {}

  PlanCase make() {
    const int days = 1 + chance_.below(8);
    PlanCase c{.name = "made up", .horizon_min = days * 1440, .ambient_c = 20,
               .prices = {one_of({0, 30}), one_of({0, 500, 10000}), one_of({0, 1, 5})}};
    for (int day = 0; day < days; ++day) {
      const int opens = day * 1440 + one_of({0, 300, 480, 1000});
      const int noon = opens + one_of({90, 240, 400});
      c.windows.emplace_back(opens, noon);
      if (chance_.one_in(2) && noon + 30 < (day + 1) * 1440 - 60)
        c.windows.emplace_back(noon + 30, std::min((day + 1) * 1440 - 1, noon + 345));
    }
    for (int k = 0, n = 1 + chance_.below(4); k < n; ++k) c.kilns.push_back(kiln(k));
    for (int b = 0, n = 1 + chance_.below(9); b < n; ++b) c.blades.push_back(blade(b, days * 1440));
    if (beyond_.one_in(4)) add_beyond(c);
    return c;
  }

 private:
  int one_of(std::initializer_list<int> values) {
    return values.begin()[chance_.below(static_cast<int>(values.size()))];
  }

  /// A tank that gets hot, hands that are elsewhere, a kiln whose load is known.
  void add_beyond(PlanCase& c) {
    c.baths = {
        {"oil", 40, 60 + beyond_.below(40), 20 + beyond_.below(100), 40 + beyond_.below(15)}};
    for (PlanBlade& b : c.blades)
      for (PlanOperation& op : b.operations)
        if (op.kind == PlanKind::harden && !beyond_.one_in(4)) {
          op.bath = "oil";
          op.warms_mk = 3000 + beyond_.below(15'000);
        }
    c.hands_taken = {{beyond_.below(600), 600 + beyond_.below(60)}};
    c.kilns[0].load_mw_min_per_c = beyond_.below(2000);
  }

  PlanKiln kiln(int k) {
    PlanKiln made{"K" + std::to_string(k), one_of({1, 2, 4, 6}), one_of({300, 380, 460}), 50,
                  k > 0 ? one_of({260, 1100}) : 1200, one_of({300, 500, 900}),
                  one_of({30, 85, 200}), one_of({1400, 3600}), one_of({0, 700, 1600}),
                  one_of({0, 1, 5}), one_of({0, 2, 5}), {}, {}};
    if (chance_.one_in(3)) made.circuit = "A";
    made.staggered = loading_.one_in(6);
    return made;
  }

  PlanBlade blade(int b, int horizon) {
    PlanBlade made{"B" + std::to_string(b),
                   one_of({180, 300, 380}),
                   chance_.one_in(3) ? chance_.below(horizon) : 0,
                   0,
                   one_of({0, 50, 1000}),
                   {},
                   {}};
    made.due_min = made.release_min + one_of({0, 600, 4000});
    if (chance_.one_in(2)) add(made, PlanKind::soak, one_of({899, 843}), 10, 25);
    if (chance_.one_in(4)) add(made, PlanKind::anneal, 760, 30, 90);
    add(made, PlanKind::harden, one_of({800, 843}), one_of({5, 12}), 30);
    for (int n = 1 + chance_.below(2); n > 0; --n)
      add(made, PlanKind::soak, one_of({190, 204}), 120, one_of({120, 160}));
    return made;
  }

  void add(PlanBlade& b, PlanKind kind, int target_c, int soak_min, int soak_max) {
    PlanOperation op{.kind = kind,
                     .target_c = target_c,
                     .lowest_c = target_c - one_of({0, 8}),
                     .highest_c = target_c + one_of({0, 15}),
                     .shortest_soak_min = soak_min,
                     .longest_soak_min = soak_max,
                     .unattended = target_c < 300 || chance_.one_in(2),
                     .shortest_gap_min = one_of({0, 20})};
    if (kind == PlanKind::harden) {
      op.quench_min = one_of({0, 3, 5});
      op.unattended = false;
    }
    if (kind == PlanKind::anneal) {
      op.unattended = true;
      op.cool_c_per_h = one_of({17, 60});
      op.cool_to_c = one_of({540, 650});
    }
    if (target_c < 300) op.longest_gap_min = one_of({60, 120, 2880});
    b.operations.push_back(op);
  }

  PlanChance chance_;
  PlanChance loading_, beyond_;
};

}  // namespace tangmark::kiln
