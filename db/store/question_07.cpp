// SPDX-License-Identifier: MIT
#include <set>

#include "db/row.h"
#include "db/store/family_tree.h"
#include "db/store/named.h"
#include "db/store/question_list.h"

namespace tangmark::db {
namespace {

std::string words_of(const stock::KeptLot& lot) {
  std::string words = "Lot " + std::to_string(lot.number) + ": " + lot.name;
  if (lot.supplier) words += " from " + *lot.supplier;
  if (lot.melt_number) words += ", melt number " + *lot.melt_number;
  return words + ", document: " + std::string(word_of(lot.document)) + ".";
}

void add_trail(const Ancestors& trail, Answer& answer) {
  std::string pieces;
  for (const auto& piece : trail.pieces) pieces += (pieces.empty() ? "" : ", from ") + piece.tag;
  answer.sentences.push_back("It was made from piece " + pieces + ".");
  for (const auto& billet : trail.billets)
    answer.sentences.push_back("Billet " + std::to_string(billet.number) + " (" +
                               std::string(word_of(billet.kind)) + ") was made by " +
                               billet.made_by + ".");
  for (const auto& lot : trail.lots) answer.sentences.push_back(words_of(lot));
  for (const auto& piece : trail.pieces)
    if (piece.mark == stock::PieceMark::identity_gap) {
      answer.sentences.push_back("Piece " + piece.tag +
                                 " is an identity gap: what it came from cannot be proved.");
      return;
    }
}

// Everything else of the same lots, each once.
void add_siblings(const ShopFile& shop, const Ancestors& trail, blade::BladeId self,
                  Answer& answer) {
  std::set<std::int64_t> blades, pieces;
  for (const auto& lot : trail.lots) {
    const Descendants others = descendants_of(shop, lot.id);
    for (const BladeOfPiece& other : others.blades)
      if (other.id != self && blades.insert(other.number).second)
        answer.rows.push_back(
            {"blade", std::to_string(other.number), other.title, std::to_string(lot.number)});
    for (const auto& piece : others.pieces)
      if (piece.state == stock::PieceState::on_hand && pieces.insert(piece.id.row()).second)
        answer.rows.push_back({"piece on hand", piece.tag, to_text(piece.mass, MassUnit::gram),
                               std::to_string(lot.number)});
  }
}

Outcome<Answer> answer_07(const ShopFile& shop, const Given& given, Instant) {
  const auto blade = given_thing(shop, given, "blade", blade_id_named);
  if (!blade) return blade.problems();
  Query query(shop, "SELECT number, piece_id FROM blade WHERE id = ?");
  query.bind(*blade);
  query.next();
  Answer answer{"Which bar did blade " + query.text("number") + " come from?",
                {},
                {"What", "Name", "Which", "Lot"},
                {}};
  const auto piece = query.maybe_id<stock::PieceId>("piece_id");
  if (!piece) {
    answer.sentences.push_back("No piece is on record for it: its steel is not identified.");
    return answer;
  }
  const Ancestors trail = ancestors_of(shop, *piece);
  add_trail(trail, answer);
  add_siblings(shop, trail, *blade, answer);
  answer.sentences.push_back(answer.rows.empty() ? "Nothing else came from there."
                                                 : "The table shows what else came from there.");
  return answer;
}

}  // namespace

const Question question_07{7,
                           "Which bar did this blade come from, and what else came from that bar?",
                           {{"blade", "Blade", FieldKind::blade, true, "23"}},
                           answer_07};

}  // namespace tangmark::db
