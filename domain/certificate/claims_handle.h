// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// Handle materials; every natural one with its species and source, papers named where there are
/// any. Only natural materials owe a species.
Judgement judge_handle_species(const BladeCase& blade);

}  // namespace tangmark::certificate
