// SPDX-License-Identifier: MIT
#include "db/store/piece_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace stock;

KeptPiece piece_from(const Query& row) {
  Piece piece;
  piece.tag = row.text("tag");
  piece.lot = row.maybe_id<LotId>("lot_id");
  piece.billet = row.maybe_id<BilletId>("billet_id");
  piece.parent = row.maybe_id<PieceId>("parent_id");
  piece.cut = row.maybe_id<CutId>("cut_id");
  piece.length = row.maybe_length("length_nm");
  piece.width = row.maybe_length("width_nm");
  piece.thickness = row.maybe_length("thickness_nm");
  piece.diameter = row.maybe_length("diameter_nm");
  piece.mass = row.mass("mass_ug");
  piece.mark = row.word<PieceMark>("mark");
  piece.state = row.word<PieceState>("state");
  piece.place = row.maybe_text("place");
  piece.made_at = row.instant("made_at");
  piece.note = row.maybe_text("note");
  return {row.id<PieceId>("id"), std::move(piece)};
}

KeptCut cut_from(const Query& row) {
  Cut cut{.piece = row.id<PieceId>("piece_id"),
          .at = row.instant("at"),
          .kerf = row.length("kerf_nm"),
          .mass_before = row.mass("mass_before_ug"),
          .mass_after = row.mass("mass_after_ug"),
          .swarf = row.mass("swarf_ug"),
          .gap = row.mass("gap_ug"),
          .mark_went_to = row.word<MarkWentTo>("mark_went_to")};
  return {row.id<CutId>("id"), std::move(cut)};
}

std::vector<KeptCut> cuts_of(Query query) {
  std::vector<KeptCut> cuts;
  while (query.next()) cuts.push_back(cut_from(query));
  return cuts;
}

// "A" ... "Z", "AA", "AB" ...: the letters of the n-th part, from 0.
std::string letters_of_part(std::size_t n) {
  std::string letters;
  for (++n; n > 0; n = (n - 1) / 26)
    letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
  return letters;
}

}  // namespace

std::optional<KeptPiece> load_piece(const ShopFile& shop, PieceId id) {
  Query query(shop, "SELECT * FROM piece WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), piece_from);
}

std::optional<KeptPiece> find_piece(const ShopFile& shop, std::string_view tag) {
  Query query(shop, "SELECT * FROM piece WHERE tag = ? COLLATE NOCASE");
  query.bind(tag);
  return first_row(std::move(query), piece_from);
}

std::vector<KeptPiece> pieces_on_hand(const ShopFile& shop) {
  return all_rows(Query(shop, "SELECT * FROM piece WHERE state = 'on hand' ORDER BY tag"),
                  piece_from);
}

std::vector<KeptPiece> list_pieces(const ShopFile& shop) {
  return all_rows(Query(shop, "SELECT * FROM piece ORDER BY tag"), piece_from);
}

std::vector<KeptPiece> pieces_of_lot(const ShopFile& shop, LotId lot) {
  Query query(shop, "SELECT * FROM piece WHERE lot_id = ? ORDER BY id");
  query.bind(lot);
  return all_rows(std::move(query), piece_from);
}

std::vector<KeptPiece> pieces_of_billet(const ShopFile& shop, BilletId billet) {
  Query query(shop, "SELECT * FROM piece WHERE billet_id = ? ORDER BY id");
  query.bind(billet);
  return all_rows(std::move(query), piece_from);
}

std::vector<KeptPiece> parts_of_piece(const ShopFile& shop, PieceId parent) {
  Query query(shop, "SELECT * FROM piece WHERE parent_id = ? ORDER BY id");
  query.bind(parent);
  return all_rows(std::move(query), piece_from);
}

std::vector<KeptCut> latest_cuts(const ShopFile& shop, int most) {
  Query query(shop, "SELECT * FROM cut ORDER BY at DESC, id DESC LIMIT ?");
  query.bind(most);
  return cuts_of(std::move(query));
}

std::vector<KeptCut> cuts_of_piece(const ShopFile& shop, PieceId piece) {
  Query query(shop, "SELECT * FROM cut WHERE piece_id = ? ORDER BY id");
  query.bind(piece);
  return cuts_of(std::move(query));
}

PieceId insert_piece(const ShopFile& shop, const Piece& piece) {
  Row row("piece");
  row.set("tag", piece.tag).set("lot_id", piece.lot).set("billet_id", piece.billet);
  row.set("parent_id", piece.parent).set("cut_id", piece.cut).set("length_nm", piece.length);
  row.set("width_nm", piece.width).set("thickness_nm", piece.thickness);
  row.set("diameter_nm", piece.diameter).set("mass_ug", piece.mass).set_word("mark", piece.mark);
  row.set_word("state", piece.state).set("place", piece.place).set("made_at", piece.made_at);
  row.set("note", piece.note);
  return PieceId{row.insert(shop)};
}

CutId insert_cut(const ShopFile& shop, const Cut& cut) {
  Row row("cut");
  row.set("piece_id", cut.piece).set("at", cut.at).set("kerf_nm", cut.kerf);
  row.set("mass_before_ug", cut.mass_before).set("mass_after_ug", cut.mass_after);
  row.set("swarf_ug", cut.swarf).set("gap_ug", cut.gap).set_word("mark_went_to", cut.mark_went_to);
  return CutId{row.insert(shop)};
}

void store_piece_state(const ShopFile& shop, PieceId id, PieceState state) {
  Row("piece").set_word("state", state).update(shop, id.row());
}

std::string next_part_tag(const ShopFile& shop, const KeptPiece& parent) {
  const std::size_t stem_end =
      parent.parent ? parent.tag.find_last_of("0123456789") + 1 : parent.tag.size();
  const std::string stem = parent.tag.substr(0, stem_end);
  std::size_t n = 0;
  std::string tag = stem + letters_of_part(n);
  while (find_piece(shop, tag)) tag = stem + letters_of_part(++n);
  return tag;
}

}  // namespace tangmark::db
