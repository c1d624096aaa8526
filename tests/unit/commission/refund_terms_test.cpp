// SPDX-License-Identifier: MIT
#include "domain/commission/refund_terms.h"

#include <catch2/catch.hpp>

#include "domain/commission/delay_letter.h"

using namespace tangmark;
using namespace tangmark::commission;

namespace {

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

}  // namespace

TEST_CASE("what goes back follows the terms agreed, and is never below nothing") {
  CHECK(refund_by(RefundTerms::full, eur(200'00), true, eur(80'00)) == eur(200'00));
  CHECK(refund_by(RefundTerms::less_material, eur(200'00), false, eur(80'00)) == eur(200'00));
  CHECK(refund_by(RefundTerms::less_material, eur(200'00), true, eur(80'00)) == eur(120'00));
  CHECK(refund_by(RefundTerms::less_material, eur(50'00), true, eur(80'00)) == eur(0));
  CHECK(refund_by(RefundTerms::until_work, eur(200'00), false, eur(0)) == eur(200'00));
  CHECK(refund_by(RefundTerms::until_work, eur(200'00), true, eur(0)) == eur(0));
  CHECK(refund_by(RefundTerms::none, eur(200'00), false, eur(0)) == eur(0));
  CHECK(refund_by(RefundTerms::full, eur(-5), false, eur(0)) == eur(0));
}

TEST_CASE("a letter of delay says both days, the reason and the way out, and asks for an answer") {
  DelayLetter letter;
  letter.commission = 27;
  letter.buyer = "Ida Holm";
  letter.promised = date::year{2026} / 11 / 23;
  letter.new_day = date::year{2026} / 12 / 9;
  letter.refund_rule = "In full until work begins.";
  const std::string text = delay_letter(letter);
  for (const char* words : {"Ida Holm", "commission 27", "23 Nov 2026", "9 Dec 2026",
                            "In full until work begins.", "silence"}) {
    INFO(words);
    CHECK(text.find(words) != std::string::npos);
  }
  letter.buyer.clear();
  CHECK(delay_letter(letter).starts_with("Dear customer,"));
}
