// SPDX-License-Identifier: MIT
#include "db/store/blade_actuals.h"
#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

std::string or_nothing(const std::optional<Money>& money) {
  return money ? amount_text(*money) : "";
}

Outcome<Answer> answer_02(const ShopFile& shop, const Given& given, Instant) {
  const auto model = given_thing(shop, given, "model", model_named);
  if (!model) return model.problems();
  const auto settings = load_settings(shop);
  const auto all = latest_actuals(shop, model->id, 3, settings);
  Answer answer{"What did the last three of " + model->name + " cost?", {}, {}, {}};
  answer.columns = {"Blade",   "Hands on h", "Attended h",     "Steel", "Used up", "Energy",
                    "Outside", "Overhead",   "Box, post, fee", "Lost",  "Price",   "Earned per h"};
  if (all.empty()) answer.sentences.push_back("No finished blade of this model is on record.");
  for (const BladeActuals& one : all) {
    answer.rows.push_back(
        {std::to_string(one.number), hours_text(one.hands_on), hours_text(one.attended),
         amount_text(one.steel), amount_text(one.used_up), amount_text(one.energy),
         amount_text(one.outside), amount_text(one.overhead), amount_text(one.selling),
         amount_text(one.lost), or_nothing(one.price), or_nothing(one.earned_per_hour)});
    if (one.earned_per_hour)
      answer.sentences.push_back("Blade " + std::to_string(one.number) + " earned " +
                                 to_text(*one.earned_per_hour) + " an hour over " +
                                 to_text(one.hands_on) + " hands on.");
  }
  if (!all.empty())
    answer.sentences.push_back(
        "Only what was logged counts: hours without a timer and belts that nobody noted are not in "
        "it.");
  return answer;
}

}  // namespace

const Question question_02{
    2,
    "What did the last three of these cost me, and what did I earn per hour?",
    {{"model", "Model", FieldKind::model, true, "chef 240"}},
    answer_02};

}  // namespace tangmark::db
