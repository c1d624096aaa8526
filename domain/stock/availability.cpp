// SPDX-License-Identifier: MIT
#include "domain/stock/availability.h"

#include <fmt/format.h>

#include <algorithm>

namespace tangmark::stock {
namespace {

Caught too_much(std::string_view tag, const std::string& wanted, const std::string& free,
                const std::vector<Promised>& promised) {
  std::string items;
  for (const Promised& one : promised)
    items += fmt::format("{}{}", items.empty() ? "" : ", ", one.item.row());
  return {3, Weight::stop, "piece",
          fmt::format("{} is wanted of {} and only {} is not promised yet{}.", wanted, tag, free,
                      items.empty() ? "" : " (promised to item " + items + ")"),
          "Take another piece, or release a reservation."};
}

}  // namespace

Length AvailableLength::reserved() const {
  Length sum;
  for (const Promised& one : promised) sum = sum + one.length;
  return sum;
}

Length AvailableLength::reserved_for_others(commission::ItemId item) const {
  Length sum;
  for (const Promised& one : promised)
    if (one.item != item) sum = sum + one.length;
  return sum;
}

Length AvailableLength::available() const {
  return std::max(Length(), on_hand - reserved() - keep);
}

Mass AvailableMass::reserved() const {
  Mass sum;
  for (const Promised& one : promised) sum = sum + one.mass;
  return sum;
}

Mass AvailableMass::reserved_for_others(commission::ItemId item) const {
  Mass sum;
  for (const Promised& one : promised)
    if (one.item != item) sum = sum + one.mass;
  return sum;
}

Mass AvailableMass::available() const { return std::max(Mass(), on_hand - reserved()); }

Catch promised_twice(std::string_view tag, const AvailableLength& bar, Length wanted,
                     LengthUnit shown_in) {
  const Length free = std::max(Length(), bar.on_hand - bar.reserved());
  if (wanted > free)
    return too_much(tag, to_text(wanted, shown_in), to_text(free, shown_in), bar.promised);
  if (wanted > bar.available() && wanted < free)
    return Caught{3, Weight::remark, "length",
                  fmt::format("Only {} will be left of {}: short stock.",
                              to_text(free - wanted, shown_in), tag),
                  ""};
  return std::nullopt;
}

Catch promised_twice(std::string_view tag, const AvailableMass& piece, Mass wanted,
                     MassUnit shown_in) {
  if (wanted > piece.available())
    return too_much(tag, to_text(wanted, shown_in), to_text(piece.available(), shown_in),
                    piece.promised);
  return std::nullopt;
}

}  // namespace tangmark::stock
