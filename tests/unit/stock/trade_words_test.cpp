// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/stock/bath.h"
#include "domain/stock/billet.h"
#include "domain/stock/lot.h"
#include "domain/stock/piece.h"

using namespace tangmark;
using namespace tangmark::stock;

TEMPLATE_TEST_CASE("every word of stock reads back to its value", "", LotKind, Section,
                   SupplyDocument, IdentifiedBy, BoughtAs, PieceMark, PieceState, MarkWentTo,
                   BilletKind, BilletRole, StageWork, BathUse) {
  for (const auto& [value, word] : trade_words<TestType>) {
    const auto read = of_word<TestType>(word, "word");
    REQUIRE(read);
    CHECK(*read == value);
    CHECK(word_of(value) == word);
  }
  const auto unknown = of_word<TestType>("no such word", "kind");
  REQUIRE_FALSE(unknown);
  CHECK(unknown.problem().field == "kind");
}
