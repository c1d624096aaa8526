// SPDX-License-Identifier: MIT
#include "domain/costing/build_up.h"

#include <utility>

#include "domain/costing/settle.h"

namespace tangmark::costing {
namespace {

void check_rate(Problems& found, const char* field, Money money, Currency currency) {
  if (money.currency() != currency)
    found.push_back({field,
                     "This amount is in " + money.currency().code() + ", the quote is in " +
                         currency.code() + ".",
                     "Give it in " + currency.code() + "."});
  if (money.minor() < 0)
    found.push_back({field, "This amount cannot be below zero.", "Check the amount."});
}

Outcome<DraftedItems> drafted(const CostInputs& inputs) {
  Gather form;
  Problems rates;
  check_rate(rates, "hourly rate", inputs.rates.per_hour, inputs.currency);
  check_rate(rates, "overhead", inputs.rates.overhead_per_hour, inputs.currency);
  check_rate(rates, "packing", inputs.packing, inputs.currency);
  check_rate(rates, "shipping", inputs.shipping, inputs.currency);
  if (inputs.rates.attended_share < Share{} || inputs.rates.attended_share > Share::whole())
    rates.push_back({"attended share", "The share for attended waiting must be from 0 % to 100 %.",
                     "Give the part of the hourly rate that waiting costs."});
  if (inputs.items.empty())
    rates.push_back({"items", "There is nothing to cost.", "Add an item to the commission."});
  for (const CostedItem& item : inputs.items)
    for (const PricedOption& option : item.options)
      check_rate(rates, option.text.c_str(), option.price, inputs.sold_in());
  for (Problem& p : rates) form.add(std::move(p));
  DraftedItems all;
  for (const CostedItem& item : inputs.items) all.push_back(form.take(drafts_of(item, inputs)));
  if (form.refused()) return form.problems();
  return all;
}

Money options_of(const CostedItem& item, Currency currency) {
  Money sum(0, currency);
  for (const PricedOption& option : item.options) sum += option.price * item.pieces;
  return sum;
}

/// What the buyer is charged for carriage: its cost, with its tax when prices hold tax.
Money shipping_charged(const CostInputs& inputs) {
  const Money cost =
      inputs.sold_at ? exchanged_back(inputs.shipping, *inputs.sold_at) : inputs.shipping;
  const bool holds_tax = inputs.terms.tax.shown == TaxShown::inclusive;
  return holds_tax ? cost + share_of(cost, inputs.terms.tax.rate) : cost;
}

std::vector<std::int64_t> cost_weights(const CostInputs& inputs, const CostSheet& sheet) {
  std::vector<std::int64_t> weights(inputs.items.size(), 0);
  std::int64_t sum = 0;
  for (const CostLine& line : sheet.lines)
    if (line.item < weights.size())
      weights[line.item] += line.amount.minor(), sum += line.amount.minor();
  if (sum == 0) weights.assign(weights.size(), 1);
  return weights;
}

}  // namespace

Outcome<CostSheet> build_up(const CostInputs& inputs) {
  const Outcome<DraftedItems> drafts = drafted(inputs);
  if (!drafts) return drafts.problems();
  Outcome<Settled> worked_out = settle(*drafts, inputs, Trial{}, Text::write);
  if (!worked_out) return worked_out.problems();
  const Settled in_own = std::move(worked_out).value();
  const Settled settled = in_currency_sold(in_own, inputs);
  const Outcome<Price> price = price_for(settled.cost, inputs.terms);
  if (!price) return price.problems();
  const Outcome<Money> floor = floor_price(settled.cost, inputs.terms);
  if (!floor) return floor.problems();

  CostSheet sheet;
  sheet.price = *price;
  sheet.floor = *floor;
  sheet.hours = settled.hours;
  sheet.earned_per_hour =
      earned_per_hour(price->without_tax, price->cost - settled.labour, settled.paid);
  sheet.movers = movers_of(*drafts, inputs, in_own, *price);
  sheet.lines = settled.lines;
  if (!price->fee.is_zero())
    sheet.lines.push_back(
        {LineKind::fee, "Payment fee", {}, price->fee, price->fee, inputs.items.size()});
  return sheet;
}

std::vector<PriceLine> price_lines(const CostInputs& inputs, const CostSheet& sheet) {
  const Money none(0, inputs.sold_in());
  Money shipping = shipping_charged(inputs);
  if (shipping > sheet.price.shown) shipping = none;
  Money options = none;
  for (const CostedItem& item : inputs.items) options += options_of(item, inputs.sold_in());
  const bool options_fit = options + shipping <= sheet.price.shown;
  if (!options_fit) options = none;

  const std::vector<Money> parts =
      split(sheet.price.shown - shipping - options, cost_weights(inputs, sheet));
  std::vector<PriceLine> lines;
  for (std::size_t i = 0; i < inputs.items.size(); ++i) {
    const CostedItem& item = inputs.items[i];
    lines.push_back({item.text, item.pieces, parts[i]});
    if (options_fit)
      for (const PricedOption& option : item.options)
        lines.push_back({option.text, item.pieces, option.price * item.pieces});
  }
  if (!shipping.is_zero()) lines.push_back({"Shipping", 1, shipping});
  return lines;
}

}  // namespace tangmark::costing
