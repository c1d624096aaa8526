// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace SQLite {
class Database;
}

namespace tangmark::db {

/// One shop, one file. Open on one thread at a time; a second window opens its own ShopFile on the
/// same path, sees this one's changes and never loses a write (WAL, immediate transactions).
///
/// Refused with a sentence and left untouched: a file that is no shop file, a damaged one, a
/// missing one. Opened for reading only, with a notice: a file newer than this program, or one that
/// may not be written. Failing disks throw Failure.
class ShopFile {
 public:
  /// Makes a new shop file. Refuses a path where something already is.
  static Outcome<ShopFile> create(const std::filesystem::path& path, Instant now);
  /// The same with the tables of an earlier schema step, 1 or later, to take in what a program of
  /// that step exported; bring_up_to_date() takes the remaining steps.
  static Outcome<ShopFile> create_at_step(const std::filesystem::path& path, Instant now, int step);
  void bring_up_to_date();
  /// The schema step of the file.
  int step() const;
  /// Opens a shop file and brings its schema up to date; before that a backup is written beside it
  /// ("NAME.before-step-N.tangmark").
  static Outcome<ShopFile> open(const std::filesystem::path& path, Instant now);
  /// A new shop in memory, for tests and for reading an import before it is written.
  static ShopFile in_memory(Instant now);

  ShopFile(ShopFile&&) noexcept;
  ShopFile& operator=(ShopFile&&) noexcept;
  ~ShopFile();

  const std::filesystem::path& path() const;
  bool read_only() const;
  /// Why the file is read-only, as a sentence; empty when it is not.
  const std::string& notice() const;
  /// Changes whenever another window has changed the file; a window reads again then.
  std::int64_t changes_by_others() const;

  /// For the stores and actions of this layer only.
  SQLite::Database& database() const;
  struct Stamp {  ///< what the history rows of the running transaction carry
    Instant now;
    std::string action, reason;
  };
  Stamp& stamp() const;

 private:
  struct Inside;
  explicit ShopFile(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
};

}  // namespace tangmark::db
