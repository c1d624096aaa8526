// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "domain/commission/commission_id.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/kept.h"
#include "domain/measure/money.h"
#include "domain/measure/share.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

enum class QuoteAnswer { accepted, declined, superseded };

/// Cost lines are the shop's own; price lines are what the buyer reads.
enum class QuoteSide { cost, price };

struct QuoteLine {
  QuoteSide side = QuoteSide::cost;
  std::int64_t position = 0;  ///< within its side
  std::string kind{};         ///< word of the cost line's kind
  std::string text{};
  std::optional<std::string> quantity{}, unit{};
  std::optional<Money> each{};
  Money amount{};
  friend bool operator==(const QuoteLine&, const QuoteLine&) = default;
};

/// One version of a quote, frozen when made. Cost lines sum to cost, price lines to price.
struct Quote {
  CommissionId commission;
  std::int64_t version = 1;
  Instant made_at{};
  CalendarDate valid_until{};
  Money cost{};
  Money price{};  ///< before tax when tax is exclusive, with it when inclusive
  Money tax{}, total{}, deposit{};
  Money floor{};  ///< below this the maker earns less than the own rate
  Money earned_per_hour{};
  TaxMode tax_mode = TaxMode::none;
  Share tax_rate{};
  std::string price_how{};  ///< "margin 20 %", "fixed by hand", "list price"
  Duration hands_on{}, attended{}, unattended{};
  std::optional<std::string> assumptions{};
  std::optional<std::string> changes{};  ///< what was set by hand, "line = value" on each line
  std::optional<std::string> rate{};     ///< of exchange, when it is not in the shop's currency
  std::optional<Instant> sent_at{}, answered_at{};
  std::optional<QuoteAnswer> answer{};
  std::vector<QuoteLine> lines{};
  friend bool operator==(const Quote&, const Quote&) = default;
};
using KeptQuote = Kept<Quote, QuoteId>;

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::QuoteAnswer> =
    std::array{std::pair{commission::QuoteAnswer::accepted, std::string_view{"accepted"}},
               std::pair{commission::QuoteAnswer::declined, std::string_view{"declined"}},
               std::pair{commission::QuoteAnswer::superseded, std::string_view{"superseded"}}};
template <>
inline constexpr auto trade_words<commission::QuoteSide> =
    std::array{std::pair{commission::QuoteSide::cost, std::string_view{"cost"}},
               std::pair{commission::QuoteSide::price, std::string_view{"price"}}};
}  // namespace tangmark
