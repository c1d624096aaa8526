// SPDX-License-Identifier: MIT
// Small cases settled by a general-purpose exact solver: glpsol of GLPK 5.0 (package glpk-utils), branch
// and bound on a time-indexed model that shares no line with the planner.
//
// All work is at one temperature in kilns that hardly cool and heat at once, so that rule R12 comes
// down to one firing after the other; windows, hands, gaps, soaks, slots and sharing are in full. One
// binary variable stands for each kiln, set of operations, start and soak.
#include <catch2/catch.hpp>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <unistd.h>

#include "domain/kiln/plan_chance.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_search.h"

using namespace tangmark::kiln;

namespace {

PlanCase tiny_case(std::uint64_t seed) {
  PlanChance chance(seed);
  PlanCase c{.name = "tiny", .horizon_min = 60, .ambient_c = 20, .prices = {30, 500, 3}};
  c.windows = {{0, 20 + chance.below(10)}, {32, 60}};
  for (int k = 0, n = 1 + chance.below(2); k < n; ++k)
    c.kilns.push_back({"K" + std::to_string(k), 1 + chance.below(2), 400, 100, 300, 6000, 1'000'000, 0,
                       500 + 100 * chance.below(5), 1 + chance.below(2), 1 + chance.below(2), {}, {}});
  for (int b = 0, n = 2 + chance.below(2); b < n; ++b) {
    PlanBlade blade{"B" + std::to_string(b), 300, chance.below(5), 15 + chance.below(25),
                    100 * chance.below(5), {}, {}};
    for (int i = 0, ops = 1 + chance.below(2); i < ops; ++i) {
      const int soak = 4 + chance.below(5);
      PlanOperation op{.target_c = 200, .lowest_c = 195, .highest_c = 205, .shortest_soak_min = soak,
                       .longest_soak_min = soak + chance.below(3), .unattended = chance.one_in(2)};
      if (i > 0) op.shortest_gap_min = chance.below(4);
      if (i > 0 && chance.one_in(2)) op.longest_gap_min = op.shortest_gap_min + 5;
      blade.operations.push_back(op);
    }
    c.blades.push_back(blade);
  }
  return c;
}

struct Column {
  int kiln, start, soak, end;
  std::vector<PlanMember> members;
  double cost;
};

const PlanBlade& blade_of(const PlanCase& c, const PlanMember& m) {
  for (const PlanBlade& b : c.blades)
    if (b.id == m.blade) return b;
  throw std::logic_error("no such blade");
}

const PlanOperation& op_of(const PlanCase& c, const PlanMember& m) {
  return blade_of(c, m).operations[static_cast<std::size_t>(m.operation)];
}

bool in_one_window(const PlanCase& c, int from, int to) {
  for (const auto& [a, b] : c.windows)
    if (a <= from && to <= b) return true;
  return false;
}

/// The firing of these members, if by itself it keeps the rules; with what it adds to the cost.
std::optional<Column> column_of(const PlanCase& c, int kiln, int start, int soak,
                                const std::vector<PlanMember>& members) {
  const PlanKiln& k = c.kilns[static_cast<std::size_t>(kiln)];
  Column column{kiln, start, soak, start + k.load_min + soak + k.unload_min, members, 0};
  if (start < 2 || column.end > c.horizon_min) return std::nullopt;  // 180 C at 6000 C/h
  if (!in_one_window(c, start, start + k.load_min) ||
      !in_one_window(c, column.end - k.unload_min, column.end))
    return std::nullopt;
  const std::int64_t watt_min = k.hold_mw_per_c * 180 / 1000 * (column.end - start);
  column.cost = static_cast<double>((watt_min * c.prices.energy_cents_per_kwh + 30) / 60 +
                                    c.prices.attention_mc_per_min * (k.load_min + k.unload_min));
  for (const PlanMember& m : members) {
    const PlanOperation& op = op_of(c, m);
    const PlanBlade& blade = blade_of(c, m);
    if (soak < op.shortest_soak_min || soak > op.longest_soak_min) return std::nullopt;
    if (!op.unattended && !in_one_window(c, start, column.end)) return std::nullopt;
    if (m.operation == 0 && start < blade.release_min) return std::nullopt;
    if (m.operation + 1 == static_cast<int>(blade.operations.size()))
      column.cost += static_cast<double>(
          blade.late_mc_per_min * std::max(0, column.end - blade.due_min) +
          c.prices.flow_mc_per_min * (column.end - blade.release_min));
  }
  return column;
}

std::vector<Column> columns_of(const PlanCase& c) {
  std::vector<PlanMember> ops;
  for (const PlanBlade& b : c.blades)
    for (int i = 0; i < static_cast<int>(b.operations.size()); ++i) ops.push_back({b.id, i});
  std::vector<std::vector<PlanMember>> sets;
  for (std::size_t i = 0; i < ops.size(); ++i) {
    sets.push_back({ops[i]});
    for (std::size_t j = i + 1; j < ops.size(); ++j)
      if (ops[i].blade != ops[j].blade) sets.push_back({ops[i], ops[j]});
  }
  std::vector<Column> columns;
  for (int k = 0; k < static_cast<int>(c.kilns.size()); ++k)
    for (const auto& set : sets)
      for (int start = 0; start < c.horizon_min; ++start)
        for (int soak = 4; soak <= 10; ++soak)
          if (static_cast<int>(set.size()) <= c.kilns[static_cast<std::size_t>(k)].slots)
            if (auto column = column_of(c, k, start, soak, set)) columns.push_back(*column);
  return columns;
}

using Row = std::map<std::size_t, int>;

std::string text_of(const Row& row) {
  std::string text;
  for (const auto& [x, factor] : row) {
    if (factor == 0) continue;
    text += (factor < 0 ? " - " : " + ") + std::to_string(std::abs(factor)) + " x" +
            std::to_string(x) + "\n";
  }
  return text;
}

void write_model(const PlanCase& c, const std::vector<Column>& columns, std::ostream& out) {
  out << "Minimize\n cost:";
  for (std::size_t x = 0; x < columns.size(); ++x)
    out << " + " << static_cast<std::int64_t>(columns[x].cost) << " x" << x << "\n";
  out << "Subject To\n";
  auto put = [&out](const Row& row, const char* sign, int right) {
    if (!row.empty()) out << text_of(row) << sign << " " << right << "\n";
  };
  std::map<std::string, std::map<int, Row>> once, starts, ends;
  std::map<int, std::map<int, Row>> taken;  // by kiln and minute
  std::map<int, Row> hands;
  for (std::size_t x = 0; x < columns.size(); ++x) {
    const Column& f = columns[x];
    const PlanKiln& k = c.kilns[static_cast<std::size_t>(f.kiln)];
    for (const PlanMember& m : f.members) {
      once[m.blade][m.operation][x] = 1;
      starts[m.blade][m.operation][x] = f.start;
      ends[m.blade][m.operation][x] = f.end;
    }
    for (int minute = f.start; minute < f.end; ++minute) {
      taken[f.kiln][minute][x] = 1;
      if (minute < f.start + k.load_min || minute >= f.end - k.unload_min) hands[minute][x] = 1;
    }
  }
  for (const auto& [kiln, minutes] : taken)
    for (const auto& [minute, row] : minutes) put(row, "<=", 1);
  for (const auto& [minute, row] : hands) put(row, "<=", 1);
  for (const PlanBlade& b : c.blades)
    for (int i = 0; i < static_cast<int>(b.operations.size()); ++i) {
      if (once[b.id][i].empty()) out << " x0 >= 2\n";  // it has no place at all
      put(once[b.id][i], "=", 1);
      if (i == 0) continue;
      Row gap = starts[b.id][i];
      for (const auto& [x, end] : ends[b.id][i - 1]) gap[x] -= end;
      const PlanOperation& op = b.operations[static_cast<std::size_t>(i)];
      put(gap, ">=", op.shortest_gap_min);
      if (op.longest_gap_min) put(gap, "<=", *op.longest_gap_min);
    }
  out << "Binary\n";
  for (std::size_t x = 0; x < columns.size(); ++x) out << " x" << x << "\n";
  out << "End\n";
}

/// The optimum, or nothing when the solver finds that there is no plan or not in time.
struct Settled {
  bool proven = false;
  std::optional<std::int64_t> optimum_mc;
};

Settled settle(const PlanCase& c) {
  const auto folder = std::filesystem::temp_directory_path() /
                      ("tangmark_exact_" + std::to_string(::getpid()));
  std::filesystem::create_directories(folder);
  const std::vector<Column> columns = columns_of(c);
  {
    std::ofstream model(folder / "model.lp");
    write_model(c, columns, model);
  }
  const std::string call = "glpsol --lp '" + (folder / "model.lp").string() + "' --cuts --tmlim 40 -o '" +
                           (folder / "answer").string() + "' > /dev/null 2>&1";
  Settled settled;
  if (std::system(call.c_str()) == 0) {
    std::ifstream answer(folder / "answer");
    for (std::string line; std::getline(answer, line);) {
      if (line.starts_with("Status:"))
        settled.proven = line.find("INTEGER OPTIMAL") != line.npos || line.find("INTEGER EMPTY") != line.npos;
      if (line.starts_with("Status:") && line.find("INTEGER OPTIMAL") != line.npos)
        settled.optimum_mc = 0;
      if (line.starts_with("Objective:") && settled.optimum_mc)
        settled.optimum_mc = std::llround(std::stod(line.substr(line.find('=') + 1)));
    }
  }
  std::filesystem::remove_all(folder);
  return settled;
}

bool have_solver() { return std::system("glpsol --version > /dev/null 2>&1") == 0; }

}  // namespace

TEST_CASE("the planner meets the optimum of an exact solver, and its bound never passes it") {
  if (!have_solver()) {
    WARN("glpsol is not installed: nothing was compared.");
    return;
  }
  int compared = 0;
  for (std::uint64_t seed = 1; seed <= 12; ++seed) {
    const PlanCase c = tiny_case(seed);
    const Settled settled = settle(c);
    if (!settled.proven) continue;
    SearchLimits limits;
    limits.iterations = 100'000;
    const PlanAnswer answer = plan_firings(c, limits, 1);
    INFO("case " << seed);
    if (!settled.optimum_mc) {
      CHECK_FALSE(answer.unplaced.empty());
      continue;
    }
    ++compared;
    CHECK(answer.unplaced.empty());
    CHECK(answer.cost.total_mc() == *settled.optimum_mc);
    CHECK(answer.bound_mc <= *settled.optimum_mc);
  }
  CHECK(compared >= 6);
}
