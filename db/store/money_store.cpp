// SPDX-License-Identifier: MIT
#include "db/store/money_store.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/item_store.h"
#include "db/store/quote_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

KeptPayment payment_from(const Query& row) {
  Payment payment{.number = row.integer("number"),
                  .commission = row.id<CommissionId>("commission_id"),
                  .kind = row.word<PaymentKind>("kind"),
                  .amount = row.money("amount_minor", "currency"),
                  .rate = row.maybe_text("rate"),
                  .shop_rate = row.maybe_text("shop_rate"),
                  .at = row.instant("at"),
                  .method = row.maybe_text("method"),
                  .corrects = row.maybe_id<PaymentId>("corrects_id"),
                  .note = row.maybe_text("note")};
  return {row.id<PaymentId>("id"), std::move(payment)};
}

KeptInvoice invoice_from(const Query& row) {
  Invoice invoice{.number = row.integer("number"),
                  .commission = row.id<CommissionId>("commission_id"),
                  .kind = row.word<InvoiceKind>("kind"),
                  .issued_at = row.instant("issued_at"),
                  .total = row.money("total_minor", "currency"),
                  .corrects = row.maybe_id<InvoiceId>("corrects_id"),
                  .shop_rate = row.maybe_text("shop_rate"),
                  .body = row.text("body")};
  return {row.id<InvoiceId>("id"), std::move(invoice)};
}

std::optional<Instant> since_when(const ShopFile& shop, const KeptCommission& commission) {
  if (const auto invoice = standing_invoice(shop, commission.id)) return invoice->issued_at;
  if (commission.delivered_on) return Instant(date::sys_days(*commission.delivered_on));
  return std::nullopt;
}

}  // namespace

std::optional<KeptPayment> find_payment(const ShopFile& shop, std::int64_t number) {
  Query query(shop, "SELECT * FROM payment WHERE number = ?");
  query.bind(number);
  if (!query.next()) return std::nullopt;
  return payment_from(query);
}

std::vector<KeptPayment> payments_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM payment WHERE commission_id = ? ORDER BY at, id");
  query.bind(commission);
  std::vector<KeptPayment> payments;
  while (query.next()) payments.push_back(payment_from(query));
  return payments;
}

PaymentId insert_payment(const ShopFile& shop, const Payment& payment) {
  Row row("payment");
  row.set("number", payment.number).set("commission_id", payment.commission);
  row.set_word("kind", payment.kind).set("amount_minor", payment.amount);
  row.set("currency", payment.amount.currency().code()).set("rate", payment.rate);
  row.set("at", payment.at).set("method", payment.method).set("corrects_id", payment.corrects);
  row.set("note", payment.note).set("shop_rate", payment.shop_rate);
  return PaymentId{row.insert(shop)};
}

std::optional<KeptInvoice> find_invoice(const ShopFile& shop, std::int64_t number) {
  Query query(shop, "SELECT * FROM invoice WHERE number = ?");
  query.bind(number);
  return first_row(std::move(query), invoice_from);
}

std::vector<KeptInvoice> invoices_of(const ShopFile& shop, CommissionId commission) {
  Query query(shop, "SELECT * FROM invoice WHERE commission_id = ? ORDER BY number");
  query.bind(commission);
  std::vector<KeptInvoice> invoices;
  while (query.next()) invoices.push_back(invoice_from(query));
  return invoices;
}

std::optional<KeptInvoice> standing_invoice(const ShopFile& shop, CommissionId commission) {
  Query query(
      shop,
      "SELECT * FROM invoice WHERE commission_id = ? AND kind IN('balance invoice', 'correction') "
      "ORDER BY number DESC LIMIT 1");
  query.bind(commission);
  auto newest = first_row(std::move(query), invoice_from);
  // A credit note takes the invoice it names back, and asks for nothing itself.
  if (newest && newest->total < Money(0, newest->total.currency())) return std::nullopt;
  return newest;
}

InvoiceId insert_invoice(const ShopFile& shop, const Invoice& invoice) {
  Row row("invoice");
  row.set("number", invoice.number).set("commission_id", invoice.commission);
  row.set_word("kind", invoice.kind).set("issued_at", invoice.issued_at);
  row.set("total_minor", invoice.total).set("currency", invoice.total.currency().code());
  row.set("corrects_id", invoice.corrects).set("body", invoice.body);
  row.set("shop_rate", invoice.shop_rate);
  return InvoiceId{row.insert(shop)};
}

Account account(const ShopFile& shop, const KeptCommission& commission) {
  std::optional<Quote> accepted;
  if (auto quote = accepted_quote(shop, commission.id)) accepted = std::move(*quote);
  std::vector<Payment> payments;
  for (KeptPayment& payment : payments_of(shop, commission.id))
    payments.push_back(std::move(payment));
  return account_of(commission.currency, accepted, changes_of_commission(shop, commission.id),
                    payments);
}

std::vector<CommissionMoney> commissions_with_money(const ShopFile& shop) {
  std::vector<CommissionMoney> all;
  for (KeptCommission& commission : list_commissions(shop)) {
    Account standing = account(shop, commission);
    all.push_back({std::move(commission), standing});
  }
  return all;
}

std::vector<Money> money_held(const std::vector<CommissionMoney>& commissions) {
  std::vector<Money> sums;
  for (const CommissionMoney& one : commissions) {
    const Money held = held_for_unfinished_work(one.commission.state, one.account);
    if (held.is_zero()) continue;
    const auto same = std::find_if(sums.begin(), sums.end(), [&](const Money& sum) {
      return sum.currency() == held.currency();
    });
    if (same == sums.end())
      sums.push_back(held);
    else
      *same += held;
  }
  return sums;
}

std::vector<OwedBalance> owed_balances(const ShopFile& shop, const Zone& zone, Instant now) {
  std::vector<OwedBalance> owed;
  for (const CommissionMoney& one : commissions_with_money(shop)) {
    const bool due =
        one.commission.state == CommissionState::ready ||
        one.commission.state == CommissionState::delivered ||
        (is_under_way(one.commission.state) && standing_invoice(shop, one.commission.id));
    const Money open = one.account.owed();
    if (!due || open <= Money(0, open.currency())) continue;
    OwedBalance balance{one.commission, open, std::nullopt, std::nullopt};
    if (const auto since = since_when(shop, one.commission)) {
      balance.since = zone.date_of(*since);
      const auto days = date::sys_days(zone.date_of(now)) - date::sys_days(*balance.since);
      balance.days = static_cast<int>(days.count());
    }
    owed.push_back(std::move(balance));
  }
  std::stable_sort(owed.begin(), owed.end(), [](const OwedBalance& a, const OwedBalance& b) {
    return a.days.value_or(0) > b.days.value_or(0);
  });
  return owed;
}

std::vector<CommissionMoney> deposits_awaited(const ShopFile& shop) {
  std::vector<CommissionMoney> awaited;
  for (CommissionMoney& one : commissions_with_money(shop))
    if (is_under_way(one.commission.state) && !one.account.deposit_is_in())
      awaited.push_back(std::move(one));
  std::reverse(awaited.begin(), awaited.end());
  return awaited;
}

}  // namespace tangmark::db
