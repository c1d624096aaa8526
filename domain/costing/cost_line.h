// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "domain/measure/money.h"

namespace tangmark::costing {

enum class LineKind {
  material, used_up, energy, hours, made_elsewhere, overhead, loss, packing, shipping, fee
};

/// "material", "used_up" ...: for storing and for JSON. The two directions share one table.
std::string_view to_word(LineKind kind);
std::optional<LineKind> line_kind_from(std::string_view word);

/// How much of something, in thousandths of the unit: 2,500 "belts" is two and a half.
struct Quantity {
  std::int64_t thousandths = 1000;
  std::string unit;  ///< "g", "kWh", "h", "belts"; empty for pieces
  friend bool operator==(const Quantity&, const Quantity&) = default;
};
/// "2.5 belts", "235 g", "1".
std::string to_text(const Quantity& quantity);

/// What a line was made from, so that a change of the line finds its way back.
struct LineOrigin {
  enum class From {
    whole_quote,    ///< packing, shipping, fee: told apart by their kind
    ingredient,     ///< `index` counts the item's ingredients
    firing_hours,   ///< the minutes of an ingredient that is a firing
    operation,      ///< `index` counts the item's operations
    whole_item      ///< overhead, loss
  };
  From from = From::whole_quote;
  std::size_t index = 0;
  friend bool operator==(const LineOrigin&, const LineOrigin&) = default;
};

/// One line of the shop's cost sheet. Never shown to a buyer.
struct CostLine {
  LineKind kind = LineKind::material;
  std::string text;
  Quantity quantity;
  Money each;    ///< price of one unit, for reading; the amount is computed from exact figures
  Money amount;  ///< for all pieces of the item, half to even per piece
  std::size_t item = 0;  ///< index of the item; the number of items for lines of the whole quote
  LineOrigin origin = {};
  friend bool operator==(const CostLine&, const CostLine&) = default;
};

}  // namespace tangmark::costing
