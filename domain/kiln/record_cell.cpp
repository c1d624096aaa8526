// SPDX-License-Identifier: MIT
#include "domain/kiln/record_cell.h"

#include <algorithm>
#include <array>

#include "domain/measure/utf8.h"
#include "domain/steel/figure_text.h"

namespace tangmark::kiln {
namespace {

constexpr int most_whole_digits = 15;
constexpr int most_decimals = 9;
constexpr std::array<std::int64_t, most_decimals + 1> powers = {
    1, 10, 100, 1000, 10'000, 100'000, 1'000'000, 10'000'000, 100'000'000, 1'000'000'000};

bool says_missing(std::string_view cell) {
  if (std::all_of(cell.begin(), cell.end(),
                  [](char c) { return c == '-' || c == '*' || c == '.'; })) {
    return true;  // empty, "--", "---.-", "***"
  }
  const std::string word = steel::lower(cell);
  for (const std::string_view known : {"nan", "n/a", "na", "null", "none", "open", "err", "error",
                                       "fault", "fail", "missing", "inf"}) {
    if (word == known) return true;
  }
  return false;
}

// The unit behind a figure, with or without a degree sign in UTF-8 or Latin-1; none when it is
// none.
std::optional<TemperatureUnit> unit_behind(std::string_view rest) {
  while (!rest.empty() &&
         (rest.front() == ' ' || rest.front() == '\xC2' || rest.front() == '\xB0')) {
    rest.remove_prefix(1);
  }
  if (rest == "C" || rest == "c") return TemperatureUnit::celsius;
  if (rest == "F" || rest == "f") return TemperatureUnit::fahrenheit;
  if (rest == "K" || rest == "k") return TemperatureUnit::kelvin;
  return std::nullopt;
}

Temperature in_unit(Decimal figure, TemperatureUnit unit) {
  switch (unit) {
    case TemperatureUnit::celsius:
      return Temperature() + TemperatureDifference::counts(scaled(figure, 1800));
    case TemperatureUnit::fahrenheit:
      return Temperature::fahrenheit(0) + TemperatureDifference::counts(scaled(figure, 1000));
    case TemperatureUnit::kelvin:
      break;
  }
  return Temperature::counts(scaled(figure, 1800));
}

}  // namespace

std::optional<Decimal> take_decimal(std::string_view& text, char point) {
  const char* at = text.data();
  const char* const end = at + text.size();
  const bool negative = at != end && *at == '-';
  if (at != end && (*at == '-' || *at == '+')) ++at;
  Decimal figure;
  const char* const whole = at;
  for (; at != end && is_digit(*at); ++at) {
    if (at - whole >= most_whole_digits) return std::nullopt;
    figure.digits = figure.digits * 10 + (*at - '0');
  }
  bool any = at != whole;
  if (at != end && *at == point) {
    // A figure of full length keeps fewer decimals, so that its digits stay within 64 bits.
    const int kept = std::min<int>(most_decimals, 17 - static_cast<int>(at - whole));
    for (++at; at != end && is_digit(*at); ++at) {
      any = true;
      if (figure.decimals >= kept) continue;
      figure.digits = figure.digits * 10 + (*at - '0');
      ++figure.decimals;
    }
  }
  if (!any) return std::nullopt;
  if (negative) figure.digits = -figure.digits;
  text.remove_prefix(static_cast<std::size_t>(at - text.data()));
  return figure;
}

std::int64_t scaled(Decimal figure, std::int64_t multiple) {
  __extension__ typedef __int128 Wide;
  const Wide divisor = powers[static_cast<std::size_t>(figure.decimals)];
  const Wide product = Wide{figure.digits} * multiple;
  const Wide half = product < 0 ? -divisor / 2 : divisor / 2;
  const Wide nearest = (product + half) / divisor;
  constexpr Wide most = INT64_MAX / 4;
  return static_cast<std::int64_t>(std::clamp(nearest, -most, most));
}

ReadingCell read_reading(std::string_view cell, TemperatureUnit unit, char point) {
  cell = bare_cell(cell);
  std::string_view rest = cell;
  const auto figure = take_decimal(rest, point);
  if (!figure) return {says_missing(cell) ? CellKind::missing : CellKind::malformed, {}};
  if (!rest.empty()) {
    const auto written = unit_behind(rest);
    if (!written) return {CellKind::malformed, {}};
    unit = *written;
  }
  constexpr std::int64_t beyond_any_sensor = 1'000'000;
  if (scaled(*figure, 1) > beyond_any_sensor || scaled(*figure, 1) < -beyond_any_sensor) {
    return {CellKind::malformed, {}};
  }
  const Temperature reading = in_unit(*figure, unit);
  if (reading < Temperature::celsius(-100) || reading > Temperature::celsius(2000)) {
    return {CellKind::malformed, {}};
  }
  return {CellKind::reading, reading};
}

std::string_view bare_cell(std::string_view cell) {
  const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
  while (!cell.empty() && blank(cell.front())) cell.remove_prefix(1);
  while (!cell.empty() && blank(cell.back())) cell.remove_suffix(1);
  if (cell.size() >= 2 && cell.front() == '"' && cell.back() == '"') {
    return bare_cell(cell.substr(1, cell.size() - 2));
  }
  return cell;
}

}  // namespace tangmark::kiln
