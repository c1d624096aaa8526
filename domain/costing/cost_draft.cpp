// SPDX-License-Identifier: MIT
#include "domain/costing/cost_draft.h"

#include <algorithm>

namespace tangmark::costing {
namespace {

CostDraft draft(LineKind kind, Quantity quantity, Money each, Money amount) {
  CostDraft d;
  d.kind = kind;
  d.quantity = std::move(quantity);
  d.each = each;
  d.amount = amount;
  return d;
}

using Drafts = std::vector<CostDraft>;

Problem bad_count(const char* what) {
  return {what, "This must be a count of one or more.", "Give how many blades share it."};
}

Money for_mass(Money per_kg, Mass mass) {
  return scaled_half_even(per_kg, mass.micrograms(), 1'000'000'000);
}

Quantity grams(Mass mass) {
  return {(mass.micrograms() + 500) / 1000, "g"};
}

Outcome<Drafts> drafts(const SteelFromBar& steel) {
  const Outcome<MassTaken> taken = mass_from_bar(steel.cut);
  if (!taken) return taken.problems();
  return Drafts{draft(LineKind::material, grams(taken->total), steel.per_kg,
                      for_mass(steel.per_kg, taken->total))};
}

Outcome<Drafts> drafts(const SteelFromBillet& steel) {
  const Outcome<Money> cost = cost_of_piece(steel.billet, steel.piece);
  if (!cost) return cost.problems();
  const Money per_kg =
      scaled_half_even(steel.billet.cost, 1'000'000'000,
                       std::max<std::int64_t>(1, steel.billet.usable.micrograms()));
  return Drafts{draft(LineKind::material, grams(steel.piece), per_kg, *cost)};
}

Drafts counted(LineKind kind, const Quantity& quantity, Money each) {
  return {draft(kind, quantity, each, scaled_half_even(each, quantity.thousandths, 1000))};
}
Outcome<Drafts> drafts(const BoughtMaterial& m) {
  return counted(LineKind::material, m.quantity, m.each);
}
Outcome<Drafts> drafts(const UsedUp& m) {
  return counted(LineKind::used_up, m.quantity, m.each);
}

Drafts shared_gas(Mass burnt, Money per_kg, std::int64_t blades) {
  const Mass part = Mass::micrograms(burnt.micrograms() / blades);
  return {draft(LineKind::energy, grams(part), per_kg,
                scaled_half_even(per_kg, burnt.micrograms(), 1'000'000'000 * blades))};
}
Outcome<Drafts> drafts(const GasByBurner& gas) {
  if (gas.blades < 1) return bad_count("blades");
  const Mass burnt = Mass::nearest_grams(gas.per_hour.in_grams() *
                                         static_cast<double>(gas.burning.count()) / 3600);
  return shared_gas(burnt, gas.per_kg, gas.blades);
}
Outcome<Drafts> drafts(const GasByWeight& gas) {
  if (gas.blades < 1) return bad_count("blades");
  if (gas.after > gas.before)
    return Problem{"bottle", "The bottle weighs more after the session than before.",
                   "Check the two readings."};
  return shared_gas(gas.before - gas.after, gas.per_kg, gas.blades);
}

Duration part_of(std::chrono::minutes whole, std::int64_t blades) {
  return (Duration{whole} + Duration{blades / 2}) / blades;
}
Outcome<Drafts> drafts(const FiringPart& firing) {
  const FiringUse& use = firing.use;
  if (use.blades < 1) return bad_count("blades");
  const std::int64_t watt_hours = use.total.joules() / (3600 * use.blades);
  CostDraft energy = draft(LineKind::energy, {watt_hours, "kWh"}, firing.per_kwh,
                           energy_share(use, firing.per_kwh));
  energy.text = ", shared by " + std::to_string(use.blades) + " expected";
  CostDraft hands = draft(LineKind::hours, {}, {}, {});
  hands.text = energy.text;
  if (!firing.by.empty()) energy.text += ", by " + firing.by;
  hands.hands_on = part_of(use.hands_on, use.blades);
  hands.attended = part_of(use.attended, use.blades);
  hands.unattended = Duration{use.unattended};
  return Drafts{energy, hands};
}

Outcome<Drafts> drafts(const BeltWear& belts) {
  if (belts.blades < 1) return bad_count("blades");
  return Drafts{draft(LineKind::used_up, {belts.binned * 1000 / belts.blades, "belts"}, belts.each,
                      scaled_half_even(belts.each, belts.binned, belts.blades))};
}
Outcome<Drafts> drafts(const BathWear& bath) {
  if (bath.blades < 1) return bad_count("blades");
  return Drafts{draft(LineKind::used_up, {1000 / bath.blades, "filling"}, bath.filling,
                      scaled_half_even(bath.filling, 1, bath.blades))};
}
Outcome<Drafts> drafts(const MadeElsewhere& work) {
  return Drafts{draft(LineKind::made_elsewhere, {}, work.charge, work.charge)};
}

void check(Problems& found, const CostDraft& d, const CostInputs& inputs) {
  if (d.kind != LineKind::hours && d.amount.currency() != inputs.currency)
    found.push_back({d.text,
                     "This line is priced in " + d.amount.currency().code() + ", the quote is in " +
                         inputs.currency.code() + ".",
                     "Give its price in " + inputs.currency.code() + "."});
  if (d.amount.minor() < 0 || d.hands_on < Duration{} || d.attended < Duration{})
    found.push_back({d.text, "A cost line cannot be below zero.", "Check its figures."});
  if (d.swing && (d.swing->low < Share{} || d.swing->high < d.swing->low))
    found.push_back(
        {d.text, "The low end of the range is above the high end.", "Check the range."});
}

void check(Problems& found, const PlannedOperation& op) {
  if (op.survival <= Share{} || op.survival > Share::whole())
    found.push_back({op.name, "The survival must be above 0 % and at most 100 %.",
                     "Give the share of blades that come through."});
  if (op.survival_band &&
      (op.survival_band->first <= Share{} || op.survival_band->second > Share::whole() ||
       op.survival_band->first > op.survival_band->second))
    found.push_back({op.name, "The range of the survival must lie above 0 % and up to 100 %.",
                     "Check the range."});
}

CostDraft hours_draft(const PlannedOperation& op, std::size_t index) {
  CostDraft d;
  d.origin = {LineOrigin::From::operation, index};
  d.kind = LineKind::hours;
  d.text = op.name;
  d.hands_on = op.hands_on;
  d.attended = op.attended;
  d.unattended = op.unattended;
  d.operation = index;
  d.swing = op.swing;
  d.by_hand = op.by_hand;
  return d;
}

/// Prices of mass are by the kilogram while the quantity is read in grams.
std::int64_t units_priced(const Quantity& quantity) {
  return quantity.unit == "g" ? 1000 : 1;
}

void set_by_hand(CostDraft& d, const SetByHand& set) {
  if (!set.thousandths && !set.each) return;
  if (set.thousandths) d.quantity.thousandths = *set.thousandths;
  if (set.each) d.each = *set.each;
  d.amount = scaled_half_even(d.each, d.quantity.thousandths, 1000 * units_priced(d.quantity));
}

void add_ingredient(Drafts& all, Problems& found, const CostedItem& item, std::size_t index) {
  const Ingredient& part = item.ingredients[index];
  if (part.operation >= std::max<std::size_t>(1, item.operations.size())) {
    found.push_back({part.text, "This line belongs to an operation the route does not have.",
                     "Choose the operation that uses it."});
    return;
  }
  Outcome<Drafts> made = std::visit([](const auto& source) { return drafts(source); }, part.source);
  for (const Problem& p : made.problems())
    found.push_back({part.text + ": " + p.field, p.sentence, p.remedy});
  if (!made) return;
  for (CostDraft d : *made) {
    const bool hours = d.kind == LineKind::hours;
    d.text = part.text + d.text;
    d.operation = part.operation;
    d.swing = part.swing;
    d.origin = {hours ? LineOrigin::From::firing_hours : LineOrigin::From::ingredient, index};
    if (!hours) set_by_hand(d, part.set);
    d.by_hand = part.minutes_by_hand;
    all.push_back(std::move(d));
  }
}

}  // namespace

Outcome<std::vector<CostDraft>> drafts_of(const CostedItem& item, const CostInputs& inputs) {
  Drafts all;
  Problems found;
  if (item.pieces < 1 || item.pieces > 10'000)
    found.push_back({item.text, "An item is made at least once, and at most 10,000 times.",
                     "Check the number of pieces."});
  for (std::size_t i = 0; i < item.ingredients.size(); ++i) add_ingredient(all, found, item, i);
  for (std::size_t i = 0; i < item.operations.size(); ++i) {
    check(found, item.operations[i]);
    all.push_back(hours_draft(item.operations[i], i));
  }
  for (const CostDraft& d : all) check(found, d, inputs);
  if (!found.empty()) return found;
  return all;
}

}  // namespace tangmark::costing
