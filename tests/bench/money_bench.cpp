// SPDX-License-Identifier: MIT
// The desk's bars: a quote while typing, a promise over a long queue, a bar cut for the queue.
#include <catch2/catch.hpp>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "domain/commission/promise_answer.h"
#include "domain/costing/build_up.h"
#include "domain/costing/line_change.h"
#include "domain/stock/cutting_json.h"

using namespace tangmark;
using namespace std::chrono_literals;
using namespace date::literals;

namespace {

// Of the processor, so that a machine with other work measures the same.
double seconds_of(const auto& work) {
  const std::clock_t start = std::clock();
  work();
  return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

// A commission of six knives, each of sixteen operations and twenty ingredients.
costing::CostInputs a_large_quote() {
  costing::CostInputs inputs;
  inputs.rates = {eur(35'00), Share::percent(50), eur(12'00)};
  inputs.packing = eur(8'00);
  inputs.shipping = eur(12'00);
  inputs.terms.rule = costing::Margin{Share::percent(20)};
  inputs.terms.step = eur(5'00);
  inputs.terms.fee = {Share::percent(2), std::nullopt};
  for (int i = 0; i < 6; ++i) {
    costing::CostedItem item;
    item.text = "knife";
    for (int op = 0; op < 16; ++op)
      item.operations.push_back({"operation " + std::to_string(op), Duration(1200 + 300 * op),
                                 Duration(60 * op), Duration(0), Share::millionths(990'000 + op)});
    for (int use = 0; use < 20; ++use)
      item.ingredients.push_back({"use " + std::to_string(use),
                                  costing::UsedUp{{500 + use, "belt"}, eur(800 + use)},
                                  static_cast<std::size_t>(use % 16)});
    inputs.items.push_back(item);
  }
  return inputs;
}

// Sixty blades of sixteen operations, with kiln waits and losses at the quench.
commission::PromiseQueue a_long_queue() {
  commission::PromiseQueue queue;
  queue.now = date::sys_days(2026_y / 11 / 23);
  queue.week.bench.fill(Duration{});
  for (const int day : {1, 2, 3, 4, 5}) queue.week.bench[static_cast<std::size_t>(day)] = 6h;
  queue.week.day_starts = 8h;
  queue.pace = {1.1, 1.2};
  for (int b = 0; b < 60; ++b) {
    std::vector<commission::QueuedOperation> route;
    for (int op = 0; op < 16; ++op) {
      commission::QueuedOperation one;
      one.name = "operation";
      one.bench = commission::Spread::around(Duration(1800 + 200 * op), 1.25);
      if (op == 6 || op == 7 || op == 8) one.before = commission::Spread::between(0h, 24h, 72h);
      if (op == 6) one.survival = Share::percent(95);
      if (op == 12) one.wait = commission::Spread::exactly(24h);
      route.push_back(one);
    }
    queue.blades.push_back(
        {static_cast<std::uint64_t>(b + 1), commission::CommissionId(b + 1), route});
  }
  return queue;
}

std::string text_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

}  // namespace

TEST_CASE("a quote recalculates while typing", "[bench][quote]") {
  const auto inputs = a_large_quote();
  // Five figures of it set by hand, each found by its name anew with every letter typed.
  const std::vector<costing::LineChange> changes = {{"1. operation 3", "1.5 h"},
                                                    {"2. use 7", "0.75 at 9.00"},
                                                    {"6. operation 15 survives", "97 %"},
                                                    {"Packing", "9.00"},
                                                    {"6. + Mosaic pin", "2 at 14.00"}};
  constexpr int times = 200;
  const double all = seconds_of([&] {
    for (int i = 0; i < times; ++i) {
      costing::CostInputs typed = inputs;
      for (const auto& change : changes) typed = *costing::with_change(std::move(typed), change);
      REQUIRE(costing::build_up(typed));
    }
  });
  std::printf("quote: %zu lines, %.3f ms each, %.3f of the 5 ms allowed\n",
              costing::build_up(inputs)->lines.size(), 1e3 * all / times, all / times / 5e-3);
}

TEST_CASE("a promise over sixty blades", "[bench][promise]") {
  const auto queue = a_long_queue();
  std::vector<double> days;
  double slowest = 0;
  for (std::uint64_t seed = 1; seed <= 8; ++seed) {
    std::vector<commission::Forecast> answer;
    slowest = std::max(slowest, seconds_of([&] { answer = *forecast(queue, {10'000, seed}); }));
    days.push_back(static_cast<double>((answer.back().at80 - queue.now).count()) / 86'400);
  }
  const auto [low, high] = std::minmax_element(days.begin(), days.end());
  std::printf(
      "promise: 60 blades, 10,000 runs, %.3f s (%.3f of 1 s); 80 %% dates of 8 seeds lie "
      "%.3f days apart (%.3f of half a day)\n",
      slowest, slowest, *high - *low, (*high - *low) / 0.5);
}

TEST_CASE("the public cutting cases", "[bench][cutting]") {
  const std::string folder = TANGMARK_TESTS_DIR "/reference/stock/cutting_cases/";
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() != ".json") continue;
    const std::string text = text_of(entry.path());
    const double allowed = entry.path().stem() < "c06" ? 1.0 : 10.0;
    const auto start = std::chrono::steady_clock::now();
    const auto late = [&] {
      return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count() >
             allowed - 0.1;
    };
    std::string answer;
    const double used = seconds_of([&] { answer = *stock::cut_case_text(text, late); });
    std::printf("cutting: %s %.2f of the %.0f s allowed, %s\n", entry.path().stem().c_str(),
                used / allowed, allowed,
                answer.find("\"proven_optimal\": true") != std::string::npos ||
                        answer.find("\"proven_optimal\":true") != std::string::npos
                    ? "proven"
                    : "best found");
  }
}
