// SPDX-License-Identifier: MIT
#include "db/store/outside_work_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

KeptOutsideWork outside_work_from(const Query& row) {
  return {row.id<OutsideWorkId>("id"),
          OutsideWork{.item = row.maybe_id<ItemId>("item_id"),
                      .blade = row.maybe_id<blade::BladeId>("blade_id"),
                      .operation = row.text("operation"),
                      .who = row.text("who"),
                      .sent_at = row.instant("sent_at"),
                      .due_back = row.maybe_date("due_back"),
                      .back_at = row.maybe_instant("back_at"),
                      .their_words = row.maybe_text("their_words"),
                      .cost = row.maybe_money("cost_minor", "currency")}};
}

Row row_of(const OutsideWork& work) {
  Row row("outside_work");
  row.set("item_id", work.item).set("blade_id", work.blade).set("operation", work.operation);
  row.set("who", work.who).set("sent_at", work.sent_at).set("due_back", work.due_back);
  row.set("back_at", work.back_at)
      .set("their_words", work.their_words)
      .set("cost_minor", work.cost);
  if (work.cost) row.set("currency", work.cost->currency().code());
  return row;
}

}  // namespace

std::optional<KeptOutsideWork> load_outside_work(const ShopFile& shop, OutsideWorkId id) {
  Query query(shop, "SELECT * FROM outside_work WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), outside_work_from);
}

std::vector<KeptOutsideWork> outside_now(const ShopFile& shop) {
  return all_rows(Query(shop,
                        "SELECT * FROM outside_work WHERE back_at IS NULL "
                        "ORDER BY due_back IS NULL, due_back, sent_at, id"),
                  outside_work_from);
}

std::vector<KeptOutsideWork> outside_work_of_item(const ShopFile& shop, ItemId item) {
  Query query(shop, "SELECT * FROM outside_work WHERE item_id = ? ORDER BY sent_at, id");
  query.bind(item);
  return all_rows(std::move(query), outside_work_from);
}

std::vector<KeptOutsideWork> outside_work_of_blade(const ShopFile& shop, blade::BladeId blade) {
  Query query(shop, "SELECT * FROM outside_work WHERE blade_id = ? ORDER BY sent_at, id");
  query.bind(blade);
  return all_rows(std::move(query), outside_work_from);
}

OutsideWorkId insert_outside_work(const ShopFile& shop, const OutsideWork& work) {
  return OutsideWorkId{row_of(work).insert(shop)};
}

void store_outside_work(const ShopFile& shop, const KeptOutsideWork& work) {
  row_of(work).update(shop, work.id.row());
}

std::vector<KeptAftercare> aftercare_of_blade(const ShopFile& shop, blade::BladeId blade) {
  Query query(shop, "SELECT * FROM aftercare WHERE blade_id = ? ORDER BY at, id");
  query.bind(blade);
  std::vector<KeptAftercare> all;
  while (query.next())
    all.push_back(
        {query.id<AftercareId>("id"), Aftercare{.blade = blade,
                                                .at = query.instant("at"),
                                                .complaint = query.text("complaint"),
                                                .condition = query.maybe_text("condition"),
                                                .cause = query.maybe_text("cause"),
                                                .work = query.maybe_text("work"),
                                                .hands_on = query.duration("hands_on_s"),
                                                .paid_by = query.maybe_text("paid_by")}});
  return all;
}

AftercareId insert_aftercare(const ShopFile& shop, const Aftercare& aftercare) {
  Row row("aftercare");
  row.set("blade_id", aftercare.blade)
      .set("at", aftercare.at)
      .set("complaint", aftercare.complaint);
  row.set("condition", aftercare.condition)
      .set("cause", aftercare.cause)
      .set("work", aftercare.work);
  row.set("hands_on_s", aftercare.hands_on).set("paid_by", aftercare.paid_by);
  return AftercareId{row.insert(shop)};
}

}  // namespace tangmark::db
