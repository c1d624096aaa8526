// SPDX-License-Identifier: MIT
#include <SQLiteCpp/SQLiteCpp.h>

#include "db/history.h"
#include "tests/shop_fixture.h"

namespace tangmark::test {

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
