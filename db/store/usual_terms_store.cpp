// SPDX-License-Identifier: MIT
#include "db/store/usual_terms_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using commission::RefundTerms;
constexpr const char* name = "refund_terms";

}  // namespace

RefundTerms usual_refund_terms(const ShopFile& shop) {
  Query query(shop, "SELECT value FROM setting WHERE name = ?");
  query.bind(name);
  if (!query.next()) return RefundTerms::less_material;
  return query.word<RefundTerms>("value");
}

void store_usual_refund_terms(const ShopFile& shop, RefundTerms terms) {
  Query query(shop, "SELECT id FROM setting WHERE name = ?");
  query.bind(name);
  if (query.next())
    Row("setting").set_word("value", terms).update(shop, query.integer("id"));
  else
    Row("setting").set("name", name).set_word("value", terms).insert(shop);
}

}  // namespace tangmark::db
