// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <set>

#include "db/store/blade_siblings.h"
#include "db/store/blade_state.h"
#include "db/store/blade_store.h"
#include "db/store/question_list.h"
#include "domain/blade/reading_rules.h"

namespace tangmark::db {
namespace {

std::string hardness_of(const BladeOnRecord& record) {
  std::string text;
  for (const blade::KeptReading& reading : record.readings)
    if (!reading.void_why) text += (text.empty() ? "" : ", ") + blade::hardness_text(reading);
  return text.empty() ? "not measured" : text;
}

Outcome<Answer> answer_12(const ShopFile& shop, const Given& given, Instant now) {
  const auto blade = given_thing(shop, given, "blade", blade_named);
  if (!blade) return blade.problems();
  Answer answer{
      fmt::format("Which others shared the firing, oil and bar of blade {}?", blade->number),
      {},
      {"Blade", "Title", "Shares", "State", "Hardness"},
      {}};
  std::set<std::int64_t> others, delivered;
  for (const Sibling& sibling : siblings_of(shop, *blade)) {
    const BladeOnRecord record = load_record(shop, sibling.blade);
    others.insert(sibling.blade.number);
    if (sibling.blade.delivered_at) delivered.insert(sibling.blade.number);
    answer.rows.push_back(
        {std::to_string(sibling.blade.number), sibling.blade.title, sibling.shares,
         sibling.blade.delivered_at ? "delivered" : blade::state_text(record.state, now),
         hardness_of(record)});
  }
  if (others.empty())
    answer.sentences.push_back("Nothing on record shares its firing, bath or bar.");
  else
    answer.sentences.push_back(
        fmt::format("{} other blades share something with it.", others.size()));
  if (!delivered.empty())
    answer.sentences.push_back(fmt::format("{} of them are with their buyers.", delivered.size()));
  return answer;
}

}  // namespace

const Question question_12{12,
                           "A blade came back soft: which others shared its firing, oil or bar?",
                           {{"blade", "Blade", FieldKind::blade, true, "23"}},
                           answer_12};

}  // namespace tangmark::db
