// SPDX-License-Identifier: MIT
#include "db/store/label_stock_store.h"

#include "db/row.h"

namespace tangmark::db {

std::optional<stock::LabelStock> label_stock(const ShopFile& shop) {
  Query q(shop, "SELECT * FROM label_stock ORDER BY id DESC LIMIT 1");
  if (!q.next()) return std::nullopt;
  return stock::LabelStock{q.text("name"),
                           q.length("sheet_width_nm"),
                           q.length("sheet_height_nm"),
                           static_cast<std::size_t>(q.integer("across")),
                           static_cast<std::size_t>(q.integer("down")),
                           q.length("left_nm"),
                           q.length("top_nm"),
                           q.length("width_nm"),
                           q.length("height_nm"),
                           q.length("pitch_across_nm"),
                           q.length("pitch_down_nm")};
}

void store_label_stock(const ShopFile& shop, const stock::LabelStock& stock) {
  Row row("label_stock");
  row.set("name", stock.name)
      .set("sheet_width_nm", stock.sheet_width)
      .set("sheet_height_nm", stock.sheet_height);
  row.set("across", static_cast<std::int64_t>(stock.across))
      .set("down", static_cast<std::int64_t>(stock.down));
  row.set("left_nm", stock.left)
      .set("top_nm", stock.top)
      .set("width_nm", stock.width)
      .set("height_nm", stock.height);
  row.set("pitch_across_nm", stock.pitch_across).set("pitch_down_nm", stock.pitch_down);
  row.insert(shop);
}

}  // namespace tangmark::db
