// SPDX-License-Identifier: MIT
// Words about the shop file itself: checking, saving, taking out and bringing in.
#include "db/actions/action.h"
#include "db/backup.h"
#include "db/check.h"
#include "db/exchange/day_book.h"
#include "db/exchange/export.h"
#include "gui/command/json_text.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"

namespace tangmark::command {
namespace {

Exit check(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    const db::CheckReport report = db::check_shop(shop);
    if (call.has("json")) {
      say_json({{"sound", report.wrong.empty()},
                {"looked_at", report.looked_at},
                {"wrong", report.wrong}});
    } else {
      for (const auto& line : report.looked_at) say(line);
      for (const auto& line : report.wrong) say("WRONG: " + line);
      say(report.wrong.empty() ? "The shop is sound."
                               : std::to_string(report.wrong.size()) + " things are wrong.");
    }
    return report.wrong.empty() ? Exit::done : Exit::answer_is_no;
  });
}

Exit backup(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    if (auto done = db::back_up(shop, call.words[1]); !done) return refuse(done.problems());
    say("Backed up to " + call.words[1] + ".");
    return Exit::done;
  });
}

Exit restore(const Call& call) {
  if (auto done = db::restore(call.words[0], call.words[1], call.now); !done)
    return refuse(done.problems());
  say("Restored " + call.words[1] + ".");
  return Exit::done;
}

Exit rescue(const Call& call) {
  auto saved = db::rescue(call.words[0], call.words[1]);
  if (!saved) return refuse(saved.problems());
  for (const auto& line : *saved) say(line);
  return Exit::done;
}

Exit export_word(const Call& call) {
  return with_shop(call, [&](db::ShopFile& shop) {
    if (auto done = db::export_shop(shop, call.words[1]); !done) return refuse(done.problems());
    say("Everything is in " + call.words[1] + ".");
    return Exit::done;
  });
}

Exit import_folder(const Call& call) {
  auto breaks = db::import_shop(call.words[1], call.words[0], call.now);
  if (!breaks) return refuse(breaks.problems());
  for (const auto& line : *breaks) tell(line);
  say("Imported into " + call.words[0] + ".");
  return Exit::done;
}

// What a maker calls a table of things, and the action that each of its rows is.
std::string_view action_of_table(std::string_view stem) {
  constexpr std::pair<std::string_view, std::string_view> tables[] = {
      {"customers", "new_customer"}, {"commissions", "new_commission"},
      {"lots", "receive_lot"},       {"models", "add_model"},
      {"kilns", "add_kiln"},         {"baths", "add_bath"},
      {"days_off", "add_day_off"}};
  for (const auto& [table, action] : tables)
    if (table == stem) return action;
  return stem;
}

Exit import_rows(const Call& call) {
  const std::filesystem::path path = call.words[1];
  auto text = read_whole(path);
  if (!text) return refuse(text.problems());
  const std::string name = path.filename().string();
  return with_shop(call, [&](db::ShopFile& shop) {
    Outcome<int> done = 0;
    if (path.extension() == ".daybook") {
      done = db::perform_day_books(shop, {{name, *text, path.parent_path()}}, call.now);
    } else {
      const std::string table = path.stem().string();
      const db::Action* action = db::find_action(action_of_table(table));
      if (!action)
        return refuse(
            {{name, "The table's name says nothing that can be added.",
              "Name it after what its rows are: customers.csv, lots.csv, models.csv, or an "
              "action such as add_day_off.csv."}});
      done = db::perform_table(shop, *action, name, *text, call.now);
    }
    if (!done) return refuse(done.problems());
    say(std::to_string(*done) + " rows done.");
    return Exit::done;
  });
}

Exit import_word(const Call& call) {
  std::error_code error;
  return std::filesystem::is_directory(call.words[1], error) ? import_folder(call)
                                                             : import_rows(call);
}

const Option json{"json", "", "one JSON object on standard output"};

}  // namespace

std::vector<Word> file_words() {
  return {
      {"check", "integrity, history chain, money and stock balances", "FILE", 1, 1, {json}, check},
      {"backup", "copy the whole shop file", "FILE OUT", 2, 2, {}, backup},
      {"restore", "put a backup back as a new file", "BACKUP FILE", 2, 2, {}, restore},
      {"rescue", "save what a damaged file still holds", "FILE DIR", 2, 2, {}, rescue},
      {"export", "write everything as open formats", "FILE DIR", 2, 2, {}, export_word},
      {"import",
       "a folder into a new file, or rows of TABLE.csv or X.daybook into a shop",
       "FILE DIR|TABLE",
       2,
       2,
       {},
       import_word},
  };
}

}  // namespace tangmark::command
