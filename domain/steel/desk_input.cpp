// SPDX-License-Identifier: MIT
#include "domain/steel/desk_input.h"

#include <cmath>

#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

Outcome<double> read_fraction(std::string_view text, std::string_view field) {
  const bool per_cent = text.ends_with('%');
  if (per_cent) text.remove_suffix(1);
  auto figure = parse_figure(text, field);
  if (!figure) return figure;
  return per_cent ? *figure / 100 : *figure;
}

template <class Read>
Outcome<std::vector<double>> read_list(std::string_view text, std::string_view field, Read read) {
  std::vector<double> list;
  Gather form;
  for (const std::string_view part : split_outside_brackets(text, ',')) {
    list.push_back(form.take(read(part, field)));
  }
  if (form.refused()) return form.problems();
  return list;
}

Problem not_a_time(std::string_view text, std::string_view field) {
  return {std::string(field), "\"" + std::string(text) + "\" is not a time.",
          "Write it with s, min or h, such as 90min or 2h."};
}

// Minutes of a time; bare_in_min of nought means that the unit must be written.
Outcome<double> read_minutes(std::string_view text, double bare_in_min, std::string_view field) {
  const auto [figure_part, unit_part] = number_then_unit(text);
  const auto figure = parse_figure(figure_part, field);
  const std::string unit = lower(unit_part);
  double in_min = 0;
  if (unit.empty()) in_min = bare_in_min;
  if (unit == "s" || unit == "sec") in_min = 1.0 / 60;
  if (unit == "min") in_min = 1;
  if (unit == "h" || unit == "hr") in_min = 60;
  if (!figure || in_min == 0) return not_a_time(text, field);
  const double minutes = *figure * in_min;
  constexpr double ten_years_min = 10.0 * 366 * 24 * 60;
  if (!(minutes >= 0 && minutes <= ten_years_min)) {
    return Problem{std::string(field), "A time lies between nothing and ten years.",
                   "Check the figure and its unit."};
  }
  return minutes;
}

Outcome<TemperStep> read_temper_step(std::string_view text, std::string_view field) {
  const std::size_t slash = text.find('/');
  if (slash == std::string_view::npos) {
    return Problem{std::string(field), "\"" + std::string(text) + "\" is not a temper.",
                   "Write each as temperature/time, such as 204C/120min."};
  }
  const std::string_view heat = trimmed(text.substr(0, slash));
  if (number_then_unit(heat).second.empty()) {
    return Problem{std::string(field), "\"" + std::string(heat) + "\" has no temperature unit.",
                   "Write C, F or K behind it."};
  }
  Gather form;
  TemperStep step;
  step.at = form.take(parse_temperature(heat, TemperatureUnit::celsius, field));
  const double minutes = form.take(read_minutes(text.substr(slash + 1), 0, field));
  step.hold = std::chrono::milliseconds(std::llround(minutes * 60'000));
  if (form.refused()) return form.problems();
  return step;
}

}  // namespace

std::string_view DeskInput::text(std::string_view key) const {
  for (const auto& [name, value] : keys_) {
    if (name == key) return trimmed(value);
  }
  return {};
}

Outcome<double> DeskInput::number(std::string_view key) const {
  return parse_figure(text(key), key);
}

Outcome<double> DeskInput::above_zero(std::string_view key) const {
  auto figure = number(key);
  if (!figure || *figure > 0) return figure;
  return Problem{std::string(key), "The figure must be above zero.", "Check it."};
}

Outcome<double> DeskInput::fraction(std::string_view key) const {
  return read_fraction(text(key), key);
}

Outcome<std::vector<double>> DeskInput::numbers(std::string_view key) const {
  return read_list(text(key), key, parse_figure);
}

Outcome<std::vector<double>> DeskInput::fractions(std::string_view key) const {
  return read_list(text(key), key, read_fraction);
}

Outcome<Temperature> DeskInput::temperature(std::string_view key) const {
  return parse_temperature(text(key), TemperatureUnit::celsius, key);
}

Outcome<Length> DeskInput::length(std::string_view key) const {
  auto length = parse_length(text(key), LengthUnit::millimetre, key);
  if (!length || length->nanometres() > 0) return length;
  return Problem{std::string(key), "The length must be above zero.", "Measure it."};
}

Outcome<double> DeskInput::minutes(std::string_view key, double bare_in_min) const {
  return read_minutes(text(key), bare_in_min, key);
}

Outcome<NamedComposition> DeskInput::composition(std::string_view key) const {
  return read_composition(text(key), key);
}

Outcome<NamedComposition> DeskInput::read_composition(std::string_view text,
                                                      std::string_view field) const {
  if (text.find_first_of(":=(") != std::string_view::npos) {
    auto typed = parse_composition(text, field);
    if (!typed) return typed.problems();
    return NamedComposition{*typed, ""};
  }
  const Grade* grade = book_.find(text);
  if (!grade) {
    return Problem{std::string(field), "\"" + std::string(text) + "\" is no grade on file.",
                   "Write the composition as C:0.95,Mn:0.3, or add the grade."};
  }
  const Composition middle = middle_of_limits(*grade);
  return NamedComposition{middle, grade->name + " counts as the middle of its limits (" +
                                      to_text(middle) + "); source: " + grade->source};
}

Outcome<const Grade*> DeskInput::grade(std::string_view key) const {
  if (const Grade* grade = book_.find(text(key)); grade && has(key)) return grade;
  return Problem{std::string(key), "\"" + std::string(text(key)) + "\" is no grade on file.",
                 "Check the name, or add the grade."};
}

Outcome<std::vector<TemperStep>> DeskInput::temper_steps(std::string_view key) const {
  std::vector<TemperStep> steps;
  Gather form;
  for (const std::string_view part : split_outside_brackets(text(key), ',')) {
    steps.push_back(form.take(read_temper_step(part, key)));
  }
  if (form.refused()) return form.problems();
  return steps;
}

Outcome<std::size_t> DeskInput::one_of(const std::vector<std::string_view>& keys) const {
  std::optional<std::size_t> found;
  std::string names;
  for (std::size_t i = 0; i < keys.size(); ++i) {
    names += (i == 0 ? "" : i + 1 == keys.size() ? " or " : ", ") + std::string(keys[i]);
    if (!has(keys[i])) continue;
    if (found) {
      return Problem{
          std::string(keys[i]),
          "Both " + std::string(keys[*found]) + " and " + std::string(keys[i]) + " are given.",
          "Give one of them."};
    }
    found = i;
  }
  if (found) return *found;
  return Problem{std::string(keys.front()), "One of " + names + " is needed.", "Give one of them."};
}

}  // namespace tangmark::steel
