// SPDX-License-Identifier: MIT
#include "db/store/blade_siblings.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/family_tree.h"

namespace tangmark::db {
namespace {

using namespace blade;

class Gathered {
 public:
  Gathered(const ShopFile& shop, const KeptBlade& of) : shop_(shop), of_(of) {}

  void add(BladeId id, const std::string& shares) {
    if (id == of_.id) return;
    const bool there = std::any_of(siblings.begin(), siblings.end(), [&](const Sibling& s) {
      return s.blade.id == id && s.shares == shares;
    });
    if (there) return;
    if (auto blade = load_blade(shop_, id)) siblings.push_back({std::move(*blade), shares});
  }

  std::vector<Sibling> siblings;

 private:
  const ShopFile& shop_;
  const KeptBlade& of_;
};

void add_by_firing(const ShopFile& shop, const KeptBlade& blade, Gathered& all) {
  Query query(shop, R"(
SELECT DISTINCT other.blade_id, firing.number FROM firing_blade AS mine
JOIN firing ON firing.id = mine.firing_id AND firing.state IN('running', 'done')
JOIN firing_blade AS other ON other.firing_id = firing.id WHERE mine.blade_id = ?
UNION SELECT DISTINCT other.blade_id, firing.number FROM log_entry AS mine
JOIN firing ON firing.id = mine.firing_id JOIN log_entry AS other ON other.firing_id = mine.firing_id
WHERE mine.blade_id = ? ORDER BY 2, 1)");
  query.bind(blade.id).bind(blade.id);
  while (query.next()) all.add(query.id<BladeId>("blade_id"), "firing " + query.text("number"));
}

void add_by_bath(const ShopFile& shop, const KeptBlade& blade, Gathered& all) {
  Query query(shop, R"(
SELECT DISTINCT other.blade_id, bath.name FROM log_entry AS mine JOIN bath ON bath.id = mine.bath_id
JOIN log_entry AS other ON other.bath_id = mine.bath_id
  AND abs(julianday(other.started_at) - julianday(mine.started_at)) <= 7
WHERE mine.blade_id = ? ORDER BY 1)");
  query.bind(blade.id);
  while (query.next()) all.add(query.id<BladeId>("blade_id"), query.text("name") + ", same week");
}

void add_by_steel(const ShopFile& shop, const KeptBlade& blade, Gathered& all) {
  if (!blade.piece) return;
  const Ancestors from = ancestors_of(shop, *blade.piece);
  for (const stock::KeptLot& lot : from.lots)
    for (const BladeOfPiece& other : descendants_of(shop, lot.id).blades)
      all.add(other.id, "lot " + std::to_string(lot.number));
  for (const stock::KeptBillet& billet : from.billets) {
    Query query(shop,
                "SELECT blade.id FROM blade JOIN piece ON piece.id = blade.piece_id WHERE "
                "piece.billet_id = ?");
    query.bind(billet.id);
    while (query.next())
      all.add(query.id<BladeId>("id"), "billet " + std::to_string(billet.number));
  }
}

}  // namespace

std::vector<Sibling> siblings_of(const ShopFile& shop, const KeptBlade& blade) {
  Gathered all(shop, blade);
  add_by_firing(shop, blade, all);
  add_by_bath(shop, blade, all);
  add_by_steel(shop, blade, all);
  return std::move(all.siblings);
}

}  // namespace tangmark::db
