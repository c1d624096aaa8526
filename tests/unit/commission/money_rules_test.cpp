// SPDX-License-Identifier: MIT
#include "domain/commission/money_rules.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::commission;

namespace {

Money eur(std::int64_t minor) { return {minor, Currency()}; }
Account with_received(std::int64_t minor) { return {eur(500'00), eur(0), eur(200'00), eur(minor)}; }

}  // namespace

TEST_CASE("catch 20: a balance unpaid at delivery asks") {
  const auto caught = balance_unpaid(with_received(200'00));
  REQUIRE(caught);
  CHECK(caught->number == 20);
  CHECK(caught->weight == Weight::ask);
  CHECK_FALSE(balance_unpaid(with_received(500'00)));
  CHECK_FALSE(balance_unpaid(with_received(501'00)));
}

TEST_CASE("catch 20: a deposit missing at the first cut asks") {
  const auto caught = deposit_missing(with_received(199'99));
  REQUIRE(caught);
  CHECK(caught->weight == Weight::ask);
  CHECK_FALSE(deposit_missing(with_received(200'00)));
}

TEST_CASE("catch 20: an invoice once issued is corrected by another paper, never edited") {
  CHECK_FALSE(invoice_issued_already(std::nullopt, std::nullopt));
  CHECK_FALSE(invoice_issued_already(12, 12));
  const auto again = invoice_issued_already(12, std::nullopt);
  REQUIRE(again);
  CHECK(again->weight == Weight::stop);
  CHECK(again->remedy.find("name 12 as the one corrected") != std::string::npos);
  CHECK(invoice_issued_already(12, 11));
}

TEST_CASE("catch 20: a change after the invoice says that the invoice does not know of it") {
  CHECK_FALSE(changed_after_invoice(std::nullopt));
  CHECK(changed_after_invoice(12));
}
