// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/outcome.h"

namespace tangmark::costing {

/// Something that went into a billet: a piece of bar, or a piece of another billet (then `cost` is
/// what that billet's own `cost_of_piece` says, so costs come down the whole family tree).
struct BilletPart {
  std::string text;
  Mass mass;
  Money cost;
  friend bool operator==(const BilletPart&, const BilletPart&) = default;
};

/// A billet as it stands after welding, drawing, folding and cropping.
struct BilletMaking {
  std::vector<BilletPart> parts;
  std::vector<Mass> crops_kept;  ///< cropped ends put back on the rack as pieces of this billet
  Mass finished;                 ///< mass of the finished billet without the crops kept
  std::vector<Money> work;       ///< gas, flux, can, hours of the making, each already costed
  friend bool operator==(const BilletMaking&, const BilletMaking&) = default;
};

struct BilletCost {
  Mass in;      ///< mass of all parts
  Mass lost;    ///< scale, swarf and crop thrown away: in - finished - crops kept
  Mass usable;  ///< finished + crops kept
  Money cost;   ///< parts and work together
  friend bool operator==(const BilletCost&, const BilletCost&) = default;
};

/// Costs of a billet are carried by the mass that is left: what burnt or was cropped off and thrown
/// away makes the rest dearer. Common practice, no source.
/// Refuses no parts, mixed currencies, and more mass out than in.
Outcome<BilletCost> billet_cost(const BilletMaking& making);

/// What a piece of the billet costs: its part of the cost by mass, half to even. Refuses a piece
/// heavier than all that is usable.
Outcome<Money> cost_of_piece(const BilletCost& billet, Mass piece);

}  // namespace tangmark::costing
