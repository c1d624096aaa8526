// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/stock/availability.h"
#include "domain/stock/lot.h"
#include "domain/stock/piece.h"
#include "domain/stock/reservation.h"

namespace tangmark::db {

std::optional<stock::KeptReservation> load_reservation(const ShopFile& shop,
                                                       stock::ReservationId id);
/// Standing reservations (not released) of one item, one piece, or the whole shop.
std::vector<stock::KeptReservation> reservations_of_item(const ShopFile& shop,
                                                         commission::ItemId item);
std::vector<stock::KeptReservation> reservations_of_piece(const ShopFile& shop,
                                                          stock::PieceId piece);
std::vector<stock::KeptReservation> standing_reservations(const ShopFile& shop);

stock::ReservationId insert_reservation(const ShopFile& shop,
                                        const stock::Reservation& reservation);
void store_release(const ShopFile& shop, stock::ReservationId id, Instant at);

/// On hand, promised and available of a piece: by length when it has one, and by mass.
stock::AvailableLength available_length(const ShopFile& shop, const stock::KeptPiece& piece,
                                        Length keep);
stock::AvailableMass available_mass(const ShopFile& shop, const stock::KeptPiece& piece);

/// What is left of a steel lot over all its pieces on hand.
struct LotAvailability {
  std::int64_t pieces = 0;
  Length on_hand, reserved, available;  ///< of the pieces that have a length
  Mass mass_on_hand;
};
LotAvailability availability_of_lot(const ShopFile& shop, stock::LotId lot, Length keep);

/// Quantity of a handle or consumable lot that is neither used nor reserved.
Share quantity_left(const ShopFile& shop, const stock::KeptLot& lot);
Share quantity_reserved(const ShopFile& shop, stock::LotId lot);

}  // namespace tangmark::db
