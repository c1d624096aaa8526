// SPDX-License-Identifier: MIT
#include "gui/desk/money_sheets.h"

#include <fmt/format.h>

#include "db/store/learning_store.h"
#include "db/store/questions.h"

namespace tangmark::desk {
namespace {

// A question's answer as a part of a sheet; `press` may add what a row leads to.
Section answered(const Sight& sight, int number, const std::string& title) {
  Section section;
  section.title = title;
  const auto answer = db::ask(sight.shop, number, {}, sight.now);
  if (!answer) {
    section.paragraphs = {answer.problem().sentence + " " + answer.problem().remedy};
    return section;
  }
  section.paragraphs = answer->sentences;
  for (const std::string& column : answer->columns) section.table.columns.push_back({column});
  for (const auto& row : answer->rows) section.table.rows.push_back({row, false, {}});
  return section;
}

}  // namespace

Sheet promises_sheet(const Sight& sight) {
  Sheet sheet{"Promises", "Every day ever given stays; the last one holds.", {}};
  Section board = answered(sight, 32, "The board");
  Section given;
  given.title = "Every day given";
  given.table.columns = {{"Commission"}, {"Day, when it was given, who was told"}};
  constexpr std::size_t stands = 5, notice = 6, history = 7;
  for (TableRow& row : board.table.rows) {
    const std::string number = row.cells.front();
    const bool at_risk = row.cells.at(stands).starts_with("at risk");
    const std::string told = row.cells.at(notice).empty() ? "" : "; " + row.cells[notice];
    given.table.rows.push_back({{number, row.cells.at(history) + told}, false, {}});
    row.cells.resize(notice);
    row.strong = at_risk;
    row.offers = {at_risk
                      ? Offer{"Letter", OpenForm{"tell_delay", {{"commission", number}}}, "", ""}
                      : Offer{"See", GoTo{Place::commissions, number}, "", ""}};
  }
  if (!board.table.columns.empty()) board.table.columns.resize(notice);
  sheet.sections = {std::move(board), std::move(given)};
  return sheet;
}

Sheet learning_sheet(const Sight& sight) {
  Sheet sheet{"What the record says",
              "A proposal changes nothing until it is taken. Half of the record lies in the range "
              "shown; for losses the true rate does, 95 times of 100.",
              {}};
  Section section;
  section.table.columns = {{"Model"},
                           {"What"},
                           {"Of"},
                           {"Now", Align::right},
                           {"Proposed", Align::right},
                           {"Unit"},
                           {"Pieces", Align::right},
                           {"Record"}};
  for (const auto& one : db::model_proposals(sight.shop, std::nullopt)) {
    const std::string what(word_of(one.what));
    section.table.rows.push_back(
        {{one.model.name, what, one.of, fmt::format("{:.2f}", one.now),
          fmt::format("{:.2f}", one.proposed), one.unit, std::to_string(one.n), one.spread},
         false,
         {{"Take it",
           DoNow{"accept_estimate", {{"model", one.model.name}, {"what", what}, {"of", one.of}}},
           "", ""}}});
  }
  for (const auto& one : db::load_proposals(sight.shop, sight.settings))
    section.table.rows.push_back(
        {{"the shop", "load", one.kind + " firing", std::to_string(one.now),
          std::to_string(one.proposed), "blades", std::to_string(one.n), one.spread},
         false,
         {{"Take it",
           DoNow{"expect_load", {{"kind", one.kind}, {"blades", std::to_string(one.proposed)}}},
           "", ""}}});
  if (section.table.rows.empty())
    section.paragraphs = {"Nothing: no figure with three pieces on record is more than 5 % off."};
  section.offers = {{"Take one by name", OpenForm{"accept_estimate", {}}, "", ""},
                    {"Expect another load", OpenForm{"expect_load", {}}, "", ""}};
  sheet.sections = {std::move(section)};
  return sheet;
}

Sheet money_sheet(const Sight& sight) {
  Sheet sheet{"Money", "What came in and went out; the papers behind it are never edited.", {}};
  Section year = answered(sight, 39, "This year");
  year.offers = {{"Write the ledger as a table", OpenForm{"desk.ledger", {}}, "", ""},
                 {"Note a rate of exchange", OpenForm{"note_rate", {}}, "", ""},
                 {"Another year", OpenForm{"desk.ask", {{"question", "39"}}}, "", ""}};
  sheet.sections = {std::move(year), answered(sight, 13, "Held and owed"),
                    answered(sight, 37, "On the rack, by age")};
  return sheet;
}

Sheet buying_sheet(const Sight& sight) {
  Sheet sheet{"To buy", "For the queue, and what is below its floor.", {}};
  Section buy = answered(sight, 36, "");
  buy.offers = {
      {"Receive a lot", OpenForm{"receive_lot", {}}, "", ""},
      {"Recall a lot, firing or bath", OpenForm{"desk.ask", {{"question", "38"}}}, "", ""}};
  sheet.sections = {std::move(buy)};
  return sheet;
}

}  // namespace tangmark::desk
