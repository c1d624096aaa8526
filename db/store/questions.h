// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "db/actions/action.h"
#include "db/shop_file.h"
#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// The answer to one of the questions a maker asks weekly: what is true in sentences, and a table
/// behind them. Cells are already in the shop's units; an empty cell is not on record.
struct Answer {
  std::string title;
  std::vector<std::string> sentences;
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;
  friend bool operator==(const Answer&, const Answer&) = default;
};

/// One of the questions (DEVELOPERS.md lists them), with what it must be told.
struct Question {
  int number;
  std::string_view words;  ///< "Which bar did blade 23 come from?"
  std::vector<Field> fields;
  Outcome<Answer> (*answer)(const ShopFile& shop, const Given& given, Instant now);
};

/// All questions, by number.
std::span<const Question> all_questions();
/// Answers a question. Refuses a number that is none, a key the question does not know, and
/// whatever the question itself cannot read; nothing is ever stored.
Outcome<Answer> ask(const ShopFile& shop, int number, const Given& given, Instant now);

}  // namespace tangmark::db
