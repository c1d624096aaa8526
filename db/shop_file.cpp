// SPDX-License-Identifier: MIT
#include "db/shop_file.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include <fstream>

#include "db/failure.h"
#include "db/history.h"
#include "db/schema/steps.h"

namespace tangmark::db {

struct ShopFile::Inside {
  std::filesystem::path path;
  std::string notice;
  bool read_only = false;
  // The stamp outlives the connection: SQL functions hold its address.
  std::unique_ptr<Stamp> stamp = std::make_unique<Stamp>();
  std::unique_ptr<SQLite::Database> database;
};

namespace {

constexpr int busy_ms = 5000;
constexpr std::uintmax_t quick_check_limit = 16u << 20;  // larger files are checked on request

Problem refused(const std::filesystem::path& path, std::string sentence, std::string remedy) {
  return {path.string(), std::move(sentence), std::move(remedy)};
}

bool looks_like_sqlite(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  char head[16] = {};
  file.read(head, sizeof head);
  return file.gcount() == sizeof head &&
         std::string_view(head, 16) == std::string_view("SQLite format 3\0", 16);
}

int pragma_int(SQLite::Database& database, const std::string& name) {
  return database.execAndGet("PRAGMA " + name).getInt();
}

void prepare_connection(SQLite::Database& database, ShopFile::Stamp& stamp) {
  database.exec("PRAGMA foreign_keys = ON");
  teach_history(database, stamp);
}

void apply_step(SQLite::Database& database, std::size_t step) {
  SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
  drop_history_triggers(database);
  database.exec(schema_steps()[step]);
  lay_history_triggers(database);
  database.exec(fmt::format("PRAGMA application_id = {}", shop_application_id));
  database.exec(fmt::format("PRAGMA user_version = {}", step + 1));
  transaction.commit();
}

void back_up_before(SQLite::Database& database, const std::filesystem::path& path, int step) {
  std::filesystem::path copy = path;
  copy.replace_extension(fmt::format("before-step-{}.tangmark", step));
  SQLite::Database target(copy.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  SQLite::Backup backup(target, database);
  while (backup.executeStep(1000) != SQLITE_DONE) continue;
}

std::string uri_of(const std::filesystem::path& path, const char* query) {
  std::string uri = "file:";
  for (const char c : std::filesystem::absolute(path).string())
    uri += c == '?' || c == '#' || c == '%' ? fmt::format("%{:02X}", static_cast<unsigned char>(c))
                                            : std::string(1, c);
  return uri + query;
}

std::unique_ptr<SQLite::Database> connect(const std::filesystem::path& path, bool read_only) {
  if (!read_only)
    return std::make_unique<SQLite::Database>(path.string(), SQLite::OPEN_READWRITE, busy_ms);
  const bool folder_writable =
      ::access(std::filesystem::absolute(path).parent_path().c_str(), W_OK) == 0;
  // A folder that may not be written cannot hold the file that readers of a WAL database share.
  if (!folder_writable)
    return std::make_unique<SQLite::Database>(uri_of(path, "?immutable=1"),
                                              SQLite::OPEN_READONLY | SQLite::OPEN_URI, busy_ms);
  return std::make_unique<SQLite::Database>(path.string(), SQLite::OPEN_READONLY, busy_ms);
}

}  // namespace

ShopFile::ShopFile(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
ShopFile::ShopFile(ShopFile&&) noexcept = default;
ShopFile& ShopFile::operator=(ShopFile&&) noexcept = default;
ShopFile::~ShopFile() = default;

const std::filesystem::path& ShopFile::path() const {
  return inside_->path;
}
bool ShopFile::read_only() const {
  return inside_->read_only;
}
const std::string& ShopFile::notice() const {
  return inside_->notice;
}
SQLite::Database& ShopFile::database() const {
  return *inside_->database;
}
ShopFile::Stamp& ShopFile::stamp() const {
  return *inside_->stamp;
}

std::int64_t ShopFile::changes_by_others() const {
  return inside_->database->execAndGet("PRAGMA data_version").getInt64();
}

ShopFile ShopFile::in_memory(Instant now) {
  auto inside = std::make_unique<Inside>();
  *inside->stamp = {now, "new_shop", ""};
  inside->database = std::make_unique<SQLite::Database>(
      ":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, busy_ms);
  prepare_connection(*inside->database, *inside->stamp);
  for (std::size_t step = 0; step < schema_steps().size(); ++step)
    apply_step(*inside->database, step);
  return ShopFile(std::move(inside));
}

int ShopFile::step() const {
  return pragma_int(*inside_->database, "user_version");
}

void ShopFile::bring_up_to_date() {
  const auto known = static_cast<int>(schema_steps().size());
  for (int next = step(); next < known; ++next) {
    apply_step(*inside_->database, static_cast<std::size_t>(next));
  }
}

Outcome<ShopFile> ShopFile::create(const std::filesystem::path& path, Instant now) {
  return create_at_step(path, now, static_cast<int>(schema_steps().size()));
}

Outcome<ShopFile> ShopFile::create_at_step(const std::filesystem::path& path, Instant now,
                                           int last_step) {
  if (std::filesystem::exists(path))
    return refused(path, "There is already a file of this name.",
                   "Choose another name, or open the file that is there.");
  const auto folder = std::filesystem::absolute(path).parent_path();
  if (!std::filesystem::is_directory(folder) || ::access(folder.c_str(), W_OK) != 0)
    return refused(path, "The folder " + folder.string() + " cannot be written.",
                   "Choose a folder that exists and that you may write to.");
  auto inside = std::make_unique<Inside>();
  inside->path = path;
  *inside->stamp = {now, "new_shop", ""};
  try {
    inside->database = std::make_unique<SQLite::Database>(
        path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, busy_ms);
    inside->database->exec("PRAGMA journal_mode = WAL");
    prepare_connection(*inside->database, *inside->stamp);
    for (int step = 0; step < last_step; ++step)
      apply_step(*inside->database, static_cast<std::size_t>(step));
  } catch (const SQLite::Exception& error) {
    throw Failure(fmt::format("{} could not be written: {}.", path.string(), error.what()));
  }
  return ShopFile(std::move(inside));
}

Outcome<ShopFile> ShopFile::open(const std::filesystem::path& path, Instant now) {
  std::error_code ignored;
  if (!std::filesystem::exists(path, ignored))
    return refused(path, "There is no file " + path.string() + ".",
                   "Check the name, or make a new shop file.");
  if (!std::filesystem::is_regular_file(path, ignored) || ::access(path.c_str(), R_OK) != 0)
    return refused(path, path.string() + " cannot be read.",
                   "Check that it is a file you may read.");
  if (!looks_like_sqlite(path))
    return refused(path, path.string() + " is not a shop file.",
                   "Choose a file that this program made; nothing was changed.");
  auto inside = std::make_unique<Inside>();
  inside->path = path;
  *inside->stamp = {now, "open", ""};
  inside->read_only = ::access(path.c_str(), W_OK) != 0;
  if (inside->read_only)
    inside->notice = "This file may not be written, so it is open for reading only.";
  const Problem damaged = refused(path, path.string() + " is damaged.",
                                  "Open a backup, or save what can be read with: tangmark rescue.");
  try {
    // Looked at for reading first, so that a file which is not ours stays untouched.
    auto look = connect(path, true);
    if (pragma_int(*look, "application_id") != shop_application_id)
      return refused(path, path.string() + " belongs to another program.",
                     "Choose a file that this program made; nothing was changed.");
    const auto known = static_cast<int>(schema_steps().size());
    const int version = pragma_int(*look, "user_version");
    if (version > known) {
      inside->read_only = true;
      inside->notice = fmt::format(
          "This file was written by a newer program (step {}, this one knows {}), so it is open "
          "for "
          "reading only.",
          version, known);
    }
    if (std::filesystem::file_size(path) <= quick_check_limit &&
        look->execAndGet("PRAGMA quick_check(1)").getString() != "ok")
      return damaged;
    look.reset();
    inside->database = connect(path, inside->read_only);
    prepare_connection(*inside->database, *inside->stamp);
    if (!inside->read_only && version < known) {
      back_up_before(*inside->database, path, version + 1);
      for (int step = version; step < known; ++step)
        apply_step(*inside->database, static_cast<std::size_t>(step));
    }
  } catch (const SQLite::Exception& error) {
    const int code = error.getErrorCode();
    if (code == SQLITE_CORRUPT || code == SQLITE_NOTADB) return damaged;
    if (code == SQLITE_BUSY || code == SQLITE_LOCKED)
      throw Failure(path.string() + " is held by another program. Close it there and try again.");
    throw Failure(fmt::format("{} could not be opened: {}.", path.string(), error.what()));
  }
  return ShopFile(std::move(inside));
}

}  // namespace tangmark::db
