// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/blade/blade_id.h"
#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// A return, re-sharpening or warranty job. Its hours count into the true cost of that knife.
struct Aftercare {
  blade::BladeId blade;
  Instant at{};
  std::string complaint{};
  std::optional<std::string> condition{}, cause{}, work{};
  Duration hands_on{};
  std::optional<std::string> paid_by{};
  friend bool operator==(const Aftercare&, const Aftercare&) = default;
};
using KeptAftercare = Kept<Aftercare, AftercareId>;

}  // namespace tangmark::commission
