// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

#include "domain/measure/outcome.h"
#include "domain/measure/share.h"

namespace tangmark::costing {

/// What the record says about losses at one operation, in one bath, with one steel.
struct LossRecord {
  std::int64_t lost = 0;
  std::int64_t of = 0;  ///< blades that went through it, lost ones too
  friend bool operator==(const LossRecord&, const LossRecord&) = default;
};

/// A loss rate with its band. Counts are always shown beside a rate: 3 of 11, not 27 %.
struct LossRate {
  LossRecord record;
  double rate = 0;             ///< lost / of
  double low = 0, high = 1;    ///< the exact band
  std::string counts() const;  ///< "3 of 11"
  friend bool operator==(const LossRate&, const LossRate&) = default;
};

/// The loss rate and its exact two-sided band at the confidence given (0.95: the true rate lies
/// inside at least 95 times of 100). With none lost the band starts at 0, with all lost it ends
/// at 1. Source: Clopper and Pearson, Biometrika 26 (1934) 404, by quantiles of the beta
/// distribution. Refuses counts below zero, more lost than there were, none at all, and a
/// confidence outside (0,1).
Outcome<LossRate> loss_rate(LossRecord record, double confidence = 0.95);

/// Survival for a quote: the model's guess drawn toward the record, the guess being worth ten
/// blades: (guess x 10 + survived) / (10 + of). Rounded to the millionth and never zero.
/// Source of the form: mean of a beta distribution after a binomial record (conjugate prior, any
/// statistics textbook); the ten blades are common practice, no source.
Share survival_estimate(Share guess, LossRecord record);

}  // namespace tangmark::costing
