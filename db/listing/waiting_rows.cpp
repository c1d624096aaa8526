// SPDX-License-Identifier: MIT
#include "db/listing/waiting_rows.h"

#include "db/row.h"

namespace tangmark::db {

std::vector<HoldRow> open_holds(const ShopFile& shop, std::int64_t commission) {
  std::vector<HoldRow> rows;
  Query query(shop, R"sql(
SELECT h.id, i.title, h.what, h.since, h.until FROM hold h
JOIN item i ON i.id = h.item_id JOIN commission c ON c.id = i.commission_id
WHERE c.number = ? AND h.ended_at IS NULL ORDER BY h.since, h.id)sql");
  query.bind(commission);
  while (query.next()) {
    rows.push_back({query.integer("id"), query.text("title"), query.text("what"),
                    query.instant("since"), query.maybe_date("until")});
  }
  return rows;
}

std::vector<OutsideRow> outside_rows(const ShopFile& shop, std::int64_t commission) {
  std::vector<OutsideRow> rows;
  Query query(shop, R"sql(
SELECT o.id, o.operation, o.who, o.sent_at, o.due_back, o.back_at FROM outside_work o
LEFT JOIN blade b ON b.id = o.blade_id
JOIN item i ON i.id = coalesce(o.item_id, b.item_id)
JOIN commission c ON c.id = i.commission_id
WHERE c.number = ? ORDER BY o.sent_at, o.id)sql");
  query.bind(commission);
  while (query.next()) {
    rows.push_back({query.integer("id"), query.text("operation"), query.text("who"),
                    query.instant("sent_at"), query.maybe_date("due_back"),
                    query.maybe_instant("back_at")});
  }
  return rows;
}

std::vector<ReservationRow> open_reservations(const ShopFile& shop, std::int64_t commission) {
  std::vector<ReservationRow> rows;
  Query query(shop, R"sql(
SELECT r.id, i.title, coalesce(p.tag, 'lot ' || l.number) AS material FROM reservation r
JOIN item i ON i.id = r.item_id JOIN commission c ON c.id = i.commission_id
LEFT JOIN piece p ON p.id = r.piece_id LEFT JOIN lot l ON l.id = r.lot_id
WHERE c.number = ? AND r.released_at IS NULL ORDER BY r.at, r.id)sql");
  query.bind(commission);
  while (query.next()) {
    rows.push_back({query.integer("id"), query.text("title"), query.text("material")});
  }
  return rows;
}

}  // namespace tangmark::db
