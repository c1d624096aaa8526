// SPDX-License-Identifier: MIT
#include "db/store/reservation_store.h"

#include "db/row.h"
#include "db/store/piece_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

KeptReservation reservation_from(const Query& row) {
  Reservation reservation{.item = row.id<commission::ItemId>("item_id"),
                          .piece = row.maybe_id<PieceId>("piece_id"),
                          .lot = row.maybe_id<LotId>("lot_id"),
                          .length = row.maybe_length("length_nm"),
                          .mass = row.maybe_mass("mass_ug"),
                          .quantity = row.maybe_share("quantity_ppm"),
                          .at = row.instant("at"),
                          .released_at = row.maybe_instant("released_at")};
  return {row.id<ReservationId>("id"), std::move(reservation)};
}

}  // namespace

std::optional<KeptReservation> load_reservation(const ShopFile& shop, ReservationId id) {
  Query query(shop, "SELECT * FROM reservation WHERE id = ?");
  query.bind(id);
  if (!query.next()) return std::nullopt;
  return reservation_from(query);
}

std::vector<KeptReservation> reservations_of_item(const ShopFile& shop, commission::ItemId item) {
  Query query(shop,
              "SELECT * FROM reservation WHERE item_id = ? AND released_at IS NULL ORDER BY id");
  query.bind(item);
  return all_rows(std::move(query), reservation_from);
}

std::vector<KeptReservation> reservations_of_piece(const ShopFile& shop, PieceId piece) {
  Query query(shop,
              "SELECT * FROM reservation WHERE piece_id = ? AND released_at IS NULL ORDER BY id");
  query.bind(piece);
  return all_rows(std::move(query), reservation_from);
}

std::vector<KeptReservation> standing_reservations(const ShopFile& shop) {
  return all_rows(Query(shop, "SELECT * FROM reservation WHERE released_at IS NULL ORDER BY id"),
                  reservation_from);
}

ReservationId insert_reservation(const ShopFile& shop, const Reservation& reservation) {
  Row row("reservation");
  row.set("item_id", reservation.item).set("piece_id", reservation.piece);
  row.set("lot_id", reservation.lot).set("length_nm", reservation.length);
  row.set("mass_ug", reservation.mass).set("quantity_ppm", reservation.quantity);
  row.set("at", reservation.at).set("released_at", reservation.released_at);
  return ReservationId{row.insert(shop)};
}

void store_release(const ShopFile& shop, ReservationId id, Instant at) {
  Row("reservation").set("released_at", at).update(shop, id.row());
}

// A reservation of neither length nor mass is of the whole piece.
AvailableLength available_length(const ShopFile& shop, const KeptPiece& piece, Length keep) {
  AvailableLength bar{piece.length.value_or(Length()), {}, keep};
  for (const KeptReservation& r : reservations_of_piece(shop, piece.id)) {
    const bool whole = !r.length && !r.mass;
    bar.promised.push_back({r.item, whole ? bar.on_hand : r.length.value_or(Length()), Mass()});
  }
  return bar;
}

AvailableMass available_mass(const ShopFile& shop, const KeptPiece& piece) {
  AvailableMass billet{piece.mass, {}};
  for (const KeptReservation& r : reservations_of_piece(shop, piece.id)) {
    const bool whole = !r.length && !r.mass;
    billet.promised.push_back({r.item, Length(), whole ? piece.mass : r.mass.value_or(Mass())});
  }
  return billet;
}

LotAvailability availability_of_lot(const ShopFile& shop, LotId lot, Length keep) {
  LotAvailability sum;
  for (const KeptPiece& piece : pieces_of_lot(shop, lot)) {
    if (piece.state != PieceState::on_hand) continue;
    const AvailableLength bar = available_length(shop, piece, keep);
    ++sum.pieces;
    sum.on_hand = sum.on_hand + bar.on_hand;
    sum.reserved = sum.reserved + bar.reserved();
    sum.available = sum.available + bar.available();
    sum.mass_on_hand = sum.mass_on_hand + piece.mass;
  }
  return sum;
}

Share quantity_reserved(const ShopFile& shop, LotId lot) {
  Query query(shop,
              "SELECT coalesce(sum(quantity_ppm), 0) AS reserved FROM reservation "
              "WHERE lot_id = ? AND released_at IS NULL");
  query.bind(lot);
  query.next();
  return query.share("reserved");
}

Share quantity_left(const ShopFile& shop, const KeptLot& lot) {
  Query query(shop,
              "SELECT coalesce(sum(quantity_ppm), 0) AS used FROM consumable_use WHERE lot_id = ?");
  query.bind(lot.id);
  query.next();
  return lot.quantity.value_or(Share()) - query.share("used") - quantity_reserved(shop, lot.id);
}

}  // namespace tangmark::db
