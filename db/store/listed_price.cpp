// SPDX-License-Identifier: MIT
// The price by formula: what the models' list, the length, the steel and the options come to.
#include "db/store/model_store.h"
#include "db/store/price_extra_store.h"
#include "db/store/quote_inputs.h"
#include "domain/costing/price_list.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::optional<costing::ListFormula> formula_of(const ShopFile& shop, const KeptItem& item,
                                               Currency currency) {
  const auto model = item.model ? load_model(shop, *item.model) : std::nullopt;
  if (!model || !model->price || model->price->currency() != currency) return std::nullopt;
  costing::ListFormula formula{*model->price, model->price_per_mm.value_or(Money(0, currency)),
                               model->blade_length, {}};
  if (item.grade)
    if (const auto steel = price_extra(shop, ExtraKind::steel, *item.grade, item.model);
        steel && steel->price.currency() == currency)
      formula.extras.push_back({steel->name, steel->price});
  for (const ItemOption& option : options_of_item(shop, item.id))
    if (option.price.currency() == currency) formula.extras.push_back({option.name, option.price});
  return formula;
}

}  // namespace

std::optional<Listed> listed_price(const ShopFile& shop, const std::vector<KeptItem>& items,
                                   Currency currency) {
  Listed listed{Money(0, currency), ""};
  for (const KeptItem& item : items) {
    const auto formula = formula_of(shop, item, currency);
    const auto price = formula ? costing::list_price(*formula, item.blade_length)
                               : Outcome<Money>(Problem{"price", "", ""});
    if (!price) return std::nullopt;
    listed.price += *price;
    listed.words += (listed.words.empty() ? "" : "; ") + item.title + ": " +
                    costing::in_words(*formula, item.blade_length);
  }
  return listed;
}

}  // namespace tangmark::db
