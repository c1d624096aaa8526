// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/share.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// One lot as a list shows it.
struct LotRow {
  std::int64_t number = 0;
  std::string kind, name, supplier, grade, document, melt_number, owner, species, unit, condition;
  std::string analysis;  ///< "C:0.85,Mn:0.71", empty for none
  std::optional<Length> thickness, width, diameter;
  bool mark_matched = false;
  bool returned = false;
  Instant received_at;
  std::int64_t pieces_on_hand = 0;
  Mass on_hand;                          ///< mass of the pieces on hand
  Length length_on_hand;                 ///< of flat and round pieces on hand
  Length length_reserved;
  std::optional<Share> bought, used, floor;  ///< of consumables: whole units in millionths
  std::optional<CalendarDate> expires_on;
  Money price;
};
/// Steel first, then what is used up; newest number first.
std::vector<LotRow> lot_rows(const ShopFile& shop);

/// One piece: a bar, an offcut, a blank, a part of a billet.
struct PieceRow {
  std::string tag;
  std::optional<std::int64_t> lot, billet;  ///< numbers
  std::string parent;                       ///< tag; empty for a bar
  std::string grade, mark, state, place, note;
  std::optional<Length> length, width, thickness, diameter;
  Mass mass;
  std::optional<Length> reserved;
  std::string reserved_for;                 ///< titles of the items it is promised to
  std::string blade;                        ///< number of the blade made of it
};
std::vector<PieceRow> pieces_of_lot(const ShopFile& shop, std::int64_t lot_number);
std::vector<PieceRow> all_pieces(const ShopFile& shop);

struct BilletRow {
  std::int64_t number = 0;
  std::string kind, name, made_by, pattern;
  std::optional<std::int64_t> layers;
  bool finished = false, scrapped = false;
  Instant started_at;
};
std::vector<BilletRow> billet_rows(const ShopFile& shop);

/// One stage of making a billet. What went in is what came out, crop, scale, swarf and the gap.
struct StageRow {
  std::int64_t number = 0;
  Instant at;
  std::string operation, note;
  Mass mass_in, mass_out, crop, gap;
};
std::vector<StageRow> stage_rows(const ShopFile& shop, std::int64_t billet_number);

/// "piece 17-2 went into billet 31": every step from lot to blade, in both directions.
struct FamilyRow {
  std::string kind, from, to_kind, to;
};
std::vector<FamilyRow> family_rows(const ShopFile& shop);

}  // namespace tangmark::db
