// SPDX-License-Identifier: MIT
#include "db/store/blade_store.h"
#include "db/store/hardness_record.h"
#include "db/store/question_list.h"
#include "domain/steel/figure_text.h"

namespace tangmark::db {
namespace {

using steel::rounded_text;

std::vector<std::string> row_of(const HardnessRecord& record) {
  std::string expected, source;
  if (record.expected) {
    expected = rounded_text(record.expected->low.points, 0) + " to " +
               rounded_text(record.expected->high.points, 0);
    for (const std::string& name : record.expected->sources)
      source += (source.empty() ? "" : "; ") + name;
  }
  return {std::to_string(record.number),
          record.grade,
          record.kiln,
          expected,
          record.measured_hrc ? rounded_text(*record.measured_hrc, 1) : "",
          record.expected ? record.expected->band : record.why_not,
          source};
}

Outcome<Answer> answer_22(const ShopFile& shop, const Given& given, Instant) {
  Answer answer{"How hard do blades come out against the published temper tables?",
                {},
                {"Blade", "Grade", "Kiln", "Expected HRC", "Measured HRC", "Remark", "Source"},
                {}};
  std::vector<HardnessRecord> records;
  if (const auto number = given_text(given, "blade")) {
    const auto blade = blade_named(shop, *number, "blade");
    if (!blade) return blade.problems();
    records = {hardness_record_of(shop, load_record(shop, *blade))};
  } else {
    records = hardness_records(shop, given_text(given, "grade").value_or(""));
  }
  for (const HardnessRecord& record : records) answer.rows.push_back(row_of(record));
  for (const KilnBias& bias : biases_of(records)) answer.sentences.push_back(bias_sentence(bias));
  if (answer.sentences.empty())
    answer.sentences.push_back(
        "No blade has both a published table for its steel and a reading after its last heat.");
  return answer;
}

}  // namespace

const Question question_22{
    22,
    "How hard do my blades come out against the published temper tables?",
    {{"grade", "Steel", FieldKind::text, false, "O1; every steel when empty"},
     {"blade", "Blade", FieldKind::blade, false, "23; all of them when empty"}},
    answer_22};

}  // namespace tangmark::db
