// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace tangmark::kiln {

/// A small, fast stream of chance, the same on every machine for the same seed.
/// Source: Blackman and Vigna, "Scrambled linear pseudorandom number generators", ACM TOMS 47
/// (2021) 36: splitmix64, as used there for seeding.
class PlanChance {
 public:
  explicit PlanChance(std::uint64_t seed) : state_(seed) {}

  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15u);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
    return z ^ (z >> 31);
  }
  /// A number from 0 to n - 1; n above zero.
  int below(int n) {
    return static_cast<int>(((next() >> 32) * static_cast<std::uint64_t>(n)) >> 32);
  }
  /// From 0 up to 1.
  double share() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }
  bool one_in(int n) { return below(n) == 0; }

 private:
  std::uint64_t state_;
};

}  // namespace tangmark::kiln
