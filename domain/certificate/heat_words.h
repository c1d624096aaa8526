// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// What a heat of this blade is worth as evidence: recorded by thermocouple or controller (only
/// when the record covers the time the blade was in, without a gap), read off a display, as set,
/// judged by eye, or not recorded. A record whose readings the maker corrected is one of its own.
EvidenceKind heat_kind(const BenchEntry& entry, const Zone& zone);
/// Whether that evidence is the record of an instrument.
bool read_by_instrument(EvidenceKind kind);
/// By how much the readings of a record were corrected: "-4 °C", "+2.5 °C".
std::string step_text(TemperatureDifference by, TemperatureUnit unit);
/// The heat in words that say how it is known: "thermocouple read 803 to 808 °C", "kiln set to
/// 805 °C, not recorded", "heat judged by colour", "heat not recorded".
std::string heat_text(const BenchEntry& entry, const Manner& manner);
/// The lowest and the highest that an instrument read while the blade soaked, or its peak alone;
/// none without figures. In whole degrees of the maker's unit, outwards: no thermocouple of the
/// trade knows more (common practice, no source).
std::vector<Temperature> read_in_soak(const RecordCoverage& record, TemperatureUnit unit);
/// Evidence of one step: its heat, and whether the line was entered later.
std::vector<Evidence> heat_evidence(const BenchEntry& entry, const Zone& zone);

}  // namespace tangmark::certificate
