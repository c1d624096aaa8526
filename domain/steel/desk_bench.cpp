// SPDX-License-Identifier: MIT
// Computations of the desk about bars, billets, baths and fires.
#include <cmath>

#include "domain/measure/mass.h"
#include "domain/steel/composition.h"
#include "domain/steel/cooling.h"
#include "domain/steel/desk_calculations.h"
#include "domain/steel/desk_input.h"
#include "domain/steel/etchant.h"
#include "domain/steel/figure_text.h"
#include "domain/steel/fuel.h"
#include "domain/steel/layer_count.h"

namespace tangmark::steel {
namespace {

Outcome<double> density_of(const DeskInput& input) {
  auto figure = input.number("density_kg_m3");
  if (!figure || (*figure >= 500 && *figure <= 25'000)) return figure;
  return Problem{"density_kg_m3", "The density must be between 500 and 25000 kg/m3.",
                 "Carbon steel is 7850; multiply g/cm3 by 1000."};
}

// A density read from a sheet in lb/in3 is no whole kg/m3: between two whole ones mass is linear.
template <class MassOf>
double kilograms(double density, MassOf mass_of) {
  const auto whole = static_cast<std::int64_t>(density);
  const double less = mass_of(Density{whole}).in_kilograms();
  const double more = mass_of(Density{whole + 1}).in_kilograms();
  return std::lerp(less, more, density - static_cast<double>(whole));
}

Outcome<DeskAnswer> mass(const DeskInput& input) {
  Gather form;
  const auto section = form.take(input.one_of({"thickness_mm", "diameter_mm"}));
  const Length length = form.take(input.length("length_mm"));
  const double density = form.take(density_of(input), 7850.0);
  if (form.refused()) return form.problems();
  if (section == 1) {
    if (input.has("width_mm")) {
      form.add({"width_mm", "A round bar has no width.", "Give width_mm with thickness_mm only."});
    }
    const Length diameter = form.take(input.length("diameter_mm"));
    if (form.refused()) return form.problems();
    return DeskAnswer{
        {{"mass_kg",
          kilograms(density, [&](Density d) { return round_mass(length, diameter, d); })}},
        {}};
  }
  const Length width = form.take(input.length("width_mm"));
  const Length thickness = form.take(input.length("thickness_mm"));
  if (form.refused()) return form.problems();
  return DeskAnswer{
      {{"mass_kg",
        kilograms(density, [&](Density d) { return bar_mass(length, width, thickness, d); })}},
      {}};
}

Outcome<std::int64_t> whole(const DeskInput& input, std::string_view key) {
  const auto figure = input.number(key);
  if (!figure) return figure.problems();
  if (!(*figure >= 1 && *figure <= 1e15) || *figure != std::floor(*figure)) {
    return Problem{std::string(key), "The count must be a whole number from 1.", "Count again."};
  }
  return static_cast<std::int64_t>(*figure);
}

Outcome<DeskAnswer> layers(const DeskInput& input) {
  Gather form;
  const auto start = form.take(whole(input, "start"));
  const auto restacks = form.take(parse_restacks(input.text("operations"), "operations"));
  const std::string_view thickness_key = input.has("thickness") ? "thickness" : "thickness_mm";
  const bool with_thickness = input.has(thickness_key);
  const auto thickness = with_thickness ? form.take(input.length(thickness_key)) : Length();
  if (form.refused()) return form.problems();
  const auto count = nominal_layers(start, restacks);
  if (!count) return count.problems();
  DeskAnswer answer{{{"layers", *count}},
                    {"Nominal: nothing is taken off for layers ground away or "
                     "for like steels that meet at a restack."}};
  if (with_thickness) {
    answer.fields.push_back(
        {"thickness_mm", mean_layer_thickness_mm(thickness.in_millimetres(), *count)});
    answer.notes.emplace_back("thickness_mm is the mean of one layer.");
  }
  return answer;
}

Outcome<double> share_of_part(std::string_view text, std::string_view part) {
  if (text.ends_with('%')) text.remove_suffix(1);
  auto share = parse_figure(text, "parts");
  if (share && !(*share > 0)) {
    return Problem{"parts", "The share of \"" + std::string(part) + "\" must be above zero.",
                   "Leave out a part of which there is none."};
  }
  return share;
}

Outcome<DeskAnswer> blend_of_parts(const DeskInput& input) {
  Gather form;
  std::vector<BlendPart> parts;
  DeskAnswer answer;
  double total = 0;
  for (const std::string_view part : split_outside_brackets(input.text("parts"), ',')) {
    const std::size_t mark = part.rfind(':');
    if (mark == std::string_view::npos || part.ends_with(')')) {
      form.add({"parts", "\"" + std::string(part) + "\" names no share.",
                "Write them as W1:0.6,15N20:0.4 or (C:0.95,Mn:0.3):0.6,..."});
      continue;
    }
    const auto steel = form.take(input.read_composition(trimmed(part.substr(0, mark)), "parts"));
    const double share = form.take(share_of_part(trimmed(part.substr(mark + 1)), part));
    parts.push_back({steel.composition, share});
    total += share;
    if (!steel.note.empty()) answer.notes.push_back(steel.note);
  }
  if (form.refused()) return form.problems();
  const auto mixed = blend(parts);
  if (!mixed) return mixed.problems();
  if (std::abs(total - 1) > 1e-9) {
    answer.notes.push_back("The shares sum to " + figure_text(total) +
                           " and were taken as masses.");
  }
  answer.fields.push_back({"composition", composition_value(*mixed)});
  answer.fields.push_back({"assumed", answer.notes});
  return answer;
}

Outcome<double> strength(const DeskInput& input, std::string_view wt_key, std::string_view be_key) {
  const auto which = input.one_of({wt_key, be_key});
  if (!which) return which.problems();
  if (*which == 0) return input.above_zero(wt_key);
  const auto degrees = input.above_zero(be_key);
  if (!degrees) return degrees;
  auto wt = ferric_chloride_from_baume_wt(*degrees);
  if (wt) return wt;
  Problem problem = wt.problem();
  problem.field = be_key;
  return problem;
}

Outcome<double> millilitres(const DeskInput& input, std::string_view key) {
  const auto [figure_part, unit_part] = number_then_unit(input.text(key));
  const auto figure = parse_figure(figure_part, key);
  if (!figure) return figure;
  const std::string unit = lower(unit_part);
  if (unit.empty() || unit == "ml") return *figure;
  if (unit == "l") return *figure * 1000;
  return Problem{std::string(key),
                 "\"" + std::string(unit_part) + "\" is not a unit of volume here.",
                 "Write it in ml or l."};
}

Outcome<DeskAnswer> etchant(const DeskInput& input) {
  Gather form;
  const double have = form.take(strength(input, "have_wt", "have_be"));
  const double want = form.take(strength(input, "want_wt", "want_be"));
  const double make = form.take(millilitres(input, "make_ml"));
  if (form.refused()) return form.problems();
  const auto mix = dilute_ferric_chloride(have, want, make);
  if (!mix) return mix.problems();
  return DeskAnswer{
      {{"stock_ml", mix->stock_ml},
       {"water_ml", mix->water_ml},
       {"density_g_ml", mix->density_g_ml},
       {"have_wt", have},
       {"want_wt", want}},
      {"Volumes do not add exactly: make up to the mark.",
       "A bottle marked 40 % may mean 40 g in 100 ml, about 31 weight per cent.",
       "Ferric chloride is corrosive: goggles, gloves, plastic vessels; follow its own "
       "safety sheet and local rules for used bath."}};
}

Outcome<FuelGas> gas_of(const DeskInput& input) {
  std::string gas = lower(input.text("gas"));
  std::erase_if(gas, [](char c) { return c == '_' || c == ' ' || c == '-'; });
  if (gas == "propane") return FuelGas::propane;
  if (gas == "naturalgas") return FuelGas::natural_gas;
  return Problem{"gas", "\"" + std::string(input.text("gas")) + "\" is no gas of the table.",
                 "Give propane or natural_gas."};
}

Outcome<DeskAnswer> fuel(const DeskInput& input) {
  const std::vector<std::string_view> measures = {"mass_kg", "volume_l", "volume_m3"};
  Gather form;
  const FuelGas gas = form.take(gas_of(input));
  const std::size_t which = form.take(input.one_of(measures));
  if (form.refused()) return form.problems();
  const auto amount = input.above_zero(measures[which]);
  if (!amount) return amount.problems();
  const auto heat = fuel_heat(gas, static_cast<FuelMeasure>(which), *amount);
  if (!heat) {
    Problem problem = heat.problem();
    if (problem.field == "amount") problem.field = measures[which];
    return problem;
  }
  return DeskAnswer{
      {{"energy_mj", btu_in_mj(heat->gross_btu)},
       {"energy_kwh", btu_in_kwh(heat->gross_btu)},
       {"energy_btu", heat->gross_btu},
       {"net_mj", btu_in_mj(heat->net_btu)},
       {"net_kwh", btu_in_kwh(heat->net_btu)},
       {"net_btu", heat->net_btu}},
      {"Gross counts the heat of the water vapour, which a forge does not get back."}};
}

Outcome<DeskAnswer> cooling(const DeskInput& input) {
  Gather form;
  const Temperature from = form.take(input.temperature("from_c"));
  const Temperature to = form.take(input.temperature("to_c"));
  const Temperature ambient = form.take(input.temperature("ambient_c"));
  const double tau = form.take(input.minutes("tau_min", 1));
  if (form.refused()) return form.problems();
  const auto minutes = cooling_minutes(from, to, ambient, tau);
  if (!minutes) return minutes.problems();
  return DeskAnswer{{{"minutes", *minutes}}, {}};
}

}  // namespace

std::vector<DeskCalculation> bench_calculations() {
  return {
      {"mass",
       "the mass of a bar from its size",
       {{"length_mm", "mm", "", "length of the bar", Need::required},
        {"width_mm", "mm", "", "width, with thickness_mm", Need::one_of_set},
        {"thickness_mm", "mm", "", "thickness of a flat bar", Need::one_of_set},
        {"diameter_mm", "mm", "", "diameter of a round bar", Need::one_of_set},
        {"density_kg_m3", "kg/m3", "7850", "density of the steel", Need::optional}},
       "volume x density; 7850 kg/m3 for carbon steel is common practice",
       "lengths above 0 and up to 10 m; refused outside",
       mass},
      {"layers",
       "nominal layers of a billet after its restacks",
       {{"start", "layers", "", "layers of the first stack", Need::required},
        {"operations", "", "", "restacks such as cut2,fold,cut3 (fold doubles, cutN stacks N)",
         Need::optional},
        {"thickness_mm", "mm", "", "finished thickness of the billet", Need::optional},
        {"thickness", "mm", "", "the same as thickness_mm", Need::optional}},
       "arithmetic, common practice",
       "up to 10^15 layers; refused above",
       layers},
      {"blend",
       "the mean composition of a billet or a melt",
       {{"parts", "", "",
         "steel:share with commas, such as W1:0.6,15N20:0.4 or (C:0.95,Mn:0.3):0.6,...",
         Need::required}},
       "conservation of mass; a grade counts as the middle of its limits (common practice, no "
       "source)",
       "no burn-off, no decarburization",
       blend_of_parts},
      {"etchant",
       "stock and water for a ferric chloride bath",
       {{"have_wt", "weight %", "", "strength of the stock", Need::one_of_set},
        {"have_be", "degrees Baume", "", "strength of the stock, heavy scale", Need::one_of_set},
        {"want_wt", "weight %", "", "strength of the bath", Need::one_of_set},
        {"want_be", "degrees Baume", "", "strength of the bath, heavy scale", Need::one_of_set},
        {"make_ml", "ml", "", "finished volume", Need::required}},
       "a producer's density table for FeCl3 at 20 C as republished; degrees Baume = 145 - 145 / "
       "SG; "
       "water 0.998; dilution by mass",
       "up to 44 weight % (46.3 Baume); refused above, and when stronger than the stock",
       etchant},
      {"fuel",
       "the heat in an amount of gas",
       {{"gas", "", "", "propane or natural_gas", Need::required},
        {"mass_kg", "kg", "", "mass of propane", Need::one_of_set},
        {"volume_l", "l", "", "liquid litres of propane", Need::one_of_set},
        {"volume_m3", "m3", "", "volume of gas (propane: vapour)", Need::one_of_set}},
       "US EIA: propane 91,452 Btu/gal gross, natural gas 1,037 Btu/ft3; 4.24 lb/gal, 36.4 ft3 of "
       "vapour a gallon and 84,250 Btu/gal net from secondary pages; net of natural gas 0.902 of "
       "gross "
       "from memory; 1055.056 J a Btu (NIST SP 811)",
       "gas of usual make-up; natural gas by volume only",
       fuel},
      {"cooling",
       "minutes for a switched-off kiln to cool",
       {{"from_c", "C", "", "where it starts", Need::required},
        {"to_c", "C", "", "where it shall end", Need::required},
        {"ambient_c", "C", "", "the air around it", Need::required},
        {"tau_min", "min", "", "the kiln's time constant", Need::required}},
       "Newton's law of cooling, tau x ln((from - ambient) / (to - ambient))",
       "downwards only, to above ambient; refused otherwise",
       cooling},
  };
}

}  // namespace tangmark::steel
