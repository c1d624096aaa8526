// SPDX-License-Identifier: MIT
#include "db/listing/name_rows.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

std::vector<NamedRow> names(const ShopFile& shop, const char* statement) {
  std::vector<NamedRow> rows;
  Query query(shop, statement);
  while (query.next()) rows.push_back({query.text("name"), query.text("words")});
  return rows;
}

}  // namespace

std::vector<NamedRow> bath_names(const ShopFile& shop) {
  return names(shop,
               "SELECT name, medium AS words FROM bath WHERE retired_at IS NULL ORDER BY name");
}

std::vector<NamedRow> model_names(const ShopFile& shop) {
  return names(
      shop, "SELECT name, construction AS words FROM model WHERE retired_on IS NULL ORDER BY name");
}

std::vector<NamedRow> customer_names(const ShopFile& shop) {
  return names(shop,
               "SELECT name, coalesce(contact, '') AS words FROM customer "
               "WHERE erased_at IS NULL ORDER BY name");
}

std::vector<NamedRow> item_names(const ShopFile& shop) {
  return names(shop, R"sql(
SELECT CAST(i.id AS TEXT) AS name, i.title || coalesce(', commission ' || c.number, ', a stock knife') AS words
FROM item i LEFT JOIN commission c ON c.id = i.commission_id
WHERE i.cancelled_on IS NULL AND (c.id IS NULL OR c.state NOT IN ('delivered', 'declined', 'cancelled'))
ORDER BY i.id DESC)sql");
}

std::vector<NamedRow> finding_names(const ShopFile& shop) {
  return names(
      shop,
      "SELECT CAST(f.number AS TEXT) AS name, 'blade ' || b.number || ': ' || f.words AS words "
      "FROM finding f JOIN blade b ON b.id = f.blade_id "
      "ORDER BY f.decision <> 'open', f.number DESC");
}

std::vector<NamedRow> certificate_names(const ShopFile& shop) {
  return names(
      shop,
      "SELECT CAST(c.number AS TEXT) AS name, 'blade ' || b.number || ', issue ' || c.issue "
      "AS words FROM certificate c JOIN blade b ON b.id = c.blade_id "
      "ORDER BY c.number DESC, c.issue DESC");
}

}  // namespace tangmark::db
