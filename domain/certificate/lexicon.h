// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/certificate/claim.h"
#include "domain/measure/outcome.h"

namespace tangmark::certificate {

/// How one word of a form is compared. Folded, unless said otherwise.
enum class FormMatch {
  exact,
  begins,        ///< "forg*"
  ends,          ///< "*damast"
  holds,         ///< "*lagig*"
  nearly,        ///< "~wootz": up to a common slip
  with_accents,  ///< "=forgé": small letters, accents kept
  figure,        ///< "#": a figure or number words
};

struct FormWord {
  FormMatch match = FormMatch::exact;
  std::string text;
};
using Form = std::vector<FormWord>;

/// What has to be shown for a word to stand.
enum class Proof {
  allow,   ///< harmless use, keeps a shorter find quiet
  never,   ///< no record can show it
  claim,   ///< one of the claims holds
  layers,  ///< and the figure, when there is one, is the count
  folds,   ///< folds are logged, as many as said
  hrc,     ///< measured on this blade, figure inside the readings
  hv,
  cold,             ///< cold step at the temperature said
  deep_cold,        ///< cold step at -70 °C or below
  cryogenic,        ///< cold step at -150 °C or below
  mill,             ///< inspection document with melt number for every steel
  stainless,        ///< every steel with at least 10.5 % chromium
  stainless_part,   ///< one of the steels
  high_carbon,      ///< at least 0.55 % carbon in every steel
  carbon,           ///< the figure is the carbon on file
  grade,            ///< a steel of this grade, in `keys`
  material_number,  ///< the figure stands in a grade of the trail
  species,          ///< a handle material named so, in `keys`, with its species on record
  source,           ///< something so named in the steel's trail, in `keys`
  medium,           ///< quenched in it, in `keys`
  clay,
  edge_quench,
  tempers,  ///< tempered as often as said; keys give the number when the word holds it
  one_steel,
  no_fault,  ///< no finding has to be told
  not_straightened,
  not_hardened_again,
  no_outside,
};

/// Whether a row speaks of saying a thing or of denying it ("no cracks").
enum class Said { asserted, denied };

/// One row of the lexicon.
struct LexiconEntry {
  std::string language;  ///< "en", "de", "fr", "it", "es", or "any"
  std::vector<Form> forms;
  std::vector<Claim> needs;  ///< any of them will do; empty when no claim could show it
  Proof proof = Proof::claim;
  std::vector<std::string> keys;
  Said said = Said::asserted;
  /// Wordings that would be true; "{made}", "{shape}", "{hardness}", "{layers}", "{cold}",
  /// "{steel}", "{handle}" and "{heat}" are filled from the record of the blade.
  std::vector<std::string> truthful;
};

/// Reads a lexicon: CSV with the head language,forms,needs,proof,said,truthful; forms, needs and
/// truthful wordings are separated by a vertical bar. Refuses an unknown claim, proof or column,
/// naming the line.
Outcome<std::vector<LexiconEntry>> read_lexicon(std::string_view csv);

/// The lexicon of data/lexicon.csv, compiled in.
const std::vector<LexiconEntry>& lexicon();

}  // namespace tangmark::certificate
