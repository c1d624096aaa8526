// SPDX-License-Identifier: MIT
#include "gui/desk/firing_curve.h"

#include <algorithm>
#include <cmath>

namespace tangmark::desk {
namespace {

constexpr double room_c = 20;

Duration controlled_cooling(const db::FiringRow& firing) {
  if (!firing.cool_per_hour || !firing.cool_to || firing.cool_per_hour->counts() <= 0) return {};
  const double drop = firing.set.in_celsius() - firing.cool_to->in_celsius();
  const double hours = std::max(0.0, drop) / firing.cool_per_hour->kelvins();
  return Duration{static_cast<std::int64_t>(std::ceil(hours * 60)) * 60};
}

}  // namespace

double coasted(const db::KilnRow& kiln, const SwitchedOff& off, Instant at) {
  const double minutes = static_cast<double>((at - off.at).count()) / 60;
  const double tau = std::max(1.0, static_cast<double>(kiln.time_constant.count()) / 60);
  if (minutes <= 0) return off.celsius;
  return room_c + (off.celsius - room_c) * std::exp(-minutes / tau);
}

SwitchedOff off_of(const db::KilnRow& kiln, const db::FiringRow& firing) {
  if (firing.kind != "anneal") return {firing.ends_at, firing.set.in_celsius()};
  const Instant off = firing.starts_at + kiln.load + firing.soak + controlled_cooling(firing);
  const Temperature end = firing.cool_to.value_or(firing.set);
  return {std::min(off, firing.ends_at), std::min(end.in_celsius(), firing.set.in_celsius())};
}

BoardCurve curve_of(const db::KilnRow& kiln, const db::FiringRow& firing,
                    const std::optional<SwitchedOff>& before, Instant until) {
  const double set = firing.set.in_celsius();
  BoardCurve curve;
  const double from = before ? coasted(kiln, *before, firing.heat_from) : room_c;
  curve.push_back({firing.heat_from, std::min(from, set)});
  curve.push_back({firing.starts_at, set});
  const SwitchedOff off = off_of(kiln, firing);
  if (firing.kind == "anneal") {
    curve.push_back({firing.starts_at + kiln.load + firing.soak, set});
  }
  curve.push_back({off.at, off.celsius});
  // Natural cooling, in steps fine enough for the eye.
  constexpr int steps = 48;
  const auto tail = until > off.at ? until - off.at : Duration{0};
  for (int i = 1; i <= steps; ++i) {
    const Instant at = off.at + tail * i / steps;
    curve.push_back({at, coasted(kiln, off, at)});
  }
  return curve;
}

}  // namespace tangmark::desk
