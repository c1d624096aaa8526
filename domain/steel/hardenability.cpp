// SPDX-License-Identifier: MIT
#include "domain/steel/hardenability.h"

#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"
#include "domain/steel/fitted_range.h"

namespace tangmark::steel {
namespace {

// One piece of a factor: a polynomial over a stretch of one element.
struct Piece {
  Element element;
  double up_to;
  double constant;
  double linear;
  double square;
};

const std::vector<Piece>& pieces() {
  static const std::vector<Piece> read = [] {
    const DataTable table(built_in::a255_factors);
    std::vector<Piece> list;
    for (std::size_t i = 0; i < table.size(); ++i) {
      list.push_back({element_of(table.text(i, "element")).value(), table.number(i, "up_to"),
                      table.number(i, "constant"), table.number(i, "linear"),
                      table.number(i, "square")});
    }
    return list;
  }();
  return read;
}

const std::vector<FittedRange>& scope() {
  static const std::vector<FittedRange> read = [] {
    const DataTable table(built_in::a255_scope);
    std::vector<FittedRange> list;
    for (std::size_t i = 0; i < table.size(); ++i) {
      list.push_back({element_of(table.text(i, "element")).value(), table.number(i, "min"),
                      table.number(i, "max")});
    }
    // The method has no factor for these; more than a residue of them makes its result a guess.
    for (const Element element : {Element::W, Element::Co, Element::Nb, Element::Ti}) {
      list.push_back({element, 0, 0.05});
    }
    list.push_back({Element::B, 0, 0.0005});
    return list;
  }();
  return read;
}

double factor_of(Element element, double percent) {
  const Piece* chosen = nullptr;
  for (const Piece& piece : pieces()) {
    if (piece.element != element) continue;
    chosen = &piece;
    if (percent <= piece.up_to) break;
  }
  return chosen->constant + chosen->linear * percent + chosen->square * percent * percent;
}

constexpr double most_carbon_wt = 2.14;

double grain_scale(double grain) { return (1.70 - 0.09 * grain) / (1.70 - 0.09 * usual_grain); }

}  // namespace

Outcome<Hardenability> hardenability(const Composition& composition, double grain) {
  if (!composition.stated(Element::C)) return carbon_missing();
  if (!(grain >= 1 && grain <= 12)) {
    return Problem{"grain", "The grain size must lie between 1 and 12.",
                   "Use 7 when it was not measured."};
  }
  if (composition.weight_percent(Element::C) > most_carbon_wt) {
    return Problem{"composition",
                   "Above 2.14 % carbon it is cast iron, which this method does not know.",
                   "Check the carbon."};
  }
  Hardenability result;
  result.di_in = 1;
  for (const Element element : {Element::C, Element::Mn, Element::Si, Element::Ni, Element::Cr,
                                Element::Mo, Element::Cu, Element::V}) {
    double factor = factor_of(element, composition.weight_percent(element));
    if (element == Element::C) factor *= grain_scale(grain);
    result.factors.push_back({element, factor});
    result.di_in *= factor;
  }
  result.out_of_range = elements_outside(composition, scope());
  if (grain != usual_grain) result.out_of_range.emplace_back("grain");
  result.in_range = result.out_of_range.empty();
  return result;
}

}  // namespace tangmark::steel
