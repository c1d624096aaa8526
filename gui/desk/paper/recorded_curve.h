// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "domain/kiln/firing.h"
#include "gui/desk/paper/paper.h"
#include "reports/curve.h"

namespace tangmark::desk {

/// What the fit of the kiln's records says over the record of a firing.
std::vector<reports::FittedStretch> fitted_curve(const Press& press,
                                                 const kiln::KeptFiring& firing);

/// The controller's record of a firing with the fit over it; nothing when it has no record.
std::optional<reports::Curve> recorded_curve(const Press& press, std::string_view firing);

}  // namespace tangmark::desk
