// SPDX-License-Identifier: MIT
#include "db/row.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

// The first instant of a month and of the one after, in the shop's zone.
struct Month {
  date::year_month month;
  Instant from, to;
};

Outcome<Month> read_month(const Given& given, const Zone& zone, Instant now) {
  const CalendarDate today = zone.date_of(now);
  date::year_month month = today.year() / today.month();
  if (const auto text = given_text(given, "month")) {
    const auto first = parse_date(*text + "-01", "month");
    if (!first)
      return Problem{"month", "\"" + *text + "\" is not a month.", "Write it as 2026-11."};
    month = first->year() / first->month();
  }
  const auto first = [](date::year_month m) {
    return CalendarDate(m.year(), m.month(), date::day{1});
  };
  return Month{month, zone.at(first(month), Duration{}),
               zone.at(first(month + date::months{1}), Duration{})};
}

std::string per_knife(double amount, std::int64_t knives) {
  if (knives == 0) return "";
  const auto hundredths =
      static_cast<std::int64_t>(100 * amount / static_cast<double>(knives) + 0.5);
  return std::to_string(hundredths / 100) + "." + std::to_string(100 + hundredths % 100).substr(1);
}

std::int64_t knives_finished(const ShopFile& shop, const Month& month) {
  Query query(shop,
              "SELECT count(*) AS n FROM blade WHERE finished_at >= ? AND finished_at < ? AND "
              "scrapped_at IS NULL");
  query.bind(month.from).bind(month.to);
  query.next();
  return query.integer("n");
}

void add_consumables(const ShopFile& shop, const Month& month, std::int64_t knives,
                     Answer& answer) {
  Query query(shop, R"(
SELECT lot.kind, lot.name, coalesce(lot.unit, '') AS unit, sum(consumable_use.quantity_ppm) AS used
FROM consumable_use JOIN lot ON lot.id = consumable_use.lot_id
WHERE consumable_use.at >= ? AND consumable_use.at < ?
GROUP BY lot.kind, lot.name, lot.unit ORDER BY lot.kind, lot.name)");
  query.bind(month.from).bind(month.to);
  while (query.next())
    answer.rows.push_back({query.text("kind"), query.text("name"),
                           quantity_text(query.share("used")), query.text("unit"),
                           per_knife(query.share("used").fraction(), knives)});
}

void add_gas_by_log(const ShopFile& shop, const Month& month, std::int64_t knives, Answer& answer) {
  Query query(shop, R"(
SELECT coalesce(sum(gas_ug), 0) AS gas_ug FROM log_entry AS entry
WHERE started_at >= ? AND started_at < ?
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id))");
  query.bind(month.from).bind(month.to);
  query.next();
  const Mass gas = query.mass("gas_ug");
  if (gas > Mass())
    answer.rows.push_back({"gas", "weighed at the forge",
                           std::to_string(gas.in_kilograms()).substr(0, 6), "kg",
                           per_knife(gas.in_kilograms(), knives)});
}

void add_power(const ShopFile& shop, const Month& month, std::int64_t knives, Answer& answer) {
  Query query(shop, R"(
SELECT kiln.name, sum(coalesce(metered_j, energy_j)) AS joules, count(*) AS firings,
  count(metered_j) AS metered
FROM firing JOIN kiln ON kiln.id = firing.kiln_id
WHERE firing.state = 'done' AND coalesce(actual_start, starts_at) >= ?
  AND coalesce(actual_start, starts_at) < ?
GROUP BY kiln.id ORDER BY kiln.name)");
  query.bind(month.from).bind(month.to);
  while (query.next()) {
    const Energy energy = query.energy("joules");
    const std::string how = query.integer("metered") == query.integer("firings")
                                ? ", metered"
                                : ", by the kiln's values";
    answer.rows.push_back({"power",
                           query.text("name") + ", " + query.text("firings") + " firings" + how,
                           std::to_string(energy.in_kilowatt_hours()).substr(0, 6), "kWh",
                           per_knife(energy.in_kilowatt_hours(), knives)});
  }
}

Outcome<Answer> answer_18(const ShopFile& shop, const Given& given, Instant now) {
  const auto month = read_month(given, load_settings(shop).zone, now);
  if (!month) return month.problems();
  const std::int64_t knives = knives_finished(shop, *month);
  const std::string name =
      to_stored(CalendarDate(month->month.year(), month->month.month(), date::day{1})).substr(0, 7);
  Answer answer{"How much gas, power and belts in " + name + "?",
                {},
                {"Kind", "What", "Used", "Unit", "Per knife"},
                {}};
  add_consumables(shop, *month, knives, answer);
  add_gas_by_log(shop, *month, knives, answer);
  add_power(shop, *month, knives, answer);
  answer.sentences.push_back(std::to_string(knives) + " knives were finished in that month.");
  if (answer.rows.empty())
    answer.sentences.push_back("Nothing was noted as used.");
  else
    answer.sentences.push_back(
        "Only what was noted counts: belts binned, gas weighed, firings run.");
  return answer;
}

}  // namespace

const Question question_18{
    18,
    "How much gas, power and belts per month, and per knife?",
    {{"month", "Month", FieldKind::text, false, "2026-11; this month when not given"}},
    answer_18};

}  // namespace tangmark::db
