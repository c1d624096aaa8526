// SPDX-License-Identifier: MIT
#include "domain/costing/price.h"

#include <catch2/catch.hpp>

#include "domain/costing/price_list.h"

using namespace tangmark;
using namespace tangmark::costing;

namespace {

Money eur(std::int64_t minor) { return {minor, Currency()}; }

PriceTerms terms(PriceRule rule, std::int64_t step = 0) {
  PriceTerms t;
  t.rule = rule;
  if (step > 0) t.step = eur(step);
  return t;
}

}  // namespace

TEST_CASE("a margin is part of the price, a mark-up is part of the cost") {
  CHECK(price_for(eur(300'00), terms(Margin{Share::percent(25)}))->shown == eur(400'00));
  CHECK(price_for(eur(300'00), terms(MarkUp{Share::percent(25)}))->shown == eur(375'00));
  const auto p = price_for(eur(300'00), terms(Margin{Share::percent(25)}));
  CHECK(p->margin == Share::percent(25));
  CHECK(p->markup == Share::millionths(333'333));
}

TEST_CASE("the price goes up to the step and the margin after it is told") {
  const auto p = price_for(eur(301'00), terms(Margin{Share::percent(25)}, 10'00));
  CHECK(p->shown == eur(410'00));  // 401.33 up to tens
  CHECK(p->margin == Share::millionths(265'854));  // 109 / 410
  CHECK(p->markup == Share::millionths(362'126));  // 109 / 301
}

TEST_CASE("an exact price already on the step stays there") {
  CHECK(price_for(eur(69'30), terms(Margin{Share::percent(30)}, 1'00))->shown == eur(99'00));
}

TEST_CASE("without a step the price rounds half to even") {
  CHECK(price_for(eur(100'00), terms(Margin{Share::percent(40)}))->shown == eur(166'67));
  CHECK(price_for(eur(5), terms(MarkUp{Share::percent(50)}))->shown == eur(8));  // 7.5
  CHECK(price_for(eur(3), terms(MarkUp{Share::percent(50)}))->shown == eur(4));  // 4.5
}

TEST_CASE("a typed price is never rounded, a list price goes up to the step") {
  CHECK(price_for(eur(100'00), terms(FixedPrice{eur(455'00)}, 10'00))->shown == eur(455'00));
  CHECK(price_for(eur(100'00), terms(ListPrice{eur(455'00)}, 10'00))->shown == eur(460'00));
}

TEST_CASE("tax comes on top when exclusive and is inside when inclusive") {
  PriceTerms t = terms(Margin{Share::percent(25)}, 1'00);
  t.tax = {Share::percent(19), TaxShown::exclusive};
  const auto on_top = price_for(eur(300'00), t);
  CHECK(on_top->shown == eur(400'00));
  CHECK(on_top->tax == eur(76'00));
  CHECK(on_top->total == eur(476'00));
  t.tax.shown = TaxShown::inclusive;
  const auto inside = price_for(eur(300'00), t);
  CHECK(inside->shown == eur(476'00));
  CHECK(inside->total == eur(476'00));
  CHECK(inside->tax == eur(76'00));
  CHECK(inside->without_tax == eur(400'00));
}

TEST_CASE("the payment fee is paid from the price it depends on") {
  PriceTerms t = terms(Margin{Share::percent(20)});
  t.fee = {Share::percent(3), eur(30)};
  const auto p = price_for(eur(400'00), t);
  // N = (400 + 0.30) / (1 - 0.20 - 0.03) = 519.870...
  CHECK(p->shown == eur(519'87));
  CHECK(p->fee == eur(15'90));  // 3 % of 519.87 = 15.5961, and 0.30
  CHECK(p->cost == eur(415'90));
  CHECK(p->margin.fraction() == Approx(0.20).margin(0.0001));
}

TEST_CASE("with tax the fee is taken from all the buyer pays") {
  PriceTerms t = terms(MarkUp{Share::percent(50)}, 5'00);
  t.fee.of_total = Share::percent(2);
  for (const TaxShown shown : {TaxShown::exclusive, TaxShown::inclusive}) {
    t.tax = {Share::percent(20), shown};
    const auto p = price_for(eur(200'00), t);
    CHECK(p->fee == share_of(p->total, Share::percent(2)));
    CHECK(p->without_tax.minor() >= p->cost.minor() * 3 / 2);
    CHECK(p->shown.minor() % 5'00 == 0);
    // One step less would not pay the mark-up.
    PriceTerms lower = t;
    lower.rule = FixedPrice{p->shown - eur(5'00)};
    const auto q = price_for(eur(200'00), lower);
    CHECK(q->without_tax.minor() < q->cost.minor() * 3 / 2);
  }
}

TEST_CASE("the deposit is a share of the total or a sum, never more than the total") {
  PriceTerms t = terms(FixedPrice{eur(455'55)});
  CHECK(price_for(eur(0), t)->deposit == eur(0));
  t.deposit = Share::percent(30);
  CHECK(price_for(eur(0), t)->deposit == eur(136'66));  // 136.665, half to even
  t.deposit = eur(100'00);
  CHECK(price_for(eur(0), t)->deposit == eur(100'00));
  t.deposit = eur(900'00);
  CHECK(price_for(eur(0), t)->deposit == eur(455'55));
}

TEST_CASE("earned per hour leaves out only own labour and counts waiting at its share") {
  const PaidTime time{std::chrono::hours(8), std::chrono::hours(4), Share::percent(50)};
  CHECK(pay_for(eur(40'00), time) == eur(400'00));
  // 700 - 200 of other costs = 500 for 8 + 4 x 0.5 hours.
  CHECK(earned_per_hour(eur(700'00), eur(200'00), time) == eur(50'00));
  CHECK(earned_per_hour(eur(100'00), eur(200'00), time) == eur(-10'00));
  CHECK_FALSE(earned_per_hour(eur(100'00), eur(0), PaidTime{}).has_value());
}

TEST_CASE("a published knife: 57.50 of material and 15.5 hours") {
  // Source: a maker's itemised blog post, quoted in the trade notes; materials times three is
  // 172.50, which earns 7.42 an hour.
  const PaidTime time{std::chrono::minutes(15 * 60 + 30), {}, Share{}};
  CHECK(pay_for(eur(20'00), time) == eur(310'00));
  CHECK(earned_per_hour(eur(172'50), eur(57'50), time) == eur(7'42));
}

TEST_CASE("below the floor price the maker earns less than the hourly rate") {
  PriceTerms t = terms(FixedPrice{eur(0)});
  t.tax = {Share::percent(20), TaxShown::inclusive};
  t.fee = {Share::percent(2), eur(25)};
  const Money cost = eur(400'00);
  const Money floor = *floor_price(cost, t);
  t.rule = FixedPrice{floor};
  CHECK(price_for(cost, t)->without_tax >= price_for(cost, t)->cost);
  t.rule = FixedPrice{floor - eur(3)};
  CHECK(price_for(cost, t)->without_tax < price_for(cost, t)->cost);
}

TEST_CASE("terms that cannot be met are refused by their field") {
  CHECK(price_for(eur(1), terms(Margin{Share::percent(100)})).problem().field == "margin");
  CHECK(price_for(eur(1), terms(Margin{Share::percent(-1)})).problem().field == "margin");
  CHECK(price_for(eur(1), terms(MarkUp{Share::percent(-1)})).problem().field == "markup");
  PriceTerms t = terms(Margin{Share::percent(98)});
  t.fee.of_total = Share::percent(3);
  CHECK(price_for(eur(1), t).problem().field == "price");
  t.step = Money(0, Currency());
  CHECK(price_for(eur(1), t).problem().field == "step");
  t.step = Money(1, *Currency::of("JPY"));
  CHECK(price_for(eur(1), t).problem().field == "step");
  CHECK(price_for(eur(-1), terms(Margin{})).problem().field == "cost");
  CHECK_FALSE(price_for(eur(1'000'000'000'000), terms(Margin{})).ok());
}

TEST_CASE("price by formula: a base, so much a millimetre, and extras") {
  // Source: a forge and school's published formula: 100 + 1 a millimetre + 100 for a 255 mm chef.
  ListFormula formula{eur(100'00), eur(1'00), {}, {{"pattern-welded", eur(100'00)}}};
  CHECK(*list_price(formula, Length::millimetres(255)) == eur(455'00));
  CHECK_FALSE(list_price(formula, Length{}).ok());
  CHECK(in_words(formula, Length::millimetres(255)) ==
        "100.00 + 255 mm x 1.00 + pattern-welded 100.00");
  // A base that covers 240 mm: 455 less 240 of the millimetres, and less still for a shorter blade.
  formula.covered = Length::millimetres(240);
  CHECK(*list_price(formula, Length::millimetres(255)) == eur(215'00));
  CHECK(*list_price(formula, Length::millimetres(230)) == eur(190'00));
  formula.covered = {};
  formula.extras.push_back({"sheath", Money(1, *Currency::of("USD"))});
  CHECK(list_price(formula, Length::millimetres(255)).problem().field == "sheath");
}
