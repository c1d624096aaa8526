// SPDX-License-Identifier: MIT
#include "db/store/commission_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace commission;

KeptCommission commission_from(const Query& row) {
  Commission commission{.customer = row.id<CustomerId>("customer_id"),
                        .opened_at = row.instant("opened_at")};
  commission.number = row.integer("number");
  commission.state = row.word<CommissionState>("state");
  commission.channel = row.maybe_text("channel");
  commission.buyers_words = row.maybe_text("buyers_words");
  commission.budget = row.maybe_money("budget_minor", "currency");
  commission.currency = row.currency("currency");
  commission.wanted_by = row.maybe_date("wanted_by");
  commission.wanted_why = row.maybe_text("wanted_why");
  commission.destination = row.maybe_text("destination");
  commission.reply_by = row.maybe_date("reply_by");
  commission.refund_rule = row.maybe_text("refund_rule");
  commission.specification_confirmed_on = row.maybe_date("specification_confirmed_on");
  commission.accepted_on = row.maybe_date("accepted_on");
  commission.delivered_on = row.maybe_date("delivered_on");
  commission.cancelled_why = row.maybe_text("cancelled_why");
  commission.law_checked_on = row.maybe_date("law_checked_on");
  return {row.id<CommissionId>("id"), std::move(commission)};
}

Row row_of(const Commission& commission) {
  Row row("commission");
  row.set("number", commission.number).set("customer_id", commission.customer);
  row.set_word("state", commission.state).set("opened_at", commission.opened_at);
  row.set("channel", commission.channel).set("buyers_words", commission.buyers_words);
  row.set("budget_minor", commission.budget).set("currency", commission.currency.code());
  row.set("wanted_by", commission.wanted_by).set("wanted_why", commission.wanted_why);
  row.set("destination", commission.destination).set("reply_by", commission.reply_by);
  row.set("refund_rule", commission.refund_rule);
  row.set("specification_confirmed_on", commission.specification_confirmed_on);
  row.set("accepted_on", commission.accepted_on).set("delivered_on", commission.delivered_on);
  row.set("cancelled_why", commission.cancelled_why)
      .set("law_checked_on", commission.law_checked_on);
  return row;
}

}  // namespace

std::optional<KeptCommission> load_commission(const ShopFile& shop, CommissionId id) {
  Query query(shop, "SELECT * FROM commission WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), commission_from);
}

std::optional<KeptCommission> find_commission(const ShopFile& shop, std::int64_t number) {
  Query query(shop, "SELECT * FROM commission WHERE number = ?");
  query.bind(number);
  return first_row(std::move(query), commission_from);
}

std::vector<KeptCommission> list_commissions(const ShopFile& shop) {
  return all_rows(Query(shop, "SELECT * FROM commission ORDER BY number DESC"), commission_from);
}

std::vector<KeptCommission> commissions_of_customer(const ShopFile& shop, CustomerId customer) {
  Query query(shop, "SELECT * FROM commission WHERE customer_id = ? ORDER BY number DESC");
  query.bind(customer);
  return all_rows(std::move(query), commission_from);
}

CommissionId insert_commission(const ShopFile& shop, const Commission& commission) {
  return CommissionId{row_of(commission).insert(shop)};
}

void store_commission(const ShopFile& shop, const KeptCommission& commission) {
  row_of(commission).update(shop, commission.id.row());
}

std::vector<KeptContact> contacts_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM contact WHERE commission_id = ? ORDER BY at, id");
  query.bind(commission);
  std::vector<KeptContact> contacts;
  while (query.next())
    contacts.push_back({query.id<ContactId>("id"), Contact{.commission = commission,
                                                           .at = query.instant("at"),
                                                           .channel = query.maybe_text("channel"),
                                                           .words = query.text("words")}});
  return contacts;
}

ContactId insert_contact(const ShopFile& shop, const Contact& contact) {
  Row row("contact");
  row.set("commission_id", contact.commission)
      .set("at", contact.at)
      .set("channel", contact.channel);
  row.set("words", contact.words);
  return ContactId{row.insert(shop)};
}

CalendarDate last_contact_day(const ShopFile& shop, const KeptCommission& commission,
                              const Zone& zone) {
  Query query(shop, R"(
SELECT max(at) AS latest FROM (
  SELECT at FROM contact WHERE commission_id = ?1
  UNION ALL SELECT sent_at FROM quote WHERE commission_id = ?1
  UNION ALL SELECT at FROM payment WHERE commission_id = ?1
  UNION ALL SELECT made_at FROM promise WHERE commission_id = ?1 AND told IS NOT NULL
  UNION ALL SELECT at FROM delay_notice WHERE commission_id = ?1
  UNION ALL SELECT opened_at FROM commission WHERE id = ?1))");
  query.bind(commission.id);
  query.next();
  return zone.date_of(query.maybe_instant("latest").value_or(commission.opened_at));
}

}  // namespace tangmark::db
