// SPDX-License-Identifier: MIT
#include <charconv>
#include <fstream>
#include <iterator>
#include <optional>

#include "db/exchange/columns.h"
#include "db/exchange/export.h"
#include "db/history.h"
#include "db/schema/steps.h"
#include "domain/measure/table_text.h"

namespace tangmark::db {
namespace {

namespace fs = std::filesystem;

std::optional<std::string> read_file(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return std::nullopt;
  return std::string(std::istreambuf_iterator<char>(file), {});
}

std::optional<std::string> from_hex(const std::string& text) {
  std::string bytes;
  for (std::size_t i = 0; i + 1 < text.size(); i += 2) {
    unsigned value = 0;
    const auto [end, error] = std::from_chars(text.data() + i, text.data() + i + 2, value, 16);
    if (error != std::errc() || end != text.data() + i + 2) return std::nullopt;
    bytes += static_cast<char>(value);
  }
  if (text.size() % 2 != 0) return std::nullopt;
  return bytes;
}

class Reader {
 public:
  Reader(ShopFile& shop, fs::path folder) : shop_(shop), folder_(std::move(folder)) {}

  Outcome<Done> read_all() {
    SQLite::Database& database = shop_.database();
    database.exec("PRAGMA foreign_keys = OFF");  // tables come in the order of the alphabet
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    drop_history_triggers(database);
    auto tables = kept_tables(shop_);
    tables.push_back("history");
    for (const std::string& table : tables)
      if (auto read = read_table_file(table); !read) return read;
    SQLite::Statement broken(database, "PRAGMA foreign_key_check");
    if (broken.executeStep())
      return Problem{
          broken.getColumn(0).getString() + ".csv",
          "A row names something of " + broken.getColumn(2).getString() + " that is not there.",
          "Import the folder as it was exported."};
    lay_history_triggers(database);
    transaction.commit();
    database.exec("PRAGMA foreign_keys = ON");
    return Done{};
  }

 private:
  Outcome<Done> read_table_file(const std::string& table) {
    const std::string name = table + ".csv";
    const auto text = read_file(folder_ / name);
    if (!text)
      return Problem{name, "The folder has no " + name + ".",
                     "Import a folder that this program exported."};
    TableReader reader(*text, name);
    TableRow row;
    const auto columns = columns_of(shop_.database(), table);
    if (!reader.next(row)) return reader.problem();
    std::vector<std::string> head;
    std::string marks;
    for (const Column& column : columns) {
      head.push_back(column.name);
      marks += marks.empty() ? "?" : ", ?";
    }
    if (row.cells != head)
      return Problem{name + ", line 1",
                     "The columns are not those of this program's " + table + " table.",
                     "Import a folder that this program exported."};
    SQLite::Statement insert(shop_.database(),
                             "INSERT INTO \"" + table + "\" VALUES(" + marks + ")");
    while (reader.next(row)) {
      insert.reset();
      insert.clearBindings();
      for (std::size_t i = 0; i < columns.size(); ++i)
        if (auto bound = bind(insert, static_cast<int>(i) + 1, columns[i], row.cells[i]); !bound)
          return Problem{
              name + ", line " + std::to_string(row.line) + ", column " + columns[i].name,
              bound.problem().sentence, bound.problem().remedy};
      try {
        insert.exec();
      } catch (const SQLite::Exception& error) {
        return Problem{name + ", line " + std::to_string(row.line),
                       std::string("This row does not fit: ") + error.what() + ".",
                       "Import the folder as it was exported."};
      }
    }
    if (reader.refused()) return reader.problem();
    return Done{};
  }

  Outcome<Done> bind(SQLite::Statement& insert, int position, const Column& column,
                     const std::string& cell) {
    if (column.may_be_null && cell.empty()) return Done{};
    if (column.type == "INTEGER") {
      std::int64_t number = 0;
      const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), number);
      if (error != std::errc() || end != cell.data() + cell.size())
        return Problem{"", "\"" + cell + "\" is not a whole number.",
                       "Write a whole number without separators."};
      insert.bind(position, number);
    } else if (column.is_file()) {
      const auto bytes = read_file(folder_ / cell);
      if (!bytes || cell.find("..") != std::string::npos)
        return Problem{"", "The file " + cell + " is not in the folder.", "Put it back."};
      insert.bind(position, bytes->data(), static_cast<int>(bytes->size()));
    } else if (column.type == "BLOB") {
      const auto bytes = from_hex(cell);
      if (!bytes)
        return Problem{"", "\"" + cell + "\" is not hexadecimal.", "Put the exported figure back."};
      insert.bind(position, bytes->data(), static_cast<int>(bytes->size()));
    } else {
      const bool marked = column.may_be_null && cell.starts_with("\\");
      insert.bind(position, marked ? cell.substr(1) : cell);
    }
    return Done{};
  }

  ShopFile& shop_;
  fs::path folder_;
};

// The schema step of the program that exported the folder. The first exports did not say it.
Outcome<int> step_of(const fs::path& folder) {
  const std::string name = "schema.csv";
  const auto text = read_file(folder / name);
  if (!text) return 1;
  const auto known = static_cast<int>(schema_steps().size());
  TableReader reader(*text, name);
  TableRow head, row;
  int step = 0;
  if (reader.next(head) && reader.next(row) && row.cells.size() == 1) {
    const std::string& cell = row.cells.front();
    std::from_chars(cell.data(), cell.data() + cell.size(), step);
  }
  if (step < 1)
    return Problem{name, "It does not say the step of its tables.",
                   "Import the folder as it was exported."};
  if (step > known)
    return Problem{name,
                   "A newer program exported this folder (step " + std::to_string(step) +
                       ", this one knows " + std::to_string(known) + ").",
                   "Import it with that program."};
  return step;
}

void remove_new_file(const fs::path& path) {
  std::error_code ignored;
  for (const char* tail : {"", "-wal", "-shm"}) fs::remove(path.string() + tail, ignored);
}

}  // namespace

Outcome<std::vector<std::string>> import_shop(const fs::path& folder, const fs::path& new_file,
                                              Instant now) {
  std::error_code error;
  if (!fs::is_directory(folder, error))
    return Problem{folder.string(), "There is no folder " + folder.string() + ".",
                   "Check the name."};
  const auto step = step_of(folder);
  if (!step) return step.problems();
  auto shop = ShopFile::create_at_step(new_file, now, *step);
  if (!shop) return shop.problems();
  std::vector<std::string> breaks;
  Problems problems;
  {
    ShopFile made = std::move(shop).value();
    auto read = Reader(made, folder).read_all();
    if (!read) {
      problems = read.problems();
    } else {
      made.bring_up_to_date();
      breaks = check_history(made);
    }
  }
  if (!problems.empty()) {
    remove_new_file(new_file);
    return problems;
  }
  return breaks;
}

}  // namespace tangmark::db
