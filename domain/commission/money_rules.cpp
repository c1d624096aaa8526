// SPDX-License-Identifier: MIT
#include "domain/commission/money_rules.h"

#include <fmt/format.h>

namespace tangmark::commission {

Catch balance_unpaid(const Account& account) {
  if (account.owed() <= Money(0, account.owed().currency())) return std::nullopt;
  return Caught{
      20, Weight::ask, "commission",
      fmt::format("{} of {} is not paid.", to_text(account.owed()), to_text(account.total())),
      "Take the balance first."};
}

Catch deposit_missing(const Account& account) {
  if (account.deposit_is_in()) return std::nullopt;
  return Caught{20, Weight::ask, "item",
                fmt::format("The deposit of {} has not come: {} is in.",
                            to_text(account.deposit_due), to_text(account.received)),
                "Cut nothing before the deposit is in."};
}

Catch invoice_issued_already(std::optional<std::int64_t> issued_number,
                             std::optional<std::int64_t> corrects_number) {
  if (!issued_number || issued_number == corrects_number) return std::nullopt;
  return Caught{
      20, Weight::stop, "corrects",
      fmt::format("Invoice {} was issued for this commission already.", *issued_number),
      fmt::format("An issued invoice is never edited: name {} as the one corrected, and a "
                  "correction is issued.",
                  *issued_number)};
}

Catch changed_after_invoice(std::optional<std::int64_t> issued_number) {
  if (!issued_number) return std::nullopt;
  return Caught{
      20, Weight::remark, "item",
      fmt::format("Invoice {} is already out and does not know of this change.", *issued_number),
      fmt::format("Issue a correction of invoice {}.", *issued_number)};
}

}  // namespace tangmark::commission
