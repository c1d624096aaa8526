// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_plan.h"

#include <catch2/catch.hpp>
#include <functional>
#include <optional>
#include <random>
#include <tuple>

using namespace tangmark;
using namespace tangmark::stock;

namespace {

CuttingCase a_case(std::int64_t kerf, std::int64_t keep,
                   std::vector<std::pair<std::int64_t, std::int64_t>> bars,
                   std::vector<std::int64_t> blanks) {
  CuttingCase c{kerf, keep, {}, {}};
  for (const auto& [length, price] : bars)
    c.bars.push_back({"S" + std::to_string(c.bars.size() + 1), length, price});
  for (const std::int64_t length : blanks)
    c.blanks.push_back({"K" + std::to_string(c.blanks.size() + 1), length});
  return c;
}

CuttingPlan plan_of(const CuttingCase& c) { return *cutting_plan(c, nullptr); }

std::size_t placed(const CuttingPlan& plan) {
  std::size_t n = 0;
  for (const CutBar& cut : plan.cuts) n += cut.blanks.size();
  return n;
}

/// The rules of the case once more, applied to a plan without trusting any of its figures.
double checked_value(const CuttingCase& c, const CuttingPlan& plan) {
  std::vector<int> seen(c.blanks.size(), 0);
  double value = 0;
  for (const CutBar& cut : plan.cuts) {
    REQUIRE_FALSE(cut.blanks.empty());
    std::int64_t sum = 0;
    for (const std::size_t i : cut.blanks) sum += c.blanks[i].length_mm, ++seen[i];
    const auto n = static_cast<std::int64_t>(cut.blanks.size());
    const std::int64_t length = c.bars[cut.bar].length_mm;
    CHECK(sum + (n - 1) * c.kerf_mm <= length);
    const std::int64_t left = std::max<std::int64_t>(0, length - sum - n * c.kerf_mm);
    CHECK(cut.left_mm == left);
    CHECK(cut.kept == (left >= c.keep_mm));
    const std::int64_t kept = left >= c.keep_mm ? left : 0;
    value += double(c.bars[cut.bar].price_minor) * double(length - kept) / double(length);
  }
  for (const std::size_t i : plan.unplaced) ++seen[i];
  CHECK(seen == std::vector<int>(c.blanks.size(), 1));
  CHECK(plan.value_used == Approx(value).epsilon(1e-12));
  return value;
}

struct Best {
  std::size_t placed = 0;
  double value = 0;
  std::size_t bars = 0;
};

/// The slow obvious version: every blank into every bar, or none.
Best best_of_all(const CuttingCase& c) {
  std::optional<Best> best;
  std::vector<std::vector<std::size_t>> in(c.bars.size());
  std::function<void(std::size_t)> place = [&](std::size_t i) {
    if (i == c.blanks.size()) {
      Best b;
      for (std::size_t bar = 0; bar < in.size(); ++bar) {
        if (in[bar].empty()) continue;
        std::int64_t filled = 0;
        for (const std::size_t k : in[bar]) filled += c.blanks[k].length_mm + c.kerf_mm;
        const std::int64_t length = c.bars[bar].length_mm;
        if (filled - c.kerf_mm > length) return;
        const std::int64_t left = std::max<std::int64_t>(0, length - filled);
        const std::int64_t kept = left >= c.keep_mm ? left : 0;
        b.placed += in[bar].size();
        b.value += double(c.bars[bar].price_minor) * double(length - kept) / double(length);
        ++b.bars;
      }
      const auto less = [](const Best& x, const Best& y) {
        if (x.placed != y.placed) return x.placed > y.placed;
        if (std::abs(x.value - y.value) > 1e-9) return x.value < y.value;
        return x.bars < y.bars;
      };
      if (!best || less(b, *best)) best = b;
      return;
    }
    for (auto& bar : in) {
      bar.push_back(i);
      place(i + 1);
      bar.pop_back();
    }
    place(i + 1);
  };
  place(0);
  return *best;
}

}  // namespace

TEST_CASE("two blanks from one bar, worked by hand") {
  // Kerf 2, keep 150, a bar of 600 at 1200: 440 + 2 kerfs, 156 left and kept, 1200 x 444 / 600.
  const CuttingCase c = a_case(2, 150, {{600, 1200}}, {260, 180});
  const CuttingPlan plan = plan_of(c);
  CHECK(plan.value_used == 888);
  CHECK(plan.proven);
  REQUIRE(plan.cuts.size() == 1);
  CHECK(plan.cuts[0].left_mm == 156);
  CHECK(plan.cuts[0].kept);
}

TEST_CASE("a bar shorter than the blanks and their kerfs is never used for both") {
  CHECK(plan_of(a_case(2, 50, {{501, 100}}, {250, 250})).unplaced.size() == 1);
  CHECK(plan_of(a_case(2, 50, {{502, 100}}, {250, 250})).unplaced.empty());
}

TEST_CASE("an offcut is used up before a new bar is started") {
  const CuttingPlan plan = plan_of(a_case(2, 150, {{1000, 3000}, {300, 500}}, {280}));
  REQUIRE(plan.cuts.size() == 1);
  CHECK(plan.cuts[0].bar == 1);
}

TEST_CASE("when not all can be placed the longest is left out") {
  const CuttingPlan plan = plan_of(a_case(2, 50, {{400, 100}, {200, 90}}, {390, 180, 190}));
  CHECK(placed(plan) == 2);
  REQUIRE(plan.unplaced.size() == 1);
  CHECK(plan.unplaced[0] == 0);
  CHECK(plan.proven);
}

TEST_CASE("of plans of like value the one with fewer bars wins") {
  // All at one price a millimetre and every rest kept: only the number of bars differs.
  const CuttingPlan plan = plan_of(
      a_case(0, 10, {{300, 300}, {300, 300}, {900, 900}}, {100, 100, 100}));
  CHECK(plan.value_used == 300);
  CHECK(plan.cuts.size() == 1);
}

TEST_CASE("plans are as good as trying everything") {
  std::mt19937 chance(17);
  const auto between = [&](int a, int b) {
    return a + static_cast<int>(chance() % static_cast<unsigned>(b - a + 1));
  };
  for (int round = 0; round < 120; ++round) {
    CuttingCase c = a_case(between(0, 3), between(0, 1) * between(20, 120), {}, {});
    const int bars = between(1, 3), blanks = between(1, 6);
    for (int b = 0; b < bars; ++b) {
      // Twins among bars and blanks are common in a shop and easy to get wrong.
      const bool twin = b > 0 && between(0, 2) == 0;
      CuttingBar bar = twin ? c.bars.back() : CuttingBar{"", between(120, 500), between(0, 900)};
      bar.id = "S" + std::to_string(b);
      c.bars.push_back(bar);
    }
    for (int i = 0; i < blanks; ++i) {
      const bool twin = i > 0 && between(0, 2) == 0;
      const std::int64_t length = twin ? c.blanks.back().length_mm : between(40, 260);
      c.blanks.push_back({"K" + std::to_string(i), length});
    }
    INFO("round " << round);
    const CuttingPlan plan = plan_of(c);
    const Best best = best_of_all(c);
    CHECK(placed(plan) == best.placed);
    CHECK(checked_value(c, plan) == Approx(best.value).margin(1e-6));
    if (std::abs(plan.value_used - best.value) < 1e-9) CHECK(plan.cuts.size() == best.bars);
    CHECK(plan.proven);
    CHECK(plan.value_at_least == Approx(plan.value_used));
  }
}

TEST_CASE("stopped at once, a plan still keeps the rules and claims no proof it has not") {
  CuttingCase c = a_case(2, 150, {}, {});
  std::mt19937 chance(3);
  for (int b = 0; b < 20; ++b) {
    const auto length = static_cast<std::int64_t>(300 + chance() % 900);
    c.bars.push_back({"S" + std::to_string(b), length, length * 3});
  }
  for (int i = 0; i < 45; ++i)
    c.blanks.push_back({"K" + std::to_string(i), static_cast<std::int64_t>(90 + chance() % 380)});
  const Outcome<CuttingPlan> plan = cutting_plan(c, [] { return true; });
  REQUIRE(plan.ok());
  checked_value(c, *plan);
  CHECK_FALSE(plan->proven);
  CHECK(plan->value_at_least <= plan->value_used);
}

TEST_CASE("a case with nothing to cut, or nothing to cut it from, has its plain answer") {
  CHECK(plan_of(a_case(2, 150, {{600, 1200}}, {})).proven);
  CHECK(plan_of(a_case(2, 150, {{600, 1200}}, {})).cuts.empty());
  CHECK(plan_of(a_case(2, 150, {}, {100})).unplaced.size() == 1);
  CHECK(plan_of(a_case(2, 150, {{600, 0}}, {100})).value_used == 0);
}

TEST_CASE("absurd cases are refused by the bar or blank at fault") {
  CuttingCase c = a_case(-1, 0, {{0, 1}}, {100});
  c.blanks.push_back({"K1", 5});
  c.bars.push_back({"S9", 100, -1});
  std::vector<std::string> fields;
  for (const Problem& p : cutting_plan(c, nullptr).problems()) fields.push_back(p.field);
  CHECK(fields == std::vector<std::string>{"kerf_mm", "bar S1", "bar S9", "blank K1"});
}
