// SPDX-License-Identifier: MIT
#include "domain/certificate/pattern_name.h"

#include <array>

#include "domain/certificate/claims_steel.h"
#include "domain/certificate/layer_count.h"

namespace tangmark::certificate {
namespace {

struct PatternWords {
  Making making;
  std::string_view en, de, fr, it, es;
};

constexpr std::array<PatternWords, 12> rows = {{
    {Making::wootz, "wootz, crucible steel with a pattern of carbides",
     "Wootz, Tiegelstahl mit Karbidmuster", "wootz, acier au creuset à motif de carbures",
     "wootz, acciaio al crogiolo con disegno di carburi",
     "wootz, acero de crisol con dibujo de carburos"},
    {Making::crucible, "crucible steel", "Tiegelstahl", "acier au creuset", "acciaio al crogiolo",
     "acero de crisol"},
    {Making::laminated_patterned, "laminated steel with pattern-welded steel in it",
     "Laminatstahl mit Schweißverbundstahl", "acier laminé avec acier soudé à motif",
     "acciaio laminato con acciaio saldato a disegno",
     "acero laminado con acero soldado con dibujo"},
    {Making::pattern_welded, "pattern-welded steel", "Schweißverbundstahl (Schweißdamast)",
     "acier soudé à motif", "acciaio saldato a disegno", "acero soldado con dibujo"},
    {Making::pattern_welded_bought, "pattern-welded steel, bought as a bar",
     "Schweißverbundstahl, als Stange gekauft", "acier soudé à motif, acheté en barre",
     "acciaio saldato a disegno, comprato in barra", "acero soldado con dibujo, comprado en barra"},
    {Making::laminated, "laminated steel (san mai)", "Laminatstahl (San Mai)",
     "acier laminé (san mai)", "acciaio laminato (san mai)", "acero laminado (san mai)"},
    {Making::smelted, "steel smelted from ore", "aus Erz erschmolzener Stahl",
     "acier réduit du minerai", "acciaio ridotto dal minerale", "acero reducido del mineral"},
    {Making::carbide_banded, "carbide-banded bar steel", "Stangenstahl mit Karbidbändern",
     "acier en barre à bandes de carbures", "acciaio in barra a bande di carburi",
     "acero en barra con bandas de carburos"},
    {Making::etched_image, "one steel with an etched image", "ein Stahl mit geätztem Bild",
     "un seul acier à image gravée à l'acide", "un solo acciaio con immagine incisa all'acido",
     "un solo acero con imagen grabada al ácido"},
    {Making::hamon, "one steel with a hamon", "ein Stahl mit Hamon", "un seul acier avec hamon",
     "un solo acciaio con hamon", "un solo acero con hamon"},
    {Making::one_steel, "one steel", "ein Stahl (Monostahl)", "un seul acier", "un solo acciaio",
     "un solo acero"},
    {Making::unidentified, "steel not identified", "Stahl nicht bestimmt", "acier non identifié",
     "acciaio non identificato", "acero no identificado"},
}};

std::string explanation_of(Making making) {
  switch (making) {
    case Making::wootz:
    case Making::crucible:
      return "Crucible steel is not pattern-welded: this steel was melted and set as one ingot, "
             "and "
             "has no layers.";
    case Making::laminated_patterned:
    case Making::pattern_welded:
    case Making::pattern_welded_bought:
      return "Pattern-welded steel is called Damascus in today's trade. It is forge-welded from "
             "layers; it is not crucible steel and not wootz.";
    case Making::laminated:
      return "Laminated steel is a core between outer layers. It is not pattern-welded in many "
             "layers.";
    case Making::carbide_banded:
      return "A carbide pattern raised in a bought bar is neither pattern-welded nor crucible "
             "steel: "
             "nothing was welded, and this shop melted nothing.";
    case Making::etched_image:
      return "There are no layers: the pattern lies on the surface of one steel and does not run "
             "across the spine.";
    case Making::hamon:
      return "A hamon is a border of hardness in one steel. It is no weld and no layer.";
    case Making::smelted:
      return "Steel smelted from ore has no grade: its carbon differs from place to place.";
    case Making::unidentified:
      return "No grade is stated because none can be shown.";
    case Making::one_steel:
      return "";
  }
  return {};
}

std::string layers_suffix(const BladeCase& blade) {
  if (blade.trail.billets().empty()) return {};
  const Outcome<LayerCount> count =
      layer_count(blade.dossier.steel, *blade.trail.billets().front().billet);
  return count ? ", " + std::to_string(count->layers) + " layers" : std::string();
}

// More exact names that the record bears as well.
std::vector<std::string> fuller_names(const BladeCase& blade, const Judgements& judgements,
                                      Making making) {
  const std::string plain = making_words(making, "en");
  std::vector<std::string> names;
  switch (making) {
    case Making::wootz:
      names.push_back("crucible steel with a pattern of carbides");
      break;
    case Making::pattern_welded: {
      const bool counted = holds(judgements.at(Claim::layers));
      const std::string layers = counted ? layers_suffix(blade) : "";
      if (counted) names.push_back(plain + layers);
      const auto& pattern = blade.trail.billets().front().billet->pattern_name;
      if (pattern && !pattern->empty())
        names.push_back(plain + layers + ", " + *pattern + " pattern");
      names.push_back("pattern-welded Damascus" + layers);
      break;
    }
    case Making::pattern_welded_bought:
      names.push_back("pattern-welded Damascus, bought as a bar");
      break;
    case Making::laminated:
      names.push_back("san mai");
      break;
    case Making::one_steel:
    case Making::hamon: {
      const Source* source = blade.trail.only_source();
      if (source && source->lot && identified(*source))
        names.push_back(sold_name(*source->lot) +
                        (making == Making::hamon ? " with a hamon" : ", one steel throughout"));
      break;
    }
    default:
      break;
  }
  return names;
}

}  // namespace

Making making_of(const BladeCase& blade, const Judgements& judgements) {
  const auto has = [&](Claim claim) { return holds(judgements.at(claim)); };
  const bool patterned = has(Claim::pattern_welded) || has(Claim::pattern_welded_bought);
  if (has(Claim::wootz)) return Making::wootz;
  if (has(Claim::laminated) && patterned) return Making::laminated_patterned;
  if (has(Claim::pattern_welded)) return Making::pattern_welded;
  if (has(Claim::pattern_welded_bought)) return Making::pattern_welded_bought;
  if (has(Claim::laminated)) return Making::laminated;
  if (has(Claim::crucible)) return Making::crucible;
  if (has(Claim::smelted)) return Making::smelted;
  if (has(Claim::etched_image)) return Making::etched_image;
  if (has(Claim::carbide_banded)) return Making::carbide_banded;
  if (has(Claim::hamon)) return Making::hamon;
  const Source* source = blade.trail.only_source();
  if (source && source->lot && source->lot->sold_as == SoldAs::one_steel && source->open_gaps == 0)
    return Making::one_steel;
  return Making::unidentified;
}

std::vector<TruthfulName> truthful_names(const BladeCase& blade, const Judgements& judgements) {
  const Making making = making_of(blade, judgements);
  const std::string explanation = explanation_of(making);
  std::vector<TruthfulName> names = {{making_words(making, "en"), explanation}};
  for (const std::string& name : fuller_names(blade, judgements, making))
    names.push_back({name, explanation});
  return names;
}

std::string making_words(Making making, std::string_view language) {
  for (const PatternWords& row : rows) {
    if (row.making != making) continue;
    if (language == "de") return std::string(row.de);
    if (language == "fr") return std::string(row.fr);
    if (language == "it") return std::string(row.it);
    if (language == "es") return std::string(row.es);
    return std::string(row.en);
  }
  return {};
}

}  // namespace tangmark::certificate
