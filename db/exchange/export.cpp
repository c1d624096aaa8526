// SPDX-License-Identifier: MIT
#include "db/exchange/export.h"

#include <nlohmann/json.hpp>

#include <fstream>

#include "db/digest.h"
#include "db/exchange/columns.h"
#include "db/failure.h"
#include "db/history.h"
#include "domain/measure/table_text.h"

namespace tangmark::db {
namespace {

namespace fs = std::filesystem;

std::string hex_of(std::string_view bytes) {
  static constexpr std::string_view digits = "0123456789abcdef";
  std::string text;
  for (const char c : bytes) {
    text += digits[static_cast<unsigned char>(c) >> 4];
    text += digits[static_cast<unsigned char>(c) & 15];
  }
  return text;
}

// The extension lets a photo open by itself.
std::string extension_of(const std::string& bytes) {
  if (bytes.starts_with("\xff\xd8\xff")) return "jpg";
  if (bytes.starts_with("\x89PNG")) return "png";
  if (bytes.starts_with("%PDF")) return "pdf";
  return "dat";
}

class Writer {
 public:
  Writer(const ShopFile& shop, fs::path folder) : shop_(shop), folder_(std::move(folder)) {}

  void write_all() {
    auto tables = kept_tables(shop_);
    tables.push_back("history");
    nlohmann::ordered_json everything;
    for (const std::string& table : tables) everything[table] = write_table(table);
    put("shop.json", everything.dump(1) + "\n");
    put("schema.csv", to_table_text({{"step"}, {std::to_string(shop_.step())}}));
    const std::string contents = to_table_text(contents_);
    put("contents.csv", contents);
  }

 private:
  nlohmann::ordered_json write_table(const std::string& table) {
    const auto columns = columns_of(shop_.database(), table);
    std::vector<std::string> head;
    for (const Column& column : columns) head.push_back(column.name);
    std::string text = to_table_line(head);
    auto rows = nlohmann::ordered_json::array();
    SQLite::Statement query(shop_.database(), "SELECT * FROM \"" + table + "\" ORDER BY id");
    while (query.executeStep()) {
      std::vector<std::string> cells;
      nlohmann::ordered_json object;
      for (std::size_t i = 0; i < columns.size(); ++i) {
        const SQLite::Column value = query.getColumn(static_cast<int>(i));
        cells.push_back(cell(table, query.getColumn(0).getInt64(), columns[i], value));
        if (value.isNull())
          object[columns[i].name] = nullptr;
        else if (value.isInteger())
          object[columns[i].name] = value.getInt64();
        else if (value.isBlob())
          object[columns[i].name] = cells.back();
        else
          object[columns[i].name] = value.getString();
      }
      text += to_table_line(cells);
      rows.push_back(std::move(object));
    }
    put(table + ".csv", text);
    return rows;
  }

  std::string cell(const std::string& table, std::int64_t id, const Column& column,
                   const SQLite::Column& value) {
    if (value.isNull()) return {};
    const std::string bytes = value.getString();
    if (column.is_file()) {
      const std::string name =
          "files/" + table + "-" + std::to_string(id) + "." + extension_of(bytes);
      put(name, bytes);
      return name;
    }
    if (column.type == "BLOB") return hex_of(bytes);
    const bool marked =
        column.may_be_null && column.type == "TEXT" && (bytes.empty() || bytes.front() == '\\');
    return marked ? "\\" + bytes : bytes;
  }

  void put(const std::string& name, const std::string& bytes) {
    std::ofstream file(folder_ / name, std::ios::binary);
    file << bytes;
    file.flush();
    if (!file)
      throw Failure((folder_ / name).string() + " could not be written. Is the disk full?");
    if (name != "contents.csv") contents_.push_back({name, sha256_hex(bytes)});
  }

  const ShopFile& shop_;
  fs::path folder_;
  std::vector<std::vector<std::string>> contents_{{"file", "sha256"}};
};

}  // namespace

Outcome<Done> export_shop(const ShopFile& shop, const fs::path& folder) {
  std::error_code error;
  if (fs::exists(folder, error) &&
      (!fs::is_directory(folder, error) || !fs::is_empty(folder, error)))
    return Problem{folder.string(), folder.string() + " is there already and not empty.",
                   "Name a folder that does not exist yet."};
  fs::create_directories(folder / "files", error);
  if (error)
    return Problem{folder.string(), folder.string() + " cannot be made.",
                   "Choose a place that you may write to."};
  // One look at one moment, even while another window goes on working.
  SQLite::Transaction moment(shop.database());
  Writer(shop, folder).write_all();
  return Done{};
}

}  // namespace tangmark::db
