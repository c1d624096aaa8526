// SPDX-License-Identifier: MIT
#include <SQLiteCpp/SQLiteCpp.h>

#include "db/history.h"
#include "tests/shop_fixture.h"

namespace tangmark::test {

// Here and not in the header: where the domain's Catch is known, the test macros are not.
std::string ShopOnTheBench::did(std::string_view action, const db::Given& given) {
  auto result = db::perform(shop, action, given, now);
  if (!result) {
    std::string all;
    for (const Problem& p : result.problems())
      all += p.field + ": " + p.sentence + " " + p.remedy + "\n";
    FAIL("action " << action << " was refused: " << all);
  }
  return result->number;
}

std::string content_of(const db::ShopFile& shop) {
  std::string all;
  auto tables = db::kept_tables(shop);
  tables.push_back("history");
  for (const std::string& table : tables) {
    SQLite::Statement rows(shop.database(), "SELECT * FROM \"" + table + "\" ORDER BY id");
    while (rows.executeStep()) {
      all += table;
      for (int i = 0; i < rows.getColumnCount(); ++i) all += "|" + rows.getColumn(i).getString();
      all += "\n";
    }
  }
  return all;
}

}  // namespace tangmark::test
