// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// Places where the record says two things that cannot both be true. Each stops the certificate:
/// a lot of one grade with an analysis or a document of another, a mark that is not the document's
/// number, two soaks for one heat, a record out of its own times, a temper or cold step before the
/// quench, a heat after the handle, a hamon in an air-hardening steel, two findings that exclude
/// each other, more steel out of a melt or weld than went in, a trail that breaks.
std::vector<Refusal> contradictions(const BladeCase& blade);

}  // namespace tangmark::certificate
