// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "domain/kiln/kiln.h"
#include "domain/kiln/record.h"
#include "domain/measure/energy.h"
#include "domain/measure/outcome.h"

namespace tangmark::kiln {

/// The thermal model of a kiln, fitted to what its logger wrote, by least squares (Eigen, QR).
///
/// Assumes: while it heats at full power the temperature rises along a straight line, slower with
/// blades inside; switched off it falls towards the room exponentially (Newton's law of cooling);
/// what it draws is one power while heating and one in proportion to its height above the room
/// while it holds. The room is at 20 C. The judged sensor is the first of the record. What a blade
/// slows the heating by is its share of the heat: put cold into a hot kiln it asks for the same
/// share again.

/// One record of a firing.
struct FitRun {
  std::string name;            ///< how the maker knows it: "firing 12"
  std::vector<double> minutes; ///< from the first sample, rising
  std::vector<double> celsius;
  int blades = 0;              ///< in the kiln while it heated
  bool cools_by_itself = true; ///< false for an anneal: its fall is controlled
  std::optional<double> metered_watt_min;
};

/// The run of a record's first sensor.
FitRun run_of(const KilnRecord& record);

/// What one part of the model came to. `error` is the root of the mean squared deviation.
struct FittedValue {
  double value = 0;
  double error = 0;  ///< of temperatures in C; of energies in Wh
  int runs = 0;      ///< records that went into it
};

struct KilnFit {
  /// Of the empty kiln, or at the mean load when that never varied.
  std::optional<FittedValue> heat_c_per_h;
  /// By how much each blade slows the heating; from varied loads only.
  std::optional<double> load_c_per_h;
  std::optional<FittedValue> tau_min;
  std::optional<FittedValue> heat_w, hold_mw_per_c;  ///< from metered firings, two at least
  /// The fitted curve of a run at its own samples, NaN where the model says nothing (door, soak).
  std::vector<std::vector<double>> curves;
};

/// Fits what the records show. A part that no record shows stays empty. Refuses when none shows
/// anything: no rise of 100 C in one stretch and no free fall of 60 C.
Outcome<KilnFit> fit_kiln(const std::vector<FitRun>& runs);

/// The kiln with the fitted values in place of its own, and `values_from` "kiln records".
Kiln with_fit(Kiln kiln, const KilnFit& fit);

/// What accepting would change, one sentence each: "It heats by 862 °C/h (now 900); error 3.1 °C
/// over 2 records." Degrees as the shop shows them.
std::vector<std::string> proposal(const Kiln& kiln, const KilnFit& fit, TemperatureUnit unit);

/// What a fit came to, one sentence each: "It heats by 862 °C/h, error 3.1 °C over 2 records."
std::vector<std::string> fit_in_words(const KilnFit& fit, TemperatureUnit unit);

/// Cold blades put into a hot kiln: how long it takes at full power until it is back at heat, and
/// what that draws. Nothing for a kiln whose load effect is not known.
/// Assumes: the brick gives way and comes back by what the fit says of loaded heating.
struct LoadEffect {
  Duration back_at_heat{};
  Energy energy;
};
LoadEffect load_effect(const Kiln& kiln, Temperature at, std::int64_t blades);

}  // namespace tangmark::kiln
