// SPDX-License-Identifier: MIT
#include "domain/measure/length.h"

#include <array>
#include <cassert>
#include <cmath>
#include <numeric>

#include "domain/measure/figure.h"

namespace tangmark {
namespace {

constexpr std::int64_t nm_per_mm = 1'000'000;
constexpr std::int64_t nm_per_inch = 25'400'000;  // exact by definition; NIST SP 811, B.8

constexpr std::array<figures::Unit, 24> length_units = {{
    {"mm", nm_per_mm},
    {"millimetre", nm_per_mm},
    {"millimetres", nm_per_mm},
    {"millimeter", nm_per_mm},
    {"millimeters", nm_per_mm},
    {"cm", 10 * nm_per_mm},
    {"m", 1000 * nm_per_mm},
    {"metre", 1000 * nm_per_mm},
    {"metres", 1000 * nm_per_mm},
    {"meter", 1000 * nm_per_mm},
    {"meters", 1000 * nm_per_mm},
    {"um", 1000},
    {"\xC2\xB5m", 1000},
    {"\xCE\xBCm", 1000},
    {"in", nm_per_inch},
    {"inch", nm_per_inch},
    {"inches", nm_per_inch},
    {"\"", nm_per_inch},
    {"\xE2\x80\xB3", nm_per_inch},
    {"thou", nm_per_inch / 1000},
    {"ft", 12 * nm_per_inch},
    {"foot", 12 * nm_per_inch},
    {"feet", 12 * nm_per_inch},
    {"'", 12 * nm_per_inch},
}};

constexpr figures::Kind length_kind = {.noun = "a length",
                                       .measure = "length",
                                       .example = "3.2 mm or 1/8 in",
                                       .units = length_units,
                                       .most = 10'000 * nm_per_mm,
                                       .most_text = "10 m"};

constexpr figures::Unit millimetre = {"mm", nm_per_mm};
constexpr figures::Unit inch = {"in", nm_per_inch};

std::string inch_text(std::int64_t nm) {
  if (nm * 64 % nm_per_inch != 0) {
    const auto thou = figures::half_even(figures::Wide{nm} * 1000, nm_per_inch);
    return figures::fixed(static_cast<std::int64_t>(thou), 3) + " in";
  }
  const std::int64_t sixty_fourths = std::abs(nm) * 64 / nm_per_inch;
  const std::int64_t whole = sixty_fourths / 64;
  const std::int64_t part = sixty_fourths % 64;
  const std::int64_t common = std::gcd(part, std::int64_t{64});
  std::string text = nm < 0 ? "-" : "";
  if (whole != 0 || part == 0) text += std::to_string(whole);
  if (whole != 0 && part != 0) text += ' ';
  if (part != 0) text += std::to_string(part / common) + "/" + std::to_string(64 / common);
  return text + " in";
}

}  // namespace

Length Length::nearest_millimetres(double mm) {
  assert(std::isfinite(mm) && std::abs(mm) < 9e12 && "a computed length is a finite figure");
  return Length(std::llround(mm * 1e6));
}

Outcome<Length> parse_length(std::string_view text, LengthUnit usual, std::string_view field) {
  const auto nm = figures::read_quantity(text, length_kind,
                                         usual == LengthUnit::inch ? inch : millimetre, field);
  if (!nm) return nm.problems();
  return Length::nanometres(*nm);
}

std::string to_text(Length l, LengthUnit unit) {
  if (unit == LengthUnit::inch) return inch_text(l.nanometres());
  const auto micrometres = figures::half_even(l.nanometres(), 1000);
  return figures::shortest(static_cast<std::int64_t>(micrometres), 3) + " mm";
}

}  // namespace tangmark
