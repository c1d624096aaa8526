// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/shop_file.h"

namespace tangmark::db {

/// One appended row of history.
struct HistoryRow {
  std::int64_t id;
  Instant at;
  std::string action, reason, subject;
  std::int64_t row;
  std::string before, after;  ///< JSON objects; empty when the row was made or dropped
};

/// Every change of one row of one table, oldest first.
std::vector<HistoryRow> history_of(const ShopFile& shop, std::string_view table, std::int64_t row);
/// The newest `most` changes of the whole shop, newest first.
std::vector<HistoryRow> latest_history(const ShopFile& shop, int most);

/// Tables whose every change is kept: all but history itself.
std::vector<std::string> kept_tables(const ShopFile& shop);

/// Makes the SQL functions that history's triggers call known to a connection.
void teach_history(SQLite::Database& database, ShopFile::Stamp& stamp);
/// (Re)makes the triggers that append a history row for every change of every kept table. Called by
/// a schema step after it changed tables.
void lay_history_triggers(SQLite::Database& database);
void drop_history_triggers(SQLite::Database& database);

/// Follows the chain from its first row and compares every kept row with what history says it is.
/// Each break is one sentence; an unbroken shop gives none.
std::vector<std::string> check_history(const ShopFile& shop);

}  // namespace tangmark::db
