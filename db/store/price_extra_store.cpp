// SPDX-License-Identifier: MIT
#include "db/store/price_extra_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

PriceExtra read(const Query& row) {
  return {row.word<ExtraKind>("kind"), row.maybe_id<ModelId>("model_id"), row.text("name"),
          row.money("price_minor", "currency")};
}

}  // namespace

void insert_price_extra(const ShopFile& shop, const PriceExtra& extra, CalendarDate since) {
  std::vector<std::int64_t> before;
  {
    Query query(shop,
                "SELECT id FROM price_extra WHERE kind = ? AND lower(name) = lower(?) "
                "AND coalesce(model_id, 0) = ? AND retired_on IS NULL");
    query.bind(word_of(extra.kind)).bind(extra.name).bind(extra.model ? extra.model->row() : 0);
    while (query.next()) before.push_back(query.integer("id"));
  }
  for (const std::int64_t id : before) Row("price_extra").set("retired_on", since).update(shop, id);
  Row("price_extra")
      .set("model_id", extra.model)
      .set_word("kind", extra.kind)
      .set("name", extra.name)
      .set("price_minor", extra.price)
      .set("currency", extra.price.currency().code())
      .set("since", since)
      .insert(shop);
}

std::optional<PriceExtra> price_extra(const ShopFile& shop, ExtraKind kind, std::string_view name,
                                      std::optional<ModelId> model) {
  Query query(shop,
              "SELECT * FROM price_extra WHERE kind = ? AND lower(name) = lower(?) "
              "AND (model_id IS NULL OR model_id = ?) AND retired_on IS NULL "
              "ORDER BY model_id IS NULL, id DESC LIMIT 1");
  query.bind(word_of(kind)).bind(name).bind(model ? model->row() : std::int64_t{0});
  if (!query.next()) return std::nullopt;
  return read(query);
}

std::vector<PriceExtra> price_extras(const ShopFile& shop) {
  Query query(shop,
              "SELECT * FROM price_extra WHERE retired_on IS NULL ORDER BY kind DESC, name, id");
  std::vector<PriceExtra> all;
  while (query.next()) all.push_back(read(query));
  return all;
}

std::vector<ItemOption> options_of_item(const ShopFile& shop, ItemId item) {
  Query query(shop,
              "SELECT * FROM item_option WHERE item_id = ? AND taken_off_at IS NULL ORDER BY id");
  query.bind(item);
  std::vector<ItemOption> all;
  while (query.next())
    all.push_back(
        {query.integer("id"), query.text("name"), query.money("price_minor", "currency")});
  return all;
}

void insert_item_option(const ShopFile& shop, ItemId item, const std::string& name, Money price) {
  Row("item_option")
      .set("item_id", item)
      .set("name", name)
      .set("price_minor", price)
      .set("currency", price.currency().code())
      .insert(shop);
}

void take_option_off(const ShopFile& shop, std::int64_t option, Instant at) {
  Row("item_option").set("taken_off_at", at).update(shop, option);
}

}  // namespace tangmark::db
