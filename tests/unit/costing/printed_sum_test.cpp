// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <random>

#include "domain/costing/settle.h"

using namespace tangmark;
using namespace tangmark::costing;

namespace {

class Invented {
 public:
  explicit Invented(Currency currency) : currency_(currency) {}

  CostInputs quote() {
    CostInputs in;
    in.currency = currency_;
    in.rates = {money(9'000), Share::millionths(below(1'000'001)), money(3'000)};
    in.packing = money(2'000);
    in.shipping = money(5'000);
    in.terms.rule = chance_() % 2 == 0 ? PriceRule(Margin{Share::millionths(below(700'000))})
                                       : PriceRule(FixedPrice{money(500'000)});
    if (chance_() % 2 == 0) in.terms.step = Money(1 + below(1'000), currency_);
    in.terms.tax = {Share::millionths(below(270'000)),
                    chance_() % 2 == 0 ? TaxShown::exclusive : TaxShown::inclusive};
    in.terms.fee.of_total = Share::millionths(below(40'000));
    for (std::int64_t k = 1 + below(3); k > 0; --k) in.items.push_back(item());
    return in;
  }

 private:
  std::int64_t below(std::int64_t n) { return static_cast<std::int64_t>(chance_()) % n; }
  Money money(std::int64_t most) { return {below(most), currency_}; }
  CostedItem item() {
    CostedItem item;
    item.text = "Knife";
    item.pieces = 1 + below(4);
    item.operations = {
        {"Grind", Duration{below(40'000)}, Duration{below(9'000)}},
        {"Harden", Duration{below(9'000)}, {}, {}, Share::millionths(600'000 + below(400'001))}};
    item.ingredients = {{"Belts", BeltWear{money(2'000), 1 + below(9), 1 + below(9)}, 0},
                        {"Handle", BoughtMaterial{{1 + below(9'000), ""}, money(9'000)}, 1}};
    if (chance_() % 3 == 0) item.options = {{"Initials", money(3'000)}};
    return item;
  }

  Currency currency_;
  std::mt19937 chance_{2026};
};

/// The whole of a quote but its movers, which print nothing and take the longest.
CostSheet sheet_of(const CostInputs& in) {
  DraftedItems drafts;
  for (const CostedItem& item : in.items) drafts.push_back(*drafts_of(item, in));
  const Settled settled = *settle(drafts, in, Trial{}, Text::leave_out);
  CostSheet sheet;
  sheet.price = *price_for(settled.cost, in.terms);
  sheet.lines = settled.lines;
  sheet.lines.push_back({LineKind::fee, "", {}, sheet.price.fee, sheet.price.fee, in.items.size()});
  return sheet;
}

}  // namespace

TEST_CASE("printed lines sum to the printed total in every number of minor digits") {
  for (const char* code : {"JPY", "EUR", "KWD", "CLF"}) {  // none, two, three and four digits
    const Outcome<Currency> currency = Currency::of(code);
    REQUIRE(currency.ok());
    Invented invented(*currency);
    int wrong = 0;
    for (int k = 0; k < 100'000; ++k) {
      const CostInputs in = invented.quote();
      const CostSheet sheet = sheet_of(in);
      Money cost(0, *currency), shown(0, *currency);
      for (const CostLine& line : sheet.lines) cost += line.amount;
      for (const PriceLine& line : price_lines(in, sheet)) shown += line.amount;
      const bool inclusive = in.terms.tax.shown == TaxShown::inclusive;
      const Money printed_total = inclusive ? shown : shown + sheet.price.tax;
      if (cost != sheet.price.cost || shown != sheet.price.shown ||
          printed_total != sheet.price.total)
        ++wrong;
    }
    INFO(code);
    CHECK(wrong == 0);
  }
}
