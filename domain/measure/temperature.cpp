// SPDX-License-Identifier: MIT
#include "domain/measure/temperature.h"

#include <array>
#include <cassert>
#include <cmath>

#include "domain/measure/figure.h"

namespace tangmark {
namespace {

using figures::Wide;

constexpr std::int64_t per_kelvin = 1800;
constexpr std::int64_t per_fahrenheit = 1000;

struct Scale {
  TemperatureUnit unit;
  std::string_view spelling;
};

constexpr std::array<Scale, 21> scales = {{
    {TemperatureUnit::celsius, "C"},
    {TemperatureUnit::celsius,
     "\xC2\xB0"
     "C"},
    {TemperatureUnit::celsius, "\xC2\xB0 C"},
    {TemperatureUnit::celsius,
     "\xC2\xBA"
     "C"},
    {TemperatureUnit::celsius, "\xE2\x84\x83"},
    {TemperatureUnit::celsius, "deg C"},
    {TemperatureUnit::celsius, "degC"},
    {TemperatureUnit::celsius, "celsius"},
    {TemperatureUnit::fahrenheit, "F"},
    {TemperatureUnit::fahrenheit,
     "\xC2\xB0"
     "F"},
    {TemperatureUnit::fahrenheit, "\xC2\xB0 F"},
    {TemperatureUnit::fahrenheit,
     "\xC2\xBA"
     "F"},
    {TemperatureUnit::fahrenheit, "\xE2\x84\x89"},
    {TemperatureUnit::fahrenheit, "deg F"},
    {TemperatureUnit::fahrenheit, "degF"},
    {TemperatureUnit::fahrenheit, "fahrenheit"},
    {TemperatureUnit::kelvin, "K"},
    {TemperatureUnit::kelvin, "kelvin"},
    {TemperatureUnit::kelvin, "kelvins"},
    {TemperatureUnit::kelvin, "deg K"},
    {TemperatureUnit::kelvin, "\xC2\xB0K"},
}};

constexpr std::int64_t counts_per_degree(TemperatureUnit unit) {
  return unit == TemperatureUnit::fahrenheit ? per_fahrenheit : per_kelvin;
}

constexpr std::array<figures::Unit, scales.size()> make_units() {
  std::array<figures::Unit, scales.size()> units{};
  for (std::size_t i = 0; i < scales.size(); ++i) {
    units[i] = {scales[i].spelling, counts_per_degree(scales[i].unit)};
  }
  return units;
}
constexpr std::array<figures::Unit, scales.size()> temperature_units = make_units();

constexpr figures::Kind reading_kind = {.noun = "a temperature",
                                        .measure = "temperature",
                                        .example = "802 C or 1475 F",
                                        .units = temperature_units,
                                        .most_text = "2000 C",
                                        .sign = figures::Sign::allowed};
constexpr figures::Kind step_kind = {.noun = "a temperature step",
                                     .measure = "temperature",
                                     .example = "50 F or 28 C",
                                     .units = temperature_units,
                                     .most = 2000 * per_kelvin,
                                     .most_text = "2000 C",
                                     .sign = figures::Sign::allowed};

std::int64_t zero_of(TemperatureUnit unit) {
  switch (unit) {
    case TemperatureUnit::celsius:
      return Temperature::celsius(0).counts();
    case TemperatureUnit::fahrenheit:
      return Temperature::fahrenheit(0).counts();
    case TemperatureUnit::kelvin:
      return 0;
  }
  assert(false && "every unit has its zero");
  return 0;
}

std::string_view sign_of(TemperatureUnit unit) {
  switch (unit) {
    case TemperatureUnit::celsius:
      return "\xC2\xB0"
             "C";
    case TemperatureUnit::fahrenheit:
      return "\xC2\xB0"
             "F";
    case TemperatureUnit::kelvin:
      return "K";
  }
  assert(false && "every unit has its sign");
  return "";
}

struct Read {
  Wide counts;
  TemperatureUnit unit;
};

Outcome<Read> read(std::string_view text, const figures::Kind& kind, TemperatureUnit usual,
                   std::string_view field) {
  const auto term = figures::read_term(text, kind, field);
  if (!term) return term.problems();
  if (!term->rest.empty()) return figures::not_a(text, kind, field);
  if (term->unit == nullptr) {
    return Read{figures::counts(term->figure, {"", counts_per_degree(usual)}), usual};
  }
  const auto index = static_cast<std::size_t>(term->unit - temperature_units.data());
  return Read{figures::counts(term->figure, *term->unit), scales[index].unit};
}

}  // namespace

Temperature Temperature::nearest_celsius(double c) {
  assert(std::isfinite(c) && std::abs(c) < 1e12 && "a computed temperature is a finite figure");
  return Temperature(zero_c + std::llround(c * 1800.0));
}

std::int64_t Temperature::whole_celsius() const {
  const std::int64_t n = n_ - zero_c;
  return n >= 0 ? (n + 900) / per_kelvin : -((-n + 900) / per_kelvin);
}

Outcome<Temperature> parse_temperature(std::string_view text, TemperatureUnit usual,
                                       std::string_view field) {
  const auto read_text = read(text, reading_kind, usual, field);
  if (!read_text) return read_text.problems();
  const Wide counts = read_text->counts + zero_of(read_text->unit);
  if (counts < 0) {
    return Problem{std::string(field), figures::quoted(text) + " is below absolute zero.",
                   "Check the figure and its unit."};
  }
  if (counts > Temperature::celsius(2000).counts()) {
    return figures::too_much(text, reading_kind, field);
  }
  return Temperature::counts(static_cast<std::int64_t>(counts));
}

Outcome<TemperatureDifference> parse_temperature_difference(std::string_view text,
                                                            TemperatureUnit usual,
                                                            std::string_view field) {
  const auto step = read(text, step_kind, usual, field);
  if (!step) return step.problems();
  if (step->counts > step_kind.most || -step->counts > step_kind.most) {
    return figures::too_much(text, step_kind, field);
  }
  return TemperatureDifference::counts(static_cast<std::int64_t>(step->counts));
}

std::string figure(Temperature t, TemperatureUnit unit) {
  const Wide hundredths =
      figures::half_even(Wide{t.counts() - zero_of(unit)} * 100, counts_per_degree(unit));
  return figures::shortest(static_cast<std::int64_t>(hundredths), 2);
}

std::string to_text(Temperature t, TemperatureUnit unit) {
  return figure(t, unit) + " " + std::string(sign_of(unit));
}

}  // namespace tangmark
