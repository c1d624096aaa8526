// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <variant>

#include "domain/measure/money.h"
#include "domain/measure/outcome.h"
#include "domain/measure/share.h"
#include "domain/measure/when.h"

namespace tangmark::costing {

/// Price = cost / (1 - margin): the margin is a part of the price without tax.
struct Margin {
  Share of_price;
  friend bool operator==(const Margin&, const Margin&) = default;
};
/// Price = cost x (1 + mark-up): the mark-up is a part of the cost.
struct MarkUp {
  Share on_cost;
  friend bool operator==(const MarkUp&, const MarkUp&) = default;
};
/// A price the maker typed. It is what the buyer sees and is never rounded.
struct FixedPrice {
  Money shown;
  friend bool operator==(const FixedPrice&, const FixedPrice&) = default;
};
/// A price worked out from the shop's price list; what the buyer sees, rounded up to the step.
struct ListPrice {
  Money shown;
  friend bool operator==(const ListPrice&, const ListPrice&) = default;
};
using PriceRule = std::variant<Margin, MarkUp, FixedPrice, ListPrice>;

/// Exclusive: tax is added to the price shown. Inclusive: the price shown holds it.
enum class TaxShown { exclusive, inclusive };
struct Tax {
  Share rate;  ///< entered by the maker; the tax office decides
  TaxShown shown = TaxShown::exclusive;
  friend bool operator==(const Tax&, const Tax&) = default;
};

/// What taking the payment costs: a share of everything the buyer pays, and a sum each time.
struct PaymentFee {
  Share of_total;
  std::optional<Money> each;
  friend bool operator==(const PaymentFee&, const PaymentFee&) = default;
};

/// None, a share of the total, or a fixed sum (never more than the total).
using DepositRule = std::variant<std::monostate, Share, Money>;

struct PriceTerms {
  PriceRule rule = Margin{};
  std::optional<Money> step;  ///< round up to whole multiples of this; none rounds half to even
  Tax tax;
  PaymentFee fee;
  DepositRule deposit;
  friend bool operator==(const PriceTerms&, const PriceTerms&) = default;
};

struct Price {
  Money shown;  ///< what the buyer is told: without tax when exclusive, with it when inclusive
  Money without_tax;
  Money tax;
  Money total;  ///< what the buyer pays: without_tax + tax
  Money deposit;
  Money fee;     ///< of taking the payment
  Money cost;    ///< the cost given plus the fee
  Share margin;  ///< (without_tax - cost) / without_tax after all rounding; 0 at a price of 0
  Share markup;  ///< (without_tax - cost) / cost after all rounding; 0 at a cost of 0
  friend bool operator==(const Price&, const Price&) = default;
};

/// The price for a cost that does not yet hold the payment fee. The fee depends on the price, which
/// depends on the fee: the two are solved together, exactly, before the one rounding of the price.
/// Refuses a margin of 100 % or more (with its fees), negative shares, a step of zero, mixed
/// currencies, and costs above 100,000,000,000 minor units.
Outcome<Price> price_for(Money cost_before_fee, const PriceTerms& terms);

/// The shown price below which the maker earns less than the hourly rate already in the cost: no
/// margin, no step, rounded up to the minor unit.
Outcome<Money> floor_price(Money cost_before_fee, const PriceTerms& terms);

/// Hours that are paid: hands-on in full, attended wait at the maker's share.
struct PaidTime {
  Duration hands_on{};
  Duration attended{};
  Share attended_share;
  friend bool operator==(const PaidTime&, const PaidTime&) = default;
};

/// (price without tax - all cost but own labour) / (hands-on + attended x share), half to even.
/// None when no hours are planned.
std::optional<Money> earned_per_hour(Money without_tax, Money cost_but_own_labour,
                                     const PaidTime& time);
/// What the paid time costs at an hourly rate, half to even.
Money pay_for(Money per_hour, const PaidTime& time);

}  // namespace tangmark::costing
