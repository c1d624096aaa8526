// SPDX-License-Identifier: MIT
#include "db/store/family_tree.h"
#include "db/store/grade_store.h"
#include "db/store/model_store.h"
#include "db/store/piece_store.h"
#include "db/store/question_list.h"
#include "db/store/reservation_store.h"
#include "db/store/settings_store.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

using namespace stock;

// A blank is cut flat from the piece as it is; forging it to size is not reckoned with.
bool holds_blank(const KeptPiece& piece, Length free, const commission::Model& model) {
  return piece.width && piece.thickness && free >= model.blank_length &&
         *piece.width >= model.blank_width && *piece.thickness >= model.blank_thickness;
}

std::vector<std::string> known_grades(const ShopFile& shop, const KeptPiece& piece) {
  std::vector<std::string> known;
  for (const auto& grade : grades_of(shop, piece.id)) known.push_back(grade.value_or("unknown"));
  return known;
}

bool is_of_grade(const std::vector<std::string>& grades, const commission::Model& model,
                 const steel::GradeBook& book) {
  if (!model.grade) return true;
  for (const std::string& wanted : grades_named(*model.grade))
    for (const std::string& grade : grades)
      if (same_grade(wanted, grade, book)) return true;
  return false;
}

bool is_shops_own(const ShopFile& shop, const KeptPiece& piece) {
  for (const auto& lot : ancestors_of(shop, piece.id).lots)
    if (lot.owner) return false;
  return true;
}

Outcome<Answer> answer_10(const ShopFile& shop, const Given&, Instant) {
  const auto settings = load_settings(shop);
  const auto models = list_models(shop);
  const steel::GradeBook book = grade_book(shop);
  Answer answer{"What can I make from the offcuts I have?",
                {},
                {"Piece", "Grade", "Free length", "Mass", "Enough for"},
                {}};
  std::size_t fitting = 0;
  for (const KeptPiece& piece : pieces_on_hand(shop)) {
    if (!piece.parent || !is_shops_own(shop, piece)) continue;  // a whole bar is no offcut
    const AvailableLength bar = available_length(shop, piece, Length());
    const auto grades = known_grades(shop, piece);
    std::string made;
    for (const auto& model : models)
      if (holds_blank(piece, bar.available(), model) && is_of_grade(grades, model, book))
        made += (made.empty() ? "" : ", ") + model.name;
    fitting += made.empty() ? 0 : 1;
    std::string grade;
    for (const std::string& name : grades) grade += (grade.empty() ? "" : " and ") + name;
    answer.rows.push_back({piece.tag, grade, to_text(bar.available(), settings.length_unit),
                           to_text(piece.mass, settings.mass_unit), made});
  }
  answer.sentences.push_back(std::to_string(fitting) + " of " + std::to_string(answer.rows.size()) +
                             " offcuts are large enough for the blank of a model.");
  if (models.empty()) answer.sentences.push_back("No model is on record to compare them with.");
  return answer;
}

}  // namespace

const Question question_10{10, "What can I make from the offcuts I have?", {}, answer_10};

}  // namespace tangmark::db
