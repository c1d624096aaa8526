// SPDX-License-Identifier: MIT
#include "db/row.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cassert>

#include "db/failure.h"

namespace tangmark::db {

Row& Row::set_null(std::string_view column) {
  cells_.push_back({std::string(column), Kind::null, 0, {}});
  return *this;
}

Row& Row::set_bytes(std::string_view column, std::string bytes) {
  cells_.push_back({std::string(column), Kind::bytes, 0, std::move(bytes)});
  return *this;
}

void Row::hold(std::string_view column, std::int64_t integer) {
  cells_.push_back({std::string(column), Kind::integer, integer, {}});
}

void Row::hold(std::string_view column, std::string text) {
  cells_.push_back({std::string(column), Kind::text, 0, std::move(text)});
}

void Row::bind(SQLite::Statement& statement) const {
  int position = 0;
  for (const Cell& cell : cells_) {
    ++position;
    switch (cell.kind) {
      case Kind::null:
        statement.bind(position);
        break;
      case Kind::integer:
        statement.bind(position, cell.integer);
        break;
      case Kind::text:
        statement.bind(position, cell.text);
        break;
      case Kind::bytes:
        statement.bind(position, cell.text.data(), static_cast<int>(cell.text.size()));
        break;
    }
  }
}

std::int64_t Row::insert(const ShopFile& shop) const {
  std::string columns, marks;
  for (const Cell& cell : cells_) {
    columns += (columns.empty() ? "\"" : ", \"") + cell.column + "\"";
    marks += marks.empty() ? "?" : ", ?";
  }
  SQLite::Statement statement(
      shop.database(), "INSERT INTO \"" + table_ + "\"(" + columns + ") VALUES(" + marks + ")");
  bind(statement);
  statement.exec();
  return shop.database().getLastInsertRowid();
}

void Row::update(const ShopFile& shop, std::int64_t id) const {
  std::string columns;
  for (const Cell& cell : cells_)
    columns += (columns.empty() ? "\"" : ", \"") + cell.column + "\" = ?";
  SQLite::Statement statement(shop.database(),
                              "UPDATE \"" + table_ + "\" SET " + columns + " WHERE id = ?");
  bind(statement);
  statement.bind(static_cast<int>(cells_.size()) + 1, id);
  const int changed = statement.exec();
  assert(changed == 1 && "an update names a row that exists");
  static_cast<void>(changed);
}

void delete_row(const ShopFile& shop, const std::string& table, std::int64_t id) {
  SQLite::Statement statement(shop.database(), "DELETE FROM \"" + table + "\" WHERE id = ?");
  statement.bind(1, id);
  statement.exec();
}

Query::Query(const ShopFile& shop, const std::string& sql)
    : statement_(std::make_unique<SQLite::Statement>(shop.database(), sql)) {}
Query::Query(Query&&) noexcept = default;
Query::~Query() = default;

Query& Query::hold(std::int64_t integer) {
  statement_->bind(++bound_, integer);
  return *this;
}

Query& Query::hold(const std::string& text) {
  statement_->bind(++bound_, text);
  return *this;
}

bool Query::next() {
  return statement_->executeStep();
}
bool Query::is_null(const char* column) const {
  return statement_->getColumn(column).isNull();
}
std::string Query::text(const char* column) const {
  return statement_->getColumn(column).getString();
}
std::int64_t Query::integer(const char* column) const {
  return statement_->getColumn(column).getInt64();
}

void Query::damaged(const char* column) const {
  throw Failure(std::string("The file is damaged: column ") + column + " holds \"" + text(column) +
                "\". Run: tangmark check.");
}

Instant Query::instant(const char* column) const {
  auto at = from_stored_instant(text(column), column);
  if (!at) damaged(column);
  return *at;
}

CalendarDate Query::date(const char* column) const {
  auto day = parse_date(text(column), column);
  if (!day) damaged(column);
  return *day;
}

Currency Query::currency(const char* column) const {
  auto currency = Currency::of(text(column), column);
  if (!currency) damaged(column);
  return *currency;
}

}  // namespace tangmark::db
