// SPDX-License-Identifier: MIT
#include <map>

#include "db/row.h"
#include "db/store/blade_state.h"
#include "db/store/family_tree.h"
#include "db/store/named.h"
#include "db/store/question_list.h"

namespace tangmark::db {
namespace {

using blade::BladeId;

// Every blade that something touches, and how.
using Touched = std::map<BladeId, std::string>;

void add(Touched& blades, BladeId blade, const std::string& how) {
  std::string& text = blades[blade];
  text += (text.empty() ? "" : ", ") + how;
}

void add_family(const Descendants& family, const std::string& how, Touched& blades,
                Answer& answer) {
  std::string pieces, billets;
  for (const auto& piece : family.pieces)
    if (piece.state == stock::PieceState::on_hand)
      pieces += (pieces.empty() ? "" : ", ") + piece.tag;
  for (const auto& billet : family.billets)
    billets += (billets.empty() ? "" : ", ") + std::to_string(billet.number);
  if (!pieces.empty()) answer.sentences.push_back("Still on the rack: " + pieces + ".");
  if (!billets.empty()) answer.sentences.push_back("It went into billets " + billets + ".");
  for (const auto& blade : family.blades) add(blades, blade.id, how);
}

void add_query(Query& query, const std::string& how, Touched& blades) {
  while (query.next()) add(blades, query.id<BladeId>("blade_id"), how);
}

Outcome<Done> add_firing(const ShopFile& shop, const std::string& text, Touched& blades) {
  const auto number = number_named(text, "firing");
  if (!number) return number.problem();
  Query found(shop, "SELECT id FROM firing WHERE number = ?");
  found.bind(*number);
  if (!found.next())
    return Problem{"firing", "There is no firing " + text + ".", "Give the number of one."};
  const std::int64_t id = found.integer("id");
  Query query(shop, R"(
SELECT blade_id FROM firing_blade WHERE firing_id = ?1
UNION SELECT blade_id FROM log_entry AS entry WHERE firing_id = ?1 AND operation <> 'struck out'
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id))");
  query.bind(id);
  add_query(query, "fired in firing " + text, blades);
  return Done{};
}

// Since a day, when it is given: since the bath was filled anew, for example.
Outcome<Done> add_bath(const ShopFile& shop, const std::string& name,
                       const std::optional<std::string>& since_text, Touched& blades) {
  const auto bath = bath_named(shop, name, "bath");
  if (!bath) return bath.problems();
  std::string since = "0000";
  if (since_text) {
    const auto day = parse_date(*since_text, "since");
    if (!day) return day.problem();
    since = to_stored(*day);
  }
  Query query(shop, R"(
SELECT DISTINCT blade_id FROM log_entry AS entry WHERE bath_id = ? AND started_at >= ?
  AND operation <> 'struck out'
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id))");
  query.bind(bath->id).bind(since);
  add_query(query, "in " + bath->name, blades);
  return Done{};
}

std::string buyer_of(const ShopFile& shop, BladeId blade) {
  Query query(shop, R"(
SELECT commission.number, coalesce(customer.name, '') AS name FROM blade
JOIN item ON item.id = blade.item_id JOIN commission ON commission.id = item.commission_id
JOIN customer ON customer.id = commission.customer_id WHERE blade.id = ?)");
  query.bind(blade);
  return query.next() ? query.text("number") + " " + query.text("name") : "";
}

void add_rows(const ShopFile& shop, const Touched& blades, Instant now, Answer& answer) {
  int delivered = 0;
  for (const auto& [id, how] : blades) {
    const auto record = load_record(shop, id);
    if (!record) continue;
    if (record->blade.delivered_at) ++delivered;
    answer.rows.push_back(
        {std::to_string(record->blade.number), record->blade.title, how,
         record->blade.delivered_at ? "delivered" : blade::state_text(record->state, now),
         buyer_of(shop, id)});
  }
  answer.sentences.push_back(std::to_string(blades.size()) + " blades, " +
                             std::to_string(delivered) + " of them with their buyers.");
}

Outcome<Answer> answer_38(const ShopFile& shop, const Given& given, Instant now) {
  Answer answer{
      "What does this touch?", {}, {"Blade", "Title", "How", "State", "Commission and buyer"}, {}};
  Touched blades;
  if (given_text(given, "lot")) {
    const auto lot = given_thing(shop, given, "lot", lot_named);
    if (!lot) return lot.problems();
    add_family(descendants_of(shop, lot->id), "cut from lot " + std::to_string(lot->number), blades,
               answer);
  }
  if (given_text(given, "piece")) {
    const auto piece = given_thing(shop, given, "piece", piece_named);
    if (!piece) return piece.problems();
    add_family(descendants_of(shop, piece->id), "cut from " + piece->tag, blades, answer);
  }
  if (const auto firing = given_text(given, "firing"))
    if (const auto done = add_firing(shop, *firing, blades); !done) return done.problems();
  if (const auto bath = given_text(given, "bath"))
    if (const auto done = add_bath(shop, *bath, given_text(given, "since"), blades); !done)
      return done.problems();
  if (given.empty())
    return Problem{"lot", "Nothing is named.", "Give lot=, piece=, firing= or bath=."};
  add_rows(shop, blades, now, answer);
  return answer;
}

}  // namespace

const Question question_38{
    38,
    "Recall: what was cut from this bar, fired in this firing, quenched in this bath?",
    {{"lot", "Lot", FieldKind::lot, false, "17"},
     {"piece", "Bar or piece", FieldKind::piece, false, "17-2"},
     {"firing", "Firing", FieldKind::firing, false, "12"},
     {"bath", "Bath", FieldKind::bath, false, "oil tank"},
     {"since", "Bath used since", FieldKind::date, false, "2026-05-01"}},
    answer_38};

}  // namespace tangmark::db
