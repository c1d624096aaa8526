// SPDX-License-Identifier: MIT
#include "domain/costing/line_change.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::costing;

namespace {

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

// Two hours of grinding at 40.00 and half an hour of hardening, of which 9 in 10 come through; a
// block of 25.00 and half a belt of 8.00.
CostInputs a_hunter() {
  CostInputs inputs;
  inputs.rates = {eur(40'00), Share::percent(50), eur(0)};
  inputs.packing = eur(6'00);
  inputs.shipping = eur(0);
  inputs.terms.rule = FixedPrice{eur(300'00)};
  CostedItem item;
  item.text = "hunter";
  item.operations = {{"rough grind", std::chrono::hours(2), {}, {}},
                     {"harden", std::chrono::minutes(30), {}, {}, Share::percent(90)}};
  item.ingredients = {{"walnut block", BoughtMaterial{{1000, "block"}, eur(25'00)}, 1},
                      {"belt", UsedUp{{500, "belt"}, eur(8'00)}, 0}};
  inputs.items = {item};
  return inputs;
}

Money amount_of(const CostInputs& inputs, const std::string& text) {
  const auto sheet = build_up(inputs);
  REQUIRE(sheet);
  for (const CostLine& line : sheet->lines)
    if (line.text == text) return line.amount;
  FAIL("no line " + text);
  return {};
}

CostInputs changed(const std::string& what, const std::string& to) {
  auto inputs = with_change(a_hunter(), {what, to});
  REQUIRE(inputs);
  return *inputs;
}

}  // namespace

TEST_CASE("a time set by hand is paid at the rate and the loss follows it") {
  CHECK(amount_of(changed("rough grind", "3 h"), "rough grind") == eur(120'00));
  CHECK(amount_of(changed("rough grind", "1.5"), "rough grind") == eur(60'00));
  CHECK(amount_of(changed("rough grind", "90 min"), "rough grind") == eur(60'00));
  // Before the quench 4 + 120 + 20, after the block of 25 at the quench: (4 + 120 + 45) / 9 by
  // hand.
  CHECK(amount_of(changed("rough grind", "3 h"), "Loss") == eur(18'78));
}

TEST_CASE("a line keeps its place when its time is set to nothing") {
  CHECK(amount_of(changed("rough grind", "0 h"), "rough grind") == eur(0));
}

TEST_CASE("a quantity and the price of one are set apart or together") {
  CHECK(amount_of(changed("walnut block", "2"), "walnut block") == eur(50'00));
  CHECK(amount_of(changed("walnut block", "at 31.00"), "walnut block") == eur(31'00));
  CHECK(amount_of(changed("walnut block", "2 at 31.00"), "walnut block") == eur(62'00));
  CHECK(amount_of(changed("belt", "0.75 belt"), "belt") == eur(6'00));
}

TEST_CASE("steel is set by its mass and priced by the kilogram") {
  CostInputs inputs = a_hunter();
  BarCut cut;
  cut.blank_length = Length::millimetres(200);
  cut.section = FlatSection{Length::millimetres(30), Length::millimetres(4)};
  inputs.items[0].ingredients.push_back({"Steel", SteelFromBar{cut, eur(20'00)}, 0});
  const auto by_hand = with_change(inputs, {"Steel", "350 g"});
  REQUIRE(by_hand);
  CHECK(amount_of(*by_hand, "Steel") == eur(7'00));
  const auto dearer = with_change(*by_hand, {"Steel", "at 24.00"});
  REQUIRE(dearer);
  CHECK(amount_of(*dearer, "Steel") == eur(8'40));  // the mass set before stays
}

TEST_CASE("fewer that come through make the loss dearer") {
  // (4 + 80 + 20 + 25) / 0.75 - itself = 43.00 by hand.
  CHECK(amount_of(changed("harden survives", "75 %"), "Loss") == eur(43'00));
  CHECK(amount_of(changed("harden survives", "75"), "Loss") == eur(43'00));
}

TEST_CASE("rates, packing and the fee are set for the whole quote") {
  CHECK(amount_of(changed("Hourly rate", "50.00"), "rough grind") == eur(100'00));
  CHECK(amount_of(changed("Packing", "9.50"), "Packing") == eur(9'50));
  CHECK(amount_of(changed("Payment fee", "2 %"), "Payment fee") == eur(6'00));  // of 300
}

TEST_CASE("a line that no model has is added") {
  CHECK(amount_of(changed("+ Mosaic pin", "2 at 14.00"), "Mosaic pin") == eur(28'00));
}

TEST_CASE("the second line of one name is told apart, and each of several items by its number") {
  CostInputs inputs = a_hunter();
  inputs.items[0].operations.push_back({"rough grind", std::chrono::hours(1), {}, {}});
  auto second = with_change(inputs, {"rough grind (2)", "4 h"});
  REQUIRE(second);
  CHECK(second->items[0].operations[2].hands_on == std::chrono::hours(4));
  inputs.items.push_back(inputs.items[0]);
  auto other = with_change(inputs, {"2. rough grind", "5 h"});
  REQUIRE(other);
  CHECK(other->items[0].operations[0].hands_on == std::chrono::hours(2));
  CHECK(other->items[1].operations[0].hands_on == std::chrono::hours(5));
}

TEST_CASE("every line of the sheet but the loss has a name that a change finds") {
  CostInputs inputs = a_hunter();
  inputs.rates.overhead_per_hour = eur(10'00);
  inputs.terms.fee.of_total = Share::percent(1);
  const auto sheet = build_up(inputs);
  REQUIRE(sheet);
  for (const CostLine& line : sheet->lines) {
    const std::string name = name_of_line(inputs, line);
    CAPTURE(line.text);
    if (line.kind == LineKind::loss) continue;
    CHECK(with_change(inputs, {name, line.kind == LineKind::fee ? "2 %" : "3"}));
  }
}

TEST_CASE("what cannot be set is refused by its words") {
  for (const auto& [what, to] : {std::pair{"no such line", "1"},
                                 {"rough grind", "soon"},
                                 {"rough grind", "-1 h"},
                                 {"walnut block", "at many"},
                                 {"harden survives", "0 %"},
                                 {"harden survives", "120 %"},
                                 {"Packing", "5 USD"},
                                 {"Payment fee", "100 %"}}) {
    CAPTURE(what, to);
    const auto refused = with_change(a_hunter(), {what, to});
    REQUIRE_FALSE(refused);
    CHECK_FALSE(refused.problem().sentence.empty());
  }
}

TEST_CASE("changes are written as lines and read back") {
  const auto changes = parse_changes("rough grind = 2 h; Packing = 6.00", "lines");
  REQUIRE(changes);
  CHECK(*changes == std::vector<LineChange>{{"rough grind", "2 h"}, {"Packing", "6.00"}});
  CHECK(*parse_changes(to_text(*changes), "lines") == *changes);
  CHECK_FALSE(parse_changes("rough grind", "lines"));
}

TEST_CASE("a quote sold abroad stands in the buyer's currency, every line at the recorded rate") {
  CostInputs inputs = a_hunter();
  const Currency usd = *Currency::of("USD");
  inputs.sold_at = ExchangeRate{usd, Currency(), 800'000};  // 1 USD = 0.80 EUR
  inputs.terms.rule = Margin{Share::percent(20)};
  const auto sheet = build_up(inputs);
  REQUIRE(sheet);
  Money sum(0, usd);
  for (const CostLine& line : sheet->lines) sum += line.amount;
  CHECK(sum == sheet->price.cost);
  // 129.00 / 0.9 + 6.00 = 149.33 EUR is 186.67 USD; a fifth of the price on top: 233.33.
  CHECK(sheet->price.cost.minor() == Approx(186'67).margin(1));
  CHECK(sheet->price.shown.minor() == Approx(233'33).margin(2));
  // A figure typed without a currency is in the one the quote shows: 50 USD of packing are 40 EUR.
  const auto packed = with_change(inputs, {"Packing", "50.00"});
  REQUIRE(packed);
  CHECK(packed->packing == eur(40'00));
}
