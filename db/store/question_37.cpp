// SPDX-License-Identifier: MIT
#include <array>
#include <map>

#include "db/row.h"
#include "db/store/lot_store.h"
#include "db/store/piece_costs.h"
#include "db/store/piece_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

constexpr std::array<std::string_view, 4> ages{"under 3 months", "3 to 12 months", "1 to 3 years",
                                               "over 3 years"};

std::size_t age_of(Instant received, Instant now) {
  const auto days = (now - received).count() / 86'400;
  return days < 91 ? 0 : days < 365 ? 1 : days < 3 * 365 ? 2 : 3;
}

struct OnRack {
  std::int64_t pieces = 0;
  Mass mass;
  Money worth;
};
using Rack = std::map<std::pair<std::size_t, std::string>, OnRack>;

void add_pieces(const ShopFile& shop, const commission::ShopSettings& settings, Instant now,
                Rack& rack, std::int64_t& unknown) {
  Query query(shop, R"(
SELECT piece.id, coalesce(lot.received_at, piece.made_at) AS since,
  coalesce(lot.grade, CASE WHEN piece.billet_id IS NULL THEN 'not identified' ELSE 'billets made here' END) AS what
FROM piece LEFT JOIN lot ON lot.id = piece.lot_id
WHERE piece.state = 'on hand' AND lot.owner_id IS NULL ORDER BY piece.id)");
  while (query.next()) {
    const auto piece = load_piece(shop, query.id<stock::PieceId>("id"));
    const auto worth = cost_of_piece(shop, *piece, piece->mass, settings);
    if (!worth) ++unknown;
    OnRack& sum = rack.try_emplace({age_of(query.instant("since"), now), query.text("what")},
                                   OnRack{0, Mass(), Money(0, settings.currency)})
                      .first->second;
    ++sum.pieces;
    sum.mass = sum.mass + piece->mass;
    sum.worth += worth.value_or(Money(0, settings.currency));
  }
}

// What is left of a lot bought by quantity: handles, belts, gas, oil.
void add_shelves(const ShopFile& shop, const commission::ShopSettings& settings, Instant now,
                 Rack& rack) {
  Query query(shop, R"(
SELECT kind, received_at, price_minor, currency, quantity_ppm AS bought, quantity_ppm - coalesce(
  (SELECT sum(quantity_ppm) FROM consumable_use WHERE lot_id = lot.id), 0) AS left_ppm
FROM lot WHERE quantity_ppm > 0 AND owner_id IS NULL AND returned_at IS NULL ORDER BY id)");
  while (query.next()) {
    const Money price = query.money("price_minor", "currency");
    if (query.integer("left_ppm") <= 0 || price.currency() != settings.currency) continue;
    OnRack& sum = rack.try_emplace({age_of(query.instant("received_at"), now), query.text("kind")},
                                   OnRack{0, Mass(), Money(0, settings.currency)})
                      .first->second;
    ++sum.pieces;
    sum.worth += scaled_half_even(price, query.integer("left_ppm"), query.integer("bought"));
  }
}

Outcome<Answer> answer_37(const ShopFile& shop, const Given&, Instant now) {
  const auto settings = load_settings(shop);
  Rack rack;
  std::int64_t unknown = 0;
  add_pieces(shop, settings, now, rack, unknown);
  add_shelves(shop, settings, now, rack);
  Answer answer{"What money lies on the rack, by age?",
                {},
                {"Age", "What", "Pieces or lots", "Mass", "Worth at cost"},
                {}};
  Money all(0, settings.currency);
  std::array<Money, ages.size()> by_age;
  by_age.fill(Money(0, settings.currency));
  for (const auto& [key, sum] : rack) {
    all += sum.worth;
    by_age[key.first] += sum.worth;
    answer.rows.push_back({std::string(ages[key.first]), key.second, std::to_string(sum.pieces),
                           to_text(sum.mass, settings.mass_unit), amount_text(sum.worth)});
  }
  answer.sentences.push_back(to_text(all) + " lies on the rack and the shelves, at what it cost.");
  for (std::size_t i = 0; i < ages.size(); ++i)
    if (!by_age[i].is_zero())
      answer.sentences.push_back(std::string(ages[i]) + ": " + to_text(by_age[i]) + ".");
  if (unknown > 0)
    answer.sentences.push_back(std::to_string(unknown) +
                               " pieces have no price on record and count as nothing.");
  return answer;
}

}  // namespace

const Question question_37{37, "What money lies on the rack, by age?", {}, answer_37};

}  // namespace tangmark::db
