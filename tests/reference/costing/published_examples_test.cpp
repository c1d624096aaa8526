// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <cmath>

#include "domain/costing/learning.h"
#include "domain/costing/loss.h"
#include "domain/costing/loss_rate.h"
#include "domain/costing/price.h"
#include "domain/costing/quantile.h"

using namespace tangmark;
using namespace tangmark::costing;

namespace {
Money usd(std::int64_t minor) { return {minor, *Currency::of("USD")}; }
}  // namespace

TEST_CASE("four stages in a row: 100 start, 90, 80, 75 and 70 come through") {
  // Source: the usual textbook example of rolled throughput yield (four stages, 70 %), as given in
  // public encyclopaedias under "first-pass yield"; from memory. Every stage costs 1.00 for each
  // unit that enters: (100 + 90 + 80 + 75) / 70 good units = 4.92857.
  const auto q = [](double out, double in) {
    return Share::millionths(static_cast<std::int64_t>(out / in * 1e6 + 0.5));
  };
  const auto good = cost_per_good({{usd(100'000), q(90, 100)},
                                   {usd(100'000), q(80, 90)},
                                   {usd(100'000), q(75, 80)},
                                   {usd(100'000), q(70, 75)}});
  CHECK(good->started_per_good == Approx(1 / 0.7).epsilon(1e-5));
  CHECK(good->per_good.minor() == Approx(492'857).margin(2));
}

TEST_CASE("an expected loss of a quarter after 300 was spent makes 400") {
  // Source: the loss allowance of the trade: (cost up to quench) / (1 - p) + cost after.
  CHECK(cost_per_good({{usd(300'00), Share::percent(75)}})->per_good == usd(400'00));
}

TEST_CASE("75 of cost at a margin of 25 % sells at 100, a mark-up of 33.3 %") {
  // Source: the margin and mark-up example of public accounting explainers: cost 75, price 100.
  PriceTerms terms;
  terms.rule = Margin{Share::percent(25)};
  const auto p = price_for(usd(75'00), terms);
  CHECK(p->shown == usd(100'00));
  CHECK(p->markup == Share::millionths(333'333));
}

TEST_CASE("mark-up and margin stand side by side as in the printed tables") {
  // Source: the conversion table printed in retail arithmetic texts (margin = m / (1 + m)).
  const std::pair<std::int64_t, double> rows[] = {{20, 0.1667}, {25, 0.2},  {30, 0.2308},
                                                  {40, 0.2857}, {50, 0.3333}, {60, 0.375},
                                                  {80, 0.4444}, {100, 0.5}, {150, 0.6},
                                                  {300, 0.75}};
  for (const auto& [markup, margin] : rows) {
    PriceTerms terms;
    terms.rule = MarkUp{Share::percent(markup)};
    CHECK(price_for(usd(1'000'000), terms)->margin.fraction() == Approx(margin).margin(0.00005));
  }
}

TEST_CASE("the exact band of published proportions") {
  // Source: Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 5 (exact tail
  // areas, Clopper-Pearson); from memory.
  struct Row {
    std::int64_t lost, of;
    double low, high;
  };
  for (const Row& row : {Row{81, 263, 0.2527, 0.3676}, Row{15, 148, 0.0578, 0.1617},
                         Row{0, 20, 0.0000, 0.1684}, Row{1, 29, 0.0009, 0.1776}}) {
    const auto band = loss_rate({row.lost, row.of});
    CHECK(band->low == Approx(row.low).margin(0.00005));
    CHECK(band->high == Approx(row.high).margin(0.00005));
  }
}

TEST_CASE("none lost of n: the band ends at 1 - (a / 2)^(1 / n)") {
  // Source: closed form of the same band, found in any text that gives it.
  for (const std::int64_t n : {1, 5, 11, 300})
    CHECK(loss_rate({0, n})->high ==
          Approx(1 - std::pow(0.025, 1.0 / static_cast<double>(n))).epsilon(1e-12));
}

TEST_CASE("quartiles of one to ten are 3.25, 5.5 and 7.75") {
  // Source: documentation of R's quantile(), type 7: quantile(1:10).
  const std::vector<double> tens{10, 1, 9, 2, 8, 3, 7, 4, 6, 5};
  CHECK(quantile(tens, 0.25) == Approx(3.25));
  CHECK(quantile(tens, 0.5) == Approx(5.5));
  CHECK(quantile(tens, 0.75) == Approx(7.75));
}
