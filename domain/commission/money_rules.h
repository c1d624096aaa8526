// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>

#include "domain/commission/account.h"
#include "domain/measure/caught.h"

namespace tangmark::commission {

/// Catch 20, at delivery: the balance is not paid. Asks, since a maker may deliver on trust.
Catch balance_unpaid(const Account& account);

/// Catch 20, at the first cut for a commission: the deposit has not come. Asks.
Catch deposit_missing(const Account& account);

/// Catch 20, at issuing an invoice: one of its kind was issued already and this one does not name
/// it as the one it corrects. Issued papers are corrected by another paper.
Catch invoice_issued_already(std::optional<std::int64_t> issued_number,
                             std::optional<std::int64_t> corrects_number);

/// Catch 20, at a change of an item or of money agreed: the balance invoice is already out.
Catch changed_after_invoice(std::optional<std::int64_t> issued_number);

}  // namespace tangmark::commission
