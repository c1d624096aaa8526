// SPDX-License-Identifier: MIT
#include "db/store/firing_report.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

Outcome<Answer> answer_24(const ShopFile& shop, const Given& given, Instant) {
  const auto number = given_text(given, "firing");
  if (!number)
    return Problem{"firing", "Which firing is meant is not said.",
                   "Write firing=, for example firing=12."};
  const auto report = firing_report(shop, *number, "firing");
  if (!report) return report.problems();
  const auto settings = load_settings(shop);
  return Answer{"What does the record of firing " + *number + " show?",
                report_sentences(*report, settings.zone, settings.temperature_unit), report_heads(),
                report_rows(*report, settings.zone, settings.temperature_unit)};
}

}  // namespace

const Question question_24{24,
                           "What does the record of this firing show, blade by blade?",
                           {{"firing", "Firing", FieldKind::firing, true, "12"}},
                           answer_24};

}  // namespace tangmark::db
