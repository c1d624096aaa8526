// SPDX-License-Identifier: MIT
#include "domain/certificate/lexicon.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <utility>

#include "domain/certificate/lexicon_data.h"
#include "domain/certificate/lexicon_text.h"
#include "domain/measure/table_text.h"
#include "domain/measure/utf8.h"

namespace tangmark::certificate {
namespace {

constexpr std::array<std::pair<std::string_view, Proof>, 28> proofs = {{
    {"allow", Proof::allow},
    {"never", Proof::never},
    {"claim", Proof::claim},
    {"layers", Proof::layers},
    {"folds", Proof::folds},
    {"hrc", Proof::hrc},
    {"hv", Proof::hv},
    {"cold", Proof::cold},
    {"deep_cold", Proof::deep_cold},
    {"cryogenic", Proof::cryogenic},
    {"mill", Proof::mill},
    {"stainless", Proof::stainless},
    {"stainless_part", Proof::stainless_part},
    {"high_carbon", Proof::high_carbon},
    {"carbon", Proof::carbon},
    {"grade", Proof::grade},
    {"material_number", Proof::material_number},
    {"species", Proof::species},
    {"source", Proof::source},
    {"medium", Proof::medium},
    {"clay", Proof::clay},
    {"edge_quench", Proof::edge_quench},
    {"tempers", Proof::tempers},
    {"one_steel", Proof::one_steel},
    {"no_fault", Proof::no_fault},
    {"not_straightened", Proof::not_straightened},
    {"not_hardened_again", Proof::not_hardened_again},
    {"no_outside", Proof::no_outside},
}};

std::vector<std::string> split(std::string_view text, char at) {
  std::vector<std::string> parts;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(at), text.size());
    if (end > 0) parts.emplace_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return parts;
}

FormWord marked_word(std::string_view word) {
  if (word == "#") return {FormMatch::figure, ""};
  if (word.front() == '~') return {FormMatch::nearly, folded(word.substr(1))};
  if (word.front() == '=') return {FormMatch::with_accents, lower_case(word.substr(1))};
  const bool front = word.front() == '*';
  const bool back = word.size() > 1 && word.back() == '*';
  if (front) word.remove_prefix(1);
  if (back) word.remove_suffix(1);
  const FormMatch match = front && back ? FormMatch::holds
                          : front       ? FormMatch::ends
                          : back        ? FormMatch::begins
                                        : FormMatch::exact;
  return {match, folded(word)};
}

// A plain word is split as texts are, so that "15N20" is found as it will be read.
Form form_of(std::string_view text) {
  Form form;
  for (const std::string& word : split(text, ' ')) {
    const FormWord marked = marked_word(word);
    if (marked.match != FormMatch::exact) {
      form.push_back(marked);
      continue;
    }
    for (const TextWord& part : words_of_text(word)) form.push_back({FormMatch::exact, part.text});
  }
  return form;
}

Problem refusal(const TableRow& row, const std::string& sentence) {
  return {"lexicon, line " + std::to_string(row.line), sentence, "Correct the line."};
}

Outcome<LexiconEntry> entry_of(const TableRow& row) {
  if (row.cells.size() != 6) return refusal(row, "A line has six columns.");
  LexiconEntry entry;
  entry.language = row.cells[0];
  for (const std::string& form : split(row.cells[1], '|')) entry.forms.push_back(form_of(form));
  if (entry.forms.empty()) return refusal(row, "A line needs at least one form.");
  if (row.cells[2] != "-")
    for (const std::string& id : split(row.cells[2], '|')) {
      const auto claim = claim_of(id);
      if (!claim) return refusal(row, "\"" + id + "\" is no claim.");
      entry.needs.push_back(*claim);
    }
  const std::vector<std::string> proof = split(row.cells[3], ':');
  const auto known = std::find_if(proofs.begin(), proofs.end(), [&](const auto& pair) {
    return !proof.empty() && pair.first == proof[0];
  });
  if (known == proofs.end()) return refusal(row, "\"" + row.cells[3] + "\" is no proof.");
  entry.proof = known->second;
  if (proof.size() > 1)
    for (const std::string& key : split(proof[1], '/')) entry.keys.push_back(folded(key));
  if (row.cells[4] != "asserted" && row.cells[4] != "denied")
    return refusal(row, "A word is asserted or denied.");
  entry.said = row.cells[4] == "denied" ? Said::denied : Said::asserted;
  entry.truthful = split(row.cells[5], '|');
  return entry;
}

}  // namespace

Outcome<std::vector<LexiconEntry>> read_lexicon(std::string_view csv) {
  const Outcome<std::vector<TableRow>> table = read_table(csv, "lexicon");
  if (!table) return table.problems();
  std::vector<LexiconEntry> entries;
  for (std::size_t i = 1; i < table->size(); ++i) {
    Outcome<LexiconEntry> entry = entry_of((*table)[i]);
    if (!entry) return entry.problems();
    entries.push_back(std::move(entry).value());
  }
  return entries;
}

const std::vector<LexiconEntry>& lexicon() {
  static const std::vector<LexiconEntry> entries = [] {
    const Outcome<std::vector<LexiconEntry>> read = read_lexicon(lexicon_csv);
    assert(read && "the lexicon that is compiled in can be read; a test reads it too");
    return read.value();
  }();
  return entries;
}

}  // namespace tangmark::certificate
