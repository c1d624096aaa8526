// SPDX-License-Identifier: MIT
// The steel desk and the records of kilns, from a terminal.
#include "db/store/grade_store.h"
#include "gui/command/calc_word.h"
#include "gui/command/record_word.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"

namespace tangmark::command {
namespace {

// The published grades, with those of a shop before them when one is named. A shop that is only
// asked for its grades is opened as it is, but never made.
Outcome<steel::GradeBook> book_of(const Call& call) {
  const auto path = call.option("shop");
  if (!path) return steel::GradeBook::published();
  auto shop = db::ShopFile::open(*path, call.now);
  if (!shop) return shop.problems();
  return db::grade_book(*shop);
}

}  // namespace

std::vector<Word> desk_words() {
  const Option json{"json", "", "one JSON object on standard output"};
  return {calc_word(book_of),
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
