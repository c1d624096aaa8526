// SPDX-License-Identifier: MIT
#include "db/store/operation_store.h"

#include <fmt/format.h>

#include "db/row.h"
#include "domain/blade/operation.h"
#include "domain/measure/utf8.h"

namespace tangmark::db {

std::vector<ShopOperation> all_operations(const ShopFile& shop) {
  std::vector<ShopOperation> operations;
  for (const blade::TradeOperation& known : blade::trade_operations())
    operations.push_back({std::string(known.name), known.hot, known.after_temper});
  Query query(shop, "SELECT name, hot FROM own_operation ORDER BY name");
  while (query.next()) operations.push_back({query.text("name"), query.yes("hot"), false});
  return operations;
}

Outcome<ShopOperation> operation_named(const ShopFile& shop, std::string_view text,
                                       std::string_view field) {
  std::string wanted = folded(text);
  if (wanted == "normalise") wanted = "normalize";
  for (ShopOperation& known : all_operations(shop))
    if (folded(known.name) == wanted) return std::move(known);
  return Problem{
      std::string(field), fmt::format("\"{}\" is no operation of the trade or of this shop.", text),
      "Use words such as forge, harden, temper, finish grind, or add it with add_operation."};
}

}  // namespace tangmark::db
