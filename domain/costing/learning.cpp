// SPDX-License-Identifier: MIT
#include "domain/costing/learning.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

#include "domain/costing/quantile.h"

namespace tangmark::costing {
namespace {

std::string written(double x) { return fmt::format("{:.3g}", x); }

}  // namespace

std::optional<Seen> seen(const std::vector<double>& actuals) {
  std::vector<double> kept;
  std::copy_if(actuals.begin(), actuals.end(), std::back_inserter(kept),
               [](double x) { return std::isfinite(x) && x >= 0; });
  if (kept.empty()) return std::nullopt;
  return Seen{kept.size(),          quantile(kept, 0.5),  quantile(kept, 0.25),
              quantile(kept, 0.75), quantile(kept, 0.0), quantile(kept, 1.0)};
}

Estimate estimate(double guess, const std::vector<double>& actuals) {
  Estimate e{guess, guess, 0, seen(actuals)};
  if (!e.record) return e;
  e.n = e.record->n;
  const auto n = static_cast<double>(e.n);
  e.figure = (guess * guess_weight + e.record->median * n) / (guess_weight + n);
  return e;
}

std::string Estimate::why() const {
  if (!record) return written(guess) + " from the model; nothing on record yet.";
  return fmt::format("{} from your last {} (median {}, half of them {} to {}); the model says {}.",
                     written(figure), n, written(record->median),
                     written(record->low_quarter), written(record->high_quarter),
                     written(guess));
}

std::optional<Proposal> proposal(std::string line, double now, const std::vector<double>& actuals) {
  constexpr std::size_t enough = 3;
  constexpr double worth_saying = 0.05;
  Estimate e = estimate(now, actuals);
  if (e.n < enough || std::abs(e.figure - now) <= worth_saying * std::abs(now)) return std::nullopt;
  return Proposal{std::move(line), std::move(e), now};
}

}  // namespace tangmark::costing
