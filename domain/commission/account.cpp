// SPDX-License-Identifier: MIT
#include "domain/commission/account.h"

namespace tangmark::commission {

Account account_of(Currency currency, const std::optional<Quote>& accepted,
                   const std::vector<ItemChange>& changes, const std::vector<Payment>& payments) {
  const Money none(0, currency);
  Account account{none, none, none, none};
  for (const Payment& payment : payments) account.received += payment.amount;
  if (!accepted) return account;
  account.agreed = accepted->total;
  account.deposit_due = accepted->deposit;
  for (const ItemChange& change : changes)
    if (change.price) account.changes += *change.price;
  if (accepted->tax_mode == TaxMode::exclusive)
    account.changes += share_of(account.changes, accepted->tax_rate);
  return account;
}

Money held_for_unfinished_work(CommissionState state, const Account& account) {
  const Money none(0, account.received.currency());
  // A cancelled commission's money is owed back, or was kept by the agreed rule; either way the
  // payments say so. A delivered one has earned it.
  if (state == CommissionState::delivered) return none;
  return account.received > none ? account.received : none;
}

}  // namespace tangmark::commission
