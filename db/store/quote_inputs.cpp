// SPDX-License-Identifier: MIT
#include "db/store/quote_inputs.h"

#include <algorithm>

#include "db/store/item_store.h"
#include "db/store/model_store.h"
#include "db/store/price_extra_store.h"
#include "db/store/quote_item.h"
#include "db/store/settings_store.h"
#include "domain/costing/price_list.h"

namespace tangmark::db {
namespace {

using namespace commission;

// The list prices of all items, each with what its blade is longer than the model's, its steel and
// its options; nothing when one of them has no list price.
std::optional<Money> listed(const ShopFile& shop, const std::vector<KeptItem>& items,
                            Currency currency) {
  Money sum(0, currency);
  for (const KeptItem& item : items) {
    const auto model = item.model ? load_model(shop, *item.model) : std::nullopt;
    if (!model || !model->price) return std::nullopt;
    const std::int64_t longer = (item.blade_length - model->blade_length).nanometres();
    sum += *model->price;
    if (model->price_per_mm) sum += scaled_half_even(*model->price_per_mm, longer, 1'000'000);
    if (item.grade)
      if (const auto steel = price_extra(shop, ExtraKind::steel, *item.grade, item.model);
          steel && steel->price.currency() == currency)
        sum += steel->price;
    for (const ItemOption& option : options_of_item(shop, item.id))
      if (option.price.currency() == currency) sum += option.price;
  }
  return sum;
}

std::optional<Money> asked_for(const std::vector<KeptItem>& items, Currency currency) {
  Money sum(0, currency);
  for (const KeptItem& item : items) {
    if (!item.asking) return std::nullopt;
    sum += *item.asking;
  }
  return sum;
}

Outcome<costing::PriceRule> price_rule(const ShopFile& shop, const std::vector<KeptItem>& items,
                                       const QuoteWish& wish, const ShopSettings& settings,
                                       Currency currency, std::string& how) {
  if (wish.price) {
    how = "fixed by hand";
    return costing::PriceRule(costing::FixedPrice{*wish.price});
  }
  if (wish.by_list) {
    const auto list = listed(shop, items, currency);
    if (!list)
      return Problem{"by_list", "Not every item has a model with a list price.",
                     "Give a margin or a price."};
    how = "list price";
    return costing::PriceRule(costing::ListPrice{*list});
  }
  if (wish.markup) {
    how = "mark-up " + to_text(*wish.markup);
    return costing::PriceRule(costing::MarkUp{*wish.markup});
  }
  if (!wish.margin)
    if (const auto asking = asked_for(items, currency)) {
      how = "fixed by hand";
      return costing::PriceRule(costing::FixedPrice{*asking});
    }
  const Share margin = wish.margin.value_or(settings.margin);
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

Problems currency_problems(const ShopSettings& settings, Currency currency, const QuoteWish& wish) {
  Problems problems;
  if (settings.currency != currency)
    problems.push_back({"commission",
                        "The commission is in " + currency.code() +
                            " and the shop reckons its costs in " + settings.currency.code() + ".",
                        "Open the commission in " + settings.currency.code() + "."});
  for (const auto& [field, amount] :
       {std::pair{"price", wish.price}, std::pair{"shipping", wish.shipping}})
    if (amount && amount->currency() != currency)
      problems.push_back(
          {field, "The commission is in " + currency.code() + ".", "Give the amount in it."});
  return problems;
}

std::vector<KeptItem> items_to_quote(const ShopFile& shop, CommissionId commission) {
  std::vector<KeptItem> items = items_of(shop, commission);
  std::erase_if(items, [](const KeptItem& item) { return item.cancelled_on.has_value(); });
  return items;
}

}  // namespace

Outcome<QuoteInputs> quote_inputs(const ShopFile& shop, const KeptCommission& commission,
                                  const QuoteWish& wish) {
  const ShopSettings settings = load_settings(shop);
  const Currency currency = commission.currency;
  Problems problems = currency_problems(settings, currency, wish);
  const auto items = items_to_quote(shop, commission.id);
  if (items.empty())
    problems.push_back({"commission",
                        "Commission " + std::to_string(commission.number) + " has no items.",
                        "Add one with add_item."});
  if (!problems.empty()) return problems;

  QuoteInputs inputs;
  inputs.costs.currency = currency;
  inputs.costs.rates = {settings.hourly_rate, settings.attended_share, settings.overhead_per_hour};
  inputs.costs.packing = settings.packing;
  inputs.costs.shipping = wish.shipping.value_or(settings.shipping);
  for (const KeptItem& item : items) {
    auto costed = costed_item(shop, item, settings);
    if (!costed) {
      for (Problem& problem : costed.problems()) problems.push_back(std::move(problem));
      continue;
    }
    inputs.costs.packing += costed->packing;
    inputs.costs.items.push_back(costed->item);
    for (const std::string& words : costed->assumptions) inputs.assumptions.push_back(words);
  }
  if (!problems.empty()) return problems;
  const auto rule = price_rule(shop, items, wish, settings, currency, inputs.price_how);
  if (!rule) return rule.problem();
  inputs.costs.terms = {*rule, settings.price_step, tax_of(settings),
                        costing::PaymentFee{settings.payment_fee, std::nullopt},
                        settings.deposit_share};
  return inputs;
}

}  // namespace tangmark::db
