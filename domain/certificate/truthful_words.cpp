// SPDX-License-Identifier: MIT
#include "domain/certificate/truthful_words.h"

#include <algorithm>

#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/claims_steel.h"
#include "domain/certificate/layer_count.h"
#include "domain/certificate/pattern_name.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

using TruthfulWords = std::optional<std::string>;

struct Tongues {
  std::string_view en, de, fr, it, es;
  std::string in(std::string_view language) const {
    if (language == "de") return std::string(de);
    if (language == "fr") return std::string(fr);
    if (language == "it") return std::string(it);
    if (language == "es") return std::string(es);
    return std::string(en);
  }
};

constexpr Tongues forged_here = {"forged to shape here", "hier geschmiedet", "forgé ici",
                                 "forgiato qui", "forjado aquí"};
constexpr Tongues ground = {"cut and ground to shape", "aus der Stange geschnitten und geschliffen",
                            "découpé et meulé dans la barre", "tagliato e molato dalla barra",
                            "cortado y rectificado de la barra"};
constexpr Tongues not_measured = {"hardness not measured", "Härte nicht gemessen",
                                  "dureté non mesurée", "durezza non misurata", "dureza no medida"};
constexpr Tongues measured = {"measured", "gemessen", "mesuré", "misurato", "medido"};
constexpr Tongues layers = {"layers by count of stacking", "Lagen nach Schichtrechnung",
                            "couches par calcul d'empilage", "strati per calcolo di impilatura",
                            "capas por cálculo de apilado"};
constexpr Tongues no_cold = {"no cold step on record", "kein Kälteschritt verzeichnet",
                             "aucun traitement par le froid noté",
                             "nessun passaggio a freddo annotato", "ningún paso en frío anotado"};

TruthfulWords shape(std::string_view language, const Judgements& judgements) {
  const auto* forged = std::get_if<Statement>(&judgements.at(Claim::forged));
  if (forged)
    return forged->text.find("not by this shop") == std::string::npos
               ? TruthfulWords(forged_here.in(language))
               : std::nullopt;
  if (holds(judgements.at(Claim::stock_removal))) return ground.in(language);
  return std::nullopt;
}

TruthfulWords hardness(std::string_view language, const BladeCase& blade) {
  const auto readings = readings_that_count(blade);
  if (readings.empty()) return not_measured.in(language);
  if (readings[0]->scale != HardnessScale::hrc) return std::nullopt;
  int low = readings[0]->tenths;
  int high = low;
  for (const HardnessReading* reading : readings) {
    low = std::min(low, reading->tenths);
    high = std::max(high, reading->tenths);
  }
  return tenths_text(low) + (low == high ? "" : "-" + tenths_text(high)) + " HRC, " +
         measured.in(language);
}

TruthfulWords layer_words(std::string_view language, const BladeCase& blade,
                          const Judgements& judgements) {
  if (holds(judgements.at(Claim::layers))) {
    const auto count = layer_count(blade.dossier.steel, *blade.trail.billets().front().billet);
    if (count) return std::to_string(count->layers) + " " + layers.in(language);
  }
  for (const Source& source : blade.trail.sources())
    if (source.lot && source.lot->stated_layers && source.open_gaps == 0)
      return std::to_string(*source.lot->stated_layers) + " layers as stated by the supplier";
  return std::nullopt;
}

TruthfulWords cold(std::string_view language, const BladeCase& blade,
                   const Judgements& judgements) {
  if (!holds(judgements.at(Claim::sub_zero))) return no_cold.in(language);
  const Cold& step = *blade.heats.current()->subzero->cold;
  return to_text(*step.temperature, blade.dossier.manner.temperature) + ", " + to_text(*step.time);
}

TruthfulWords first_sentence(const Judgement& judgement) {
  const auto* statement = std::get_if<Statement>(&judgement);
  if (!statement) return std::nullopt;
  return statement->text;
}

TruthfulWords steel(const Judgements& judgements) {
  if (TruthfulWords grade = first_sentence(judgements.at(Claim::grade))) return grade;
  return first_sentence(judgements.at(Claim::unidentified));
}

TruthfulWords value_of(std::string_view name, std::string_view language, const BladeCase& blade,
                       const Judgements& judgements) {
  if (name == "made") return making_words(making_of(blade, judgements), language);
  if (name == "shape") return shape(language, judgements);
  if (name == "hardness") return hardness(language, blade);
  if (name == "layers") return layer_words(language, blade, judgements);
  if (name == "cold") return cold(language, blade, judgements);
  if (name == "steel") return steel(judgements);
  if (name == "handle") return first_sentence(judgements.at(Claim::handle_species));
  if (name == "heat") return first_sentence(judgements.at(Claim::heat_treatment));
  return std::nullopt;
}

}  // namespace

std::optional<std::string> filled(std::string_view wording, std::string_view language,
                                  const BladeCase& blade, const Judgements& judgements) {
  std::string text;
  while (!wording.empty()) {
    const std::size_t open = wording.find('{');
    text += wording.substr(0, open);
    if (open == std::string_view::npos) break;
    const std::size_t close = wording.find('}', open);
    if (close == std::string_view::npos) return std::nullopt;
    const auto value =
        value_of(wording.substr(open + 1, close - open - 1), language, blade, judgements);
    if (!value) return std::nullopt;
    text += *value;
    wording.remove_prefix(close + 1);
  }
  return text;
}

}  // namespace tangmark::certificate
