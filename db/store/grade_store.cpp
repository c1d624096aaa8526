// SPDX-License-Identifier: MIT
#include "db/store/grade_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

void add_window(const Query& row, const char* operation, const char* low, const char* high,
                steel::Grade& grade) {
  if (row.is_null(low) || row.is_null(high)) return;
  steel::HeatTreatWindow window;
  window.operation = operation;
  window.low = row.temperature(low);
  window.high = row.temperature(high);
  window.source = grade.source;
  grade.windows.push_back(std::move(window));
}

steel::Grade grade_from(const Query& row) {
  steel::Grade grade;
  grade.name = row.text("name");
  grade.source = row.text("source") + " (entered by the shop)";
  grade.origin = steel::GradeOrigin::entered_by_shop;
  // Limits that an older program let through unread count as none.
  grade.limits = steel::parse_limits(row.text("limits"), "limits").value_or({});
  add_window(row, "harden", "harden_lo_k1800", "harden_hi_k1800", grade);
  add_window(row, "temper", "temper_lo_k1800", "temper_hi_k1800", grade);
  return grade;
}

}  // namespace

steel::GradeBook grade_book(const ShopFile& shop) {
  steel::GradeBook book = steel::GradeBook::published();
  Query query(shop, "SELECT * FROM own_grade ORDER BY id");
  while (query.next())
    if (auto with = book.with(grade_from(query))) book = std::move(with).value();
  return book;
}

}  // namespace tangmark::db
