// SPDX-License-Identifier: MIT
#include "domain/certificate/wording.h"

#include <algorithm>

#include "domain/certificate/negation.h"
#include "domain/certificate/truthful_words.h"
#include "domain/certificate/word_proof.h"

namespace tangmark::certificate {
namespace {

WordHit hit_of(std::string_view typed, const TextAgainstRecord& text, const Found& found) {
  WordHit hit;
  hit.at = text.words[found.first].at;
  hit.word = std::string(typed.substr(hit.at, text.words[found.last - 1].end - hit.at));
  if (!found.entry->needs.empty()) hit.needs = found.entry->needs.front();
  hit.proven = proven(text, found);
  if (hit.proven) return hit;
  hit.lacking = lacking(text, found);
  for (const std::string& wording : found.entry->truthful) {
    const auto words = filled(wording, found.entry->language, text.blade, text.judgements);
    if (words && std::find(hit.truthful.begin(), hit.truthful.end(), *words) == hit.truthful.end())
      hit.truthful.push_back(*words);
  }
  return hit;
}

// A text taken apart once: its words, what was found in it, and what of that it denies.
struct ReadText {
  explicit ReadText(std::string_view typed)
      : words(words_of_text(typed)),
        finds(find_words(typed, words, lexicon())),
        is_denied(denied(typed, words, finds)) {}
  std::vector<TextWord> words;
  std::vector<Found> finds;
  std::vector<bool> is_denied;
};

}  // namespace

std::vector<WordHit> wording(const BladeCase& blade, const Judgements& judgements,
                             std::string_view typed) {
  const ReadText read(typed);
  const TextAgainstRecord text{blade, judgements, read.words};
  std::vector<WordHit> hits;
  for (std::size_t i = 0; i < read.finds.size(); ++i) {
    const LexiconEntry& entry = *read.finds[i].entry;
    const bool says_it = (entry.said == Said::denied) == read.is_denied[i];
    if (entry.proof != Proof::allow && says_it) hits.push_back(hit_of(typed, text, read.finds[i]));
  }
  return hits;
}

std::vector<WordHit> denied_against_record(const BladeCase& blade, const Judgements& judgements,
                                           std::string_view typed) {
  const ReadText read(typed);
  const TextAgainstRecord text{blade, judgements, read.words};
  std::vector<WordHit> hits;
  for (std::size_t i = 0; i < read.finds.size(); ++i) {
    const LexiconEntry& entry = *read.finds[i].entry;
    if (entry.proof == Proof::allow || entry.said == Said::denied || !read.is_denied[i]) continue;
    WordHit hit = hit_of(typed, text, read.finds[i]);
    if (hit.proven) hits.push_back(std::move(hit));
  }
  return hits;
}

std::vector<WordHit> wording(const Dossier& dossier, std::string_view text) {
  const BladeCase blade(dossier);
  return wording(blade, judge_all(blade), text);
}

}  // namespace tangmark::certificate
