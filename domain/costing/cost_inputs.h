// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "domain/costing/billet_cost.h"
#include "domain/costing/cost_line.h"
#include "domain/costing/firing_energy.h"
#include "domain/costing/mass_from_bar.h"
#include "domain/costing/price.h"
#include "domain/measure/exchange_rate.h"
#include "domain/measure/when.h"

namespace tangmark::costing {

// What costs something. Prices are replacement prices: what the shop would pay today. All of them
// are for one piece of the item.

/// Steel by the mass it takes from the rack.
struct SteelFromBar {
  BarCut cut;
  Money per_kg;
};
/// A piece of a billet made here, with all that went into the billet.
struct SteelFromBillet {
  BilletCost billet;
  Mass piece;
};
/// Bought and built in: handle block, pins, guard stock, leather, a bought billet by length.
struct BoughtMaterial {
  Quantity quantity;
  Money each;
};
/// Bought and used up: foil, hand paper, adhesive, etchant by the millilitre.
struct UsedUp {
  Quantity quantity;
  Money each;
};
/// Gas by the burner's draw. `blades` share the session.
struct GasByBurner {
  Mass per_hour;
  Duration burning{};
  Money per_kg;
  std::int64_t blades = 1;
};
/// Gas by the weight of the bottle, the honest way. `blades` share the session.
struct GasByWeight {
  Mass before, after;
  Money per_kg;
  std::int64_t blades = 1;
};
/// One blade's part of a firing by slot: its electricity and the minutes it needs the maker.
struct FiringPart {
  FiringUse use;
  Money per_kwh;
  std::string by = {};  ///< where its values are from: "the plate values of the Temper oven"
};
/// Belts by life: `binned` belts were worn out on `blades` blades of this hardness class.
struct BeltWear {
  Money each;
  std::int64_t binned = 0, blades = 1;
};
/// A filling (oil, etchant, salt) that serves a number of blades before it is changed.
struct BathWear {
  Money filling;
  std::int64_t blades = 1;
};
/// Bought-in work: engraver, outside heat treater, sheath maker; carriage included.
struct MadeElsewhere {
  Money charge;
};

using CostSource = std::variant<SteelFromBar, SteelFromBillet, BoughtMaterial, UsedUp, GasByBurner,
                                GasByWeight, FiringPart, BeltWear, BathWear, MadeElsewhere>;

/// How far a line may go either way, as factors of its quantity: 80 % to 130 %. From the shop's own
/// history where there is one.
struct Swing {
  Share low = Share::percent(90), high = Share::percent(110);
  friend bool operator==(const Swing&, const Swing&) = default;
};

/// What the maker set by hand in a line, instead of what its source says.
struct SetByHand {
  std::optional<std::int64_t> thousandths;  ///< of the line's unit
  std::optional<Money> each;
  friend bool operator==(const SetByHand&, const SetByHand&) = default;
};

struct Ingredient {
  std::string text;
  CostSource source;
  std::size_t operation = 0;  ///< index of the operation that uses it up: lost when a blade is lost
                              ///< there or later
  std::optional<Swing> swing = {};  ///< none: the default is assumed, and said
  SetByHand set = {};
  bool minutes_by_hand = false;  ///< of a firing
};

/// A planned operation. Hours are kept apart three ways.
struct PlannedOperation {
  std::string name;
  Duration hands_on{}, attended{}, unattended{};
  Share survival = Share::whole();
  std::optional<Swing> swing = {};  ///< of its hours
  std::optional<std::pair<Share, Share>> survival_band =
      {};  ///< low and high, from the loss record
  bool by_hand = false;  ///< the maker set its time: it keeps its line even at nothing
};

/// An extra from the price list, shown to the buyer as its own line.
struct PricedOption {
  std::string text;
  Money price;
};

struct CostedItem {
  std::string text;  ///< as the buyer reads it: "Chef's knife 240 mm"
  std::int64_t pieces = 1;
  std::vector<PlannedOperation> operations;  ///< in the order of the route
  std::vector<Ingredient> ingredients;
  std::vector<PricedOption> options;  ///< for one piece; part of the price, not added to it
};

struct ShopRates {
  Money per_hour;           ///< what the maker pays himself
  Share attended_share;     ///< part of the rate that attended waiting costs
  Money overhead_per_hour;  ///< rent, insurance, machines, on every paid hour
};

struct CostInputs {
  Currency currency;  ///< of everything but the terms and the options, when sold in another
  ShopRates rates;
  std::vector<CostedItem> items;
  Money packing, shipping;
  PriceTerms terms;
  /// 1 of the buyer's currency in `currency`, when they differ: every line is worked out in
  /// `currency` and stands in the buyer's at this rate; terms and options are in the buyer's.
  std::optional<ExchangeRate> sold_at = {};

  Currency sold_in() const { return sold_at ? sold_at->from : currency; }
};

}  // namespace tangmark::costing
