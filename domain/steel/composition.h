// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"

namespace tangmark::steel {

/// The elements a mill analysis of this trade names. Iron is the balance and is never listed.
enum class Element { C, Mn, Si, Cr, Ni, Mo, V, W, Cu, Co, P, S, Al, As, B, N, Nb, Ti, Sn, Pb, O };
inline constexpr std::size_t element_count = 21;

/// All elements in the order a certificate lists them.
const std::array<Element, element_count>& all_elements();
/// "C", "Mn".
std::string_view symbol(Element element);
/// The element of a symbol, in capitals or not.
std::optional<Element> element_of(std::string_view symbol);

/// What a steel is made of, in weight per cent of the elements that were stated. An element that
/// was not stated counts as nothing in a formula, but is not a measured zero.
class Composition {
 public:
  Composition() = default;
  /// The same composition with one more figure (or another one). Refuses a negative figure and one
  /// above 100 %.
  Outcome<Composition> with(Element element, double weight_percent) const;

  /// Zero when it was not stated.
  double weight_percent(Element element) const { return stated(element).value_or(0.0); }
  std::optional<double> stated(Element element) const {
    return percent_[static_cast<std::size_t>(element)];
  }
  double total_percent() const;
  /// The stated elements, in certificate order.
  std::vector<Element> elements() const;
  friend bool operator==(const Composition&, const Composition&) = default;

 private:
  std::array<std::optional<double>, element_count> percent_{};
};

/// Reads "C:0.95,Mn:0.3" (weight per cent; "C=0.95" and blanks are accepted). Refuses an unknown
/// symbol, an element named twice, a figure that is no number, and a sum above 100 %.
Outcome<Composition> parse_composition(std::string_view text, std::string_view field);
/// "C:0.95,Mn:0.3", which parse_composition reads back to the same value.
std::string to_text(const Composition& composition);

/// One part of a blend by mass.
struct BlendPart {
  Composition composition;
  double mass_share = 0;  ///< any unit, the same for all parts; above zero
};

/// The mean composition of parts melted or welded together: sum of share x percent over the sum of
/// shares. An element that one part does not state counts as nothing there. Valid for any masses;
/// no burn-off or decarburization is taken off. Refuses no parts and a share that is not above
/// zero.
/// **Source**: conservation of mass.
Outcome<Composition> blend(const std::vector<BlendPart>& parts);

}  // namespace tangmark::steel
