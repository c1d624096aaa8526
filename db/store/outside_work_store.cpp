// SPDX-License-Identifier: MIT
#include "db/store/outside_work_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::vector<KeptOutsideWork> all_of(Query query) {
  std::vector<KeptOutsideWork> works;
  while (query.next()) {
    OutsideWork work{.item = query.maybe_id<ItemId>("item_id"),
                     .blade = query.maybe_id<blade::BladeId>("blade_id"),
                     .operation = query.text("operation"),
                     .who = query.text("who"),
                     .sent_at = query.instant("sent_at"),
                     .due_back = query.maybe_date("due_back"),
                     .back_at = query.maybe_instant("back_at"),
                     .their_words = query.maybe_text("their_words"),
                     .cost = query.maybe_money("cost_minor", "currency")};
    works.push_back({query.id<OutsideWorkId>("id"), std::move(work)});
  }
  return works;
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
  auto works = all_of(std::move(query));
  if (works.empty()) return std::nullopt;
  return works.front();
}

std::vector<KeptOutsideWork> outside_now(const ShopFile& shop) {
  return all_of(Query(shop,
                      "SELECT * FROM outside_work WHERE back_at IS NULL "
                      "ORDER BY due_back IS NULL, due_back, sent_at, id"));
}

std::vector<KeptOutsideWork> outside_work_of_item(const ShopFile& shop, ItemId item) {
  Query query(shop, "SELECT * FROM outside_work WHERE item_id = ? ORDER BY sent_at, id");
  query.bind(item);
  return all_of(std::move(query));
}

std::vector<KeptOutsideWork> outside_work_of_blade(const ShopFile& shop, blade::BladeId blade) {
  Query query(shop, "SELECT * FROM outside_work WHERE blade_id = ? ORDER BY sent_at, id");
  query.bind(blade);
  return all_of(std::move(query));
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
