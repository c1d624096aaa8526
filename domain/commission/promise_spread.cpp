// SPDX-License-Identifier: MIT
#include "domain/commission/promise_spread.h"

#include <algorithm>
#include <array>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>

namespace tangmark::commission {
namespace {

constexpr int strata = 4096;

/// Source: the inverse of the normal distribution by the inverse error function.
double normal_quantile(double part) { return -std::sqrt(2.0) * boost::math::erfc_inv(2 * part); }

/// The middle of each of the strata of equal chance of the normal distribution.
const std::array<double, strata>& normal_strata() {
  static const std::array<double, strata> middles = [] {
    std::array<double, strata> z{};
    for (int i = 0; i < strata; ++i)
      z[static_cast<std::size_t>(i)] = normal_quantile((i + 0.5) / strata);
    return z;
  }();
  return middles;
}

double seconds(Duration span) { return static_cast<double>(std::max(span, Duration{}).count()); }

/// Inverse of the triangular distribution function.
double triangular(double least, double usual, double most, double part) {
  const double width = most - least;
  if (width <= 0) return usual;
  const double before = (usual - least) / width;
  return part < before ? least + std::sqrt(part * width * (usual - least))
                       : most - std::sqrt((1 - part) * width * (most - usual));
}

}  // namespace

Spread Spread::exactly(Duration time) {
  Spread s;
  s.least_ = seconds(time);
  return s;
}

Spread Spread::between(Duration least, Duration usual, Duration most) {
  std::array<double, 3> ordered{seconds(least), seconds(usual), seconds(most)};
  std::sort(ordered.begin(), ordered.end());
  Spread s;
  s.kind_ = Kind::triangular;
  s.least_ = ordered[0];
  s.usual_ = ordered[1];
  s.most_ = ordered[2];
  return s;
}

Spread Spread::around(Duration median, double quarter_factor) {
  Spread s;
  s.kind_ = Kind::log_normal;
  s.usual_ = seconds(median);
  s.deviation_ = std::log(std::max(1.0, quarter_factor)) / normal_quantile(0.75);
  return s;
}

Duration Spread::quantile(double part) const {
  double t = least_;
  if (kind_ == Kind::triangular) t = triangular(least_, usual_, most_, part);
  if (kind_ == Kind::log_normal) t = usual_ * std::exp(deviation_ * normal_quantile(part));
  return Duration{std::llround(t)};
}

std::int64_t Spread::draw(std::uint32_t bits) const {
  double t = least_;
  if (kind_ == Kind::triangular)
    t = triangular(least_, usual_, most_, (bits + 0.5) / 4294967296.0);
  else if (kind_ == Kind::log_normal)
    t = usual_ * std::exp(deviation_ * normal_strata()[bits / (4294967296 / strata)]);
  return static_cast<std::int64_t>(t + 0.5);
}

}  // namespace tangmark::commission
