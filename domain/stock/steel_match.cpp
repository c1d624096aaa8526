// SPDX-License-Identifier: MIT
#include "domain/stock/steel_match.h"

#include <fmt/format.h>

#include <algorithm>

#include "domain/measure/utf8.h"

namespace tangmark::stock {
namespace {

std::string bare(std::string_view name) {
  std::string kept;
  for (const char c : folded(name))
    if (c != ' ' && c != '-' && c != '_' && c != '.') kept += c;
  return kept;
}

std::string joined(const std::vector<std::optional<std::string>>& grades) {
  std::string text;
  for (const auto& grade : grades)
    text += (text.empty() ? "" : " and ") + grade.value_or("steel of unknown grade");
  return text.empty() ? "steel of unknown grade" : text;
}

}  // namespace

std::vector<std::string> grades_named(std::string_view job_grade) {
  std::vector<std::string> names;
  std::string name;
  const auto end_of_name = [&] {
    const auto first = name.find_first_not_of(' ');
    if (first != std::string::npos)
      names.push_back(name.substr(first, name.find_last_not_of(' ') - first + 1));
    name.clear();
  };
  for (const char c : job_grade) {
    if (c == '/' || c == '+' || c == ',' || c == '&')
      end_of_name();
    else
      name += c;
  }
  end_of_name();
  return names;
}

bool same_grade(std::string_view one, std::string_view other, const steel::GradeBook& book) {
  if (bare(one) == bare(other)) return true;
  const steel::Grade* known = book.find(one);
  return known != nullptr && known == book.find(other);
}

Catch steel_differs(const std::optional<std::string>& job_grade,
                    const std::vector<std::optional<std::string>>& piece_grades,
                    std::string_view piece_tag, const steel::GradeBook& book) {
  if (!job_grade) return std::nullopt;
  const std::vector<std::string> wanted = grades_named(*job_grade);
  const auto is_there = [&](const std::string& grade) {
    return std::any_of(piece_grades.begin(), piece_grades.end(),
                       [&](const auto& has) { return has && same_grade(grade, *has, book); });
  };
  const auto is_wanted = [&](const std::optional<std::string>& has) {
    return has && std::any_of(wanted.begin(), wanted.end(), [&](const std::string& grade) {
             return same_grade(grade, *has, book);
           });
  };
  if (wanted.empty() ||
      (!piece_grades.empty() && std::all_of(wanted.begin(), wanted.end(), is_there) &&
       std::all_of(piece_grades.begin(), piece_grades.end(), is_wanted)))
    return std::nullopt;
  return Caught{4, Weight::ask, "piece",
                fmt::format("The job is for {} and piece {} is {}.", *job_grade, piece_tag,
                            joined(piece_grades)),
                "Take another piece, or change the item and tell the buyer."};
}

}  // namespace tangmark::stock
