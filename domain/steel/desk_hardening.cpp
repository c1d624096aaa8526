// SPDX-License-Identifier: MIT
// Computations of the desk about critical points and hardening.
#include "domain/steel/critical_points.h"
#include "domain/steel/desk_calculations.h"
#include "domain/steel/desk_input.h"
#include "domain/steel/hardenability.h"
#include "domain/steel/martensite_start.h"
#include "domain/steel/quench_severity.h"

namespace tangmark::steel {
namespace {

const DeskKey composition_key = {
    "composition", "", "", "weight per cent such as C:0.95,Mn:0.3, or a grade", Need::required};

std::string list_of(const std::vector<std::string>& words) {
  std::string list;
  for (const std::string& word : words) list += (list.empty() ? "" : ", ") + word;
  return list;
}

void note_outside(DeskAnswer& answer, const std::string& what,
                  const std::vector<std::string>& outside) {
  if (outside.empty()) return;
  answer.notes.push_back(what + " was not fitted for this " + list_of(outside) + ": extrapolated.");
}

void note_assumed(DeskAnswer& answer, const NamedComposition& steel) {
  if (!steel.note.empty()) answer.notes.push_back(steel.note);
}

Outcome<DeskAnswer> critical(const DeskInput& input) {
  const auto steel = input.composition("composition");
  if (!steel) return steel.problems();
  const auto points = critical_points(steel->composition);
  if (!points) return points.problems();
  DeskAnswer answer{{{"ac1_c", points->ac1_c},
                     {"ac3_c", points->ac3_c ? DeskValue(*points->ac3_c) : DeskValue()}},
                    {"Slow heating, equilibrium not waited for; about 15 C either way at best."}};
  if (!points->ac3_c) answer.fields.push_back({"reason", points->no_ac3_reason});
  answer.fields.push_back({"out_of_range", points->outside});
  note_outside(answer, "Andrews' formula", points->outside);
  note_assumed(answer, *steel);
  return answer;
}

Outcome<DeskAnswer> ms(const DeskInput& input) {
  const auto steel = input.composition("composition");
  if (!steel) return steel.problems();
  const auto start = martensite_start(steel->composition);
  if (!start) return start.problems();
  DeskAnswer answer{{{"andrews_c", start->andrews_c},
                     {"steven_haynes_c", start->steven_haynes_c},
                     {"andrews_product_c", start->andrews_product_c},
                     {"out_of_range_andrews", start->outside_andrews},
                     {"out_of_range_steven_haynes", start->outside_steven_haynes}},
                    {"Use the carbon dissolved at the hardening heat; 25 C either way at best."}};
  note_outside(answer, "Andrews' formula", start->outside_andrews);
  note_outside(answer, "Steven and Haynes' formula", start->outside_steven_haynes);
  note_assumed(answer, *steel);
  return answer;
}

Outcome<DeskAnswer> ideal_diameter(const DeskInput& input) {
  Gather form;
  const auto steel = form.take(input.composition("composition"));
  const double grain = form.take(input.number("grain"));
  if (form.refused()) return form.problems();
  const auto result = hardenability(steel.composition, grain);
  if (!result) return result.problems();
  DeskValue::Fields factors;
  for (const auto& [element, factor] : result->factors) {
    factors.push_back({std::string(symbol(element)), factor});
  }
  DeskAnswer answer{{{"di_in", result->di_in},
                     {"di_mm", result->di_mm()},
                     {"in_range", result->in_range},
                     {"out_of_range", result->out_of_range},
                     {"factors", factors}},
                    {}};
  if (!result->in_range) {
    answer.notes.push_back("Outside ASTM A255 range: " + list_of(result->out_of_range) + ".");
  }
  note_assumed(answer, steel);
  return answer;
}

std::string_view words_of(ThroughHardening verdict) {
  switch (verdict) {
    case ThroughHardening::through:
      return "yes";
    case ThroughHardening::doubtful:
      return "doubtful";
    case ThroughHardening::not_through:
      break;
  }
  return "no";
}

Outcome<DeskAnswer> through(const DeskInput& input) {
  Gather form;
  const auto steel = form.take(input.composition("composition"));
  const double grain = form.take(input.number("grain"));
  const Length thickness = form.take(input.length("thickness_mm"));
  const auto bath = form.take(quench_severity(input.text("bath"), input.text("agitation")));
  if (form.refused()) return form.problems();
  const auto di = hardenability(steel.composition, grain);
  if (!di) return di.problems();
  const double limit_in = plate_hardened_through_in(di->di_in, bath.middle_per_in());
  DeskAnswer answer{
      {{"through", words_of(through_hardening(di->di_in, thickness, bath))},
       {"limit_mm", limit_in * 25.4},
       {"di_mm", di->di_mm()},
       {"h_low_per_in", bath.low_per_in},
       {"h_high_per_in", bath.high_per_in},
       {"in_range", di->in_range}},
      {"limit_mm is half martensite at the middle of a wide plate; a blade wants more.",
       "An estimate for ranking, not a promise of hardness."}};
  if (!di->in_range) {
    answer.notes.push_back("Outside ASTM A255 range: " + list_of(di->out_of_range) + ".");
  }
  note_assumed(answer, steel);
  return answer;
}

}  // namespace

std::vector<DeskCalculation> hardening_calculations() {
  return {
      {"critical",
       "where the steel changes on slow heating",
       {composition_key},
       "Andrews, JISI 203 (1965) 721: Ac1 = 723 - 10.7 Mn - 16.9 Ni + 29.1 Si + 16.9 Cr + 6.38 W + "
       "290 As; Ac3 = 910 - 203 sqrt C - 15.2 Ni + 44.7 Si + 104 V + 31.5 Mo + 13.1 W (short "
       "form); "
       "coefficients from secondary transcriptions",
       "low-alloy steel, C to 0.6 %; outside it is labelled; no Ac3 above 0.76 %C",
       critical},
      {"ms",
       "where martensite starts to form",
       {composition_key},
       "Andrews, JISI 203 (1965) 721: 539 - 423 C - 30.4 Mn - 17.7 Ni - 12.1 Cr - 7.5 Mo, with "
       "-7.5 Si "
       "added later; Steven & Haynes, JISI 183 (1956) 349, from memory: 561 - 474 C - 33 Mn - 17 "
       "Cr - "
       "17 Ni - 21 Mo",
       "fitted below about 0.6 %C in solution; outside it is labelled",
       ms},
      {"hardenability",
       "the ideal critical diameter",
       {composition_key, {"grain", "", "7", "ASTM grain size number", Need::optional}},
       "ASTM A255 factors (carbon and vanadium from memory, the others agree in several secondary "
       "transcriptions); other grain sizes than No. 7 by a handbook formula, from memory",
       "C 0.10-0.70, Mn 0.50-1.65, Si 0.15-0.60, Ni to 1.50, Cr to 1.35, Mo to 0.55, Cu to 0.35, V "
       "to "
       "0.20, grain 7; outside it is computed and labelled",
       ideal_diameter},
      {"through",
       "whether a blade's section hardens through in a bath",
       {composition_key,
        {"thickness_mm", "mm", "", "thickness of the section", Need::required},
        {"bath", "", "oil", "air, oil, water or brine", Need::optional},
        {"agitation", "", "moderate", "none, mild, moderate, good, strong or violent",
         Need::optional},
        {"grain", "", "7", "ASTM grain size number", Need::optional}},
       "ASTM A255 and Grossmann's severities (from memory) with the theory of Grossmann, Asimow & "
       "Urban (1939) for a plate",
       "half martensite at the middle; most knife steels lie outside A255 by their carbon",
       through},
  };
}

}  // namespace tangmark::steel
