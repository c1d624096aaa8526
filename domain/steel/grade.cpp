// SPDX-License-Identifier: MIT
#include "domain/steel/grade.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <iterator>

#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"
#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

std::string plain_name(std::string_view name) {
  std::string plain = lower(name);
  std::erase_if(plain, [](char c) { return c == ' ' || c == '-' || c == '_'; });
  return plain;
}

std::vector<std::string> names_in(std::string_view text) {
  std::vector<std::string> names;
  for (const std::string_view name : split_outside_brackets(text, '|')) {
    if (!name.empty()) names.emplace_back(name);
  }
  return names;
}

Grade grade_in(const DataTable& table, std::size_t row) {
  Grade grade;
  grade.name = table.text(row, "name");
  grade.also = names_in(table.text(row, "also"));
  grade.designation = table.text(row, "designation");
  grade.note = table.text(row, "note");
  grade.source = table.text(row, "source");
  for (const Element element : all_elements()) {
    const auto& columns = table.columns();
    if (std::find(columns.begin(), columns.end(), symbol(element)) == columns.end()) continue;
    const std::string_view cell = table.text(row, symbol(element));
    if (!cell.empty()) grade.limits.push_back(parse_limit(element, cell, grade.name).value());
  }
  grade.windows = published_windows(grade.name);
  grade.tempers = published_temper_tables(grade.name);
  return grade;
}

std::vector<Grade> published_grades() {
  const DataTable table(built_in::grades);
  std::vector<Grade> grades;
  for (std::size_t row = 0; row < table.size(); ++row) grades.push_back(grade_in(table, row));
  return grades;
}

}  // namespace

const ElementLimit* Grade::limit_of(Element element) const {
  const auto at = std::find_if(limits.begin(), limits.end(),
                               [&](const ElementLimit& limit) { return limit.element == element; });
  return at == limits.end() ? nullptr : &*at;
}

const HeatTreatWindow* Grade::window_for(std::string_view operation) const {
  const auto at = std::find_if(windows.begin(), windows.end(), [&](const HeatTreatWindow& window) {
    return window.operation == operation;
  });
  return at == windows.end() ? nullptr : &*at;
}

Composition middle_of_limits(const Grade& grade) {
  Composition middle;
  for (const ElementLimit& limit : grade.limits) {
    double percent = limit.nominal_percent.value_or(0.0);
    if (!limit.nominal_percent) {
      const double least = limit.least_percent.value_or(0.0);
      percent = limit.most_percent ? (least + *limit.most_percent) / 2 : least;
    }
    // Limits have few decimals, and so has their middle; the last bits of a sum are none of it.
    middle = middle.with(limit.element, std::round(percent * 1e6) / 1e6).value();
  }
  return middle;
}

Outcome<ElementLimit> parse_limit(Element element, std::string_view text, std::string_view field) {
  text = trimmed(text);
  ElementLimit limit{element, {}, {}, {}};
  const auto figure_after = [&](std::size_t skip) {
    return parse_figure(text.substr(skip), field);
  };
  Gather form;
  if (text.starts_with("<=")) {
    limit.most_percent = form.take(figure_after(2));
  } else if (text.starts_with(">=")) {
    limit.least_percent = form.take(figure_after(2));
  } else if (text.starts_with("=")) {
    limit.nominal_percent = form.take(figure_after(1));
  } else {
    const std::size_t dash = std::min(text.find('-', 1), text.size());
    limit.least_percent = form.take(parse_figure(text.substr(0, dash), field));
    limit.most_percent = form.take(figure_after(std::min(dash + 1, text.size())));
  }
  if (form.refused()) return form.problems();
  for (const auto& percent : {limit.least_percent, limit.most_percent, limit.nominal_percent}) {
    if (percent && !(*percent >= 0 && *percent <= 100)) {
      return Problem{std::string(field), "A limit lies between 0 and 100 weight per cent.",
                     "Check the figure against the standard."};
    }
  }
  if (limit.least_percent && limit.most_percent && *limit.least_percent > *limit.most_percent) {
    return Problem{std::string(field), "The range runs downwards.",
                   "Write the lower figure first."};
  }
  return limit;
}

Outcome<std::vector<ElementLimit>> parse_limits(std::string_view text, std::string_view field) {
  std::vector<ElementLimit> limits;
  Gather form;
  for (const std::string_view part : split_outside_brackets(text, ',')) {
    const std::size_t mark = part.find(':');
    const std::string_view name = trimmed(part.substr(0, std::min(mark, part.size())));
    const auto element = element_of(name);
    if (mark == std::string_view::npos || !element) {
      form.add({std::string(field),
                "\"" + std::string(trimmed(part)) + "\" limits no known element.",
                "Write limits as C:1.10-1.20,Mn:<=0.4,W:>=1.8."});
      continue;
    }
    const bool twice = std::any_of(limits.begin(), limits.end(), [&](const ElementLimit& limit) {
      return limit.element == *element;
    });
    if (twice) {
      form.add({std::string(field), std::string(symbol(*element)) + " is limited twice.",
                "Give one range for each element."});
    }
    limits.push_back(form.take(parse_limit(*element, part.substr(mark + 1), field)));
  }
  if (form.refused()) return form.problems();
  return limits;
}

std::string to_text(const ElementLimit& limit) {
  const auto figure = [](const std::optional<double>& value) { return figure_text(*value); };
  if (limit.least_percent && limit.most_percent) {
    return figure(limit.least_percent) + "-" + figure(limit.most_percent) + " %";
  }
  if (limit.most_percent) return "at most " + figure(limit.most_percent) + " %";
  if (limit.least_percent) return "at least " + figure(limit.least_percent) + " %";
  if (limit.nominal_percent) return "about " + figure(limit.nominal_percent) + " %";
  return "not limited";
}

const GradeBook& GradeBook::published() {
  static const GradeBook book = [] {
    GradeBook made;
    made.grades_ = published_grades();
    return made;
  }();
  return book;
}

Outcome<GradeBook> GradeBook::with(Grade grade) const {
  if (plain_name(grade.name).empty()) {
    return Problem{"name", "A grade needs a name.", "Give the name the supplier uses."};
  }
  if (trimmed(grade.source).empty()) {
    return Problem{"source", "A grade needs a source for its figures.",
                   "Name the data sheet or standard they were read in."};
  }
  if (const Grade* same = find(grade.name)) {
    grade.windows.insert(grade.windows.end(), same->windows.begin(), same->windows.end());
    grade.tempers.insert(grade.tempers.end(), same->tempers.begin(), same->tempers.end());
  }
  GradeBook extended = *this;
  extended.grades_.insert(extended.grades_.begin(), std::move(grade));
  return extended;
}

GradeBook GradeBook::with_figures(std::string_view name, std::vector<HeatTreatWindow> windows,
                                  std::vector<TemperTable> tempers) const {
  GradeBook extended = *this;
  const Grade* found = find(name);
  assert(found && "figures are entered for a grade of the book");
  Grade& grade = extended.grades_[static_cast<std::size_t>(found - grades_.data())];
  windows.insert(windows.end(), grade.windows.begin(), grade.windows.end());
  grade.windows = std::move(windows);
  std::move(tempers.begin(), tempers.end(), std::back_inserter(grade.tempers));
  return extended;
}

const Grade* GradeBook::find(std::string_view name) const {
  const std::string wanted = plain_name(name);
  for (const Grade& grade : grades_) {
    if (plain_name(grade.name) == wanted) return &grade;
  }
  for (const Grade& grade : grades_) {
    for (const std::string& other : grade.also) {
      if (plain_name(other) == wanted) return &grade;
    }
  }
  return nullptr;
}

}  // namespace tangmark::steel
