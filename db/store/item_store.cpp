// SPDX-License-Identifier: MIT
#include "db/store/item_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

KeptItem item_from(const Query& row) {
  Item item;
  item.commission = row.maybe_id<CommissionId>("commission_id");
  item.position = row.integer("position");
  item.model = row.maybe_id<ModelId>("model_id");
  item.title = row.text("title");
  item.description = row.maybe_text("description");
  item.construction = row.word<Construction>("construction");
  item.grade = row.maybe_text("grade");
  item.blade_length = row.length("blade_length_nm");
  item.hand = row.maybe_text("hand");
  item.handle = row.maybe_text("handle");
  item.handle_lot = row.maybe_id<stock::LotId>("handle_lot_id");
  item.sheath = row.maybe_text("sheath");
  item.hardness_aim = row.maybe_text("hardness_aim");
  item.dishwasher = row.yes("dishwasher");
  item.asking = row.maybe_money("asking_minor", "currency");
  item.currency = row.currency("currency");
  item.made_to_specification = row.yes("made_to_specification");
  item.handle_fitted_at = row.maybe_instant("handle_fitted_at");
  item.cancelled_on = row.maybe_date("cancelled_on");
  return {row.id<ItemId>("id"), std::move(item)};
}

Row row_of(const Item& item) {
  Row row("item");
  row.set("commission_id", item.commission)
      .set("position", item.position)
      .set("model_id", item.model);
  row.set("title", item.title).set("description", item.description);
  row.set_word("construction", item.construction).set("grade", item.grade);
  row.set("blade_length_nm", item.blade_length).set("hand", item.hand).set("handle", item.handle);
  row.set("handle_lot_id", item.handle_lot).set("sheath", item.sheath);
  row.set("hardness_aim", item.hardness_aim).set("dishwasher", item.dishwasher);
  row.set("asking_minor", item.asking).set("currency", item.currency.code());
  row.set("made_to_specification", item.made_to_specification);
  row.set("handle_fitted_at", item.handle_fitted_at).set("cancelled_on", item.cancelled_on);
  return row;
}

KeptItemChange change_from(const Query& row) {
  ItemChange change{.item = row.id<ItemId>("item_id"),
                    .number = row.integer("number"),
                    .at = row.instant("at"),
                    .words = row.text("words"),
                    .price = row.maybe_money("price_minor", "currency"),
                    .currency = row.currency("currency")};
  return {row.id<ItemChangeId>("id"), std::move(change)};
}

std::vector<KeptHold> holds_from(Query query) {
  std::vector<KeptHold> holds;
  while (query.next())
    holds.push_back({query.id<HoldId>("id"), Hold{.item = query.id<ItemId>("item_id"),
                                                  .what = query.text("what"),
                                                  .since = query.instant("since"),
                                                  .until = query.maybe_date("until"),
                                                  .ended_at = query.maybe_instant("ended_at")}});
  return holds;
}

}  // namespace

std::optional<KeptItem> load_item(const ShopFile& shop, ItemId id) {
  Query query(shop, "SELECT * FROM item WHERE id = ?");
  query.bind(id);
  if (!query.next()) return std::nullopt;
  return item_from(query);
}

std::vector<KeptItem> items_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM item WHERE commission_id = ? ORDER BY position, id");
  query.bind(commission);
  return all_rows(std::move(query), item_from);
}

std::vector<KeptItem> stock_knives(const ShopFile& shop) {
  return all_rows(Query(shop, "SELECT * FROM item WHERE commission_id IS NULL ORDER BY id"),
                  item_from);
}

std::vector<KeptItem> open_items(const ShopFile& shop) {
  return all_rows(Query(shop, R"(
SELECT item.* FROM item LEFT JOIN commission ON commission.id = item.commission_id
WHERE item.cancelled_on IS NULL
  AND (commission.state IN('accepted', 'in work', 'ready')
       OR (item.commission_id IS NULL AND NOT EXISTS(SELECT 1 FROM blade
           WHERE blade.item_id = item.id AND blade.finished_at IS NOT NULL
           AND blade.scrapped_at IS NULL)))
ORDER BY item.id)"),
                  item_from);
}

ItemId insert_item(const ShopFile& shop, const Item& item) {
  return ItemId{row_of(item).insert(shop)};
}

void store_item(const ShopFile& shop, const KeptItem& item) {
  row_of(item).update(shop, item.id.row());
}

std::int64_t next_item_position(const ShopFile& shop, std::optional<CommissionId> commission) {
  Query query(shop,
              "SELECT coalesce(max(position), 0) + 1 AS next FROM item WHERE commission_id IS " +
                  (commission ? std::to_string(commission->row()) : std::string("NULL")));
  query.next();
  return query.integer("next");
}

std::vector<KeptItemChange> changes_of_item(const ShopFile& shop, ItemId item) {
  Query query(shop, "SELECT * FROM item_change WHERE item_id = ? ORDER BY number");
  query.bind(item);
  std::vector<KeptItemChange> changes;
  while (query.next()) changes.push_back(change_from(query));
  return changes;
}

std::vector<ItemChange> changes_of_commission(const ShopFile& shop, CommissionId commission) {
  Query query(shop,
              "SELECT item_change.* FROM item_change JOIN item ON item.id = item_change.item_id "
              "WHERE item.commission_id = ? ORDER BY item_change.id");
  query.bind(commission);
  std::vector<ItemChange> changes;
  while (query.next()) changes.push_back(change_from(query));
  return changes;
}

ItemChangeId insert_item_change(const ShopFile& shop, const ItemChange& change) {
  Row row("item_change");
  row.set("item_id", change.item).set("number", change.number).set("at", change.at);
  row.set("words", change.words)
      .set("price_minor", change.price)
      .set("currency", change.currency.code());
  return ItemChangeId{row.insert(shop)};
}

std::optional<KeptHold> load_hold(const ShopFile& shop, HoldId id) {
  Query query(shop, "SELECT * FROM hold WHERE id = ?");
  query.bind(id);
  auto holds = holds_from(std::move(query));
  if (holds.empty()) return std::nullopt;
  return holds.front();
}

std::vector<KeptHold> holds_of_item(const ShopFile& shop, ItemId item) {
  Query query(shop, "SELECT * FROM hold WHERE item_id = ? AND ended_at IS NULL ORDER BY since, id");
  query.bind(item);
  return holds_from(std::move(query));
}

std::vector<KeptHold> standing_holds(const ShopFile& shop) {
  return holds_from(Query(shop, "SELECT * FROM hold WHERE ended_at IS NULL ORDER BY since, id"));
}

HoldId insert_hold(const ShopFile& shop, const Hold& hold) {
  Row row("hold");
  row.set("item_id", hold.item).set("what", hold.what).set("since", hold.since);
  row.set("until", hold.until).set("ended_at", hold.ended_at);
  return HoldId{row.insert(shop)};
}

void store_end_of_hold(const ShopFile& shop, HoldId id, Instant at) {
  Row("hold").set("ended_at", at).update(shop, id.row());
}

}  // namespace tangmark::db
