// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "db/actions/blade_action_list.h"
#include "db/actions/correct_entry.h"
#include "db/actions/correct_field.h"
#include "db/row.h"
#include "db/store/log_store.h"
#include "db/store/reading_store.h"

namespace tangmark::db {
namespace {

using namespace blade;

struct Typed {
  std::string subject, id, field, value, reason;
};

// The column by which the maker knows a row of each subject.
const char* key_of(std::string_view subject) {
  if (subject == "piece") return "tag";
  return subject == "item" ? "id" : "number";
}

Outcome<ActionResult> correct_row(Work& work, const Typed& typed) {
  const auto& fields = correctable_fields();
  const auto known = std::find_if(fields.begin(), fields.end(), [&](const Correctable& f) {
    return f.subject == typed.subject && f.field == typed.field;
  });
  if (known == fields.end())
    return Problem{
        "field",
        fmt::format("\"{}\" of a {} cannot be corrected here.", typed.field, typed.subject),
        "Use one of: " + correctable_text(typed.subject) + "."};
  std::int64_t row = 0;
  {
    Query query(work.shop(), "SELECT id FROM " + typed.subject + " WHERE CAST(" +
                                 key_of(typed.subject) + " AS TEXT) = ?");
    query.bind(typed.id);
    if (!query.next())
      return Problem{"id", fmt::format("There is no {} {}.", typed.subject, typed.id),
                     "Give the number or tag of one that is in the shop."};
    row = query.integer("id");
  }
  if (Problems problems = correct_column(work, *known, typed.subject, row, typed.value);
      !problems.empty())
    return problems;
  return work.done(typed.id);
}

std::optional<std::int64_t> row_number(const std::string& text) {
  if (text.empty() || text.size() > 18 || text.find_first_not_of("0123456789") != std::string::npos)
    return std::nullopt;
  return std::stoll(text);
}

Outcome<ActionResult> correct_entry(Work& work, const Typed& typed) {
  const auto row = row_number(typed.id);
  const auto entry = row ? load_log_entry(work.shop(), LogEntryId{*row}) : std::nullopt;
  if (!entry || entry->operation == "struck out")
    return Problem{"id", fmt::format("There is no log entry {}.", typed.id),
                   "Give the number that the log shows."};
  if (is_superseded(work.shop(), entry->id))
    return Problem{"id", fmt::format("Log entry {} was corrected already.", typed.id),
                   "Correct the entry that took its place."};
  const auto id = correct_log_entry(work, *entry, typed.field, typed.value, typed.reason);
  if (!id) return id.problems();
  return work.done(std::to_string(id->row()));
}

Outcome<ActionResult> void_reading(Work& work, const Typed& typed) {
  const auto row = row_number(typed.id);
  const auto reading = row ? load_reading(work.shop(), ReadingId{*row}) : std::nullopt;
  if (!reading)
    return Problem{"id", fmt::format("There is no reading {}.", typed.id),
                   "Give the number that log_hardness gave."};
  if (typed.field != "void")
    return Problem{"field", "A reading is not rewritten.",
                   "Give field=void, and log the right reading anew."};
  if (reading->void_why)
    return Problem{"id", fmt::format("Reading {} is void already.", typed.id),
                   "Log the right reading anew."};
  store_reading_void(work.shop(), reading->id, typed.reason);
  return work.done(typed.id);
}

Outcome<ActionResult> run_correct(Work& work, Form& form) {
  const Typed typed{form.text("subject"), form.text("id"), form.text("field"),
                    form.maybe_text("value").value_or(""), form.text("reason")};
  if (form.refused()) return form.problems();
  work.shop().stamp().reason = typed.reason;
  if (typed.subject == "log_entry") return correct_entry(work, typed);
  if (typed.subject == "reading") return void_reading(work, typed);
  if (correctable_text(typed.subject).empty())
    return Problem{"subject", fmt::format("\"{}\" cannot be corrected.", typed.subject),
                   "Use log_entry, reading, blade, finding, lot, piece, commission or item."};
  return correct_row(work, typed);
}

}  // namespace

const Action correct{
    "correct",
    "Set a wrong entry right; what was written first is kept.",
    {{"subject",
      "What",
      FieldKind::choice,
      true,
      "log_entry",
      {},
      {"log_entry", "reading", "blade", "finding", "lot", "piece", "commission", "item"}},
     {"id", "Which", FieldKind::text, true, "its number or tag"},
     {"field", "Field", FieldKind::text, true,
      "hold; all strikes a log entry out; void voids a reading"},
     {"value", "Right value", FieldKind::text, false, "2 h; empty takes the value away"},
     {"reason", "Reason", FieldKind::text, true, "read the wrong line of the card"}},
    run_correct};

}  // namespace tangmark::db
