// SPDX-License-Identifier: MIT
#include "domain/costing/loss_rate.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>

namespace tangmark::costing {

std::string LossRate::counts() const {
  return std::to_string(record.lost) + " of " + std::to_string(record.of);
}

Outcome<LossRate> loss_rate(LossRecord record, double confidence) {
  if (record.of < 1 || record.lost < 0 || record.lost > record.of)
    return Problem{"losses",
                   "A loss rate needs at least one blade, and no more lost than there were.",
                   "Check the counts."};
  if (!(confidence > 0 && confidence < 1))
    return Problem{"confidence", "The confidence must lie between 0 and 1.", "Give 0.95 for 95 %."};
  const auto lost = static_cast<double>(record.lost), of = static_cast<double>(record.of);
  const double tail = (1 - confidence) / 2;
  LossRate rate{record, lost / of};
  if (record.lost > 0) rate.low = boost::math::ibeta_inv(lost, of - lost + 1, tail);
  if (record.lost < record.of) rate.high = boost::math::ibetac_inv(lost + 1, of - lost, tail);
  return rate;
}

Share survival_estimate(Share guess, LossRecord record) {
  constexpr double guess_blades = 10;
  const auto survived = static_cast<double>(record.of - record.lost);
  const double q = (guess.fraction() * guess_blades + survived) /
                   (guess_blades + static_cast<double>(record.of));
  return Share::millionths(std::clamp<std::int64_t>(std::llround(q * 1e6), 1, 1'000'000));
}

}  // namespace tangmark::costing
