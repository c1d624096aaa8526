// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <tuple>
#include <vector>

#include "domain/kiln/plan_case.h"

namespace tangmark::kiln::exact {

/// An operation of the case, by blade and place in its chain.
struct Op {
  const PlanBlade* blade;
  int index;
  const PlanOperation& facts() const { return blade->operations[static_cast<std::size_t>(index)]; }
  bool last() const { return index + 1 == static_cast<int>(blade->operations.size()); }
  bool operator<(const Op& o) const { return std::tie(blade, index) < std::tie(o.blade, o.index); }
};

/// A firing that by itself keeps the rules.
struct Firing {
  int kiln, temp_c, start, loaded, tail, off, off_c, end;
  std::vector<Op> ops;
  std::vector<int> ends;  ///< own end of each
  std::int64_t cost;      ///< all but heating up
};

/// All firings of a case: every kiln, set of at most two operations in their order, temperature,
/// start, soak and rest. The rules as in plan_check.h, written down once more.
std::vector<Firing> firings_of(const PlanCase& a_case);

}  // namespace tangmark::kiln::exact
