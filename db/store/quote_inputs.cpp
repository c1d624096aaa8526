// SPDX-License-Identifier: MIT
#include "db/store/quote_inputs.h"

#include <algorithm>

#include "db/store/item_store.h"
#include "db/store/model_store.h"
#include "db/store/quote_item.h"
#include "db/store/rate_store.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

// What changes hands between the shop's currency and the buyer's.
struct Sale {
  Currency own, sold;
  std::optional<ExchangeRate> rate;  ///< 1 of `sold` in `own`

  Money abroad(Money amount) const { return rate ? exchanged_back(amount, *rate) : amount; }
  std::optional<Money> in_sold(Money amount) const {
    if (amount.currency() == sold) return amount;
    if (amount.currency() == own) return abroad(amount);
    return std::nullopt;
  }
  Money at_home(Money amount) const {
    return rate && amount.currency() == sold ? exchanged(amount, *rate) : amount;
  }
  // A step such as 5.00 EUR is a round number abroad as well: the next lower of 1, 2, 5, 10 ...
  Money step(Money own_step) const {
    if (!rate) return own_step;
    const std::int64_t most = std::max<std::int64_t>(1, abroad(own_step).minor());
    std::int64_t round = 1;
    for (std::int64_t ten = 1; ten <= most; ten *= 10)
      for (const std::int64_t digit : {1, 2, 5})
        if (ten * digit <= most) round = ten * digit;
    return {round, sold};
  }
};

std::optional<Money> asked_for(const std::vector<KeptItem>& items, Currency currency) {
  Money sum(0, currency);
  for (const KeptItem& item : items) {
    if (!item.asking) return std::nullopt;
    sum += *item.asking;
  }
  return sum;
}

Outcome<costing::PriceRule> price_rule(const std::vector<KeptItem>& items, const QuoteWish& wish,
                                       const Sale& sale, Share usual_margin,
                                       QuoteInputs& inputs) {
  std::string& how = inputs.price_how;
  if (wish.price) {
    how = "fixed by hand";
    return costing::PriceRule(costing::FixedPrice{*wish.price});
  }
  if (wish.by_list) {
    if (!inputs.list)
      return Problem{"by_list", "Not every item has a model with a list price.",
                     "Give a margin or a price."};
    how = "list price";
    inputs.assumptions.insert(inputs.assumptions.begin(),
                              "By the list: " + inputs.list->words + ".");
    return costing::PriceRule(costing::ListPrice{inputs.list->price});
  }
  if (wish.markup) {
    how = "mark-up " + to_text(*wish.markup);
    return costing::PriceRule(costing::MarkUp{*wish.markup});
  }
  if (!wish.margin)
    if (const auto asking = asked_for(items, sale.sold)) {
      how = "fixed by hand";
      return costing::PriceRule(costing::FixedPrice{*asking});
    }
  const Share margin = wish.margin.value_or(usual_margin);
  how = "margin " + to_text(margin);
  return costing::PriceRule(costing::Margin{margin});
}

costing::Tax tax_of(const ShopSettings& settings) {
  switch (settings.tax_mode) {
    case TaxMode::none:
      return {Share(), costing::TaxShown::exclusive};
    case TaxMode::exclusive:
      return {settings.tax_rate, costing::TaxShown::exclusive};
    case TaxMode::inclusive:
      return {settings.tax_rate, costing::TaxShown::inclusive};
  }
  return {};
}

// The rate as given, else as noted for the day.
Outcome<Sale> sale_of(const ShopFile& shop, const ShopSettings& settings, Currency sold,
                      const QuoteWish& wish, CalendarDate day) {
  Sale sale{settings.currency, sold, std::nullopt};
  if (sale.own == sold) return sale;
  if (wish.rate) {
    const auto rate = parse_exchange_rate(*wish.rate, sold, sale.own, "rate");
    if (!rate) return rate.problem();
    sale.rate = *rate;
    return sale;
  }
  sale.rate = rate_on(shop, sold, sale.own, day);
  if (!sale.rate)
    return Problem{"rate",
                   "The commission is in " + sold.code() + ", the shop reckons in " +
                       sale.own.code() + ", and no rate between them is on record.",
                   "Note one with note_rate, or give it: 1 " + sold.code() + " = 0.92 " +
                       sale.own.code() + "."};
  return sale;
}

Problems amount_problems(const Sale& sale, const QuoteWish& wish) {
  Problems problems;
  if (wish.price && wish.price->currency() != sale.sold)
    problems.push_back({"price", "The commission is in " + sale.sold.code() + ".",
                        "Give the amount in it."});
  if (wish.shipping && !sale.in_sold(*wish.shipping))
    problems.push_back({"shipping", "The commission is in " + sale.sold.code() + ".",
                        "Give the amount in it."});
  return problems;
}

// "rough grind = 2 h, Packing = 6.00"
std::string joined(const std::vector<costing::LineChange>& changes) {
  std::string text;
  for (const costing::LineChange& change : changes)
    text += (text.empty() ? "" : ", ") + change.what + " = " + change.to;
  return text;
}

std::vector<KeptItem> items_to_quote(const ShopFile& shop, CommissionId commission) {
  std::vector<KeptItem> items = items_of(shop, commission);
  std::erase_if(items, [](const KeptItem& item) { return item.cancelled_on.has_value(); });
  return items;
}

Problems add_items(const ShopFile& shop, const std::vector<KeptItem>& items,
                   const ShopSettings& settings, const Sale& sale, QuoteInputs& inputs) {
  Problems problems;
  for (const KeptItem& item : items) {
    auto costed = costed_item(shop, item, settings);
    if (!costed) {
      for (Problem& problem : costed.problems()) problems.push_back(std::move(problem));
      continue;
    }
    inputs.costs.packing += costed->packing;
    for (const std::string& words : costed->assumptions) inputs.assumptions.push_back(words);
    std::vector<costing::PricedOption> options;
    for (const costing::PricedOption& option : costed->item.options)
      if (const auto price = sale.in_sold(option.price))
        options.push_back({option.text, *price});
      else
        inputs.assumptions.push_back(option.text + " is priced in " +
                                     option.price.currency().code() + " and is left out.");
    costed->item.options = std::move(options);
    inputs.costs.items.push_back(costed->item);
  }
  return problems;
}

Problems add_changes(const QuoteWish& wish, QuoteInputs& inputs) {
  Problems problems;
  for (const costing::LineChange& change : wish.changes) {
    auto changed = costing::with_change(inputs.costs, change);
    if (changed) {
      inputs.costs = std::move(changed).value();
      inputs.changes.push_back(change);
    } else if (wish.carried_over) {
      inputs.assumptions.push_back("\"" + change.what + " = " + change.to +
                                   "\" of the version before is left out: " +
                                   changed.problem().sentence);
    } else {
      problems.push_back(
          {"lines", changed.problem().sentence, changed.problem().remedy});
    }
  }
  if (!inputs.changes.empty())
    inputs.assumptions.insert(
        inputs.assumptions.begin(),
        "Set by hand: " + joined(inputs.changes) + ".");
  return problems;
}

}  // namespace

Outcome<QuoteInputs> quote_inputs(const ShopFile& shop, const KeptCommission& commission,
                                  const QuoteWish& wish, Instant now) {
  const ShopSettings settings = load_settings(shop);
  const auto sale =
      sale_of(shop, settings, commission.currency, wish, settings.zone.date_of(now));
  const auto items = items_to_quote(shop, commission.id);
  Problems problems = sale ? amount_problems(*sale, wish) : sale.problems();
  if (items.empty())
    problems.push_back({"commission",
                        "Commission " + std::to_string(commission.number) + " has no items.",
                        "Add one with add_item."});
  if (!problems.empty()) return problems;
  QuoteInputs inputs;
  inputs.costs.currency = settings.currency;
  inputs.costs.rates = {settings.hourly_rate, settings.attended_share, settings.overhead_per_hour};
  inputs.costs.packing = settings.packing;
  inputs.costs.shipping = sale->at_home(wish.shipping.value_or(settings.shipping));
  inputs.costs.sold_at = sale->rate;
  if (sale->rate)
    inputs.assumptions.push_back("Worked out in " + settings.currency.code() + " and sold at " +
                                 to_text(*sale->rate) + ".");
  if (problems = add_items(shop, items, settings, *sale, inputs); !problems.empty())
    return problems;
  inputs.list = listed_price(shop, items, settings.currency);
  if (inputs.list) inputs.list->price = sale->abroad(inputs.list->price);
  const auto rule = price_rule(items, wish, *sale, settings.margin, inputs);
  if (!rule) return rule.problem();
  inputs.costs.terms = {*rule, sale->step(settings.price_step), tax_of(settings),
                        costing::PaymentFee{settings.payment_fee, std::nullopt},
                        settings.deposit_share};
  inputs.by_model = inputs.costs;
  if (problems = add_changes(wish, inputs); !problems.empty()) return problems;
  return inputs;
}

}  // namespace tangmark::db
