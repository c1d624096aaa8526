// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/curve.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;

/// One blade of a firing, in the order in which it is taken out.
struct FiringBlade {
  std::string number;
  std::string steel;
  std::string position;          ///< slot in the kiln; may be empty
  std::optional<Instant> in;     ///< planned
  std::optional<Instant> out;    ///< planned
  std::optional<Window> window;  ///< of this blade, where it differs from the firing's
  std::optional<Duration> soak_least;
  std::optional<Duration> soak_most;
  std::string medium;  ///< "fast oil", "plates"; empty when nothing is quenched
  std::optional<Window> medium_band;
  std::string note;
};

/// One line of the programme: go to a temperature at a rate, stay there.
struct ProgrammeStep {
  Temperature to;
  std::optional<TemperatureDifference> per_hour;  ///< none: as fast as the kiln goes
  std::optional<Duration> hold;
};

/// The paper by the kiln: what goes in, when it comes out, and into what.
struct FiringSheet {
  std::string number;
  std::string kiln;
  std::string purpose;  ///< "hardening", "temper 1", "anneal"
  Instant start{};
  Instant end{};
  Temperature set;
  std::optional<Window> window;
  std::optional<Duration> soak;
  std::string protection;  ///< "foil", "bare"; may be empty
  std::vector<ProgrammeStep> programme;
  std::vector<FiringBlade> blades;
  Curve planned;
  std::optional<Curve> recorded{};    ///< once it ran and has a record
  std::string attendance;             ///< who must be there and when; may be empty
  std::vector<std::string> cautions;  ///< added to those for a hot kiln and for quench oil
  std::string qr;                     ///< ASCII; may be empty
  Instant printed{};
};

/// Sets the firing sheet. Cautions for the hot kiln are always printed, those for quench oil when a
/// medium is an oil.
Outcome<Document> firing_sheet_document(const FiringSheet& sheet, const Look& look,
                                        const FontBook& fonts);

}  // namespace tangmark::reports
