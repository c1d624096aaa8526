// SPDX-License-Identifier: MIT
#include "domain/steel/hardness_bias.h"

#include <cmath>

namespace tangmark::steel {
namespace {

double miss_points(const ExpectedAndMeasured& blade) {
  return blade.measured.points - (blade.expected.low.points + blade.expected.high.points) / 2;
}

}  // namespace

std::optional<HardnessBias> hardness_bias(const std::vector<ExpectedAndMeasured>& blades) {
  if (blades.empty()) return std::nullopt;
  HardnessBias bias;
  bias.blades = blades.size();
  const auto n = static_cast<double>(blades.size());
  for (const auto& blade : blades) {
    bias.mean_points += miss_points(blade) / n;
    if (blade.measured < blade.expected.low || blade.measured > blade.expected.high) {
      ++bias.outside_band;
    }
  }
  if (blades.size() < 3) return bias;
  double squares = 0;
  for (const auto& blade : blades) squares += std::pow(miss_points(blade) - bias.mean_points, 2);
  bias.spread_points = std::sqrt(squares / (n - 1));
  return bias;
}

}  // namespace tangmark::steel
