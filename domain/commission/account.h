// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/commission/commission.h"
#include "domain/commission/item.h"
#include "domain/commission/payment.h"
#include "domain/commission/quote.h"
#include "domain/measure/money.h"

namespace tangmark::commission {

/// Where a commission stands with its money. All amounts are in the commission's currency.
struct Account {
  Money agreed;       ///< total of the accepted quote with tax
  Money changes;      ///< priced changes agreed since, with tax
  Money deposit_due;  ///< of the accepted quote
  Money received;     ///< all payments, refunds and corrections taken off
  Money total() const { return agreed + changes; }
  Money owed() const { return total() - received; }  ///< negative: the shop owes the buyer
  bool deposit_is_in() const { return received >= deposit_due; }
  friend bool operator==(const Account&, const Account&) = default;
};

/// A change's price is what the buyer was told: tax is added when the quote's tax is exclusive.
/// Without an accepted quote nothing is agreed, and changes count as asked for only.
Account account_of(Currency currency, const std::optional<Quote>& accepted,
                   const std::vector<ItemChange>& changes, const std::vector<Payment>& payments);

/// Money received for work that is not delivered: a debt to the buyer until it is.
Money held_for_unfinished_work(CommissionState state, const Account& account);

}  // namespace tangmark::commission
