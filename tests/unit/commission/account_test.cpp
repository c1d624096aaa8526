// SPDX-License-Identifier: MIT
#include "domain/commission/account.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::commission;

namespace {

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

Quote a_quote(TaxMode mode = TaxMode::none, Share rate = {}) {
  Quote quote{.commission = CommissionId{1}, .made_at = {}, .valid_until = {}};
  quote.total = eur(500'00);
  quote.deposit = eur(200'00);
  quote.tax_mode = mode;
  quote.tax_rate = rate;
  return quote;
}

Payment a_payment(PaymentKind kind, std::int64_t minor) {
  Payment payment{.commission = CommissionId{1}, .at = {}};
  payment.kind = kind;
  payment.amount = eur(minor);
  return payment;
}

ItemChange a_change(std::int64_t minor) {
  ItemChange change{.item = ItemId{1}, .at = {}, .words = "longer", .currency = Currency()};
  change.price = eur(minor);
  return change;
}

}  // namespace

TEST_CASE("what is owed is the agreed total with its changes, less what was received") {
  const auto account =
      account_of(Currency(), a_quote(), {a_change(40'00)},
                 {a_payment(PaymentKind::deposit, 200'00), a_payment(PaymentKind::refund, -50'00)});
  CHECK(account.total() == eur(540'00));
  CHECK(account.received == eur(150'00));
  CHECK(account.owed() == eur(390'00));
  CHECK_FALSE(account.deposit_is_in());
}

TEST_CASE("tax is added to a change only when the quote's tax is exclusive") {
  const auto exclusive = account_of(Currency(), a_quote(TaxMode::exclusive, Share::percent(20)),
                                    {a_change(40'00)}, {});
  CHECK(exclusive.changes == eur(48'00));
  const auto inclusive = account_of(Currency(), a_quote(TaxMode::inclusive, Share::percent(20)),
                                    {a_change(40'00)}, {});
  CHECK(inclusive.changes == eur(40'00));
}

TEST_CASE("without an accepted quote nothing is agreed and money is still counted") {
  const auto account = account_of(Currency(), std::nullopt, {a_change(40'00)},
                                  {a_payment(PaymentKind::deposit, 100'00)});
  CHECK(account.total() == eur(0));
  CHECK(account.owed() == eur(-100'00));
}

TEST_CASE("money is held until the work is delivered") {
  const auto account =
      account_of(Currency(), a_quote(), {}, {a_payment(PaymentKind::deposit, 200'00)});
  CHECK(held_for_unfinished_work(CommissionState::accepted, account) == eur(200'00));
  CHECK(held_for_unfinished_work(CommissionState::ready, account) == eur(200'00));
  CHECK(held_for_unfinished_work(CommissionState::cancelled, account) == eur(200'00));
  CHECK(held_for_unfinished_work(CommissionState::delivered, account) == eur(0));
}
