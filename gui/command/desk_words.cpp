// SPDX-License-Identifier: MIT
// The steel desk from a terminal: computations by name.
#include "db/store/grade_store.h"
#include "domain/steel/desk_calc.h"
#include "gui/command/desk_json.h"
#include "gui/command/record_word.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"

namespace tangmark::command {
namespace {

void say_why(const steel::DeskCalculation& calculation) {
  say("Source: " + calculation.source);
  say("Valid:  " + calculation.range);
}

void list_calculations() {
  for (const auto& calculation : steel::desk_calculations()) {
    std::string line = "  " + calculation.name;
    line.resize(std::max<std::size_t>(line.size() + 1, 16), ' ');
    say(line + calculation.answers);
  }
}

void list_keys(const steel::DeskCalculation& calculation) {
  say(calculation.name + ": " + calculation.answers);
  for (const auto& key : calculation.keys) {
    std::string line = "  " + key.name + (key.fallback.empty() ? "" : "=" + key.fallback);
    line.resize(std::max<std::size_t>(line.size() + 1, 30), ' ');
    say(line + key.meaning + (key.unit.empty() ? "" : ", " + key.unit) +
        (key.need == steel::Need::required ? " (needed)" : ""));
  }
  say_why(calculation);
}

// The published grades, with those of a shop before them when one is named. A shop that is only
// asked for its grades is opened as it is, but never made.
Outcome<steel::GradeBook> book_of(const Call& call) {
  const auto path = call.option("shop");
  if (!path) return steel::GradeBook::published();
  auto shop = db::ShopFile::open(*path, call.now);
  if (!shop) return shop.problems();
  return db::grade_book(*shop);
}

Exit calc(const Call& call) {
  if (call.words.empty()) {
    list_calculations();
    return Exit::done;
  }
  const steel::DeskCalculation* calculation = steel::find_desk_calculation(call.words[0]);
  if (!calculation)
    return refused(call, {{"name", "There is no computation \"" + call.words[0] + "\".",
                           "List them with: tangmark calc."}});
  if (call.words.size() == 1) {
    list_keys(*calculation);
    return Exit::done;
  }
  const auto pairs = call.pairs(1);
  if (!pairs) return refused(call, pairs.problems());
  const std::vector<std::pair<std::string, std::string>> keys(pairs->begin(), pairs->end());
  const auto book = book_of(call);
  if (!book) return refused(call, book.problems());
  const auto answer = steel::run_desk_calculation(call.words[0], keys, *book);
  if (!answer) return refused(call, answer.problems());
  const Json fields = json_of(steel::DeskValue(answer->fields));
  if (call.has("json")) {
    Json json = fields;
    if (!answer->notes.empty()) json["notes"] = answer->notes;
    if (call.has("why")) {
      json["source"] = calculation->source;
      json["range"] = calculation->range;
    }
    say_json(json);
    return Exit::done;
  }
  for (const auto& [name, value] : fields.items()) say(name + " = " + plain_text(value));
  for (const auto& note : answer->notes) tell(note);
  if (call.has("why")) say_why(*calculation);
  return Exit::done;
}

}  // namespace

std::vector<Word> desk_words() {
  const Option json{"json", "", "one JSON object on standard output"};
  return {{"calc",
           "a computation of the steel desk; NAME alone lists keys, units, source",
           "[NAME [key=value ...]]",
           0,
           -1,
           {json,
            {"why", "", "say the source and the range"},
            {"shop", "FILE", "know the grades of this shop, too"}},
           calc},
          {"kiln-record",
           "what a kiln record shows",
           "RECORD.csv",
           1,
           1,
           {{"window", "LOW..HIGH", "the soak's window, such as 790C..815C"},
            {"zone", "Z", "IANA zone of its wall clock"},
            {"time", "COLUMN", "column of times, by head or number, when it is not found"},
            {"date", "COLUMN", "column of dates, when they stand apart"},
            {"sensors", "COLUMNS", "columns of temperatures with commas, the judged one first"},
            {"unit", "C|F|K", "its degrees"},
            {"decimals", "WORD", "point or comma"},
            {"separator", "WORD", "comma, semicolon, tab, bar or blanks"},
            {"dates", "WORDS", "\"day first\", \"month first\" or \"year first\""},
            {"counts", "WORDS", "seconds, minutes, hours, milliseconds or \"time of day\""},
            json},
           kiln_record}};
}

}  // namespace tangmark::command
