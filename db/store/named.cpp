// SPDX-License-Identifier: MIT
#include "db/store/named.h"

#include <fmt/format.h>

#include <charconv>

#include "db/row.h"
#include "db/store/bath_store.h"
#include "db/store/billet_store.h"
#include "db/store/commission_store.h"
#include "db/store/customer_store.h"
#include "db/store/item_store.h"
#include "db/store/lot_store.h"
#include "db/store/model_store.h"
#include "db/store/piece_store.h"

namespace tangmark::db {
namespace {

using namespace commission;
using namespace stock;

Problem unknown(std::string_view kind, std::string_view text, std::string_view field) {
  return {std::string(field), fmt::format("There is no {} {}.", kind, text),
          fmt::format("Give the {} of one that is in the shop.",
                      kind == "piece" ? "tag" : "number or name")};
}

template <class T, class Find>
Outcome<T> by_number(std::string_view kind, std::string_view text, std::string_view field,
                     Find find) {
  const auto number = number_named(text, field);
  if (!number) return number.problem();
  if (std::optional<T> found = find(*number)) return std::move(*found);
  return unknown(kind, text, field);
}

template <class T>
Outcome<T> found_or(std::optional<T> found, std::string_view kind, std::string_view text,
                    std::string_view field) {
  if (found) return std::move(*found);
  return unknown(kind, text, field);
}

}  // namespace

Outcome<std::int64_t> number_named(std::string_view text, std::string_view field) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error == std::errc() && end == text.data() + text.size() && number > 0) return number;
  return Problem{std::string(field), fmt::format("\"{}\" is not a number.", text),
                 "Write the number, such as 12."};
}

Outcome<KeptCommission> commission_named(const ShopFile& shop, std::string_view text,
                                         std::string_view field) {
  return by_number<KeptCommission>("commission", text, field,
                                   [&](std::int64_t n) { return find_commission(shop, n); });
}

Outcome<KeptItem> item_named(const ShopFile& shop, std::string_view text, std::string_view field) {
  return by_number<KeptItem>("item", text, field,
                             [&](std::int64_t n) { return load_item(shop, ItemId{n}); });
}

Outcome<KeptCustomer> customer_named(const ShopFile& shop, std::string_view text,
                                     std::string_view field) {
  if (number_named(text, field))
    return by_number<KeptCustomer>("customer", text, field, [&](std::int64_t n) {
      return load_customer(shop, CustomerId{n});
    });
  auto named = customers_named(shop, text);
  if (named.size() == 1) return std::move(named.front());
  if (named.empty()) return unknown("customer", text, field);
  return Problem{std::string(field), fmt::format("{} customers are named {}.", named.size(), text),
                 fmt::format("Give the number, such as {}.", named.front().id.row())};
}

Outcome<KeptModel> model_named(const ShopFile& shop, std::string_view text,
                               std::string_view field) {
  return found_or(find_model(shop, text), "model", text, field);
}

Outcome<KeptLot> lot_named(const ShopFile& shop, std::string_view text, std::string_view field) {
  return by_number<KeptLot>("lot", text, field, [&](std::int64_t n) { return find_lot(shop, n); });
}

Outcome<KeptPiece> piece_named(const ShopFile& shop, std::string_view text,
                               std::string_view field) {
  return found_or(find_piece(shop, text), "piece", text, field);
}

Outcome<KeptBillet> billet_named(const ShopFile& shop, std::string_view text,
                                 std::string_view field) {
  return by_number<KeptBillet>("billet", text, field,
                               [&](std::int64_t n) { return find_billet(shop, n); });
}

Outcome<KeptBath> bath_named(const ShopFile& shop, std::string_view text, std::string_view field) {
  return found_or(find_bath(shop, text), "bath", text, field);
}

Outcome<blade::BladeId> blade_id_named(const ShopFile& shop, std::string_view text,
                                       std::string_view field) {
  const auto number = number_named(text, field);
  if (!number) return number.problem();
  Query query(shop, "SELECT id FROM blade WHERE number = ?");
  query.bind(*number);
  if (query.next()) return query.id<blade::BladeId>("id");
  return unknown("blade", text, field);
}

}  // namespace tangmark::db
