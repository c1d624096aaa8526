// SPDX-License-Identifier: MIT
#include <cctype>

#include "db/store/blade_store.h"
#include "db/store/dossier_reader.h"
#include "db/store/question_list.h"
#include "domain/certificate/compose.h"

namespace tangmark::db {
namespace {

Outcome<Answer> answer_20(const ShopFile& shop, const Given& given, Instant) {
  const auto kept = given_thing<blade::KeptBlade>(shop, given, "blade", blade_named);
  if (!kept) return kept.problems();
  const auto dossier = read_dossier(shop, std::to_string(kept->number));
  if (!dossier) return dossier.problems();
  const auto draft = certificate::compose(*dossier);
  Answer answer{"What would the certificate of blade " + std::to_string(kept->number) +
                    " say, and what is missing?",
                {},
                {"Level", "Subject", "Fact"},
                {}};
  for (const auto& s : draft.statements)
    answer.rows.push_back(
        {std::string(1, static_cast<char>(std::toupper(certificate::letter(s.level)))),
         std::string(certificate::claim_head(s.claim)), s.text});
  for (const auto& a : draft.absences)
    answer.rows.push_back({"", std::string(certificate::claim_head(a.claim)), a.text});
  for (const auto& d : draft.disclosures) answer.rows.push_back({"", "told openly", d.text});
  for (const auto& m : draft.missing)
    answer.sentences.push_back("Not provable, " + std::string(certificate::claim_id(m.claim)) +
                               ": it needs " + certificate::needs_text(m) + ".");
  for (const auto& b : draft.blocks) answer.sentences.push_back(b.sentence + " " + b.remedy);
  answer.sentences.push_back(draft.may_issue() ? "Nothing is missing: it may be issued."
                                               : "It cannot be issued yet.");
  return answer;
}

}  // namespace

const Question question_20{20,
                           "What is missing or not provable on the certificate of a blade?",
                           {{"blade", "Blade", FieldKind::blade, true, "23"}},
                           answer_20};

}  // namespace tangmark::db
