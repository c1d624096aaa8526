// SPDX-License-Identifier: MIT
#include "db/listing/stock_rows.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

constexpr const char* piece_statement = R"sql(
SELECT p.tag, l.number AS lot, b.number AS billet, parent.tag AS parent, l.grade, p.mark, p.state, p.place,
  p.note, p.length_nm, p.width_nm, p.thickness_nm, p.diameter_nm, p.mass_ug,
  (SELECT sum(r.length_nm) FROM reservation r WHERE r.piece_id = p.id AND r.released_at IS NULL) AS reserved_nm,
  (SELECT group_concat(i.title, ', ') FROM reservation r JOIN item i ON i.id = r.item_id
     WHERE r.piece_id = p.id AND r.released_at IS NULL) AS reserved_for,
  (SELECT group_concat(bl.number, ', ') FROM blade bl WHERE bl.piece_id = p.id) AS blade
FROM piece p
LEFT JOIN lot l ON l.id = p.lot_id
LEFT JOIN billet b ON b.id = p.billet_id
LEFT JOIN piece parent ON parent.id = p.parent_id
)sql";

PieceRow piece_of(const Query& query) {
  PieceRow row;
  row.tag = query.text("tag");
  row.lot = query.maybe_integer("lot");
  row.billet = query.maybe_integer("billet");
  row.parent = query.text("parent");
  row.grade = query.text("grade");
  row.mark = query.text("mark");
  row.state = query.text("state");
  row.place = query.text("place");
  row.note = query.text("note");
  row.length = query.maybe_length("length_nm");
  row.width = query.maybe_length("width_nm");
  row.thickness = query.maybe_length("thickness_nm");
  row.diameter = query.maybe_length("diameter_nm");
  row.mass = query.mass("mass_ug");
  row.reserved = query.maybe_length("reserved_nm");
  row.reserved_for = query.text("reserved_for");
  row.blade = query.text("blade");
  return row;
}

}  // namespace

std::vector<LotRow> lot_rows(const ShopFile& shop) {
  std::vector<LotRow> rows;
  Query query(shop, R"sql(
SELECT l.number, l.kind, l.name, l.supplier, l.grade, l.document, l.melt_number, cu.name AS owner, l.species,
  l.unit, l.condition, l.analysis, l.thickness_nm, l.width_nm, l.diameter_nm, l.mark_matched,
  l.returned_at,
  l.received_at, l.quantity_ppm, l.floor_ppm, l.expires_on, l.price_minor, l.currency,
  (SELECT count(*) FROM piece p WHERE p.lot_id = l.id AND p.state = 'on hand') AS pieces,
  (SELECT coalesce(sum(p.mass_ug), 0) FROM piece p WHERE p.lot_id = l.id AND p.state = 'on hand') AS on_hand_ug,
  (SELECT coalesce(sum(p.length_nm), 0) FROM piece p WHERE p.lot_id = l.id AND p.state = 'on hand') AS length_nm,
  (SELECT coalesce(sum(r.length_nm), 0) FROM reservation r JOIN piece p ON p.id = r.piece_id
     WHERE p.lot_id = l.id AND r.released_at IS NULL) AS reserved_nm,
  (SELECT coalesce(sum(u.quantity_ppm), 0) FROM consumable_use u WHERE u.lot_id = l.id) AS used_ppm
FROM lot l LEFT JOIN customer cu ON cu.id = l.owner_id
ORDER BY l.kind <> 'steel', l.number DESC)sql");
  while (query.next()) {
    LotRow row;
    row.number = query.integer("number");
    row.kind = query.text("kind");
    row.name = query.text("name");
    row.supplier = query.text("supplier");
    row.grade = query.text("grade");
    row.document = query.text("document");
    row.melt_number = query.text("melt_number");
    row.owner = query.text("owner");
    row.species = query.text("species");
    row.unit = query.text("unit");
    row.condition = query.text("condition");
    row.analysis = query.text("analysis");
    row.thickness = query.maybe_length("thickness_nm");
    row.width = query.maybe_length("width_nm");
    row.diameter = query.maybe_length("diameter_nm");
    row.mark_matched = query.yes("mark_matched");
    row.returned = !query.is_null("returned_at");
    row.received_at = query.instant("received_at");
    row.pieces_on_hand = query.integer("pieces");
    row.on_hand = query.mass("on_hand_ug");
    row.length_on_hand = query.length("length_nm");
    row.length_reserved = query.length("reserved_nm");
    row.bought = query.maybe_share("quantity_ppm");
    row.used = query.maybe_share("used_ppm");
    row.floor = query.maybe_share("floor_ppm");
    row.expires_on = query.maybe_date("expires_on");
    row.price = query.money("price_minor", "currency");
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<PieceRow> pieces_of_lot(const ShopFile& shop, std::int64_t lot_number) {
  std::vector<PieceRow> rows;
  Query query(shop, std::string(piece_statement) + "WHERE l.number = ? ORDER BY p.id");
  query.bind(lot_number);
  while (query.next()) rows.push_back(piece_of(query));
  return rows;
}

std::vector<PieceRow> all_pieces(const ShopFile& shop) {
  std::vector<PieceRow> rows;
  Query query(shop, std::string(piece_statement) + "ORDER BY p.state <> 'on hand', p.id DESC");
  while (query.next()) rows.push_back(piece_of(query));
  return rows;
}

std::vector<BilletRow> billet_rows(const ShopFile& shop) {
  std::vector<BilletRow> rows;
  Query query(shop, R"sql(
SELECT number, kind, name, made_by, pattern, layers, finished_at, scrapped_at, started_at
FROM billet ORDER BY number DESC)sql");
  while (query.next()) {
    rows.push_back({query.integer("number"), query.text("kind"), query.text("name"),
                    query.text("made_by"), query.text("pattern"), query.maybe_integer("layers"),
                    !query.is_null("finished_at"), !query.is_null("scrapped_at"),
                    query.instant("started_at")});
  }
  return rows;
}

std::vector<StageRow> stage_rows(const ShopFile& shop, std::int64_t billet_number) {
  std::vector<StageRow> rows;
  Query query(shop, R"sql(
SELECT w.number, w.at, w.operation, w.note, w.mass_in_ug, w.mass_out_ug, w.crop_ug, w.gap_ug
FROM weld_stage w JOIN billet b ON b.id = w.billet_id WHERE b.number = ? ORDER BY w.number)sql");
  query.bind(billet_number);
  while (query.next()) {
    rows.push_back({query.integer("number"), query.instant("at"), query.text("operation"),
                    query.text("note"), query.mass("mass_in_ug"), query.mass("mass_out_ug"),
                    query.mass("crop_ug"), query.mass("gap_ug")});
  }
  return rows;
}

std::vector<FamilyRow> family_rows(const ShopFile& shop) {
  std::vector<FamilyRow> rows;
  Query query(shop, R"sql(
SELECT 'lot' AS kind, CAST(l.number AS TEXT) AS "from", 'piece' AS to_kind, p.tag AS "to"
  FROM piece p JOIN lot l ON l.id = p.lot_id WHERE p.parent_id IS NULL
UNION ALL
SELECT 'piece', parent.tag, 'piece', p.tag FROM piece p JOIN piece parent ON parent.id = p.parent_id
UNION ALL
SELECT 'piece', p.tag, 'billet', CAST(b.number AS TEXT)
  FROM billet_part bp JOIN piece p ON p.id = bp.piece_id JOIN billet b ON b.id = bp.billet_id
UNION ALL
SELECT 'billet', CAST(b.number AS TEXT), 'piece', p.tag
  FROM piece p JOIN billet b ON b.id = p.billet_id WHERE p.parent_id IS NULL
UNION ALL
SELECT 'piece', p.tag, 'blade', CAST(bl.number AS TEXT) FROM blade bl JOIN piece p ON p.id = bl.piece_id)sql");
  while (query.next()) {
    rows.push_back(
        {query.text("kind"), query.text("from"), query.text("to_kind"), query.text("to")});
  }
  return rows;
}

}  // namespace tangmark::db
