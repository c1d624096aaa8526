// SPDX-License-Identifier: MIT
#include "domain/costing/mass_from_bar.h"

#include <algorithm>
#include <cmath>

namespace tangmark::costing {
namespace {

constexpr Length longest = Length::millimetres(20'000);

Mass mass_of(Length length, const BarSection& section, Density density) {
  if (const auto* flat = std::get_if<FlatSection>(&section))
    return bar_mass(length, flat->width, flat->thickness, density);
  return round_mass(length, std::get<RoundSection>(section).diameter, density);
}

bool positive(Length l) { return l > Length{} && l <= longest; }

bool positive(const BarSection& section) {
  if (const auto* flat = std::get_if<FlatSection>(&section))
    return positive(flat->width) && positive(flat->thickness);
  return positive(std::get<RoundSection>(section).diameter);
}

Problems faults(const BarCut& cut) {
  Problems found;
  if (!positive(cut.blank_length))
    found.push_back({"blank length", "The blank needs a length above zero and below 20 m.",
                     "Give the length cut from the bar."});
  if (!positive(cut.section))
    found.push_back({"section", "The bar needs a section above zero.",
                     "Give width and thickness, or a diameter."});
  if (cut.yield <= Share{} || cut.yield > Share::whole())
    found.push_back({"yield", "The yield must be above 0 % and at most 100 %.",
                     "Give the part of the mass taken that is left in the blank."});
  if (cut.kerf < Length{} || cut.kerf > Length::millimetres(50))
    found.push_back({"kerf", "The kerf must lie between 0 and 50 mm.", "Check the kerf."});
  if (cut.bar && !positive(cut.bar->length))
    found.push_back({"bar length", "The bar needs a length above zero.", "Give its length."});
  return found;
}

/// Rounded up to the nanometre: a blank is never costed short.
Length length_taken(const BarCut& cut) {
  const std::int64_t whole = Share::whole().millionths(), kept = cut.yield.millionths();
  const std::int64_t nm = cut.blank_length.nanometres();
  // In two parts, as nanometres times a million would pass 63 bits above 9 m.
  const std::int64_t quotient = nm / kept, rest = nm % kept;
  return Length::nanometres(quotient * whole + (rest * whole + kept - 1) / kept);
}

}  // namespace

Outcome<MassTaken> mass_from_bar(const BarCut& cut) {
  if (Problems found = faults(cut); !found.empty()) return found;
  const Length taken = length_taken(cut);
  MassTaken m;
  m.blank = mass_of(cut.blank_length, cut.section, cut.density);
  m.yield_loss = mass_of(taken, cut.section, cut.density) - m.blank;
  m.kerf = mass_of(cut.kerf, cut.section, cut.density);
  m.rule = "One kerf of " + to_text(cut.kerf, LengthUnit::millimetre) + " for each blank; ";
  if (!cut.bar) {
    m.rule += "the rest of the bar stays on the rack.";
  } else {
    const Length step = taken + cut.kerf;
    m.blanks_per_bar = (cut.bar->length + cut.kerf).nanometres() / step.nanometres();
    if (m.blanks_per_bar == 0)
      return Problem{"bar length", "The blank needs " + to_text(taken, LengthUnit::millimetre) +
                                       ", more than the bar has.",
                     "Take a longer bar, or a shorter blank."};
    const Length left = std::max(Length{}, cut.bar->length - step * m.blanks_per_bar);
    if (left < cut.bar->keep) {
      const Mass scrap = mass_of(left, cut.section, cut.density);
      m.rest = Mass::micrograms(scrap.micrograms() / m.blanks_per_bar);
    }
    m.rule += std::to_string(m.blanks_per_bar) + " blanks from a bar of " +
              to_text(cut.bar->length, LengthUnit::millimetre) + "; a rest below " +
              to_text(cut.bar->keep, LengthUnit::millimetre) + " is paid by them.";
  }
  m.total = m.blank + m.yield_loss + m.kerf + m.rest;
  return m;
}

}  // namespace tangmark::costing
