// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/steel/desk_value.h"
#include "domain/steel/grade.h"

namespace tangmark::steel {

class DeskInput;

/// Whether a key of a computation may be left out.
enum class Need {
  required,
  optional,    ///< `fallback` is taken, or nothing when that is empty
  one_of_set,  ///< the computation needs one of several such keys and says which
};

/// One key that a computation takes.
struct DeskKey {
  std::string name;
  std::string unit;      ///< of a bare number; empty for words and lists
  std::string fallback;  ///< what is taken when it is left out
  std::string meaning;
  Need need = Need::required;
};

/// What a computation answers, and what must be said beside it.
struct DeskAnswer {
  DeskValue::Fields fields;        ///< named outputs in a fixed order
  std::vector<std::string> notes;  ///< limits and assumptions of this very answer
};

/// One computation of the steel desk.
struct DeskCalculation {
  std::string name;
  std::string answers;  ///< what it tells, in one line
  std::vector<DeskKey> keys;
  std::string source;
  std::string range;  ///< where it is valid and what happens outside
  Outcome<DeskAnswer> (*work)(const DeskInput& input);
};

/// Every computation, in the order they are listed to the maker.
const std::vector<DeskCalculation>& desk_calculations();
/// By name, or null.
const DeskCalculation* find_desk_calculation(std::string_view name);

/// Runs a computation on keys as typed. How they are read: a list has commas without blanks; a
/// temperature takes C, F or K, bare in a key ending in `_c` it is C; a time takes s, min or h,
/// bare it has the key's unit; shares (margin, survival) are fractions or per cent with the sign;
/// costs are major units; a composition is "C:0.95,Mn:0.3" or a grade's name, which then counts as
/// the middle of its limits. Refuses an unknown name, an unknown or doubled key, a missing key, and
/// whatever the computation refuses; each problem's field is the key.
///
///     auto answer = run_desk_calculation("cooling", {{"from_c", "800"}, ...},
///     GradeBook::published());
Outcome<DeskAnswer> run_desk_calculation(
    std::string_view name, const std::vector<std::pair<std::string, std::string>>& keys,
    const GradeBook& book);

}  // namespace tangmark::steel
