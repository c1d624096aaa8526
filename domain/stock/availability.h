// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/commission/commission_id.h"
#include "domain/measure/caught.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"

namespace tangmark::stock {

/// What is promised of a bar or piece, to whom.
struct Promised {
  commission::ItemId item;
  Length length;
  Mass mass;
  friend bool operator==(const Promised&, const Promised&) = default;
};

/// Length of a bar or piece: available = on hand - reserved - the shortest remainder worth keeping.
struct AvailableLength {
  Length on_hand;
  std::vector<Promised> promised;
  Length keep;  ///< shorter is short stock
  Length reserved() const;
  /// Reserved for anybody but this item.
  Length reserved_for_others(commission::ItemId item) const;
  /// Never below zero.
  Length available() const;
};

/// Mass of a billet or ingot piece: available = on hand - reserved.
struct AvailableMass {
  Mass on_hand;
  std::vector<Promised> promised;
  Mass reserved() const;
  Mass reserved_for_others(commission::ItemId item) const;
  Mass available() const;
};

/// Catch 3, at a reservation: more than is on hand and not yet promised is refused; dipping into
/// the remainder that the shop wants to keep is a remark.
Catch promised_twice(std::string_view tag, const AvailableLength& bar, Length wanted,
                     LengthUnit shown_in);
Catch promised_twice(std::string_view tag, const AvailableMass& piece, Mass wanted,
                     MassUnit shown_in);

}  // namespace tangmark::stock
