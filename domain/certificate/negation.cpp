// SPDX-License-Identifier: MIT
#include "domain/certificate/negation.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace tangmark::certificate {
namespace {

constexpr auto negators = std::to_array<std::string_view>(
    {"no",      "not",    "never",   "neither", "nor",     "non",        "none",        "nothing",
     "cannot",  "isn",    "wasn",    "aren",    "weren",   "doesn",      "don",         "didn",
     "hasn",    "haven",  "kein",    "keine",   "keinen",  "keinem",     "keiner",      "keines",
     "nicht",   "nie",    "niemals", "weder",   "noch",    "nein",       "pas",         "jamais",
     "aucun",   "aucune", "ni",      "nessun",  "nessuna", "nessuno",    "mai",         "niente",
     "ne",      "nunca",  "jamas",   "ningun",  "ninguna", "tampoco",    "nulla",       "aucuns",
     "without", "ohne",   "sans",    "senza",   "sin",     "keineswegs", "keinesfalls", "free",
     "frei"});
// These stand before a noun, so that "and" carries them on: "without layers and hamon".
constexpr auto without =
    std::to_array<std::string_view>({"without", "ohne", "sans", "senza", "sin", "free", "frei"});

// "Not only damascus" says damascus.
constexpr auto only = std::to_array<std::string_view>(
    {"only", "just", "merely", "simply", "nur", "bloss", "lediglich", "seulement", "uniquement",
     "solo", "soltanto", "solamente", "unicamente", "que"});
constexpr auto asking = std::to_array<std::string_view>(
    {"why", "if", "whether", "warum", "wenn", "ob", "pourquoi", "perche", "porque"});

// Small words that may stand between a negator and what it denies.
constexpr auto small = std::to_array<std::string_view>(
    {"a",        "an",       "the",     "any",      "is",        "was",        "are",
     "were",     "be",       "been",    "being",    "made",      "make",       "of",
     "from",     "in",       "into",    "by",       "as",        "with",       "to",
     "at",       "on",       "for",     "it",       "this",      "that",       "these",
     "here",     "there",    "we",      "us",       "i",         "you",        "have",
     "has",      "had",      "having",  "contain",  "contains",  "show",       "shows",
     "use",      "used",     "using",   "claim",    "claimed",   "call",       "called",
     "sold",     "such",     "kind",    "sort",     "type",      "visible",    "way",
     "means",    "all",      "cas",     "modo",     "hay",       "lleva",      "tiene",
     "contiene", "contient", "enthalt", "enthaelt", "acciaio",   "acero",      "stahl",
     "klinge",   "lame",     "lama",    "hoja",     "messer",    "couteau",    "coltello",
     "cuchillo", "knife",    "steel",   "blade",    "ever",      "s",          "t",
     "l",        "d",        "n",       "der",      "die",       "das",        "den",
     "dem",      "des",      "ein",     "eine",     "einem",     "einen",      "einer",
     "aus",      "im",       "mit",     "von",      "ist",       "sind",       "wurde",
     "wird",     "wurden",   "hat",     "es",       "sichtbare", "sichtbarer", "sichtbaren",
     "zu",       "um",       "le",      "la",       "les",       "du",         "de",
     "un",       "une",      "en",      "est",      "sont",      "acier",      "il",
     "lo",       "gli",      "i",       "di",       "del",       "dell",       "della",
     "al",       "e",        "sono",    "stato",    "stata",     "el",         "los"});

constexpr auto either_words =
    std::to_array<std::string_view>({"or", "nor", "oder", "noch", "ou", "ni", "o", "ne", "u"});
constexpr auto and_words = std::to_array<std::string_view>({"and", "und", "et", "y"});

constexpr auto link_words = std::to_array<std::string_view>(
    {"is",   "was", "are",   "were",  "has",   "have", "been", "it",
     "this", "ist", "wurde", "sind",  "wird",  "est",  "sont", "ete",
     "es",   "fue", "e",     "stato", "stata", "sido", "ha",   "steel"});
constexpr auto absent_words = std::to_array<std::string_view>(
    {"done",       "used",      "made",      "present",   "applied",   "claimed",  "measured",
     "performed",  "carried",   "gemacht",   "verwendet", "vorhanden", "gemessen", "durchgefuhrt",
     "ausgefuhrt", "fait",      "faite",     "utilise",   "mesure",    "presente", "eseguito",
     "eseguita",   "fatto",     "fatta",     "usato",     "usata",     "misurato", "misurata",
     "hecho",      "hecha",     "usado",     "usada",     "medido",    "medida",   "aplicado",
     "aplicada",   "realizado", "realizada", "recorded",  "known"});

class Reading {
 public:
  Reading(std::string_view typed, const std::vector<TextWord>& words,
          const std::vector<Found>& finds)
      : words_(words), finds_(finds), denied_(finds.size(), false) {
    const std::size_t end = words.empty() ? 0 : words.back().end;
    asked_at_end_ = typed.substr(std::min(end, typed.size())).find('?') != std::string_view::npos;
  }

  std::vector<bool> read() {
    for (std::size_t i = 0; i < finds_.size(); ++i) {
      // "62 HRC, not measured" still says 62 HRC.
      denied_[i] = denied_before(i) || (!finds_[i].figure && denied_after(finds_[i]));
    }
    return denied_;
  }

 private:
  const Found* find_ending_at(std::size_t word, std::size_t& index) const {
    for (std::size_t i = 0; i < finds_.size(); ++i)
      if (finds_[i].first <= word && word < finds_[i].last) {
        index = i;
        return &finds_[i];
      }
    return nullptr;
  }

  // Whether the clause goes on to "or X" behind a find, so that a comma before it carries "not" on.
  bool list_goes_on(const Found& find) const {
    for (std::size_t k = find.last; k < words_.size() && k < find.last + 6; ++k) {
      if (ends_clause(words_[k].gap)) return false;
      if (among(either_words, words_[k].text)) return true;
    }
    return false;
  }

  bool negates(std::size_t word, bool across_and) const {
    if (across_and && !among(without, words_[word].text)) return false;
    const bool free_of = words_[word].text == "free" || words_[word].text == "frei";
    const std::string_view next =
        word + 1 < words_.size() ? std::string_view(words_[word + 1].text) : std::string_view();
    if (free_of && next != "of" && next != "from" && next != "von") return false;
    if (word + 1 < words_.size() && among(only, words_[word + 1].text)) return false;
    if (words_[word].text == "ne" && word + 2 < words_.size() && words_[word + 2].text == "que")
      return false;
    if (word == 0 || ends_clause(words_[word].gap)) return true;
    if (among(asking, words_[word - 1].text)) return false;
    // "Not without layers" says layers. "n'est pas", "non ... nessuno" are one negation in two
    // words.
    const bool double_negation =
        among(without, words_[word].text) && among(negators, words_[word - 1].text);
    return !double_negation;
  }

  // "Is this not damascus?" leaves the reader to answer yes.
  bool asked(const Found& find) const {
    for (std::size_t k = find.last; k < words_.size(); ++k) {
      if (words_[k].gap.find('?') != std::string::npos) return true;
      if (ends_clause(words_[k].gap)) return false;
    }
    return asked_at_end_;
  }

  bool denied_before(std::size_t index) const {
    const Found& find = finds_[index];
    if (asked(find)) return false;
    bool across_and = false;
    bool across_or = false;
    std::size_t steps = 0;
    for (std::size_t k = find.first; k > 0 && steps < 9; ++steps) {
      const std::string& gap = words_[k].gap;
      if (ends_clause(gap)) return false;
      const bool comma = gap.find(',') != std::string::npos;
      if (comma && !across_or && !list_goes_on(find)) return false;
      const std::size_t word = --k;
      const std::string_view text = words_[word].text;
      if (among(negators, text)) return negates(word, across_and);
      std::size_t other = 0;
      if (const Found* before = find_ending_at(word, other)) {
        const bool carried = across_or || across_and || comma;
        if (!carried || !denied_[other]) return false;
        k = before->first;
        continue;
      }
      if (among(either_words, text))
        across_or = true;
      else if (among(and_words, text))
        across_and = true;
      else if (!among(small, text))
        return false;
    }
    return false;
  }

  bool denied_after(const Found& find) const {
    std::size_t k = find.last;
    bool first = true;
    while (k < words_.size()) {
      const std::string& gap = words_[k].gap;
      // "Hamon: none" and "Damascus? No." answer themselves.
      const bool answered = first && gap.find_first_of(".;!\n") == std::string::npos &&
                            gap.find_first_of(":?") != std::string::npos;
      if (ends_clause(gap) && !answered) return false;
      first = false;
      if (!among(link_words, words_[k].text)) break;
      ++k;
    }
    if (k >= words_.size() || !among(negators, words_[k].text) || among(without, words_[k].text))
      return false;
    const std::size_t after = k + 1;
    if (after >= words_.size() || ends_clause(words_[after].gap)) return true;
    return among(absent_words, words_[after].text);
  }

  const std::vector<TextWord>& words_;
  const std::vector<Found>& finds_;
  std::vector<bool> denied_;
  bool asked_at_end_ = false;
};

}  // namespace

bool is_negator(std::string_view word) {
  return among(negators, word);
}

std::vector<bool> denied(std::string_view typed, const std::vector<TextWord>& words,
                         const std::vector<Found>& finds) {
  return Reading(typed, words, finds).read();
}

}  // namespace tangmark::certificate
