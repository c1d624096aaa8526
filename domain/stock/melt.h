// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/measure/kept.h"
#include "domain/measure/mass.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::stock {

/// Steel melted in a crucible or smelted from ore: what went in, how hot, how long, what came out.
struct Melt {
  BilletId billet;  ///< the ingot
  Instant at{}, entered_at{};
  std::string charge{};  ///< "pure iron 1.5 kg, graphite 24 g, glass 60 g"
  Mass charge_mass{};
  std::string lining{};  ///< crucible and lining, or furnace lining
  Temperature peak{};
  Duration at_peak{};
  std::optional<std::string> cooled{};
  Mass ingot_mass{};
  std::optional<Share> carbon{};            ///< mass fraction: 1.5 % is 15,000 millionths
  std::optional<std::string> carbon_how{};  ///< "from the charge", "measured by a laboratory"
  std::optional<std::string> who{};
  friend bool operator==(const Melt&, const Melt&) = default;
};
using KeptMelt = Kept<Melt, MeltId>;

}  // namespace tangmark::stock
