// SPDX-License-Identifier: MIT
#include "domain/costing/build_up.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::costing;
using namespace std::chrono_literals;

namespace {

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

FiringUse a_firing_for_two() {
  ExpectedFiring f;
  f.kind = FiringKind::harden;
  f.at = Temperature::celsius(800);
  f.load = 5min;
  f.soak = 10min;
  f.quench_each = 4min;
  f.blades = 2;
  return *firing_use({Temperature::celsius(20), 600, 2400, 1000}, f);
}

/// A chef's knife small enough to work out by hand; the figures stand beside the checks.
CostInputs a_chefs_knife() {
  CostedItem knife;
  knife.text = "Chef's knife 240 mm";
  knife.operations = {{"Profile", 90min},
                      {"Harden", 30min, 60min, {}, Share::percent(90)},
                      {"Finish grind", 3h},
                      {"Handle", 2h, {}, 24h}};
  BarCut cut;
  cut.blank_length = Length::millimetres(300);
  cut.section = FlatSection{Length::millimetres(25), Length::millimetres(4)};
  cut.yield = Share::percent(80);
  knife.ingredients = {{"Steel", SteelFromBar{cut, eur(20'00)}, 0},
                       {"Quench oil", BathWear{eur(150'00), 200}, 1},
                       {"Harden firing", FiringPart{a_firing_for_two(), eur(30)}, 1},
                       {"Belts", BeltWear{eur(8'00), 5, 4}, 2},
                       {"Handle block", BoughtMaterial{{}, eur(45'00)}, 3},
                       {"Sheath", MadeElsewhere{eur(80'00)}, 3}};
  CostInputs in;
  in.rates = {eur(40'00), Share::percent(50), eur(12'00)};
  in.items = {knife};
  in.packing = eur(6'00);
  in.shipping = eur(15'00);
  in.terms.rule = Margin{Share::percent(20)};
  in.terms.step = eur(10'00);
  in.terms.tax = {Share::percent(19), TaxShown::exclusive};
  in.terms.fee.of_total = Share::percent(2);
  in.terms.deposit = Share::percent(30);
  return in;
}

Money amount_of(const CostSheet& sheet, const std::string& text) {
  Money sum = eur(0);
  for (const CostLine& line : sheet.lines)
    if (line.text == text) sum += line.amount;
  return sum;
}

Money sum_of(const CostSheet& sheet) {
  Money sum(0, sheet.price.cost.currency());
  for (const CostLine& line : sheet.lines) sum += line.amount;
  return sum;
}

}  // namespace

TEST_CASE("a chef's knife worked out by hand") {
  const auto made = build_up(a_chefs_knife());
  REQUIRE(made.ok());
  const CostSheet& s = *made;
  CHECK(amount_of(s, "Steel") == eur(5'89));     // 235.5 g / 0.8 at 20 a kg = 5.8875
  CHECK(amount_of(s, "Quench oil") == eur(75));  // 150 / 200
  CHECK(amount_of(s, "Belts") == eur(10'00));    // 5 / 4 x 8
  CHECK(amount_of(s, "Profile") == eur(60'00));  // 1.5 h
  CHECK(amount_of(s, "Harden") == eur(40'00));   // 0.5 h + half of 1 h
  CHECK(amount_of(s, "Finish grind") == eur(120'00));
  CHECK(amount_of(s, "Handle") == eur(80'00));
  // 205,140 watt-minutes at 0.30 for two = 0.51; 6.5 min and half of 5 min of the maker = 6.00.
  CHECK(amount_of(s, "Harden firing, shared by 2 expected") == eur(51 + 6'00));
  CHECK(amount_of(s, "Overhead") == eur(91'80));  // 7.65 h x 12
  // Up to the quench: steel 5.89, profile 60, its overhead 18, oil 0.75, firing 6.51, harden 40,
  // its overhead 13.80 = 144.95. Lost once in ten: 144.95 / 0.9 - 144.95 = 16.11.
  CHECK(amount_of(s, "Loss") == eur(16'11));
  CHECK(amount_of(s, "Packing") == eur(6'00));
  CHECK(amount_of(s, "Shipping") == eur(15'00));
  // 577.06 / (1 - 0.20 - 0.02 x 1.19) = 743.44, up to 750; tax 142.50; fee 2 % of 892.50.
  CHECK(s.price.shown == eur(750'00));
  CHECK(s.price.tax == eur(142'50));
  CHECK(s.price.total == eur(892'50));
  CHECK(amount_of(s, "Payment fee") == eur(17'85));
  CHECK(s.price.cost == eur(594'91));
  CHECK(sum_of(s) == s.price.cost);
  CHECK(s.price.deposit == eur(267'75));
  // (750 - (594.91 - 306 of own labour)) / 7.65 h
  CHECK(s.earned_per_hour == eur(60'27));
  CHECK(s.floor == eur(591'13));  // 577.06 / (1 - 0.0238)
  CHECK(s.hours.hands_on == 7h + 6min + 30s);
  CHECK(s.hours.attended == 65min);
  CHECK(s.hours.unattended == 24h + 78min);
}

TEST_CASE("the lines that move the price most come from working the sheet out again") {
  CostInputs in = a_chefs_knife();
  in.items[0].operations[2].swing = Swing{Share::percent(50), Share::percent(200)};
  const CostSheet s = *build_up(in);
  REQUIRE(s.movers.size() == 3);
  const Mover& first = s.movers.front();
  CHECK(first.text == "Finish grind");
  CHECK_FALSE(first.assumed);
  CHECK(s.movers[1].assumed);
  // Three hours more: 120 of hours and 36 of overhead, nothing lost after the quench, over 0.7762.
  CHECK((first.price_high - first.price_low).minor() ==
        Approx((180'00 + 54'00) / 0.7762).margin(2));
  CHECK(first.earned_high < first.earned_low);
  CHECK(first.line < s.lines.size());
  CHECK(s.lines[first.line].text == "Finish grind");
}

TEST_CASE("a line of the second item moves the price as it does in the first") {
  CostInputs in = a_chefs_knife();
  in.items.push_back(in.items[0]);
  in.items[1].operations[2].swing = Swing{Share::percent(50), Share::percent(200)};
  const CostSheet s = *build_up(in);
  const Mover& first = s.movers.front();
  CHECK(s.lines[first.line].item == 1);
  CHECK((first.price_high - first.price_low).minor() ==
        Approx((180'00 + 54'00) / 0.7762).margin(2));
  // Double the hours of 3 to 6: (price - fee - other costs) stays but for 36 of overhead, over 3 h
  // more.
  const Money kept = s.price.without_tax - (s.price.cost - eur(2 * 306'00));
  const double hours = 2 * 7.65;
  CHECK(first.earned_high->minor() == Approx(double(kept.minor() - 36'00) / (hours + 3)).margin(1));
}

TEST_CASE("a wide band of losses becomes a mover, dear at its high end") {
  CostInputs in = a_chefs_knife();
  in.items[0].operations[1].survival_band = {Share::percent(30), Share::percent(98)};
  const CostSheet s = *build_up(in);
  CHECK(s.movers.front().text == "Loss");
  CHECK(s.movers.front().price_high > s.movers.front().price_low);
  CHECK_FALSE(s.movers.front().assumed);
}

TEST_CASE("with a fixed price the movers move the floor") {
  CostInputs in = a_chefs_knife();
  in.terms.rule = FixedPrice{eur(555'00)};
  const CostSheet s = *build_up(in);
  CHECK(s.price.shown == eur(555'00));
  CHECK(s.floor == eur(591'13));
  CHECK(*s.earned_per_hour < eur(40'00));
  CHECK(s.movers.front().price_high > s.movers.front().price_low);
}

TEST_CASE("three of the same knife cost three times one, and shipping once") {
  CostInputs one = a_chefs_knife(), three = a_chefs_knife();
  three.items[0].pieces = 3;
  one.terms = three.terms = PriceTerms{};
  const Money carriage = one.packing + one.shipping;
  CHECK(build_up(three)->price.cost - carriage == (build_up(one)->price.cost - carriage) * 3);
  CHECK(sum_of(*build_up(three)) == build_up(three)->price.cost);
}

TEST_CASE("the buyer's lines sum to the price and say nothing of cost") {
  CostInputs in = a_chefs_knife();
  CostedItem second = in.items[0];
  second.text = "Paring knife";
  second.pieces = 2;
  second.options = {{"Initials", eur(25'00)}};
  in.items.push_back(second);
  for (const TaxShown shown : {TaxShown::exclusive, TaxShown::inclusive}) {
    in.terms.tax.shown = shown;
    const CostSheet s = *build_up(in);
    const auto lines = price_lines(in, s);
    REQUIRE(lines.size() == 4);
    CHECK(lines[0].text == "Chef's knife 240 mm");
    CHECK(lines[2].text == "Initials");
    CHECK(lines[2].amount == eur(50'00));
    CHECK(lines[3].amount == (shown == TaxShown::exclusive ? eur(15'00) : eur(17'85)));
    Money sum = eur(0);
    for (const PriceLine& line : lines) sum += line.amount;
    CHECK(sum == s.price.shown);
  }
}

TEST_CASE("a price too small for its options and shipping shows one line") {
  CostInputs in = a_chefs_knife();
  in.items[0].options = {{"Initials", eur(25'00)}};
  in.terms.rule = FixedPrice{eur(10'00)};
  const auto lines = price_lines(in, *build_up(in));
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].amount == eur(10'00));
}

TEST_CASE("gas goes by the burner or by the weight of the bottle, shared by the session") {
  CostInputs in = a_chefs_knife();
  in.items[0].ingredients = {
      {"Gas", GasByBurner{Mass::grams(900), 2h, eur(3'00), 3}, 0},
      {"Gas weighed", GasByWeight{Mass::grams(9400), Mass::grams(7000), eur(3'00), 2}, 0},
      {"Gas weighed wrong way", GasByWeight{Mass::grams(1), Mass::grams(2), eur(3'00), 2}, 0}};
  CHECK(build_up(in).problem().field == "Gas weighed wrong way: bottle");
  in.items[0].ingredients.pop_back();
  const CostSheet s = *build_up(in);
  CHECK(amount_of(s, "Gas") == eur(1'80));
  CHECK(amount_of(s, "Gas weighed") == eur(3'60));
}

TEST_CASE("a piece of a billet, foil by the metre and outside work, worked out by hand") {
  // Two bars at 31.40 and 37.68; gas 7.50, flux 0.45, an hour at 52.00: 129.03 for 2500 g left.
  BilletMaking making;
  making.parts = {{"1-1", Mass::grams(1570), eur(31'40)}, {"2-1", Mass::grams(1570), eur(37'68)}};
  making.work = {eur(7'50), eur(45), eur(52'00)};
  making.finished = Mass::grams(2500);
  CostInputs in = a_chefs_knife();
  in.items[0].ingredients = {
      {"Billet", SteelFromBillet{billet_cost(making).value(), Mass::grams(400)}, 0},
      {"Foil", UsedUp{Quantity{2500, "m"}, eur(3'20)}, 1},
      {"Engraver", MadeElsewhere{eur(140'00)}, 3}};
  const CostSheet s = *build_up(in);
  CHECK(amount_of(s, "Billet") == eur(20'64));  // 129.03 x 400 / 2500 = 20.6448
  CHECK(amount_of(s, "Foil") == eur(8'00));     // 2.5 x 3.20
  CHECK(amount_of(s, "Engraver") == eur(140'00));
}

TEST_CASE("every fault of a sheet is told at once, by its line") {
  CostInputs in = a_chefs_knife();
  in.items[0].ingredients[0].operation = 9;
  in.items[0].ingredients[4].source = BoughtMaterial{{}, Money(1, *Currency::of("USD"))};
  in.items[0].operations[0].survival = Share{};
  in.rates.per_hour = eur(-1);
  const auto refused = build_up(in);
  REQUIRE_FALSE(refused.ok());
  std::vector<std::string> fields;
  for (const Problem& p : refused.problems()) fields.push_back(p.field);
  CHECK(fields == std::vector<std::string>{"hourly rate", "Steel", "Profile", "Handle block"});
  CHECK_FALSE(build_up(CostInputs{}).ok());
}

TEST_CASE(
    "a piece of a billet carries the billet's cost, and an item without hours earns nothing") {
  CostInputs in = a_chefs_knife();
  CostedItem blank;
  blank.text = "Blank";
  blank.ingredients = {
      {"Billet",
       SteelFromBillet{
           *billet_cost(
               {{{"bar", Mass::grams(1000), eur(10'00)}}, {}, Mass::grams(500), {eur(30'00)}}),
           Mass::grams(250)},
       0}};
  in.items = {blank};
  const CostSheet s = *build_up(in);
  CHECK(amount_of(s, "Billet") == eur(20'00));
  CHECK_FALSE(s.earned_per_hour.has_value());
}
