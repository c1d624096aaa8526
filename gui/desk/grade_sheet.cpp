// SPDX-License-Identifier: MIT
#include "gui/desk/grade_sheet.h"

#include "db/store/grade_store.h"
#include "db/store/hardness_record.h"
#include "domain/steel/analysis_check.h"
#include "domain/steel/figure_text.h"
#include "domain/steel/temper_hardness.h"

namespace tangmark::desk {
namespace {

Section limits_section(const steel::Grade& grade) {
  Section section;
  section.title = "Limits of the melt";
  section.table.columns = {{"Element"}, {"Weight %", Align::right}};
  for (const steel::ElementLimit& limit : grade.limits)
    section.table.rows.push_back(
        {{std::string(steel::symbol(limit.element)), steel::to_text(limit)}, false, {}});
  section.paragraphs = {"Source: " + grade.source + "."};
  if (!grade.note.empty()) section.paragraphs.push_back(sentence_case(grade.note) + ".");
  return section;
}

// Published figures are whole degrees of one scale; the other is shown as near.
std::string whole(const Sight& sight, Temperature t) {
  if (sight.settings.temperature_unit == TemperatureUnit::fahrenheit) return words(sight, t);
  return words(sight, Temperature::celsius(t.whole_celsius()));
}

std::string window_words(const Sight& sight, const steel::HeatTreatWindow& window) {
  const std::string low = whole(sight, window.low);
  return window.low == window.high ? low : low + " to " + whole(sight, window.high);
}

Section windows_section(const Sight& sight, const steel::Grade& grade) {
  Section section;
  section.title = "Heat treatment as published";
  for (const steel::HeatTreatWindow& window : grade.windows) {
    std::string line = sentence_case(window.operation) + ": " + window_words(sight, window);
    if (!window.cooling.empty()) line += ", then " + window.cooling;
    line += ".";
    if (!window.note.empty()) line += " " + sentence_case(window.note) + ".";
    section.paragraphs.push_back(line + " Source: " + window.source + ".");
  }
  return section;
}

Section tempers_section(const Sight& sight, const steel::Grade& grade) {
  Section section;
  section.title = "Hardness after a temper, as published";
  section.table.columns = {{"Temper", Align::right}, {"HRC", Align::right}, {"Source"}};
  for (const steel::TemperTable& table : steel::temper_tables()) {
    if (steel::lower(table.grade) != steel::lower(grade.name)) continue;
    for (const steel::TemperRow& row : table.rows)
      section.table.rows.push_back(
          {{whole(sight, row.temper), steel::rounded_text(row.hardness.points, 1), row.source},
           false,
           {}});
  }
  for (const db::KilnBias& bias : db::biases_of(db::hardness_records(sight.shop, grade.name)))
    section.paragraphs.push_back(db::bias_sentence(bias));
  if (section.table.rows.empty()) {
    section.paragraphs = {
        "No published temper table of this grade is on file, so no hardness is foretold. "
        "Measure a coupon."};
    return section;
  }
  section.offers = {{"What hardness to expect",
                     OpenForm{"desk.calc", {{"calculation", "expect"}, {"grade", grade.name}}}, "",
                     ""}};
  return section;
}

}  // namespace

std::string grade_line(const steel::Grade& grade) {
  std::string line = grade.designation.empty() ? "Limits" : grade.designation;
  line += ", " + std::to_string(grade.windows.size()) +
          (grade.windows.size() == 1 ? " window" : " windows");
  if (grade.origin == steel::GradeOrigin::entered_by_shop) line += ", entered by the shop";
  return line;
}

PlaceView grade_view(const Sight& sight, const steel::Grade& grade) {
  PlaceView view;
  view.next = {
      "Grade " + grade.name,
      grade_line(grade) + ".",
      {{"Work a step through",
        OpenForm{"desk.calc", {{"calculation", "advice"}, {"grade", grade.name}}}, "Enter", ""},
       {"Add a grade", OpenForm{"add_grade", {}}, "Ctrl Enter", ""}}};
  view.sheet.title = grade.name;
  view.sheet.under = grade.designation;
  for (const std::string& other : grade.also) view.sheet.under += ", also " + other;
  view.sheet.sections = {limits_section(grade), windows_section(sight, grade),
                         tempers_section(sight, grade)};
  return view;
}

Section analysis_section(const Sight& sight, const std::string& grade_name,
                         const std::string& analysis) {
  Section section;
  const steel::GradeBook book = db::grade_book(sight.shop);
  const steel::Grade* grade = book.find(grade_name);
  if (analysis.empty() || !grade) return section;
  section.title = "Analysis against the limits of " + grade->name;
  const auto read = steel::parse_composition(analysis, "analysis");
  if (!read) {
    section.paragraphs = {"The analysis on record (" + analysis + ") cannot be read. " +
                          read.problem().sentence};
    return section;
  }
  const steel::AnalysisCheck check = steel::check_analysis(*read, *grade);
  section.table.columns = {
      {"Element"}, {"Analysis, %", Align::right}, {"Limit", Align::right}, {"It is"}};
  for (const steel::ElementCheck& element : check.elements) {
    const bool outside = element.verdict == steel::LimitVerdict::above ||
                         element.verdict == steel::LimitVerdict::below;
    section.table.rows.push_back(
        {{std::string(steel::symbol(element.element)),
          element.analysed_percent ? steel::figure_text(*element.analysed_percent) : "not analysed",
          steel::to_text(element.limit), std::string(steel::verdict_words(element.verdict))},
         outside,
         {}});
  }
  section.paragraphs = {check.inside_limits
                            ? "Every element analysed lies inside the grade's limits."
                            : "The analysis is not shown to lie inside the grade's limits."};
  for (const std::string& remark : check.remarks) section.paragraphs.push_back(remark);
  section.paragraphs.push_back("Limits: " + grade->source + ".");
  section.offers = {{"To the grade", GoTo{Place::steel, "grade " + grade->name}, "", ""}};
  return section;
}

Section advice_section(const std::string& title, const std::vector<steel::Advice>& advice) {
  Section section;
  if (advice.empty()) return section;
  section.title = title;
  for (const steel::Advice& one : advice)
    section.paragraphs.push_back(one.sentence + " (" + std::string(steel::word_of(one.kind)) +
                                 "; source: " + one.source + ")");
  return section;
}

}  // namespace tangmark::desk
