// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/measure/length.h"
#include "domain/measure/when.h"

namespace tangmark::certificate {

enum class HardnessScale { hrc, hra, hv, file_set };

/// The block that the tester was checked on.
struct BlockCheck {
  int block_tenths = 0;  ///< value of the block, tenths of the scale
  int read_tenths = 0;   ///< what the tester showed on it
  CalendarDate day;
};

enum class MeasuredOn { this_blade, coupon, tang_before_fitting };

/// Whether a reading was taken after the blade's last heat.
enum class AfterHeat { last, earlier_one, not_noted };

/// One hardness reading, in tenths of its scale (61.5 HRC is 615). A file set gives the two files
/// between which the steel lies: `tenths` is the harder-than, `up_to_tenths` the softer-than.
struct HardnessReading {
  HardnessScale scale = HardnessScale::hrc;
  int tenths = 0;
  std::optional<int> up_to_tenths;
  std::string place;                ///< "edge, 30 mm from the heel"; empty: not noted
  std::optional<Length> from_heel;  ///< along the edge, for the drawing of the blade
  std::optional<Length> from_edge;
  std::string tester;  ///< empty: not noted
  std::optional<BlockCheck> block;
  MeasuredOn on = MeasuredOn::this_blade;
  AfterHeat after = AfterHeat::not_noted;
  std::optional<Instant> taken;
  bool superseded = false;
};

enum class FindingKind {
  crack,
  delamination,
  warp,
  soft_area,
  overheated_edge,
  inclusion,
  pit,
  weld_line,
  cold_shut,
  decarb,
  handle_fault,
  shorter_than_drawn,
  pattern_layers,    ///< layers seen
  pattern_carbides,  ///< carbide bands or a watered pattern seen
  no_pattern,
  hamon_seen,
  other,
};

/// What the maker decided about a finding.
enum class Decision {
  open,            ///< nothing yet: stops the certificate
  no_fault,        ///< looked at, is as it should be (also for pattern results)
  removed,         ///< ground or cut away
  closed,          ///< welded or otherwise closed, still there
  left_disclosed,  ///< left and told to the buyer
  done_again,      ///< the work was repeated (re-hardened, re-welded)
  scrapped,
};

enum class SeenAfter { not_noted, etch, polish, other };

/// Something found on the blade.
struct Finding {
  int number = 0;
  FindingKind kind = FindingKind::other;
  std::string what;   ///< the maker's words
  std::string place;  ///< "left side of the ricasso, 11 mm from the edge"
  std::optional<Length> size;
  std::optional<Instant> seen;
  SeenAfter after = SeenAfter::not_noted;  ///< not noted: judged from the log by `seen`
  bool affects_blade = false;
  bool reaches_edge = false;
  Decision decision = Decision::open;
  std::string how;  ///< how it was dealt with
  std::optional<CalendarDate> buyer_accepted;
  std::optional<int> photo;
  bool superseded = false;
};

}  // namespace tangmark::certificate
