// SPDX-License-Identifier: MIT
#include <SQLiteCpp/Savepoint.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <memory>
#include <variant>

#include "db/actions/action.h"
#include "db/actions/form.h"
#include "db/actions/outside_deed.h"
#include "db/actions/registry.h"
#include "db/actions/work.h"
#include "db/failure.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

constexpr std::array common_fields{"at", "override", "note_why"};

Problems unknown_fields(const Action& action, const Given& given) {
  Problems problems;
  for (const auto& [name, value] : given) {
    const bool common =
        std::find(common_fields.begin(), common_fields.end(), name) != common_fields.end();
    const bool listed = std::any_of(action.fields.begin(), action.fields.end(),
                                    [&](const Field& f) { return f.name == name; });
    if (common || listed) continue;
    std::string known;
    for (const Field& field : action.fields)
      known += (known.empty() ? "" : ", ") + std::string(field.name);
    problems.push_back({name,
                        "\"" + name + "\" is not a field of " + std::string(action.name) + ".",
                        "Its fields are: " + known + "."});
  }
  return problems;
}

Outcome<Instant> when_it_happened(const Given& given, const Zone& zone, Instant now) {
  const auto found = given.find("at");
  if (found == given.end() || found->second.empty()) return now;
  auto at = parse_instant(found->second, zone, now, "at");
  if (at && *at > now)
    return Problem{"at", "That time has not come yet.", "Log what has happened; plan what will."};
  return at;
}

std::string value_of(const Given& given, std::string_view name) {
  const auto found = given.find(name);
  return found == given.end() ? std::string() : found->second;
}

Outcome<ActionResult> run_inside(ShopFile& shop, const Action& action, const Given& given,
                                 Instant now) {
  const auto settings = load_settings(shop);
  const auto at = when_it_happened(given, settings.zone, now);
  if (!at) return at.problem();
  Work work(shop, action, now, *at, value_of(given, "override"));
  Form form(action, given, settings, now);
  auto result = action.run(work, form);
  if (result && !work.problems().empty()) return work.problems();
  return result;
}

// What actions did outside the file since the transaction began, last first to be taken back.
std::vector<std::function<void()>>& outside_deeds() {
  static thread_local std::vector<std::function<void()>> held;
  return held;
}

void take_back_from(std::size_t first) {
  auto& deeds = outside_deeds();
  while (deeds.size() > first) {
    deeds.back()();
    deeds.pop_back();
  }
}

// A transaction of its own, or a step inside a batch that is already open.
class Frame {
 public:
  explicit Frame(SQLite::Database& database) {
    if (sqlite3_get_autocommit(database.getHandle()) != 0)
      held_.emplace<SQLite::Transaction>(database, SQLite::TransactionBehavior::IMMEDIATE);
    else
      held_.emplace<SQLite::Savepoint>(database, "action");
  }
  ~Frame() {
    if (!kept_) take_back_from(deeds_before_);
  }
  Frame(const Frame&) = delete;
  Frame& operator=(const Frame&) = delete;
  void keep() {
    if (auto* whole = std::get_if<SQLite::Transaction>(&held_)) {
      whole->commit();
      outside_deeds().clear();
    }
    if (auto* step = std::get_if<SQLite::Savepoint>(&held_)) step->release();
    kept_ = true;
  }

 private:
  std::variant<std::monostate, SQLite::Transaction, SQLite::Savepoint> held_;
  std::size_t deeds_before_ = outside_deeds().size();
  bool kept_ = false;
};

[[noreturn]] void fail(const ShopFile& shop, const SQLite::Exception& error) {
  switch (error.getErrorCode()) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      throw Failure("Another program is writing to " + shop.path().string() +
                    " just now. Nothing was changed; try again.");
    case SQLITE_FULL:
      throw Failure("The disk is full. Nothing was changed; make room and try again.");
    case SQLITE_READONLY:
      throw Failure(shop.path().string() + " may not be written. Nothing was changed.");
    default:
      throw Failure("The shop file refused the change (" + std::string(error.what()) +
                    "). Nothing was changed.");
  }
}

}  // namespace

void undo_unless_kept(std::function<void()> undo) {
  outside_deeds().push_back(std::move(undo));
}

Outcome<ActionResult> perform(ShopFile& shop, const Action& action, const Given& given,
                              Instant now) {
  if (shop.read_only()) return Problem{"file", shop.notice(), "Nothing was changed."};
  if (Problems unknown = unknown_fields(action, given); !unknown.empty()) return unknown;
  try {
    Frame frame(shop.database());
    shop.stamp() = {now, std::string(action.name), value_of(given, "note_why")};
    auto result = run_inside(shop, action, given, now);
    if (result) frame.keep();
    return result;
  } catch (const SQLite::Exception& error) {
    fail(shop, error);
  }
}

Outcome<ActionResult> perform(ShopFile& shop, std::string_view name, const Given& given,
                              Instant now) {
  if (const Action* action = find_action(name)) return perform(shop, *action, given, now);
  return Problem{"action", "There is no action \"" + std::string(name) + "\".",
                 "List all actions with: tangmark do FILE."};
}

Batch::Batch(ShopFile& shop) : shop_(shop) {
  shop_.database().exec("BEGIN IMMEDIATE");
}

Batch::~Batch() {
  if (!open_) return;
  shop_.database().tryExec("ROLLBACK");
  take_back_from(0);
}

void Batch::keep() {
  shop_.database().exec("COMMIT");
  outside_deeds().clear();
  open_ = false;
}

}  // namespace tangmark::db
