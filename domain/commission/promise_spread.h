// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// A time that is not known exactly: hours of an operation, days of a cure, weeks at the engraver.
class Spread {
 public:
  Spread() = default;  ///< exactly nothing
  static Spread exactly(Duration time);
  /// Never less than `least` or more than `most`, most often near `usual`: the triangular
  /// distribution, for guesses. The three are put in order.
  static Spread between(Duration least, Duration usual, Duration most);
  /// Half of the times lie below `median`, a quarter above `median` x `quarter_factor` (at least
  /// 1): the log-normal distribution, for times on record, which are never negative and sometimes
  /// long. Source of the choice: durations of manual tasks are right-skewed (common practice, no
  /// source).
  static Spread around(Duration median, double quarter_factor);

  /// The time that `part` (between 0 and 1) of all times lie below.
  Duration quantile(double part) const;
  /// One time in seconds, for 32 even random bits. Log-normal times are drawn from 4,096 strata
  /// of equal chance, so nothing beyond 3.7 deviations is ever drawn.
  std::int64_t draw(std::uint32_t bits) const;
  bool never_takes_time() const { return kind_ == Kind::fixed && least_ <= 0; }
  bool is_fixed() const { return kind_ == Kind::fixed; }
  friend bool operator==(const Spread&, const Spread&) = default;

 private:
  enum class Kind : std::uint8_t { fixed, triangular, log_normal };
  Kind kind_ = Kind::fixed;
  // Seconds. fixed: least_. triangular: least_, usual_, most_. log-normal: usual_ is the median and
  // deviation_ that of the logarithm.
  double least_ = 0, usual_ = 0, most_ = 0, deviation_ = 0;
};

}  // namespace tangmark::commission
