// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "domain/measure/temperature.h"

namespace tangmark::kiln {

/// A decimal figure as written: digits x 10^-decimals.
struct Decimal {
  std::int64_t digits = 0;
  int decimals = 0;
};

/// Reads "-12.5" from the front of text and takes it off; none when no figure stands there. Digits
/// behind the ninth decimal are dropped; more than 15 digits before the point are no figure.
std::optional<Decimal> take_decimal(std::string_view& text, char point);

/// figure x multiple, to the nearest whole.
std::int64_t scaled(Decimal figure, std::int64_t multiple);

/// What a cell of a sensor's column holds.
enum class CellKind { reading, missing, malformed };
struct ReadingCell {
  CellKind kind = CellKind::missing;
  Temperature reading;
};

/// Reads "802.5", "802,5" (point ','), "802 C", "1475F". Missing: empty, dashes, NaN, n/a, null,
/// open, err and the like. Malformed: anything else, and a reading outside -100 to 2000 C, which no
/// sensor of this trade gives. A unit in the cell outranks the column's.
ReadingCell read_reading(std::string_view cell, TemperatureUnit unit, char point);

/// Without blanks, tabs, carriage returns and one pair of quotation marks.
std::string_view bare_cell(std::string_view cell);

}  // namespace tangmark::kiln
