// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "db/row.h"
#include "db/store/blade_state.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "domain/blade/reading_rules.h"
#include "domain/measure/utf8.h"

namespace tangmark::db {
namespace {

using namespace blade;

// Blades of about the same thickness harden alike; a fifth either way is about the same.
constexpr double about = 0.2;
constexpr std::size_t most_rows = 20;

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : ", ") + part;
  return text;
}

std::string tempers_text(const BladeOnRecord& record, TemperatureUnit unit) {
  std::vector<std::string> tempers;
  for (const KeptLogEntry& entry : record.log)
    if (entry.operation == "temper" && entry.set && entry.started_at >= *record.state.quenched_at)
      tempers.push_back(to_text(*entry.set, unit) + (entry.hold ? " " + to_text(*entry.hold) : ""));
  return joined(tempers);
}

std::string readings_text(const BladeOnRecord& record) {
  std::vector<std::string> readings;
  for (const KeptReading& reading : record.readings)
    if (!reading.void_why) readings.push_back(hardness_text(reading));
  return readings.empty() ? "not measured" : joined(readings);
}

const KeptLogEntry* last_harden(const BladeOnRecord& record) {
  const auto found = std::find_if(record.log.rbegin(), record.log.rend(),
                                  [](const LogEntry& e) { return e.operation == "harden"; });
  return found == record.log.rend() ? nullptr : &*found;
}

struct Asked {
  std::string grade;
  std::optional<std::string> medium;
  std::optional<Length> thickness;
};

bool fits(const Asked& asked, const BladeOnRecord& record) {
  if (asked.medium && folded(record.state.quench_medium.value_or("")).find(folded(*asked.medium)) ==
                          std::string::npos)
    return false;
  if (!asked.thickness) return true;
  if (!record.blade.thickness) return false;
  const double ratio = record.blade.thickness->in_millimetres() / asked.thickness->in_millimetres();
  return ratio >= 1 - about && ratio <= 1 + about;
}

std::vector<BladeId> hardened_of_grade(const ShopFile& shop, const std::string& grade) {
  Query query(shop, R"(
SELECT blade.id, max(log_entry.started_at) AS at FROM blade JOIN log_entry ON log_entry.blade_id = blade.id
WHERE log_entry.operation = 'harden' AND lower(blade.grade) LIKE '%' || lower(?) || '%'
GROUP BY blade.id ORDER BY at DESC LIMIT 400)");
  query.bind(grade);
  std::vector<BladeId> blades;
  while (query.next()) blades.push_back(query.id<BladeId>("id"));
  return blades;
}

Outcome<Asked> read_asked(const ShopFile& shop, const Given& given) {
  Asked asked{given_text(given, "grade").value_or(""), given_text(given, "medium"), {}};
  if (asked.grade.empty())
    return Problem{"grade", "Which steel is meant is not said.",
                   "Write grade=, for example grade=80CrV2."};
  if (const auto text = given_text(given, "thickness")) {
    const auto thickness = parse_length(*text, load_settings(shop).length_unit, "thickness");
    if (!thickness) return thickness.problem();
    if (*thickness == Length())
      return Problem{"thickness", "A blade has a thickness.", "Write it as 2.5 mm."};
    asked.thickness = *thickness;
  }
  return asked;
}

std::vector<std::string> row_of(const BladeOnRecord& record, const KeptLogEntry& harden,
                                const commission::ShopSettings& settings) {
  const TemperatureUnit unit = settings.temperature_unit;
  std::vector<std::string> findings;
  for (const KeptFinding& finding : record.findings) findings.push_back(finding.kind);
  return {std::to_string(record.blade.number),
          to_stored(settings.zone.date_of(harden.started_at)),
          record.blade.thickness ? to_text(*record.blade.thickness, settings.length_unit) : "",
          harden.set ? to_text(*harden.set, unit) : "",
          harden.hold ? to_text(*harden.hold) : "",
          record.state.quench_medium.value_or(""),
          harden.bath_temperature ? to_text(*harden.bath_temperature, unit) : "",
          tempers_text(record, unit),
          readings_text(record),
          joined(findings)};
}

Outcome<Answer> answer_11(const ShopFile& shop, const Given& given, Instant) {
  const auto asked = read_asked(shop, given);
  if (!asked) return asked.problems();
  const auto settings = load_settings(shop);
  Answer answer{"What was done last time with " + asked->grade + ", and how hard did it come out?",
                {},
                {"Blade", "Day", "Thickness", "Set", "Soak", "Quenched in", "Bath at", "Tempers",
                 "Hardness", "Findings"},
                {}};
  for (const BladeId id : hardened_of_grade(shop, asked->grade)) {
    const auto record = load_record(shop, id);
    const KeptLogEntry* harden = record ? last_harden(*record) : nullptr;
    if (!harden || !record->state.quenched_at || !fits(*asked, *record)) continue;
    answer.rows.push_back(row_of(*record, *harden, settings));
    if (answer.rows.size() == most_rows) break;
  }
  if (answer.rows.empty())
    answer.sentences.push_back("Nothing like it is on record.");
  else
    answer.sentences.push_back(fmt::format("{} on record, the last on {}: {}.", answer.rows.size(),
                                           answer.rows[0][1], answer.rows[0][8]));
  return answer;
}

}  // namespace

const Question question_11{
    11,
    "What did I do last time with this steel, oil and thickness, and how hard did it come out?",
    {{"grade", "Steel", FieldKind::text, true, "80CrV2"},
     {"medium", "Quenched in", FieldKind::text, false, "medium oil"},
     {"thickness", "Thickness", FieldKind::length, false, "2.5 mm; a fifth either way counts"}},
    answer_11};

}  // namespace tangmark::db
