// SPDX-License-Identifier: MIT
#include "domain/steel/desk_calc.h"

#include <algorithm>

#include "domain/steel/desk_calculations.h"
#include "domain/steel/desk_input.h"
#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

const DeskKey* key_of(const DeskCalculation& calculation, std::string_view name) {
  for (const DeskKey& key : calculation.keys) {
    if (key.name == name) return &key;
  }
  return nullptr;
}

std::string names_of_keys(const DeskCalculation& calculation) {
  std::string names;
  for (const DeskKey& key : calculation.keys) names += (names.empty() ? "" : ", ") + key.name;
  return names;
}

Problems faults_of_keys(const DeskCalculation& calculation, const DeskInput::Keys& keys) {
  Problems faults;
  for (auto at = keys.begin(); at != keys.end(); ++at) {
    const auto same = [&](const auto& other) { return other.first == at->first; };
    if (!key_of(calculation, at->first)) {
      faults.push_back({at->first, "\"" + at->first + "\" is no key of " + calculation.name + ".",
                        "Its keys are " + names_of_keys(calculation) + "."});
    } else if (std::any_of(keys.begin(), at, same)) {
      faults.push_back({at->first, at->first + " is given twice.", "Give it once."});
    } else if (trimmed(at->second).empty()) {
      faults.push_back({at->first, at->first + " is empty.", "Give its value."});
    }
  }
  for (const DeskKey& key : calculation.keys) {
    const auto given = [&](const auto& pair) { return pair.first == key.name; };
    if (key.need == Need::required && std::none_of(keys.begin(), keys.end(), given)) {
      faults.push_back(
          {key.name, key.name + " is missing: " + key.meaning + ".", "Give " + key.name + "."});
    }
  }
  return faults;
}

}  // namespace

const std::vector<DeskCalculation>& desk_calculations() {
  static const std::vector<DeskCalculation> all = [] {
    std::vector<DeskCalculation> list;
    for (auto part : {bench_calculations(), temper_calculations(), hardening_calculations(),
                      carbon_calculations(), grade_calculations(), money_calculations()}) {
      std::move(part.begin(), part.end(), std::back_inserter(list));
    }
    return list;
  }();
  return all;
}

const DeskCalculation* find_desk_calculation(std::string_view name) {
  for (const DeskCalculation& calculation : desk_calculations()) {
    if (calculation.name == name) return &calculation;
  }
  return nullptr;
}

Outcome<DeskAnswer> run_desk_calculation(std::string_view name, const DeskInput::Keys& keys,
                                         const GradeBook& book) {
  const DeskCalculation* calculation = find_desk_calculation(name);
  if (!calculation) {
    std::string names;
    for (const auto& known : desk_calculations()) names += (names.empty() ? "" : ", ") + known.name;
    return Problem{"name", "\"" + std::string(name) + "\" is no computation of the desk.",
                   "It knows " + names + "."};
  }
  Problems faults = faults_of_keys(*calculation, keys);
  if (!faults.empty()) return faults;
  DeskInput::Keys with_fallbacks = keys;
  for (const DeskKey& key : calculation->keys) {
    const auto given = [&](const auto& pair) { return pair.first == key.name; };
    if (!key.fallback.empty() && std::none_of(keys.begin(), keys.end(), given)) {
      with_fallbacks.emplace_back(key.name, key.fallback);
    }
  }
  return calculation->work(DeskInput(std::move(with_fallbacks), book));
}

DeskValue composition_value(const Composition& composition) {
  DeskValue::Fields fields;
  for (const Element element : composition.elements()) {
    fields.push_back({std::string(symbol(element)), *composition.stated(element)});
  }
  return fields;
}

}  // namespace tangmark::steel
