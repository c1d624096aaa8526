// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/commission.h"
#include "domain/commission/item.h"
#include "domain/commission/quote.h"
#include "domain/costing/build_up.h"
#include "domain/costing/line_change.h"

namespace tangmark::db {

/// What the maker sets for this quote alone; everything else is the shop's usual.
struct QuoteWish {
  std::optional<Money> price;   ///< fixed by hand, as shown to the buyer
  std::optional<Share> margin;  ///< of the price
  std::optional<Share> markup;  ///< on the cost
  bool by_list = false;         ///< the models' list prices
  std::optional<Money> shipping;
  std::optional<std::int64_t> valid_days;
  std::optional<std::string> rate;  ///< of exchange, as the bank states it; else the one on record
  std::vector<costing::LineChange> changes;
  /// Changes that name a line which is no longer there are left out and told instead of refused.
  bool carried_over = false;
};

/// What the list asks of a commission, in words too; none when an item has no model with a list
/// price.
struct Listed {
  Money price;
  std::string words;  ///< "255.00 + 20 mm x 1.00 + W2 40.00"
};
/// The inputs of a quote, and in words what was assumed where the record is silent.
struct QuoteInputs {
  costing::CostInputs costs;     ///< with the changes by hand
  costing::CostInputs by_model;  ///< without them
  std::vector<costing::LineChange> changes;
  std::optional<Listed> list;  ///< what the price list asks, in the currency sold in
  std::string price_how;       ///< "margin 20 %"
  std::vector<std::string> assumptions;
};

/// Gathers what a commission's items cost from models (or from the routes of blades begun without
/// one), steel at the price of the newest lot of its grade, billets made here at what went into
/// them, firings by the kilns' values shared by the load the shop expects, hours, uses and losses
/// as the maker accepted them; what the record would change is told and counts nothing. A
/// commission in a foreign currency is worked out in the shop's and sold at the rate of the day.
/// Refuses a commission without items, an item with neither model nor route, and a currency without
/// a rate.
Outcome<QuoteInputs> quote_inputs(const ShopFile& shop,
                                  const commission::KeptCommission& commission,
                                  const QuoteWish& wish, Instant now);

/// In the shop's currency.
std::optional<Listed> listed_price(const ShopFile& shop,
                                   const std::vector<commission::KeptItem>& items,
                                   Currency currency);

/// A quote that is worked out and not stored.
struct QuoteDraft {
  QuoteInputs inputs;
  costing::CostSheet sheet;
  commission::Quote quote;  ///< with its lines, as make_quote would store it
};
Outcome<QuoteDraft> draft_quote(const ShopFile& shop, const commission::KeptCommission& commission,
                                const QuoteWish& wish, Instant now);

}  // namespace tangmark::db
