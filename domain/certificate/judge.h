// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// The answer for one claim, by the judge of that claim.
Judgement judge(const BladeCase& blade, Claim claim);

/// The answers for all claims.
using Judgements = std::map<Claim, Judgement>;
Judgements judge_all(const BladeCase& blade);

}  // namespace tangmark::certificate
