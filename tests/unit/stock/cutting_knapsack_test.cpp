// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_knapsack.h"

#include <catch2/catch.hpp>
#include <random>

using namespace tangmark::stock;

namespace {

/// The slow obvious version: every choice of the open sizes.
double best_of_all(const std::vector<std::int64_t>& sizes, const std::vector<double>& worth,
                   const std::vector<std::uint8_t>& open, std::int64_t room) {
  double best = 0;
  for (unsigned choice = 0; choice < 1U << sizes.size(); ++choice) {
    std::int64_t filled = 0;
    double sum = 0;
    bool allowed = true;
    for (std::size_t i = 0; i < sizes.size(); ++i)
      if (choice >> i & 1U) filled += sizes[i], sum += worth[i], allowed = allowed && open[i];
    if (allowed && filled <= room) best = std::max(best, sum);
  }
  return best;
}

}  // namespace

TEST_CASE("the best filling of every room is found, with and without each size") {
  std::mt19937 chance(4);
  const auto below = [&](unsigned n) { return static_cast<int>(chance() % n); };
  for (int round = 0; round < 30; ++round) {
    std::vector<std::int64_t> sizes;
    std::vector<double> worth;
    std::vector<std::uint8_t> open;
    for (int i = 0; i < 9; ++i) {
      sizes.push_back(5 + below(40));
      worth.push_back(below(50) - 5);
      open.push_back(below(4) != 0);
    }
    CuttingKnapsack sack;
    sack.fill(sizes, worth, open.data(), 100);
    for (std::int64_t room = 0; room <= 100; room += 7) {
      CHECK(sack.best(room) == best_of_all(sizes, worth, open, room));
      double sum = 0;
      std::int64_t filled = 0;
      for (const std::uint16_t i : sack.choice(room)) sum += worth[i], filled += sizes[i];
      CHECK(sum == sack.best(room));
      CHECK(filled <= room);
    }
    sack.without_each([&](std::size_t i, const std::vector<double>& row) {
      std::vector<std::uint8_t> fewer = open;
      fewer[i] = 0;
      CHECK(row[100] == best_of_all(sizes, worth, fewer, 100));
      CHECK(row[53] == best_of_all(sizes, worth, fewer, 53));
    });
  }
}
