// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <string>
#include <vector>

namespace tangmark::db {

/// A column as the schema declares it.
struct Column {
  std::string name, type;
  bool may_be_null;
  /// A short blob (the salt of a person) stands in the table as hexadecimal digits; longer ones are
  /// files beside it.
  bool is_file() const { return type == "BLOB" && name != "salt"; }
};

inline std::vector<Column> columns_of(SQLite::Database& database, const std::string& table) {
  SQLite::Statement query(database, "SELECT name, type, \"notnull\", pk FROM pragma_table_info(?)");
  query.bind(1, table);
  std::vector<Column> columns;
  while (query.executeStep())
    columns.push_back({query.getColumn(0).getString(), query.getColumn(1).getString(),
                       query.getColumn(2).getInt() == 0 && query.getColumn(3).getInt() == 0});
  return columns;
}

}  // namespace tangmark::db
