// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/account.h"
#include "domain/commission/commission.h"
#include "domain/commission/invoice.h"
#include "domain/commission/payment.h"

namespace tangmark::db {

std::optional<commission::KeptPayment> find_payment(const ShopFile& shop, std::int64_t number);
/// Payments of a commission, oldest first.
std::vector<commission::KeptPayment> payments_of(const ShopFile& shop,
                                                 commission::CommissionId commission);
commission::PaymentId insert_payment(const ShopFile& shop, const commission::Payment& payment);

std::optional<commission::KeptInvoice> find_invoice(const ShopFile& shop, std::int64_t number);
/// Issued papers of a commission, oldest first.
std::vector<commission::KeptInvoice> invoices_of(const ShopFile& shop,
                                                 commission::CommissionId commission);
/// The newest invoice (balance or correction) of a commission, which the next one must correct;
/// none when it was taken back by a credit note.
std::optional<commission::KeptInvoice> standing_invoice(const ShopFile& shop,
                                                        commission::CommissionId commission);
commission::InvoiceId insert_invoice(const ShopFile& shop, const commission::Invoice& invoice);

/// Where a commission stands with its money.
commission::Account account(const ShopFile& shop, const commission::KeptCommission& commission);

/// Where every commission stands, the newest first: for lists.
struct CommissionMoney {
  commission::KeptCommission commission;
  commission::Account account;
};
std::vector<CommissionMoney> commissions_with_money(const ShopFile& shop);

/// Money held for work that is not delivered, in the shop's currency; other currencies are summed
/// apart. Empty when none is held.
std::vector<Money> money_held(const std::vector<CommissionMoney>& commissions);

/// A balance somebody owes, since the day the invoice went out, or else the knife was ready.
struct OwedBalance {
  commission::KeptCommission commission;
  Money owed;
  std::optional<CalendarDate> since;
  std::optional<int> days;
};
/// Balances invoiced, ready or delivered and not paid; the oldest first.
std::vector<OwedBalance> owed_balances(const ShopFile& shop, const Zone& zone, Instant now);
/// Accepted commissions whose deposit has not come, the oldest first.
std::vector<CommissionMoney> deposits_awaited(const ShopFile& shop);

}  // namespace tangmark::db
