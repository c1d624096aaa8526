// SPDX-License-Identifier: MIT
#include "domain/measure/mass.h"

#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

#include "domain/measure/figure.h"

namespace tangmark {
namespace {

using figures::Wide;

constexpr std::int64_t ug_per_g = 1'000'000;
constexpr std::int64_t ug_per_pound = 453'592'370;  // exact; NIST SP 811, B.8

constexpr figures::Unit gram = {"g", ug_per_g};
constexpr figures::Unit pound = {"lb", ug_per_pound};
constexpr figures::Unit ounce = {"oz", ug_per_pound, 16};  // avoirdupois

constexpr std::array<figures::Unit, 16> mass_units = {{
    gram,
    {"gram", ug_per_g},
    {"grams", ug_per_g},
    {"kg", 1000 * ug_per_g},
    {"kilogram", 1000 * ug_per_g},
    {"kilograms", 1000 * ug_per_g},
    {"mg", ug_per_g / 1000, 1, figures::Letters::as_written},
    {"t", 1'000'000 * ug_per_g},
    pound,
    {"lbs", ug_per_pound},
    {"pound", ug_per_pound},
    {"pounds", ug_per_pound},
    ounce,
    {"ounce", ug_per_pound, 16},
    {"ounces", ug_per_pound, 16},
    {"oz av", ug_per_pound, 16},
}};

constexpr std::string_view troy = "A troy ounce is not an ounce of this trade.";
constexpr std::string_view troy_remedy = "Write the mass in grams or in avoirdupois ounces (oz).";
constexpr std::array<figures::Ambiguous, 5> ambiguous = {{
    {"oz t", troy, troy_remedy},
    {"ozt", troy, troy_remedy},
    {"t oz", troy, troy_remedy},
    {"troy oz", troy, troy_remedy},
    {"ton", "A ton is three different masses.", "Write the mass in kg, t (1000 kg) or lb."},
}};

constexpr figures::Kind mass_kind = {.noun = "a mass",
                                     .measure = "mass",
                                     .example = "235 g, 1.2 kg or 2 lb 3 oz",
                                     .units = mass_units,
                                     .ambiguous = ambiguous,
                                     .most = 10'000'000 * ug_per_g,
                                     .most_text = "10 t"};

std::int64_t rounded(Mass m, const figures::Unit& unit, int per_unit) {
  return static_cast<std::int64_t>(
      figures::half_even(Wide{m.micrograms()} * per_unit * unit.denominator, Wide{unit.numerator}));
}

std::int64_t checked_mass(Wide ug) {
  assert(figures::fits(ug) && "a bar of this trade weighs less than nine thousand tonnes");
  return static_cast<std::int64_t>(ug);
}

bool below(Mass m, std::int64_t ug) {
  return m.micrograms() < ug && m.micrograms() > -ug;
}

}  // namespace

Mass Mass::nearest_grams(double g) {
  assert(std::isfinite(g) && std::abs(g) < 9e12 && "a computed mass is a finite figure");
  return Mass(std::llround(g * 1e6));
}

Mass bar_mass(Length length, Length width, Length thickness, Density density) {
  // Three sides and a density can pass 128 bits. The face of a bar that large is first rounded to
  // whole square micrometres, far below a microgram of the result's last figure.
  assert(density.kg_per_m3 >= 0 && "a density is not below zero");
  const Wide face_nm2 = Wide{width.nanometres()} * thickness.nanometres();
  // 1 nm3 of 1 kg/m3 weighs 1e-27 kg, that is 1e-18 ug.
  constexpr Wide nm3_per_count = Wide{1'000'000'000} * 1'000'000'000;
  const Wide line = Wide{length.nanometres()} * density.kg_per_m3;
  const bool exact = face_nm2 < Wide{1} << 62 && line < Wide{1} << 62;
  if (exact)
    return Mass::micrograms(checked_mass(figures::half_even(face_nm2 * line, nm3_per_count)));
  const Wide face_um2 = figures::half_even(face_nm2, 1'000'000);
  return Mass::micrograms(
      checked_mass(figures::half_even(face_um2 * line, nm3_per_count / 1'000'000)));
}

Mass round_mass(Length length, Length diameter, Density density) {
  const double radius_m = diameter.in_millimetres() / 2000.0;
  const double volume_m3 =
      std::numbers::pi * radius_m * radius_m * length.in_millimetres() / 1000.0;
  return Mass::nearest_grams(volume_m3 * static_cast<double>(density.kg_per_m3) * 1000.0);
}

Outcome<Mass> parse_mass(std::string_view text, MassUnit usual, std::string_view field) {
  const auto ug =
      figures::read_quantity(text, mass_kind, usual == MassUnit::pound ? pound : gram, field);
  if (!ug) return ug.problems();
  return Mass::micrograms(*ug);
}

std::string to_text(Mass m, MassUnit unit) {
  if (unit == MassUnit::pound) {
    // 15.95 oz would round to 16.0 oz, which is a pound.
    if (below(m, ug_per_pound - ug_per_pound / 320)) {
      return figures::shortest(rounded(m, ounce, 10), 1) + " oz";
    }
    return figures::fixed(rounded(m, pound, 100), 2) + " lb";
  }
  if (below(m, 10 * ug_per_g)) return figures::shortest(rounded(m, gram, 100), 2) + " g";
  if (below(m, 1000 * ug_per_g - ug_per_g / 20)) {
    return figures::shortest(rounded(m, gram, 10), 1) + " g";
  }
  return figures::fixed(static_cast<std::int64_t>(figures::half_even(m.micrograms(), ug_per_g)),
                        3) +
         " kg";
}

}  // namespace tangmark
