// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "domain/measure/caught.h"
#include "domain/stock/availability.h"
#include "domain/stock/piece.h"

namespace tangmark::stock {

/// Catch 3, at any use of a piece: one that was cut up, welded into a billet, ground to a blank,
/// returned or scrapped is not there any more.
Catch used_twice(const Piece& piece);

/// Catch 3, at a cut: taking what is promised to another item. Lengths are with the kerf.
Catch cut_into_promise(const Piece& piece, const AvailableLength& bar, Length taken,
                       std::optional<commission::ItemId> for_item, LengthUnit shown_in);

}  // namespace tangmark::stock
