// SPDX-License-Identifier: MIT
#include "db/store/grade_store.h"

#include <cmath>
#include <map>

#include "db/row.h"

namespace tangmark::db {
namespace {

constexpr const char* by_the_shop = " (entered by the shop)";

void add_window(const Query& row, const char* operation, const char* low, const char* high,
                steel::Grade& grade) {
  if (row.is_null(low) || row.is_null(high)) return;
  steel::HeatTreatWindow window;
  window.operation = operation;
  window.low = row.temperature(low);
  window.high = row.temperature(high);
  window.source = grade.source;
  window.origin = steel::GradeOrigin::entered_by_shop;
  grade.windows.push_back(std::move(window));
}

steel::Grade grade_from(const Query& row) {
  steel::Grade grade;
  grade.name = row.text("name");
  grade.source = row.text("source") + by_the_shop;
  grade.origin = steel::GradeOrigin::entered_by_shop;
  // Limits that an older program let through unread count as none.
  grade.limits = steel::parse_limits(row.text("limits"), "limits").value_or({});
  add_window(row, "harden", "harden_lo_k1800", "harden_hi_k1800", grade);
  add_window(row, "temper", "temper_lo_k1800", "temper_hi_k1800", grade);
  return grade;
}

steel::HeatTreatWindow window_from(const Query& row) {
  steel::HeatTreatWindow window;
  window.operation = row.text("operation");
  window.low = row.temperature("lo_k1800");
  window.high = row.temperature("hi_k1800");
  window.hold_least = row.maybe_duration("hold_least_s");
  window.hold_most = row.maybe_duration("hold_most_s");
  window.cooling = row.text("cooling");
  window.most_fall_per_hour = row.maybe_difference("fall_per_h_k1800");
  window.slow_until = row.maybe_temperature("until_k1800");
  window.source = row.text("source") + by_the_shop;
  window.origin = steel::GradeOrigin::entered_by_shop;
  return window;
}

// A table whose rows cannot be read any more counts as none.
std::optional<steel::TemperTable> table_from(const Query& row) {
  auto rows = steel::parse_temper_rows(row.text("rows"), "rows");
  if (!rows) return std::nullopt;
  steel::TemperTable table;
  table.hardened_at = row.maybe_temperature("hardened_k1800");
  table.medium = row.text("medium");
  table.hold = row.duration("hold_s");
  table.times = static_cast<std::size_t>(row.integer("times"));
  if (!row.is_null("as_quenched_tenths"))
    table.as_quenched =
        steel::RockwellC{static_cast<double>(row.integer("as_quenched_tenths")) / 10};
  table.rows = std::move(rows).value();
  table.source = row.text("source") + by_the_shop;
  table.origin = steel::GradeOrigin::entered_by_shop;
  return table;
}

struct Figures {
  std::vector<steel::HeatTreatWindow> windows;
  std::vector<steel::TemperTable> tables;
};

std::map<std::string, Figures> entered_figures(const ShopFile& shop) {
  std::map<std::string, Figures> figures;
  Query windows(shop, "SELECT * FROM own_window WHERE withdrawn_at IS NULL ORDER BY id");
  while (windows.next()) figures[windows.text("grade")].windows.push_back(window_from(windows));
  Query tables(shop, "SELECT * FROM own_temper_table WHERE withdrawn_at IS NULL ORDER BY id");
  while (tables.next())
    if (auto table = table_from(tables))
      figures[tables.text("grade")].tables.push_back(*std::move(table));
  return figures;
}

bool withdraw(const ShopFile& shop, const char* table, Query& standing, Instant at) {
  std::vector<std::int64_t> ids;
  while (standing.next()) ids.push_back(standing.integer("id"));
  for (const std::int64_t id : ids) Row(table).set("withdrawn_at", at).update(shop, id);
  return !ids.empty();
}

}  // namespace

steel::GradeBook grade_book(const ShopFile& shop) {
  steel::GradeBook book = steel::GradeBook::published();
  Query query(shop, "SELECT * FROM own_grade ORDER BY id");
  while (query.next())
    if (auto with = book.with(grade_from(query))) book = std::move(with).value();
  for (auto& [name, figures] : entered_figures(shop))
    if (book.find(name) != nullptr)
      book = book.with_figures(name, std::move(figures.windows), std::move(figures.tables));
  return book;
}

void store_own_window(const ShopFile& shop, const std::string& grade,
                      const steel::HeatTreatWindow& window, Instant at) {
  withdraw_own_window(shop, grade, window.operation, at);
  Row("own_window")
      .set("grade", grade)
      .set("operation", window.operation)
      .set("lo_k1800", window.low)
      .set("hi_k1800", window.high)
      .set("hold_least_s", window.hold_least)
      .set("hold_most_s", window.hold_most)
      .set("cooling", window.cooling)
      .set("fall_per_h_k1800", window.most_fall_per_hour)
      .set("until_k1800", window.slow_until)
      .set("source", window.source)
      .insert(shop);
}

bool withdraw_own_window(const ShopFile& shop, const std::string& grade, std::string_view operation,
                         Instant at) {
  Query standing(shop,
                 "SELECT id FROM own_window WHERE grade = ? AND operation = ? "
                 "AND withdrawn_at IS NULL");
  standing.bind(grade).bind(operation);
  return withdraw(shop, "own_window", standing, at);
}

void store_own_temper_table(const ShopFile& shop, const std::string& grade,
                            const steel::TemperTable& table, const std::string& rows, Instant at) {
  withdraw_own_temper_table(shop, grade, table.source, at);
  std::optional<std::int64_t> as_quenched;
  if (table.as_quenched) as_quenched = std::llround(table.as_quenched->points * 10);
  Row("own_temper_table")
      .set("grade", grade)
      .set("hardened_k1800", table.hardened_at)
      .set("medium", table.medium)
      .set("hold_s", table.hold)
      .set("times", static_cast<std::int64_t>(table.times))
      .set("as_quenched_tenths", as_quenched)
      .set("rows", rows)
      .set("source", table.source)
      .insert(shop);
}

bool withdraw_own_temper_table(const ShopFile& shop, const std::string& grade,
                               const std::string& source, Instant at) {
  Query standing(shop,
                 "SELECT id FROM own_temper_table WHERE grade = ? AND source = ? "
                 "AND withdrawn_at IS NULL");
  standing.bind(grade).bind(source);
  return withdraw(shop, "own_temper_table", standing, at);
}

}  // namespace tangmark::db
