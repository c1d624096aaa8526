// SPDX-License-Identifier: MIT
#include "db/store/customer_store.h"

#include "db/digest.h"
#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

KeptCustomer customer_from(const Query& row) {
  Customer customer{.name = row.maybe_text("name"),
                    .contact = row.maybe_text("contact"),
                    .address = row.maybe_text("address"),
                    .note = row.maybe_text("note"),
                    .country = row.maybe_text("country"),
                    .added_at = row.instant("added_at"),
                    .erased_at = row.maybe_instant("erased_at")};
  return {row.id<CustomerId>("id"), std::move(customer)};
}

}  // namespace

std::optional<KeptCustomer> load_customer(const ShopFile& shop, CustomerId id) {
  Query query(shop, "SELECT * FROM customer WHERE id = ?");
  query.bind(id);
  if (!query.next()) return std::nullopt;
  return customer_from(query);
}

std::vector<KeptCustomer> customers_named(const ShopFile& shop, std::string_view name) {
  Query query(shop, "SELECT * FROM customer WHERE name = ? COLLATE NOCASE ORDER BY id");
  query.bind(name);
  return all_rows(std::move(query), customer_from);
}

std::vector<KeptCustomer> list_customers(const ShopFile& shop) {
  return all_rows(Query(shop, "SELECT * FROM customer ORDER BY id DESC"), customer_from);
}

CustomerId insert_customer(const ShopFile& shop, const Customer& customer) {
  Row row("customer");
  row.set("name", customer.name).set("contact", customer.contact).set("address", customer.address);
  row.set("note", customer.note).set_bytes("salt", random_salt()).set("country", customer.country);
  row.set("added_at", customer.added_at).set("erased_at", customer.erased_at);
  return CustomerId{row.insert(shop)};
}

void erase_person(const ShopFile& shop, CustomerId id, Instant at) {
  Row row("customer");
  row.set_null("name").set_null("contact").set_null("address").set_null("note").set_null("salt");
  row.set("erased_at", at).update(shop, id.row());
}

}  // namespace tangmark::db
