// SPDX-License-Identifier: MIT
// Computations of the desk about losses and prices: the arithmetic is the costing room's.
#include <cmath>

#include "domain/costing/price.h"
#include "domain/steel/desk_calculations.h"
#include "domain/steel/desk_input.h"
#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

// Costs have no currency here, so the figure is not rounded; in a quote costing::cost_per_good does
// the same sum exactly and rounds it to the minor unit.
double cost_per_good(const std::vector<double>& costs, const std::vector<double>& survival) {
  double spent = 0;
  double alive = 1;
  for (std::size_t i = 0; i < costs.size(); ++i) {
    spent += costs[i] * alive;
    alive *= survival[i];
  }
  return spent / alive;
}

Outcome<DeskAnswer> loss(const DeskInput& input) {
  Gather form;
  const auto costs = form.take(input.numbers("costs"));
  const auto survival = form.take(input.fractions("survival"));
  if (form.refused()) return form.problems();
  if (costs.size() != survival.size()) {
    form.add({"survival",
              std::to_string(costs.size()) + " costs stand against " +
                  std::to_string(survival.size()) + " survivals.",
              "Give one survival for each cost."});
  }
  for (const double cost : costs) {
    if (cost < 0) form.add({"costs", "A cost cannot be negative.", "Check the list."});
  }
  for (const double share : survival) {
    if (!(share > 0 && share <= 1)) {
      form.add({"survival", "A survival must be above 0 and up to 1.",
                "Write 0.9 or 90% when nine of ten survive."});
    }
  }
  if (form.refused()) return form.problems();
  const double per_good = cost_per_good(costs, survival);
  if (!std::isfinite(per_good)) {
    return Problem{"survival", "So few blades survive that a good one has no finite cost.",
                   "Check the survivals."};
  }
  return DeskAnswer{{{"cost_per_good", per_good}}, {}};
}

Outcome<Share> millionths(Outcome<double> fraction, const char* key) {
  if (!fraction) return fraction.problems();
  if (!(*fraction >= 0 && *fraction <= 1000)) {
    return Problem{key, std::string("The ") + key + " must be a fraction from 0.",
                   "Write 0.4 or 40%."};
  }
  return Share::millionths(std::llround(*fraction * 1e6));
}

Outcome<costing::PriceRule> rule_of(const DeskInput& input) {
  const auto which = input.one_of({"margin", "markup"});
  if (!which) return which.problems();
  const char* key = *which == 0 ? "margin" : "markup";
  const auto share = millionths(input.fraction(key), key);
  if (!share) return share.problems();
  if (*which == 1) return costing::PriceRule(costing::MarkUp{*share});
  if (*share >= Share::whole()) {
    return Problem{"margin", "A margin is a part of the price, so it is below 1.",
                   "Give markup for a part of the cost."};
  }
  return costing::PriceRule(costing::Margin{*share});
}

double in_major(Money money) {
  return static_cast<double>(money.minor()) /
         static_cast<double>(money.currency().minor_per_major());
}

Outcome<DeskAnswer> price(const DeskInput& input) {
  Gather form;
  const Currency currency = form.take(Currency::of(input.text("currency")));
  costing::PriceTerms terms;
  terms.rule = form.take(rule_of(input));
  if (form.refused()) return form.problems();
  const Money cost = form.take(parse_money(input.text("cost"), currency, "cost"));
  if (input.has("step")) terms.step = form.take(parse_money(input.text("step"), currency, "step"));
  if (form.refused()) return form.problems();
  if (cost.is_zero()) {
    return Problem{"cost", "The cost must be above zero.", "A price is built on a cost."};
  }
  const auto found = costing::price_for(cost, terms);
  if (!found) return found.problems();
  const double price_major = in_major(found->shown);
  const double cost_major = in_major(cost);
  return DeskAnswer{{{"price", price_major},
                     {"margin", (price_major - cost_major) / price_major},
                     {"markup", (price_major - cost_major) / cost_major},
                     {"currency", currency.code()}},
                    {}};
}

}  // namespace

std::vector<DeskCalculation> money_calculations() {
  return {
      {"loss",
       "what one good blade costs when some are lost",
       {{"costs", "major units", "", "cost of each operation with commas, in order",
         Need::required},
        {"survival", "fraction", "", "share of blades that survive each operation, with commas",
         Need::required}},
       "sum of cost x share still alive, over the share alive at the end: common cost accounting "
       "practice for normal spoilage",
       "survivals above 0 and up to 1; refused outside",
       loss},
      {"price",
       "a price from a cost",
       {{"cost", "major units", "", "what it costs", Need::required},
        {"margin", "fraction", "", "part of the price that is earned", Need::one_of_set},
        {"markup", "fraction", "", "part of the cost that is added", Need::one_of_set},
        {"step", "major units", "", "the price is rounded up to whole steps", Need::optional},
        {"currency", "", "EUR", "ISO 4217 code", Need::optional}},
       "cost / (1 - margin) or cost x (1 + markup), up to the step; exact in minor units (ISO "
       "4217)",
       "margin from 0 to below 1, markup from 0; refused outside",
       price},
  };
}

}  // namespace tangmark::steel
