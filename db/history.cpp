// SPDX-License-Identifier: MIT
#include "db/history.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <map>
#include <set>
#include <utility>

#include "db/digest.h"
#include "db/failure.h"

namespace tangmark::db {
namespace {

// Personal fields enter history as salted hashes only, so that erasing a person's fields and salt
// leaves nothing to guess from while the chain stays whole.
const std::set<std::pair<std::string, std::string>> personal_fields{
    {"customer", "name"},
    {"customer", "contact"},
    {"customer", "address"},
    {"customer", "note"},
    {"certificate_words", "made_for"}};

std::string_view text_of(sqlite3_value* value) {
  const void* bytes = sqlite3_value_blob(value);
  const auto size = static_cast<std::size_t>(sqlite3_value_bytes(value));
  return bytes ? std::string_view(static_cast<const char*>(bytes), size) : std::string_view();
}

void answer(sqlite3_context* context, const std::string& text) {
  sqlite3_result_text(context, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
}

void digest_function(sqlite3_context* context, int count, sqlite3_value** values) {
  if (sqlite3_value_type(values[count - 1]) == SQLITE_NULL) return sqlite3_result_null(context);
  std::string bytes;
  for (int i = 0; i < count; ++i) bytes += text_of(values[i]);
  answer(context, sha256_hex(bytes));
}

// Each field with its length, so that no two different rows read alike.
void link_function(sqlite3_context* context, int count, sqlite3_value** values) {
  std::string bytes;
  for (int i = 0; i < count; ++i) {
    const bool none = sqlite3_value_type(values[i]) == SQLITE_NULL;
    const std::string_view field = none ? std::string_view() : text_of(values[i]);
    bytes += none ? std::string("-;") : fmt::format("{}:", field.size());
    bytes += field;
  }
  answer(context, sha256_hex(bytes));
}

// Whether a row as history kept it is the row as it is now. A schema step adds columns behind the
// others, empty in rows of before: those are all that the row may have more.
bool agrees(std::string_view kept, std::string_view now) {
  if (kept == now) return true;
  if (!kept.ends_with('}') || !now.starts_with(kept.substr(0, kept.size() - 1))) return false;
  std::string_view rest = now.substr(kept.size() - 1);
  while (rest.starts_with(",\"")) {
    const auto end = rest.find("\":", 2);
    if (end == std::string_view::npos || rest.substr(end + 2, 4) != "null") return false;
    rest.remove_prefix(end + 6);
  }
  return rest == "}";
}

void agree_function(sqlite3_context* context, int, sqlite3_value** values) {
  const bool both =
      sqlite3_value_type(values[0]) != SQLITE_NULL && sqlite3_value_type(values[1]) != SQLITE_NULL;
  sqlite3_result_int(context, both && agrees(text_of(values[0]), text_of(values[1])) ? 1 : 0);
}

void now_function(sqlite3_context* context, int, sqlite3_value**) {
  answer(context, to_stored(static_cast<ShopFile::Stamp*>(sqlite3_user_data(context))->now));
}
void action_function(sqlite3_context* context, int, sqlite3_value**) {
  answer(context, static_cast<ShopFile::Stamp*>(sqlite3_user_data(context))->action);
}
void reason_function(sqlite3_context* context, int, sqlite3_value**) {
  answer(context, static_cast<ShopFile::Stamp*>(sqlite3_user_data(context))->reason);
}

std::vector<std::string> table_names(SQLite::Database& database) {
  SQLite::Statement query(database,
                          "SELECT name FROM sqlite_master WHERE type = 'table' "
                          "AND name NOT LIKE 'sqlite_%' AND name <> 'history' ORDER BY name");
  std::vector<std::string> names;
  while (query.executeStep()) names.push_back(query.getColumn(0).getString());
  return names;
}

// A file of an earlier step may have the field and not yet the salt.
bool has_salt(SQLite::Database& database, const std::string& table) {
  SQLite::Statement salt(database, "SELECT 1 FROM pragma_table_info(?) WHERE name = 'salt'");
  salt.bind(1, table);
  return salt.executeStep();
}

// "json_object('id', new.id, ...)" over all columns of a table, in column order.
std::string row_as_json(SQLite::Database& database, const std::string& table,
                        const std::string& prefix) {
  const bool salted = has_salt(database, table);
  SQLite::Statement columns(database, "SELECT name, type FROM pragma_table_info(?)");
  columns.bind(1, table);
  std::string pairs;
  while (columns.executeStep()) {
    const std::string name = columns.getColumn(0).getString();
    std::string value = prefix + "\"" + name + "\"";
    if (salted && personal_fields.contains({table, name}))
      value = fmt::format("tm_digest({}salt, {})", prefix, value);
    else if (columns.getColumn(1).getString() == "BLOB")
      value = fmt::format("tm_digest({})", value);
    pairs += fmt::format("{}'{}', {}", pairs.empty() ? "" : ", ", name, value);
  }
  return "json_object(" + pairs + ")";
}

std::string trigger(SQLite::Database& database, const std::string& table, const char* event) {
  const std::string what = event;
  const std::string old_row = what == "INSERT" ? "NULL" : row_as_json(database, table, "OLD.");
  const std::string new_row = what == "DELETE" ? "NULL" : row_as_json(database, table, "NEW.");
  return fmt::format(
      R"(CREATE TRIGGER "keep_{0}_{1}" AFTER {1} ON "{0}" BEGIN
INSERT INTO history(at, action, reason, subject, row, old, new, hash)
SELECT tm_now(), tm_action(), tm_reason(), '{0}', {2}.id, o, n,
  tm_link((SELECT hash FROM history ORDER BY id DESC LIMIT 1),
          tm_now(), tm_action(), tm_reason(), '{0}', {2}.id, o, n)
FROM (SELECT {3} AS o, {4} AS n); END)",
      table, what, what == "DELETE" ? "OLD" : "NEW", old_row, new_row);
}

HistoryRow read_row(SQLite::Statement& query) {
  auto at = from_stored_instant(query.getColumn(1).getString(), "history.at");
  return {query.getColumn(0).getInt64(),  at ? *at : Instant{},
          query.getColumn(2).getString(), query.getColumn(3).getString(),
          query.getColumn(4).getString(), query.getColumn(5).getInt64(),
          query.getColumn(6).getString(), query.getColumn(7).getString()};
}

constexpr const char* history_columns = "id, at, action, reason, subject, row, old, new";

void follow_chain(SQLite::Database& database, std::vector<std::string>& breaks) {
  SQLite::Statement rows(database,
                         "SELECT id, hash, tm_link(lag(hash) OVER (ORDER BY id), at, action, "
                         "reason, subject, row, old, new) FROM history ORDER BY id");
  while (rows.executeStep()) {
    if (rows.getColumn(1).getString() == rows.getColumn(2).getString()) continue;
    breaks.push_back(fmt::format("History row {} was changed, or the row before it was taken out.",
                                 rows.getColumn(0).getInt64()));
    return;  // every later link would only repeat the news
  }
}

void compare_table(SQLite::Database& database, const std::string& table,
                   std::vector<std::string>& breaks) {
  SQLite::Statement rows(database,
                         fmt::format(R"(WITH last AS (SELECT row, new FROM history WHERE id IN
  (SELECT max(id) FROM history WHERE subject = '{0}' GROUP BY row)),
now AS (SELECT id, {1} AS j FROM "{0}")
SELECT now.id, CASE WHEN last.row IS NULL THEN 'has no history'
  WHEN last.new IS NULL THEN 'is there though history says it was dropped'
  ELSE 'differs from what history says it is' END
FROM now LEFT JOIN last ON last.row = now.id WHERE NOT tm_agrees(last.new, now.j)
UNION ALL
SELECT last.row, 'is gone though history says it is there' FROM last
LEFT JOIN now ON now.id = last.row WHERE now.id IS NULL AND last.new IS NOT NULL)",
                                     table, row_as_json(database, table, "")));
  while (rows.executeStep())
    breaks.push_back(fmt::format("Row {} of {} {}: it was changed outside the program.",
                                 rows.getColumn(0).getInt64(), table,
                                 rows.getColumn(1).getString()));
}

}  // namespace

void teach_history(SQLite::Database& database, ShopFile::Stamp& stamp) {
  const auto teach = [&](const char* name, int count, auto function) {
    const int code = sqlite3_create_function_v2(database.getHandle(), name, count, SQLITE_UTF8,
                                                &stamp, function, nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) throw Failure("The history functions could not be set up.");
  };
  teach("tm_digest", 1, &digest_function);
  teach("tm_digest", 2, &digest_function);
  teach("tm_link", 8, &link_function);
  teach("tm_agrees", 2, &agree_function);
  teach("tm_now", 0, &now_function);
  teach("tm_action", 0, &action_function);
  teach("tm_reason", 0, &reason_function);
}

void lay_history_triggers(SQLite::Database& database) {
  drop_history_triggers(database);
  for (const std::string& table : table_names(database))
    for (const char* event : {"INSERT", "UPDATE", "DELETE"})
      database.exec(trigger(database, table, event));
  for (const char* event : {"UPDATE", "DELETE"})
    database.exec(
        fmt::format("CREATE TRIGGER \"keep_history_{0}\" BEFORE {0} ON history BEGIN "
                    "SELECT RAISE(ABORT, 'history is only ever added to'); END",
                    event));
}

void drop_history_triggers(SQLite::Database& database) {
  std::vector<std::string> names;
  {
    SQLite::Statement query(database,
                            "SELECT name FROM sqlite_master WHERE type = 'trigger' "
                            "AND name LIKE 'keep\\_%' ESCAPE '\\'");
    while (query.executeStep()) names.push_back(query.getColumn(0).getString());
  }
  for (const std::string& name : names) database.exec("DROP TRIGGER \"" + name + "\"");
}

std::vector<std::string> kept_tables(const ShopFile& shop) {
  return table_names(shop.database());
}

std::vector<HistoryRow> history_of(const ShopFile& shop, std::string_view table, std::int64_t row) {
  SQLite::Statement query(shop.database(), std::string("SELECT ") + history_columns +
                                               " FROM history WHERE subject = ? AND row = ? "
                                               "ORDER BY id");
  query.bind(1, std::string(table));
  query.bind(2, row);
  std::vector<HistoryRow> rows;
  while (query.executeStep()) rows.push_back(read_row(query));
  return rows;
}

std::vector<HistoryRow> latest_history(const ShopFile& shop, int most) {
  SQLite::Statement query(shop.database(), std::string("SELECT ") + history_columns +
                                               " FROM history ORDER BY id DESC LIMIT ?");
  query.bind(1, most);
  std::vector<HistoryRow> rows;
  while (query.executeStep()) rows.push_back(read_row(query));
  return rows;
}

std::vector<std::string> check_history(const ShopFile& shop) {
  SQLite::Database& database = shop.database();
  std::vector<std::string> breaks;
  follow_chain(database, breaks);
  SQLite::Statement laid(database,
                         "SELECT count(*) FROM sqlite_master WHERE type = 'trigger' "
                         "AND name LIKE 'keep\\_%' ESCAPE '\\'");
  laid.executeStep();
  const auto tables = table_names(database);
  if (laid.getColumn(0).getInt64() != static_cast<std::int64_t>(3 * tables.size() + 2))
    breaks.push_back("A trigger that keeps history was taken out of the file.");
  for (const std::string& table : tables) compare_table(database, table, breaks);
  return breaks;
}

}  // namespace tangmark::db
