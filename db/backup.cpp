// SPDX-License-Identifier: MIT
#include "db/backup.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <fstream>

#include "db/exchange/columns.h"
#include "db/failure.h"
#include "domain/measure/table_text.h"

namespace tangmark::db {
namespace {

namespace fs = std::filesystem;

Outcome<Done> free_path(const fs::path& path) {
  std::error_code error;
  if (fs::exists(path, error))
    return Problem{path.string(), path.string() + " is there already.",
                   "Name a file that does not exist yet."};
  if (!fs::is_directory(fs::absolute(path).parent_path(), error))
    return Problem{path.string(), "The folder of " + path.string() + " does not exist.",
                   "Make it first."};
  return Done{};
}

Outcome<Done> copy_database(SQLite::Database& from, const fs::path& to) {
  try {
    SQLite::Database target(to.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    SQLite::Backup backup(target, from);
    while (backup.executeStep(1000) != SQLITE_DONE) continue;
    // A copy that stands alone: no side files when somebody opens it for reading.
    target.exec("PRAGMA journal_mode = DELETE");
  } catch (const SQLite::Exception& error) {
    std::error_code ignored;
    fs::remove(to, ignored);
    return Problem{to.string(), to.string() + " cannot be written: " + error.what() + ".",
                   "Choose a place with room that you may write to."};
  }
  return Done{};
}

std::string rescue_table(SQLite::Database& database, const std::string& table,
                         const fs::path& folder) {
  std::int64_t saved = 0;
  std::string text, trouble;
  try {
    std::vector<std::string> head;
    for (const Column& column : columns_of(database, table)) head.push_back(column.name);
    text = to_table_line(head);
    SQLite::Statement query(database, "SELECT * FROM \"" + table + "\"");
    while (query.executeStep()) {
      std::vector<std::string> cells;
      for (int i = 0; i < query.getColumnCount(); ++i) {
        const SQLite::Column value = query.getColumn(i);
        if (!value.isBlob()) {
          cells.push_back(value.getString());
          continue;
        }
        const std::string name = fmt::format("{}-{}.dat", table, query.getColumn(0).getInt64());
        std::ofstream(folder / name, std::ios::binary) << value.getString();
        cells.push_back(name);
      }
      text += to_table_line(cells);
      ++saved;
    }
  } catch (const SQLite::Exception& error) {
    trouble = fmt::format("; the rest cannot be read ({})", error.what());
  }
  std::ofstream file(folder / (table + ".csv"), std::ios::binary);
  file << text;
  file.flush();
  if (!file)
    throw Failure((folder / (table + ".csv")).string() +
                  " could not be written. Is the disk full?");
  return fmt::format("{}: {} rows saved{}.", table, saved, trouble);
}

}  // namespace

Outcome<Done> back_up(const ShopFile& shop, const fs::path& copy) {
  if (auto free = free_path(copy); !free) return free;
  return copy_database(shop.database(), copy);
}

Outcome<Done> restore(const fs::path& backup, const fs::path& file, Instant now) {
  if (auto free = free_path(file); !free) return free;
  auto sound = ShopFile::open(backup, now);
  if (!sound) return sound.problems();
  return copy_database(sound->database(), file);
}

Outcome<std::vector<std::string>> rescue(const fs::path& damaged, const fs::path& folder) {
  std::error_code error;
  if (!fs::is_regular_file(damaged, error))
    return Problem{damaged.string(), "There is no file " + damaged.string() + ".",
                   "Check the name."};
  if (fs::exists(folder, error))
    return Problem{folder.string(), folder.string() + " is there already.",
                   "Name a folder that does not exist yet."};
  std::vector<std::string> tables;
  try {
    SQLite::Database database(damaged.string(), SQLite::OPEN_READONLY, 5000);
    SQLite::Statement names(database,
                            "SELECT name FROM sqlite_master WHERE type = 'table' "
                            "AND name NOT LIKE 'sqlite_%' ORDER BY name");
    while (names.executeStep()) tables.push_back(names.getColumn(0).getString());
    fs::create_directories(folder, error);
    if (error)
      return Problem{folder.string(), folder.string() + " cannot be made.",
                     "Choose a place that you may write to."};
    std::vector<std::string> sentences;
    for (const std::string& table : tables)
      sentences.push_back(rescue_table(database, table, folder));
    return sentences;
  } catch (const SQLite::Exception&) {
    return Problem{damaged.string(),
                   "Nothing of " + damaged.string() +
                       " can be read: it is no shop file, or its first page is gone.",
                   "Restore a backup with: tangmark restore."};
  }
}

}  // namespace tangmark::db
