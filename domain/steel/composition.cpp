// SPDX-License-Identifier: MIT
#include "domain/steel/composition.h"

#include <algorithm>

#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

constexpr std::array<std::string_view, element_count> symbols = {
    "C", "Mn", "Si", "Cr", "Ni", "Mo", "V",  "W",  "Cu", "Co", "P",
    "S", "Al", "As", "B",  "N",  "Nb", "Ti", "Sn", "Pb", "O"};

// A tolerance for figures that were rounded when printed and sum to a hair above the whole.
constexpr double whole_percent = 100.001;

Outcome<Composition> with_entry(const Composition& so_far, std::string_view entry,
                                std::string_view field) {
  const std::size_t mark = entry.find_first_of(":=");
  if (mark == std::string_view::npos) {
    return Problem{std::string(field), "\"" + std::string(entry) + "\" names no weight per cent.",
                   "Write each element as C:0.95, with commas between."};
  }
  const std::string name(trimmed(entry.substr(0, mark)));
  const auto element = element_of(name);
  if (!element) {
    const bool iron = lower(name) == "fe";
    return Problem{std::string(field),
                   "\"" + name + "\" is not an element of a steel analysis here.",
                   iron ? "Leave iron out: it is the balance."
                        : "Use symbols such as C, Mn, Si, Cr, Ni, Mo, V, W."};
  }
  if (so_far.stated(*element)) {
    return Problem{std::string(field), std::string(symbol(*element)) + " is named twice.",
                   "Give each element once."};
  }
  const auto percent = parse_figure(entry.substr(mark + 1), field);
  if (!percent) return percent.problems();
  auto extended = so_far.with(*element, *percent);
  if (extended) return extended;
  Problem problem = extended.problem();
  problem.field = std::string(field);
  return problem;
}

}  // namespace

const std::array<Element, element_count>& all_elements() {
  static const auto all = [] {
    std::array<Element, element_count> list{};
    for (std::size_t i = 0; i < element_count; ++i) list[i] = static_cast<Element>(i);
    return list;
  }();
  return all;
}

std::string_view symbol(Element element) {
  return symbols[static_cast<std::size_t>(element)];
}

std::optional<Element> element_of(std::string_view name) {
  for (const Element element : all_elements()) {
    if (lower(symbol(element)) == lower(name)) return element;
  }
  return std::nullopt;
}

Outcome<Composition> Composition::with(Element element, double weight_percent) const {
  // The comparison is written so that a number that is none is refused too.
  if (!(weight_percent >= 0 && weight_percent <= 100)) {
    return Problem{std::string(symbol(element)),
                   std::string(symbol(element)) + " must lie between 0 and 100 weight per cent.",
                   "Check the figure against the certificate."};
  }
  Composition extended = *this;
  extended.percent_[static_cast<std::size_t>(element)] = weight_percent;
  return extended;
}

double Composition::total_percent() const {
  double total = 0;
  for (const auto& figure : percent_) total += figure.value_or(0.0);
  return total;
}

std::vector<Element> Composition::elements() const {
  std::vector<Element> list;
  for (const Element element : all_elements()) {
    if (stated(element)) list.push_back(element);
  }
  return list;
}

Outcome<Composition> parse_composition(std::string_view text, std::string_view field) {
  text = trimmed(text);
  if (text.size() >= 2 && text.front() == '(' && text.back() == ')') {
    text = trimmed(text.substr(1, text.size() - 2));
  }
  if (text.empty()) {
    return Problem{std::string(field), "No composition is given.", "Write it as C:0.95,Mn:0.3."};
  }
  Composition composition;
  for (const std::string_view entry : split_outside_brackets(text, ',')) {
    auto extended = with_entry(composition, entry, field);
    if (!extended) return extended;
    composition = *std::move(extended);
  }
  if (composition.total_percent() > whole_percent) {
    return Problem{std::string(field), "The elements sum to more than 100 %.",
                   "Check the figures against the certificate."};
  }
  return composition;
}

std::string to_text(const Composition& composition) {
  std::string text;
  for (const Element element : composition.elements()) {
    if (!text.empty()) text += ',';
    text += std::string(symbol(element)) + ':' + figure_text(*composition.stated(element));
  }
  return text;
}

Outcome<Composition> blend(const std::vector<BlendPart>& parts) {
  if (parts.empty()) return Problem{"parts", "A blend needs at least one part.", "Name its parts."};
  double total = 0;
  for (const BlendPart& part : parts) {
    if (!(part.mass_share > 0)) {
      return Problem{"parts", "The mass of a part must be above zero.",
                     "Leave out a part of which there is none."};
    }
    total += part.mass_share;
  }
  Composition mixed;
  for (const Element element : all_elements()) {
    double sum = 0;
    bool stated = false;
    for (const BlendPart& part : parts) {
      sum += part.mass_share * part.composition.weight_percent(element);
      stated = stated || part.composition.stated(element).has_value();
    }
    if (!stated) continue;
    auto extended = mixed.with(element, std::min(sum / total, 100.0));
    if (!extended) return extended;
    mixed = *std::move(extended);
  }
  return mixed;
}

}  // namespace tangmark::steel
