// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <map>

#include "db/row.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "domain/costing/loss_rate.h"

namespace tangmark::db {
namespace {

enum class By { steel, quench, length, operation };

struct Count {
  std::int64_t hardened = 0, cracked = 0, warped = 0, scrapped = 0;
};

Outcome<By> read_by(const Given& given) {
  const auto text = given_text(given, "by").value_or("steel");
  if (text == "steel") return By::steel;
  if (text == "quench") return By::quench;
  if (text == "length") return By::length;
  if (text == "operation") return By::operation;
  return Problem{"by", "\"" + text + "\" is no way to sort them.",
                 "Write by=steel, by=quench, by=length or by=operation."};
}

// Lengths in steps of 100 mm, or of 4 in for a shop that thinks in inches.
std::string length_group(Length length, LengthUnit unit) {
  const Length step =
      unit == LengthUnit::inch ? Length::nanometres(4 * 25'400'000) : Length::millimetres(100);
  const std::int64_t n = length.nanometres() / step.nanometres();
  return to_text(step * n, unit) + " to " + to_text(step * (n + 1), unit);
}

std::string group_of(const Query& row, By by, LengthUnit unit) {
  switch (by) {
    case By::steel:
      return row.is_null("grade") ? "not on record" : row.text("grade");
    case By::quench:
      return row.is_null("medium") ? "not on record" : row.text("medium");
    case By::operation:
      break;
    case By::length:
      return length_group(row.length("length_nm"), unit);
  }
  return {};
}

std::map<std::string, Count> counted(const ShopFile& shop, By by, LengthUnit unit) {
  Query query(shop, R"(
WITH live AS (SELECT * FROM log_entry AS entry WHERE operation <> 'struck out'
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.blade_id = entry.blade_id AND later.supersedes_id = entry.id))
SELECT blade.grade, blade.length_nm, blade.scrapped_at IS NOT NULL AS scrapped,
  (SELECT medium FROM live WHERE blade_id = blade.id AND operation = 'harden' AND medium IS NOT NULL
    ORDER BY started_at DESC LIMIT 1) AS medium,
  EXISTS(SELECT 1 FROM finding WHERE blade_id = blade.id AND kind = 'crack') AS cracked,
  EXISTS(SELECT 1 FROM finding WHERE blade_id = blade.id AND kind = 'warp')
    OR EXISTS(SELECT 1 FROM live WHERE blade_id = blade.id AND operation = 'harden' AND warp_nm > 0) AS warped
FROM blade WHERE EXISTS(SELECT 1 FROM live WHERE blade_id = blade.id AND operation = 'harden'))");
  std::map<std::string, Count> groups;
  while (query.next()) {
    Count& count = groups[group_of(query, by, unit)];
    ++count.hardened;
    if (query.yes("cracked")) ++count.cracked;
    if (query.yes("warped")) ++count.warped;
    if (query.yes("scrapped")) ++count.scrapped;
  }
  return groups;
}

std::string out_of(std::int64_t some, std::int64_t all) {
  return fmt::format("{} of {}", some, all);
}

// "3 of 11; 6.0 to 61.0 %": the exact band, 95 times of 100.
std::string band_of(std::int64_t lost, std::int64_t of) {
  const auto rate = costing::loss_rate({lost, of});
  if (!rate) return "";
  return fmt::format("{:.1f} to {:.1f} %", 100 * rate->low, 100 * rate->high);
}

// Blades lost at each operation, in each bath and steel: scrapped with it as the last of their log.
Answer by_operation(const ShopFile& shop) {
  Query query(shop, R"(
WITH live AS (SELECT * FROM log_entry AS entry WHERE operation <> 'struck out'
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id))
SELECT live.operation, coalesce(blade.grade, '') AS grade, coalesce(live.medium, bath.name, '') AS medium,
  count(DISTINCT blade.id) AS through,
  count(DISTINCT CASE WHEN blade.scrapped_at IS NOT NULL AND live.id = (SELECT id FROM live AS last
    WHERE last.blade_id = blade.id ORDER BY started_at DESC, id DESC LIMIT 1) THEN blade.id END) AS lost
FROM live JOIN blade ON blade.id = live.blade_id LEFT JOIN bath ON bath.id = live.bath_id
GROUP BY 1, 2, 3 ORDER BY lost DESC, 1, 2, 3)");
  Answer answer{"What is lost at which operation, in which bath and steel?",
                {},
                {"Operation", "Steel", "Bath or medium", "Lost", "True rate, 95 of 100"},
                {}};
  while (query.next())
    answer.rows.push_back({query.text("operation"), query.text("grade"), query.text("medium"),
                           out_of(query.integer("lost"), query.integer("through")),
                           band_of(query.integer("lost"), query.integer("through"))});
  answer.sentences.push_back("Few blades make a wide band: read the counts first.");
  return answer;
}

Outcome<Answer> answer_17(const ShopFile& shop, const Given& given, Instant) {
  const auto by = read_by(given);
  if (!by) return by.problems();
  if (*by == By::operation) return by_operation(shop);
  Answer answer{
      "How many cracked and warped?",
      {},
      {"Group", "Hardened", "Cracked", "Warped", "Scrapped", "True rate of scrap, 95 of 100"},
      {}};
  Count all;
  for (const auto& [group, count] : counted(shop, *by, load_settings(shop).length_unit)) {
    answer.rows.push_back(
        {group, std::to_string(count.hardened), out_of(count.cracked, count.hardened),
         out_of(count.warped, count.hardened), out_of(count.scrapped, count.hardened),
         band_of(count.scrapped, count.hardened)});
    all.hardened += count.hardened;
    all.cracked += count.cracked;
    all.warped += count.warped;
  }
  if (all.hardened == 0)
    answer.sentences.push_back("No hardening is on record.");
  else
    answer.sentences.push_back(fmt::format("{} cracked and {} warped.",
                                           out_of(all.cracked, all.hardened),
                                           out_of(all.warped, all.hardened)));
  return answer;
}

}  // namespace

const Question question_17{17,
                           "What is my crack and warp rate by steel, quench or length?",
                           {{"by",
                             "Sorted by",
                             FieldKind::choice,
                             false,
                             "steel, quench, length or operation",
                             "steel",
                             {"steel", "quench", "length", "operation"}}},
                           answer_17};

}  // namespace tangmark::db
