// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/store/grade_store.h"
#include "db/store/lot_store.h"
#include "db/store/named.h"
#include "db/store/question_list.h"
#include "domain/steel/analysis_check.h"
#include "domain/steel/figure_text.h"

namespace tangmark::db {
namespace {

void add_rows(const stock::Lot& lot, const steel::AnalysisCheck& check, Answer& answer) {
  for (const steel::ElementCheck& element : check.elements)
    answer.rows.push_back(
        {std::to_string(lot.number), *lot.grade, std::string(steel::symbol(element.element)),
         element.analysed_percent ? steel::figure_text(*element.analysed_percent) : "",
         steel::to_text(element.limit), std::string(steel::verdict_words(element.verdict))});
}

void compare(const stock::Lot& lot, const steel::GradeBook& book, Answer& answer) {
  const std::string name = fmt::format("Lot {} ({})", lot.number, lot.grade.value_or("no grade"));
  const steel::Grade* grade = lot.grade ? book.find(*lot.grade) : nullptr;
  if (!lot.analysis) {
    answer.sentences.push_back(name + " has no analysis on record.");
    return;
  }
  if (!grade) {
    answer.sentences.push_back(name + " is of no grade on file; add it with add_grade.");
    return;
  }
  const auto analysis = steel::parse_composition(*lot.analysis, "analysis");
  if (!analysis) {
    answer.sentences.push_back(
        name + " has an analysis that cannot be read: " + analysis.problem().sentence);
    return;
  }
  const auto check = steel::check_analysis(*analysis, *grade);
  answer.sentences.push_back(name +
                             (check.inside_limits
                                  ? " lies inside the limits of its grade."
                                  : " is not shown to lie inside the limits of its grade.") +
                             " Limits: " + grade->source + ".");
  for (const std::string& remark : check.remarks) answer.sentences.push_back(name + ": " + remark);
  add_rows(lot, check, answer);
}

Outcome<Answer> answer_21(const ShopFile& shop, const Given& given, Instant) {
  Answer answer{"Does the analysis lie inside the limits of its grade?",
                {},
                {"Lot", "Grade", "Element", "Analysis, %", "Limit", "It is"},
                {}};
  const steel::GradeBook book = grade_book(shop);
  if (const auto text = given_text(given, "lot")) {
    const auto lot = lot_named(shop, *text, "lot");
    if (!lot) return lot.problems();
    compare(*lot, book, answer);
    return answer;
  }
  for (const auto& lot : list_lots(shop, stock::LotKind::steel))
    if (lot.analysis) compare(lot, book, answer);
  if (answer.sentences.empty()) answer.sentences.push_back("No lot has an analysis on record.");
  return answer;
}

}  // namespace

const Question question_21{
    21,
    "Does the analysis lie inside the limits of its grade, element by element?",
    {{"lot", "Lot", FieldKind::lot, false, "17; every lot with an analysis when empty"}},
    answer_21};

}  // namespace tangmark::db
