// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/certificate/hand.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::certificate {

/// What was done. `other` carries the maker's own word in BenchEntry::own_word.
enum class Operation {
  profile,
  drill,
  mark,
  forge,
  forge_weld,
  twist,
  anneal,
  stress_relief,
  normalize,
  thermal_cycle,
  rough_grind,
  clay,
  harden,
  sub_zero,
  snap_temper,
  temper,
  straighten,
  finish_grind,
  hand_sand,
  polish,
  etch,
  fit_up,
  glue,
  handle,
  sharpen,
  sheath,
  inspect,
  other,
};

/// Which instrument wrote a kiln record.
enum class Instrument { independent_thermocouple, kiln_controller };

/// A kiln record thinned to what a page can show, its extremes kept.
struct RecordedCurve {
  std::vector<int> at_s;  ///< seconds after the first sample of the record
  std::vector<Temperature> read;
  std::optional<Temperature> window_low;  ///< what this heat was meant to stay within
  std::optional<Temperature> window_high;
  std::optional<Instant> blade_out;
  friend bool operator==(const RecordedCurve&, const RecordedCurve&) = default;
};

/// A correction that the maker applied to the readings of a record; the record itself stays on file
/// as it was written.
struct SetRight {
  TemperatureDifference by;  ///< what was added to each reading
  CalendarDate day{};
  std::string why;  ///< the maker's words
  friend bool operator==(const SetRight&, const SetRight&) = default;
};

/// The part of a kiln record that belongs to one heat of this blade.
struct RecordCoverage {
  Instrument instrument = Instrument::kiln_controller;
  Instant from;  ///< first and last sample
  Instant to;
  std::optional<Temperature> soak_low;  ///< lowest and highest reading while the blade soaked
  std::optional<Temperature> soak_high;
  std::optional<Temperature> peak;
  bool gap_in_soak = false;                  ///< samples are missing while the blade was in
  std::optional<CalendarDate> kiln_checked;  ///< last check of kiln and sensor before the firing
  RecordedCurve curve;
  std::optional<SetRight> set_right;  ///< already in every figure above
};

/// What stood in for an instrument when there was none.
enum class Eye { not_used, colour, magnet };

/// The heat of one step: set, read off a display, recorded, or judged by eye.
struct Heat {
  std::optional<Temperature> set;
  std::optional<Temperature> read;  ///< noted by hand from a display
  Eye eye = Eye::not_used;
  std::optional<Duration> hold;  ///< of this blade, at temperature
  std::optional<RecordCoverage> record;
  /// Whether anything at all is stated.
  bool stated() const { return set || read || eye != Eye::not_used || hold || record; }
};

enum class Immersion { whole, edge, interrupted };

struct Quench {
  std::string medium;      ///< "fast oil", "water", "plates"
  bool still_air = false;  ///< air or plates: nothing that a hamon could come from
  std::optional<Temperature> bath;
  std::optional<Duration> to_bath;
  Immersion immersion = Immersion::whole;
  bool clay = false;
};

struct TemperFacts {
  int number = 1;
  std::optional<bool> cooled_before;  ///< to room temperature, before this temper; none: not noted
};

struct Cold {
  std::optional<Temperature> temperature;  ///< read, not the name of the cooler
  std::optional<Duration> time;
  std::string medium;  ///< "freezer", "dry ice and alcohol", "liquid nitrogen"
};

enum class EtchPurpose { show_steel, makers_mark, image };

struct Etch {
  EtchPurpose purpose = EtchPurpose::show_steel;
  std::string etchant;
  std::optional<std::string> resist;  ///< stencil, lacquer, print
};

/// One line of the bench log of this blade. Superseded lines are carried so that the record can
/// show them, and count for nothing.
struct BenchEntry {
  int number = 0;  ///< as in the log; entries are in the order of the work
  Operation operation = Operation::other;
  std::string own_word;
  std::optional<Instant> from;
  std::optional<Instant> to;
  Logged logged = Logged::at_the_time;
  Hand hand;
  bool superseded = false;
  std::optional<CalendarDate> superseded_on;  ///< when, and in the maker's words why
  std::string superseded_why;
  std::optional<int> corrects;  ///< number of the line that this one took the place of
  std::optional<Heat> heat;
  std::optional<Quench> quench;
  std::optional<TemperFacts> temper;
  std::optional<Cold> cold;
  std::optional<Etch> etch;
  std::string note;
};

}  // namespace tangmark::certificate
