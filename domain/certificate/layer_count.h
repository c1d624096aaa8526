// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

#include "domain/certificate/steel_trail.h"
#include "domain/measure/outcome.h"

namespace tangmark::certificate {

/// The layers of a billet by stacking arithmetic: a stack adds up its parts, a fold doubles, a cut
/// into n pieces stacked again multiplies by n; a billet in a stack brings its own layers. The
/// count is nominal: layers lost to grinding, cropping and welding of like on like are not taken
/// off.
/// **Source**: arithmetic; that a restack of like on like joins two layers is common practice, no
/// source.
struct LayerCount {
  std::int64_t layers = 0;
  std::string how;  ///< "a stack of 11, cut in 3 and stacked, folded once, twisted"
  friend bool operator==(const LayerCount&, const LayerCount&) = default;
};

/// Refuses a billet that does not begin with a stack, a stack without layers, a cut into fewer
/// than two pieces, a billet inside it that cannot be counted, and counts above a thousand million.
Outcome<LayerCount> layer_count(const SteelTrail& steel, const Billet& billet);

}  // namespace tangmark::certificate
