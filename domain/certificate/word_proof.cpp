// SPDX-License-Identifier: MIT
#include "domain/certificate/word_proof.h"

#include <algorithm>
#include <cmath>

#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/claims_steel.h"
#include "domain/certificate/disclosures.h"
#include "domain/certificate/layer_count.h"
#include "domain/certificate/phrasing.h"
#include "domain/measure/utf8.h"

namespace tangmark::certificate {
namespace {

bool has(const TextAgainstRecord& text, Claim claim) {
  return holds(text.judgements.at(claim));
}

bool any_claim(const TextAgainstRecord& text, const Found& found) {
  return std::any_of(found.entry->needs.begin(), found.entry->needs.end(),
                     [&](Claim claim) { return has(text, claim); });
}

bool key_in(const std::vector<std::string>& keys, const std::string& words) {
  const std::string plain = folded(words);
  return std::any_of(keys.begin(), keys.end(),
                     [&](const std::string& key) { return plain.find(key) != std::string::npos; });
}

// "About" bears one part in ten: common practice, no source.
bool agrees(const SaidFigure& said, double real) {
  if (said.over) return real >= said.value;
  if (said.about) return std::abs(said.value - real) <= real / 10;
  return said.value == real;
}

// Words of the same clause before or behind the find, folded.
bool clause_holds(const TextAgainstRecord& text, const Found& found,
                  std::initializer_list<std::string_view> wanted) {
  const auto is_wanted = [&](const std::string& word) {
    return std::any_of(wanted.begin(), wanted.end(),
                       [&](std::string_view w) { return word.substr(0, w.size()) == w; });
  };
  for (std::size_t k = found.first; k > 0 && !ends_clause(text.words[k].gap); --k)
    if (is_wanted(text.words[k - 1].text)) return true;
  for (std::size_t k = found.last; k < text.words.size() && !ends_clause(text.words[k].gap); ++k)
    if (is_wanted(text.words[k].text)) return true;
  return false;
}

bool layers_agree(const TextAgainstRecord& text, const Found& found) {
  if (!found.figure)
    return has(text, Claim::layers) || has(text, Claim::pattern_welded) ||
           has(text, Claim::pattern_welded_bought) || has(text, Claim::laminated);
  if (has(text, Claim::layers)) {
    const auto count =
        layer_count(text.blade.dossier.steel, *text.blade.trail.billets().front().billet);
    return count && agrees(*found.figure, static_cast<double>(count->layers));
  }
  // A supplier's count may be quoted, as the supplier's.
  const bool quoted = clause_holds(text, found,
                                   {"stated", "according", "supplier", "angabe", "laut", "selon",
                                    "secondo", "segun", "dichiarat", "angegeben"});
  if (!quoted || !(has(text, Claim::pattern_welded_bought) || has(text, Claim::laminated)))
    return false;
  const auto& sources = text.blade.trail.sources();
  return std::any_of(sources.begin(), sources.end(), [&](const Source& source) {
    return source.lot && source.lot->stated_layers &&
           agrees(*found.figure, *source.lot->stated_layers);
  });
}

bool folds_agree(const TextAgainstRecord& text, const Found& found) {
  int folds = 0;
  for (const BilletUse& use : text.blade.trail.billets())
    for (const WeldStage& stage : use.billet->stages)
      if (stage.work == StageWork::fold) ++folds;
  if (folds == 0 || !any_claim(text, found)) return false;
  return !found.figure || agrees(*found.figure, folds);
}

bool estimate_agrees(const TextAgainstRecord& text, const Found& found) {
  const Dossier& d = text.blade.dossier;
  if (!d.expected_hrc_low || !d.expected_hrc_high || !found.figure) return false;
  if (!clause_holds(text, found,
                    {"expect", "estimat", "geschatzt", "erwart", "schatz", "estim", "attes", "stim",
                     "espera"}))
    return false;
  const double low = found.figure->from.value_or(found.figure->value) * 10;
  const double high = found.figure->value * 10;
  return low >= *d.expected_hrc_low && high <= *d.expected_hrc_high;
}

// A figure bears the readings when all of them round to it, or lie inside the range it gives.
bool hardness_agrees(const TextAgainstRecord& text, const Found& found, HardnessScale scale) {
  if (!found.figure) return has(text, Claim::hardness);
  const auto readings = readings_that_count(text.blade);
  if (readings.empty() || readings[0]->scale != scale) return estimate_agrees(text, found);
  const SaidFigure& said = *found.figure;
  // One reading may be quoted to its tenth.
  const double tenths_said = said.value * 10;
  const bool to_the_tenth = !said.from && !said.over && std::fmod(tenths_said, 10) != 0;
  if (to_the_tenth)
    return std::any_of(readings.begin(), readings.end(), [&](const HardnessReading* reading) {
      return std::abs(reading->tenths - tenths_said) < 0.5;
    });
  const double half = scale == HardnessScale::hrc ? 5 : 50;
  for (const HardnessReading* reading : readings) {
    const double tenths = reading->tenths;
    const double low = said.from.value_or(said.value) * 10 - half;
    const double high = said.value * 10 + half;
    if (said.over ? tenths < said.value * 10 : (tenths < low || tenths > high)) return false;
  }
  return true;
}

std::optional<double> cold_celsius(const TextAgainstRecord& text) {
  if (!has(text, Claim::sub_zero)) return std::nullopt;
  return text.blade.heats.current()->subzero->cold->temperature->in_celsius();
}

bool cold_agrees(const TextAgainstRecord& text, const Found& found) {
  const auto real = cold_celsius(text);
  if (!real) return false;
  if (!found.figure) return true;
  const std::string& unit = text.words[found.last - 1].text;
  const double said = -std::abs(found.figure->value);
  const double celsius = unit[0] == 'f' ? (said - 32) / 1.8 : said;
  return std::abs(celsius - *real) <= (found.figure->about ? 5.0 : 1.0);
}

bool mill_documents(const TextAgainstRecord& text) {
  const Judgement& grade = text.judgements.at(Claim::grade);
  if (!holds(grade)) return false;
  const auto& sources = text.blade.trail.sources();
  return std::all_of(sources.begin(), sources.end(), [](const Source& source) {
    return source.lot && identified(source) &&
           (source.lot->document == SupplyDocument::type_3_1 ||
            source.lot->document == SupplyDocument::type_3_2) &&
           (source.lot->melt_number || source.lot->document_melt_number);
  });
}

// At least this much of an element in a lot, by analysis or by the lower limit of its grade.
bool at_least(const Lot& lot, const std::string& element, Share least) {
  if (lot.analysis && lot.analysis->contains(element)) return lot.analysis->at(element) >= least;
  if (!lot.facts || !lot.facts->limits.contains(element)) return false;
  const auto& lo = lot.facts->limits.at(element).lo;
  return lo && *lo >= least;
}

bool every_source(const TextAgainstRecord& text, const std::string& element, Share least) {
  const auto& sources = text.blade.trail.sources();
  return !sources.empty() && std::all_of(sources.begin(), sources.end(), [&](const Source& source) {
    return source.lot && identified(source) && at_least(*source.lot, element, least);
  });
}

bool carbon_agrees(const TextAgainstRecord& text, const Found& found) {
  const auto& sources = text.blade.trail.sources();
  return has(text, Claim::analysis) && found.figure &&
         std::any_of(sources.begin(), sources.end(), [&](const Source& source) {
           return source.lot && source.lot->analysis && source.lot->analysis->contains("C") &&
                  std::abs(source.lot->analysis->at("C").fraction() * 100 - found.figure->value) <
                      0.0051;
         });
}

// Whether words of `name` that stand together spell `wanted`: "AEB-L" spells "aebl", "1095" does
// not spell "109".
bool spells(const std::string& name, const std::string& wanted) {
  const std::vector<TextWord> words = words_of_text(name);
  for (std::size_t first = 0; first < words.size(); ++first) {
    std::string spelled;
    for (std::size_t k = first; k < words.size() && spelled.size() < wanted.size(); ++k)
      spelled += words[k].text;
    if (spelled == wanted) return true;
  }
  return false;
}

bool grade_in_trail(const TextAgainstRecord& text, const Found& found) {
  if (!has(text, Claim::grade)) return false;
  std::string wanted;
  for (std::size_t k = found.first; k < found.last; ++k) wanted += text.words[k].text;
  const auto& sources = text.blade.trail.sources();
  return std::any_of(sources.begin(), sources.end(), [&](const Source& source) {
    return source.lot && identified(source) &&
           (spells(sold_name(*source.lot), wanted) ||
            spells(source.lot->document_grade.value_or(""), wanted));
  });
}

bool handle_named(const TextAgainstRecord& text, const Found& found) {
  const auto& handle = text.blade.dossier.handle;
  return has(text, Claim::handle_species) &&
         std::any_of(handle.begin(), handle.end(), [&](const HandleMaterial& material) {
           return key_in(found.entry->keys,
                         material.material + " " + material.species.value_or(""));
         });
}

bool source_named(const TextAgainstRecord& text, const Found& found) {
  for (const Source& source : text.blade.trail.sources()) {
    if (source.open_gaps > 0) continue;
    if (source.lot && key_in(found.entry->keys,
                             sold_name(*source.lot) + " " + source.lot->recycled_from.value_or("")))
      return true;
    if (source.melt)
      for (const ChargePart& part : source.melt->charge)
        if (key_in(found.entry->keys, part.what)) return true;
  }
  return false;
}

bool quenched_in(const TextAgainstRecord& text, const Found& found) {
  const Hardening* now = text.blade.heats.current();
  if (!now || !now->quench) return false;
  const Quench& quench = *now->quench->quench;
  return key_in(found.entry->keys, quench.medium + (quench.still_air ? " air" : ""));
}

bool tempers_agree(const TextAgainstRecord& text, const Found& found) {
  const Hardening* now = text.blade.heats.current();
  if (!now) return false;
  if (found.figure) return agrees(*found.figure, now->tempers);
  const std::string& key = found.entry->keys.empty() ? "1" : found.entry->keys[0];
  return now->tempers > 0 && (key == "any" || std::to_string(now->tempers) == key);
}

bool no_fault(const TextAgainstRecord& text) {
  const auto& findings = text.blade.dossier.findings;
  return std::none_of(findings.begin(), findings.end(), must_be_told);
}

bool some_steel_stainless(const TextAgainstRecord& text) {
  const auto& sources = text.blade.trail.sources();
  return std::any_of(sources.begin(), sources.end(), [](const Source& source) {
    return source.lot && identified(source) &&
           at_least(*source.lot, "Cr", Share::millionths(105'000));
  });
}

bool one_steel(const TextAgainstRecord& text) {
  const Source* source = text.blade.trail.only_source();
  return source && source->open_gaps == 0 &&
         (!source->lot || source->lot->sold_as == SoldAs::one_steel);
}

bool no_outside_work(const TextAgainstRecord& text) {
  return !has(text, Claim::outside_work) && text.blade.dossier.outside.empty() &&
         outside_names(text.blade.heats.live()).empty();
}

// What only the steel and the handle can show.
bool material_proven(const TextAgainstRecord& text, const Found& found) {
  switch (found.entry->proof) {
    case Proof::mill:
      return mill_documents(text);
    case Proof::stainless:
      return stainless(text.blade) == true && has(text, Claim::grade);
    case Proof::stainless_part:
      return some_steel_stainless(text);
    case Proof::high_carbon:
      return every_source(text, "C", Share::millionths(5500));
    case Proof::carbon:
      return carbon_agrees(text, found);
    case Proof::grade:
    case Proof::material_number:
      return grade_in_trail(text, found);
    case Proof::species:
      return handle_named(text, found);
    case Proof::source:
      return source_named(text, found);
    case Proof::layers:
      return layers_agree(text, found);
    case Proof::folds:
      return folds_agree(text, found);
    case Proof::one_steel:
      return one_steel(text);
    default:
      return false;
  }
}

// What only the work on the blade can show.
bool work_proven(const TextAgainstRecord& text, const Found& found) {
  const Hardening* now = text.blade.heats.current();
  const bool wet = now && now->quench && !now->quench->quench->still_air;
  switch (found.entry->proof) {
    case Proof::hrc:
      return hardness_agrees(text, found, HardnessScale::hrc);
    case Proof::hv:
      return hardness_agrees(text, found, HardnessScale::hv);
    case Proof::cold:
      return cold_agrees(text, found);
    case Proof::deep_cold:
      return cold_celsius(text).value_or(0) <= -70;
    case Proof::cryogenic:
      return cold_celsius(text).value_or(0) <= -150;
    case Proof::medium:
      return quenched_in(text, found);
    case Proof::clay:
      return wet && now->clay;
    case Proof::edge_quench:
      return wet && now->edge;
    case Proof::tempers:
      return tempers_agree(text, found);
    case Proof::no_fault:
      return no_fault(text);
    case Proof::not_straightened:
      return !text.blade.heats.logged(Operation::straighten);
    case Proof::not_hardened_again:
      return text.blade.heats.hardenings().size() == 1;
    case Proof::no_outside:
      return no_outside_work(text);
    default:
      return false;
  }
}

}  // namespace

bool proven(const TextAgainstRecord& text, const Found& found) {
  switch (found.entry->proof) {
    case Proof::allow:
      return true;
    case Proof::never:
      return false;
    case Proof::claim:
      return any_claim(text, found);
    default:
      return material_proven(text, found) || work_proven(text, found);
  }
}

std::vector<std::string> lacking(const TextAgainstRecord& text, const Found& found) {
  const std::vector<Claim>& needs = found.entry->needs;
  if (needs.empty()) return {"nothing on record could show it"};
  const auto* missing = std::get_if<Missing>(&text.judgements.at(needs.front()));
  if (missing) return missing->needs;
  if (found.figure && found.entry->proof == Proof::layers)
    return {"the layer count of the logged stages, which is another"};
  if (found.figure) return {"a figure on record that is the figure said"};
  return {"evidence for this very word"};
}

}  // namespace tangmark::certificate
