// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/commission/commission.h"
#include "domain/commission/construction.h"
#include "domain/commission/invoice.h"
#include "domain/commission/model.h"
#include "domain/commission/payment.h"
#include "domain/commission/promise.h"
#include "domain/commission/quote.h"

using namespace tangmark;
using namespace tangmark::commission;

TEMPLATE_TEST_CASE("every word of commissions reads back to its value", "", CommissionState,
                   Construction, UseKind, QuoteAnswer, QuoteSide, PaymentKind, InvoiceKind, Consent,
                   TaxMode) {
  for (const auto& [value, word] : trade_words<TestType>) {
    const auto read = of_word<TestType>(word, "word");
    REQUIRE(read);
    CHECK(*read == value);
  }
  CHECK_FALSE(of_word<TestType>("no such word", "kind"));
}
