// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/listing/kiln_rows.h"
#include "gui/desk/kiln_board.h"

namespace tangmark::desk {

/// When and how hot a kiln was switched off, for the coasting that follows.
struct SwitchedOff {
  Instant at;
  double celsius = 0;
};

/// When a firing's kiln is switched off: at its end, or for an anneal at the end of the controlled
/// cooling.
SwitchedOff off_of(const db::KilnRow& kiln, const db::FiringRow& firing);

/// The planned curve of a firing: heating from where the kiln had cooled to, the soak, the
/// controlled cooling of an anneal, then natural cooling until `until`.
/// Assumes: straight heating; cooling T = room + (T0 - room) exp(-t / tau) with a room of 20 C.
/// Source of the cooling: Newton's law; the figures are the kiln's own. Common practice, no source.
BoardCurve curve_of(const db::KilnRow& kiln, const db::FiringRow& firing,
                    const std::optional<SwitchedOff>& before, Instant until);

/// The temperature of an unpowered kiln, degrees C.
double coasted(const db::KilnRow& kiln, const SwitchedOff& off, Instant at);

}  // namespace tangmark::desk
