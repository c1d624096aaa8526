// SPDX-License-Identifier: MIT
#include <set>

#include "db/row.h"
#include "db/store/grade_store.h"
#include "db/store/item_store.h"
#include "db/store/lot_store.h"
#include "db/store/model_store.h"
#include "db/store/question_list.h"
#include "db/store/reservation_store.h"
#include "db/store/settings_store.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

using namespace commission;

bool has_its_steel(const ShopFile& shop, const KeptItem& item) {
  Query query(
      shop,
      "SELECT 1 FROM blade WHERE item_id = ?1 AND scrapped_at IS NULL AND piece_id IS NOT NULL "
      "UNION ALL SELECT 1 FROM reservation WHERE item_id = ?1 AND piece_id IS NOT NULL AND "
      "released_at IS NULL");
  query.bind(item.id);
  return query.next();
}

// What the open items of this grade still need, as lengths of bar with a kerf each.
struct Need {
  std::int64_t items = 0, without_model = 0;
  Length length;
};
Need still_needed(const ShopFile& shop, const std::string& grade, const ShopSettings& settings) {
  Need need;
  const steel::GradeBook book = grade_book(shop);
  for (const KeptItem& item : open_items(shop)) {
    bool wants = false;
    for (const std::string& named : stock::grades_named(item.grade.value_or("")))
      wants = wants || stock::same_grade(named, grade, book);
    if (!wants || has_its_steel(shop, item)) continue;
    ++need.items;
    const auto model = item.model ? load_model(shop, *item.model) : std::nullopt;
    if (!model)
      ++need.without_model;
    else
      need.length = need.length + model->blank_length + (item.blade_length - model->blade_length) +
                    settings.kerf;
  }
  return need;
}

void say_need(const Need& need, Length available, LengthUnit unit, Answer& answer) {
  answer.sentences.push_back(std::to_string(need.items) + " open items still need " +
                             to_text(need.length, unit) + "; " + to_text(available, unit) +
                             " is available.");
  if (need.items > 0)
    answer.sentences.push_back(
        available >= need.length
            ? "That is enough by length; one piece must still be long enough for each blank."
            : "That is not enough: order " + to_text(need.length - available, unit) + " more.");
  if (need.without_model > 0)
    answer.sentences.push_back(std::to_string(need.without_model) +
                               " of them have no model, so their length is not counted.");
}

// The melt numbers of what is on hand; an empty one is a lot of which nobody wrote it down.
void say_melts(const std::set<std::string>& melts, Answer& answer) {
  if (melts.size() > 1)
    answer.sentences.push_back("It is of more than one melt, or one that nobody wrote down.");
  else if (!melts.empty() && !melts.begin()->empty())
    answer.sentences.push_back("All of it is melt number " + *melts.begin() + ".");
  else if (!melts.empty())
    answer.sentences.push_back("Its melt number is not on record.");
}

Outcome<Answer> answer_09(const ShopFile& shop, const Given& given, Instant) {
  const auto grade = given_text(given, "grade");
  if (!grade)
    return Problem{"grade", "Which steel is meant is not said.",
                   "Write grade=, for example grade=80CrV2."};
  const auto settings = load_settings(shop);
  const auto text = [&](Length length) { return to_text(length, settings.length_unit); };
  Answer answer{"Have I enough " + *grade + ", and is it one melt?",
                {},
                {"Lot", "Melt number", "Document", "Pieces", "On hand", "Reserved", "Available"},
                {}};
  Length available;
  std::set<std::string> melts;
  const steel::GradeBook book = grade_book(shop);
  for (const auto& lot : list_lots(shop, stock::LotKind::steel)) {
    if (lot.owner || !lot.grade || !stock::same_grade(*lot.grade, *grade, book)) continue;
    const auto left = availability_of_lot(shop, lot.id, settings.keep_at_least);
    if (left.pieces == 0) continue;
    available = available + left.available;
    melts.insert(lot.melt_number.value_or(""));
    answer.rows.push_back({std::to_string(lot.number), lot.melt_number.value_or(""),
                           std::string(word_of(lot.document)), std::to_string(left.pieces),
                           text(left.on_hand), text(left.reserved), text(left.available)});
  }
  say_need(still_needed(shop, *grade, settings), available, settings.length_unit, answer);
  say_melts(melts, answer);
  return answer;
}

}  // namespace

const Question question_09{9,
                           "Have I enough of this steel for the list, and is it the same melt?",
                           {{"grade", "Grade", FieldKind::text, true, "80CrV2"}},
                           answer_09};

}  // namespace tangmark::db
