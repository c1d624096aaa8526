// SPDX-License-Identifier: MIT
#include "db/listing/certificate_rows.h"

#include "db/row.h"

namespace tangmark::db {

std::vector<CertificateRow> certificate_rows(const ShopFile& shop) {
  std::vector<CertificateRow> rows;
  Query query(shop, R"sql(
SELECT c.number, c.issue, b.number AS blade, c.issued_at, c.why,
  CASE WHEN c.revoked_at IS NULL THEN '' ELSE coalesce(c.revoked_why, 'revoked') END AS revoked_why
FROM certificate c JOIN blade b ON b.id = c.blade_id ORDER BY c.number DESC, c.issue DESC)sql");
  while (query.next()) {
    rows.push_back({query.integer("number"), query.integer("issue"), query.integer("blade"),
                    query.instant("issued_at"), query.text("why"), query.text("revoked_why")});
  }
  return rows;
}

}  // namespace tangmark::db
