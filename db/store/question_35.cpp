// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/store/learning_store.h"
#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

Outcome<Answer> answer_35(const ShopFile& shop, const Given& given, Instant) {
  std::optional<commission::ModelId> only;
  if (given_text(given, "model")) {
    const auto model = given_thing(shop, given, "model", model_named);
    if (!model) return model.problems();
    only = model->id;
  }
  Answer answer{"What does the record say against the models?",
                {},
                {"Model", "What", "Of", "Model says", "Proposed", "Unit", "Pieces", "Why"},
                {}};
  for (const ModelProposal& one : model_proposals(shop, only))
    answer.rows.push_back({one.model.name, std::string(word_of(one.what)), one.of,
                           fmt::format("{:.2f}", one.now), fmt::format("{:.2f}", one.proposed),
                           one.unit, std::to_string(one.n), one.why});
  if (!only)
    for (const LoadProposal& one : load_proposals(shop, load_settings(shop)))
      answer.rows.push_back({"the shop", "load", one.kind + " firing", std::to_string(one.now),
                             std::to_string(one.proposed), "blades", std::to_string(one.n),
                             one.why});
  answer.sentences.push_back(
      answer.rows.empty()
          ? "Nothing: no figure with three pieces on record is more than 5 % off."
          : "Nothing is changed, in the models or in a quote, until you take a proposal.");
  return answer;
}

}  // namespace

const Question question_35{35,
                           "What did I learn: which hours, belts, gas and losses should change?",
                           {{"model", "Model", FieldKind::model, false, "chef 240"}},
                           answer_35};

}  // namespace tangmark::db
