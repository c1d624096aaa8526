// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "domain/measure/length.h"
#include "domain/measure/outcome.h"

namespace tangmark::steel {

/// One restack of a billet: folded once, or cut into so many pieces that are stacked again.
struct Restack {
  std::int64_t pieces = 2;  ///< a fold is two
  friend bool operator==(const Restack&, const Restack&) = default;
};

/// Nominal layers after the restacks: start x product of the pieces. Nothing is taken off for
/// layers ground away or for like steels that meet at a restack. **Source**: arithmetic, common
/// practice. Refuses a start below one, a cut into fewer than two pieces, and more than 10^15
/// layers.
Outcome<std::int64_t> nominal_layers(std::int64_t start, const std::vector<Restack>& restacks);

/// The mean thickness of a layer in a billet of so many.
Length mean_layer_thickness(Length billet, std::int64_t layers);
/// The same in mm without rounding, for layers thinner than a nanometre count would show.
double mean_layer_thickness_mm(double billet_mm, std::int64_t layers);

/// Reads "cut2,fold,cut3"; empty text is no restack. Refuses another word.
Outcome<std::vector<Restack>> parse_restacks(std::string_view text, std::string_view field);

}  // namespace tangmark::steel
