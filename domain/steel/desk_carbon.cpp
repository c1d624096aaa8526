// SPDX-License-Identifier: MIT
// Computations of the desk about carbon: phases at heat, and carbon on the move.
#include "domain/steel/carbon_diffusion.h"
#include "domain/steel/desk_calculations.h"
#include "domain/steel/desk_input.h"
#include "domain/steel/iron_carbon.h"

namespace tangmark::steel {
namespace {

Outcome<DeskAnswer> phases(const DeskInput& input) {
  Gather form;
  const double carbon = form.take(input.number("carbon_wt"));
  const Temperature at = form.take(input.temperature("temperature_c"));
  if (form.refused()) return form.problems();
  const auto found = iron_carbon_phases(carbon, at);
  if (!found) return found.problems();
  DeskValue::Fields carbon_in;
  const auto add = [&](const char* phase, const std::optional<double>& wt) {
    if (wt) carbon_in.push_back({phase, *wt});
  };
  add("ferrite", found->carbon_in_ferrite_wt);
  add("austenite", found->carbon_in_austenite_wt);
  add("cementite", found->carbon_in_cementite_wt);
  DeskAnswer answer{{{"phases", DeskValue::Fields{{"ferrite", found->ferrite},
                                                  {"austenite", found->austenite},
                                                  {"cementite", found->cementite}}},
                     {"carbon_in", carbon_in}},
                    {"Iron and carbon alone at equilibrium; Cr, Mn, Ni and Si move every line."}};
  if (found->constituents) {
    const Constituents& seen = *found->constituents;
    answer.fields.push_back(
        {"constituents",
         DeskValue::Fields{{"pearlite", seen.pearlite},
                           {"proeutectoid_ferrite", seen.proeutectoid_ferrite},
                           {"proeutectoid_cementite", seen.proeutectoid_cementite}}});
  }
  return answer;
}

Outcome<double> diffusivity(const DeskInput& input) {
  if (input.has("diffusivity_m2_s")) return input.above_zero("diffusivity_m2_s");
  const auto which = input.one_of({"temperature_c", "diffusivity_m2_s"});
  if (!which) return which.problems();
  const auto at = input.temperature("temperature_c");
  if (!at) return at.problems();
  return carbon_diffusivity_m2_s(*at);
}

CarbonProfile profile_of(const DeskInput& input, Gather& form) {
  CarbonProfile profile;
  profile.surface_wt = form.take(input.number("surface_wt"));
  profile.initial_wt = form.take(input.number("initial_wt"));
  profile.diffusivity_m2_s = form.take(diffusivity(input), 1.0);
  profile.hours = form.take(input.minutes("hours", 60)) / 60;
  return profile;
}

DeskAnswer with_diffusivity(const DeskInput& input, const CarbonProfile& profile, DeskField field) {
  DeskAnswer answer{{{"diffusivity_m2_s", profile.diffusivity_m2_s}, std::move(field)}, {}};
  if (input.has("diffusivity_m2_s") && input.has("temperature_c")) {
    answer.notes.emplace_back("The diffusivity was given, so the temperature was not used.");
  }
  return answer;
}

Outcome<DeskAnswer> carbon(const DeskInput& input) {
  Gather form;
  const CarbonProfile profile = profile_of(input, form);
  const double depth = form.take(input.number("depth_mm"));
  if (form.refused()) return form.problems();
  const auto wt = carbon_at_depth_wt(profile, depth);
  if (!wt) return wt.problems();
  return with_diffusivity(input, profile, {"carbon_wt", *wt});
}

Outcome<DeskAnswer> decarb(const DeskInput& input) {
  Gather form;
  const CarbonProfile profile = profile_of(input, form);
  const double wanted = form.take(input.number("carbon_wt"));
  if (form.refused()) return form.problems();
  const auto depth = depth_of_carbon_mm(profile, wanted);
  if (!depth) return depth.problems();
  return with_diffusivity(input, profile, {"depth_mm", *depth});
}

Outcome<DeskAnswer> equalize(const DeskInput& input) {
  Gather form;
  const double layer_mm = form.take(input.above_zero("layer_mm"), 1.0);
  const double d = form.take(diffusivity(input), 1.0);
  const double hours = form.take(input.minutes("hours", 60)) / 60;
  if (form.refused()) return form.problems();
  return DeskAnswer{
      {{"diffusivity_m2_s", d}, {"difference_left", layer_difference_left(layer_mm, d, hours)}},
      {"Carbon alone, both layers austenite; chromium, nickel and manganese stay, and "
       "carbon ends where its activity is even, not its content."}};
}

const DeskKey temperature_key = {"temperature_c", "C", "", "temperature at heat", Need::one_of_set};
const DeskKey diffusivity_key = {"diffusivity_m2_s", "m2/s", "", "diffusivity of carbon, if known",
                                 Need::one_of_set};
const DeskKey hours_key = {"hours", "h", "", "time at heat", Need::required};
const DeskKey surface_key = {"surface_wt", "weight %", "", "carbon held at the surface",
                             Need::required};
const DeskKey initial_key = {"initial_wt", "weight %", "", "carbon of the steel", Need::required};

constexpr const char* diffusion_source =
    "Fick's second law, error-function profile; D0 2.3e-5 m2/s and 148 kJ/mol from Callister's "
    "table "
    "(another set: 2.0e-5 m2/s, 142 kJ/mol)";
constexpr const char* diffusion_range =
    "austenite, 727 to 1493 C, carbon to 2.14 %, far from the other face; refused outside";

}  // namespace

std::vector<DeskCalculation> carbon_calculations() {
  return {
      {"phases",
       "the phases of iron and carbon at a temperature",
       {{"carbon_wt", "weight %", "", "carbon of the steel", Need::required},
        {"temperature_c", "C", "", "temperature", Need::required}},
       "lever rule with Callister's constants 0.022 / 0.76 / 6.70 %C at 727 C; straight lines for "
       "A3, "
       "Acm and the limit of ferrite",
       "to 1147 C and 2.14 %C; refused outside; alloying moves every line",
       phases},
      {"carbon",
       "the carbon at a depth below a surface",
       {surface_key,
        initial_key,
        temperature_key,
        diffusivity_key,
        hours_key,
        {"depth_mm", "mm", "", "depth below the surface", Need::required}},
       diffusion_source,
       diffusion_range,
       carbon},
      {"decarb",
       "the depth at which a carbon content is met",
       {surface_key,
        initial_key,
        temperature_key,
        diffusivity_key,
        hours_key,
        {"carbon_wt", "weight %", "", "the carbon content looked for", Need::required}},
       diffusion_source,
       diffusion_range,
       decarb},
      {"equalize",
       "how much of the carbon difference between layers is left",
       {{"layer_mm", "mm", "", "thickness of one layer", Need::required},
        temperature_key,
        diffusivity_key,
        hours_key},
       "Fick's second law for a periodic stack (Crank, The Mathematics of Diffusion); diffusivity "
       "as in "
       "carbon",
       "two kinds of layer of equal thickness, both austenite",
       equalize},
  };
}

}  // namespace tangmark::steel
