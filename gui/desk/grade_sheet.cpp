// SPDX-License-Identifier: MIT
#include "gui/desk/grade_sheet.h"

#include "db/store/grade_store.h"
#include "db/store/hardness_record.h"
#include "domain/steel/analysis_check.h"
#include "domain/steel/figure_text.h"
#include "domain/steel/temper_table.h"

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

std::string fall_words(const Sight& sight, TemperatureDifference fall) {
  const bool fahrenheit = sight.settings.temperature_unit == TemperatureUnit::fahrenheit;
  return steel::rounded_text(fahrenheit ? fall.kelvins() * 1.8 : fall.kelvins(), 0) +
         (fahrenheit ? " °F" : " °C");
}

std::string hold_words(const steel::HeatTreatWindow& window) {
  if (window.hold_least && window.hold_most)
    return " for " + to_text(*window.hold_least) + " to " + to_text(*window.hold_most);
  if (window.hold_least) return " for at least " + to_text(*window.hold_least);
  if (window.hold_most) return " for at most " + to_text(*window.hold_most);
  return {};
}

Section windows_section(const Sight& sight, const steel::Grade& grade) {
  Section section;
  section.title = "Heat treatment";
  for (const steel::HeatTreatWindow& window : grade.windows) {
    std::string line = sentence_case(window.operation) + ": " + window_words(sight, window);
    line += hold_words(window);
    if (!window.cooling.empty()) line += ", then " + window.cooling;
    if (window.most_fall_per_hour)
      line += ", by no more than " + fall_words(sight, *window.most_fall_per_hour) + " an hour" +
              (window.slow_until ? " to " + whole(sight, *window.slow_until) : std::string());
    line += ".";
    if (!window.note.empty()) line += " " + sentence_case(window.note) + ".";
    section.paragraphs.push_back(line + " Source: " + window.source + ".");
  }
  if (grade.windows.empty()) section.paragraphs = {"No window of this grade is on file."};
  section.offers = {{"Enter a window", OpenForm{"add_window", {{"grade", grade.name}}}, "", ""}};
  return section;
}

std::string points(const steel::RockwellC& hardness) {
  return steel::rounded_text(hardness.points, 1);
}

Section temper_section(const Sight& sight, const steel::TemperTable& table) {
  Section section;
  section.title = "Hardness after a temper";
  section.paragraphs = {
      sentence_case(steel::conditions_of(table, sight.settings.temperature_unit)) +
      ". Source: " + table.source + "."};
  section.table.columns = {{"Temper", Align::right}, {"HRC", Align::right}, {""}};
  if (table.as_quenched)
    section.table.rows.push_back(
        {{"none", points(*table.as_quenched), "off the quench"}, false, {}});
  for (const steel::TemperRow& row : table.rows)
    section.table.rows.push_back(
        {{whole(sight, row.temper), points(row.hardness), row.source}, false, {}});
  return section;
}

Section expected_section(const Sight& sight, const steel::Grade& grade) {
  Section section;
  section.title = "What to expect";
  for (const db::KilnBias& bias : db::biases_of(db::hardness_records(sight.shop, grade.name)))
    section.paragraphs.push_back(db::bias_sentence(bias));
  if (grade.tempers.empty()) {
    section.paragraphs.push_back(
        "No temper table of this grade is on file, so no hardness is foretold. Measure a coupon, "
        "or enter a table with its source.");
  } else {
    section.offers = {{"What hardness to expect",
                       OpenForm{"desk.calc", {{"calculation", "expect"}, {"grade", grade.name}}},
                       "", ""}};
  }
  section.offers.push_back(
      {"Enter a temper table", OpenForm{"add_temper_table", {{"grade", grade.name}}}, "", ""});
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
                         expected_section(sight, grade)};
  for (const steel::TemperTable& table : grade.tempers)
    view.sheet.sections.push_back(temper_section(sight, table));
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
