// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/commission.h"
#include "domain/commission/quote.h"
#include "domain/costing/build_up.h"

namespace tangmark::db {

/// What the maker sets for this quote alone; everything else is the shop's usual.
struct QuoteWish {
  std::optional<Money> price;   ///< fixed by hand, as shown to the buyer
  std::optional<Share> margin;  ///< of the price
  std::optional<Share> markup;  ///< on the cost
  bool by_list = false;         ///< the models' list prices
  std::optional<Money> shipping;
  std::optional<std::int64_t> valid_days;
};

/// The inputs of a quote, and in words what was assumed where the record is silent.
struct QuoteInputs {
  costing::CostInputs costs;
  std::string price_how;  ///< "margin 20 %"
  std::vector<std::string> assumptions;
};

/// Gathers what a commission's items cost from models (or from the routes of blades begun without
/// one), steel at the price of the newest lot of its grade, billets made here at what went into
/// them, firings by the kilns' values shared by the load the shop expects, hours shrunk toward the
/// record. Refuses a commission without items, an item with neither model nor route, and mixed
/// currencies.
Outcome<QuoteInputs> quote_inputs(const ShopFile& shop,
                                  const commission::KeptCommission& commission,
                                  const QuoteWish& wish);

/// A quote that is worked out and not stored.
struct QuoteDraft {
  QuoteInputs inputs;
  costing::CostSheet sheet;
  commission::Quote quote;  ///< with its lines, as make_quote would store it
};
Outcome<QuoteDraft> draft_quote(const ShopFile& shop, const commission::KeptCommission& commission,
                                const QuoteWish& wish, Instant now);

}  // namespace tangmark::db
