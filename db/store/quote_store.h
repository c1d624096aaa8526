// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/quote.h"

namespace tangmark::db {

std::optional<commission::KeptQuote> load_quote(const ShopFile& shop, commission::QuoteId id);
/// All versions of a commission's quote with their lines, the newest first.
std::vector<commission::KeptQuote> quotes_of(const ShopFile& shop,
                                             commission::CommissionId commission);
/// The newest version, and the one the buyer accepted.
std::optional<commission::KeptQuote> latest_quote(const ShopFile& shop,
                                                  commission::CommissionId commission);
std::optional<commission::KeptQuote> accepted_quote(const ShopFile& shop,
                                                    commission::CommissionId commission);

/// Stores a quote with its lines; they are frozen from then on.
commission::QuoteId insert_quote(const ShopFile& shop, const commission::Quote& quote);
/// A sum of a quote in the shop's currency, at the rate the quote was made at; none for a foreign
/// one without a rate.
std::optional<Money> at_home(const commission::Quote& quote, Money sum, Currency shop_currency);
void store_quote_sent(const ShopFile& shop, commission::QuoteId id, Instant at);
void store_quote_answer(const ShopFile& shop, commission::QuoteId id,
                        commission::QuoteAnswer answer, Instant at);

}  // namespace tangmark::db
