// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/store/blade_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "db/store/step_advice_reader.h"

namespace tangmark::db {
namespace {

Outcome<Answer> answer_23(const ShopFile& shop, const Given& given, Instant) {
  const auto blade = given_thing<blade::KeptBlade>(shop, given, "blade", blade_named);
  if (!blade) return blade.problems();
  const TemperatureUnit unit = load_settings(shop).temperature_unit;
  const BladeOnRecord record = load_record(shop, *blade);
  Answer answer{
      fmt::format("What does the steel desk say about the heats ahead of blade {}?", blade->number),
      {},
      {"Step", "Kind", "What it says", "Source"},
      {}};
  if (steels_of(shop, *blade).empty())
    answer.sentences.push_back("Its steel is in no book of grades, so only cautions are given.");
  for (const blade::RouteStep& step : record.route) {
    if (!step.open()) continue;
    for (const steel::Advice& one : advice_on(shop, record, step, unit)) {
      answer.rows.push_back({fmt::format("{} {}", step.position, step.operation),
                             std::string(steel::word_of(one.kind)), one.sentence, one.source});
      if (one.heed)
        answer.sentences.push_back(fmt::format("Step {}: {}", step.position, one.sentence));
    }
  }
  if (answer.rows.empty())
    answer.sentences.push_back("No step ahead of it is one the desk knows about.");
  return answer;
}

}  // namespace

const Question question_23{23,
                           "What does the steel desk say about the heats ahead of this blade?",
                           {{"blade", "Blade", FieldKind::blade, true, "23"}},
                           answer_23};

}  // namespace tangmark::db
