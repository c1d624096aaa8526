// SPDX-License-Identifier: MIT
#include "domain/costing/price.h"

#include <algorithm>

namespace tangmark::costing {
namespace {

__extension__ typedef __int128 Wide;  // exact products of money and two or three shares
constexpr std::int64_t million = 1'000'000;
constexpr std::int64_t most_minor = 100'000'000'000;

Wide floor_div(Wide a, Wide b) {
  const Wide q = a / b;
  return a % b != 0 && (a < 0) != (b < 0) ? q - 1 : q;
}
Wide half_even_div(Wide a, Wide b) {
  const Wide q = floor_div(a, b), twice_rest = (a - q * b) * 2;
  return twice_rest > b || (twice_rest == b && q % 2 != 0) ? q + 1 : q;
}
Wide ceil_div(Wide a, Wide b) {
  return -floor_div(-a, b);
}

/// A price as an exact fraction of minor units.
struct Exact {
  Wide numerator, denominator;
};

/// The price without tax at which `cost + its own fee` leaves the margin or mark-up wanted.
/// With a = price per cost = over / under, fee share f and tax t:
/// N = a (C + each + f N (1 + t)), so N = a (C + each) / (1 - a f (1 + t)).
Outcome<Exact> exact_shown(std::int64_t over, std::int64_t under, Money cost,
                           const PriceTerms& terms) {
  const Wide base = cost.minor() + (terms.fee.each ? terms.fee.each->minor() : 0);
  const Wide taxed = million + terms.tax.rate.millionths();
  const Wide scale = Wide(million) * million;
  const Wide left = Wide(under) * scale - Wide(over) * terms.fee.of_total.millionths() * taxed;
  if (under <= 0 || left <= 0)
    return Problem{"price", "Margin and payment fee together leave nothing to pay the cost from.",
                   "Give a smaller margin or mark-up."};
  Exact price{Wide(over) * base * scale, left};
  // Taken down by a million first: the product with the tax must stay within 128 bits.
  if (terms.tax.shown == TaxShown::inclusive) price.numerator = price.numerator / million * taxed;
  return price;
}

Outcome<Exact> exact_shown(Money cost, const PriceTerms& terms) {
  if (const auto* margin = std::get_if<Margin>(&terms.rule))
    return exact_shown(million, million - margin->of_price.millionths(), cost, terms);
  if (const auto* markup = std::get_if<MarkUp>(&terms.rule))
    return exact_shown(million + markup->on_cost.millionths(), million, cost, terms);
  const auto* list = std::get_if<ListPrice>(&terms.rule);
  const Money typed = list ? list->shown : std::get<FixedPrice>(terms.rule).shown;
  return Exact{typed.minor(), 1};
}

void check_currency(Problems& found, const std::string& field, Money money, Money cost) {
  if (money.currency() != cost.currency())
    found.push_back({field,
                     "This amount is in " + money.currency().code() + " but the costs are in " +
                         cost.currency().code() + ".",
                     "Give it in " + cost.currency().code() + "."});
  else if (money.minor() < 0 || money.minor() > most_minor)
    found.push_back({field, "This amount is negative or too large.", "Check the amount."});
}

void check_share(Problems& found, const std::string& field, Share share, Share most) {
  if (share < Share{} || share > most)
    found.push_back({field, "This share must lie between 0 % and " + to_text(most) + ".",
                     "Check the percentage."});
}

Problems faults(Money cost, const PriceTerms& terms) {
  Problems found;
  check_currency(found, "cost", cost, cost);
  if (const auto* margin = std::get_if<Margin>(&terms.rule)) {
    if (margin->of_price < Share{} || margin->of_price >= Share::whole())
      found.push_back({"margin",
                       "A margin is a part of the price, so it must be from 0 % to below "
                       "100 %.",
                       "For more than the cost again, give a mark-up instead."});
  } else if (const auto* markup = std::get_if<MarkUp>(&terms.rule)) {
    check_share(found, "markup", markup->on_cost, Share::percent(10'000));
  } else if (const auto* fixed = std::get_if<FixedPrice>(&terms.rule)) {
    check_currency(found, "price", fixed->shown, cost);
  } else {
    check_currency(found, "price", std::get<ListPrice>(terms.rule).shown, cost);
  }
  if (terms.step) {
    check_currency(found, "step", *terms.step, cost);
    if (terms.step->is_zero())
      found.push_back({"step", "A price step must be above zero.", "Leave it empty for no step."});
  }
  check_share(found, "tax", terms.tax.rate, Share::whole());
  check_share(found, "fee", terms.fee.of_total, Share::whole());
  if (terms.fee.each) check_currency(found, "fee", *terms.fee.each, cost);
  if (const auto* share = std::get_if<Share>(&terms.deposit))
    check_share(found, "deposit", *share, Share::whole());
  if (const auto* sum = std::get_if<Money>(&terms.deposit))
    check_currency(found, "deposit", *sum, cost);
  return found;
}

Share ratio(Money part, Money whole) {
  if (whole.is_zero()) return Share{};
  const std::int64_t sign = whole.minor() < 0 ? -1 : 1;
  return Share::millionths(static_cast<std::int64_t>(
      half_even_div(Wide(part.minor()) * million * sign, Wide(whole.minor()) * sign)));
}

/// Everything that follows once the price shown is settled.
Price settled(Money shown, Money cost, const PriceTerms& terms) {
  Price p;
  p.shown = shown;
  const std::int64_t rate = terms.tax.rate.millionths();
  if (terms.tax.shown == TaxShown::exclusive) {
    p.without_tax = shown;
    p.tax = share_of(shown, terms.tax.rate);
  } else {
    p.tax = scaled_half_even(shown, rate, million + rate);
    p.without_tax = shown - p.tax;
  }
  p.total = p.without_tax + p.tax;
  const Money none(0, cost.currency());
  p.fee = p.total.is_zero() ? none : share_of(p.total, terms.fee.of_total);
  if (terms.fee.each && !p.total.is_zero()) p.fee += *terms.fee.each;
  p.cost = cost + p.fee;
  p.margin = ratio(p.without_tax - p.cost, p.without_tax);
  p.markup = ratio(p.without_tax - p.cost, p.cost);
  p.deposit = none;
  if (const auto* share = std::get_if<Share>(&terms.deposit)) p.deposit = share_of(p.total, *share);
  if (const auto* sum = std::get_if<Money>(&terms.deposit)) p.deposit = std::min(*sum, p.total);
  return p;
}

Outcome<Money> to_money(Wide minor, Currency currency) {
  if (minor > most_minor * 1000)
    return Problem{"price", "The price would be too large to count.", "Check margin and fees."};
  return Money(static_cast<std::int64_t>(minor), currency);
}

Wide paid_seconds_millionths(const PaidTime& time) {
  return Wide(time.hands_on.count()) * million +
         Wide(time.attended.count()) * time.attended_share.millionths();
}

}  // namespace

Outcome<Price> price_for(Money cost, const PriceTerms& terms) {
  if (Problems found = faults(cost, terms); !found.empty()) return found;
  const Outcome<Exact> exact = exact_shown(cost, terms);
  if (!exact) return exact.problems();
  const bool to_step = terms.step && !std::holds_alternative<FixedPrice>(terms.rule);
  const Wide minor = to_step
                         ? ceil_div(exact->numerator, exact->denominator * terms.step->minor()) *
                               terms.step->minor()
                         : half_even_div(exact->numerator, exact->denominator);
  const Outcome<Money> shown = to_money(minor, cost.currency());
  if (!shown) return shown.problems();
  return settled(*shown, cost, terms);
}

Outcome<Money> floor_price(Money cost, const PriceTerms& terms) {
  PriceTerms bare = terms;
  bare.rule = Margin{};
  bare.step.reset();
  if (Problems found = faults(cost, bare); !found.empty()) return found;
  const Outcome<Exact> exact = exact_shown(cost, bare);
  if (!exact) return exact.problems();
  return to_money(ceil_div(exact->numerator, exact->denominator), cost.currency());
}

std::optional<Money> earned_per_hour(Money without_tax, Money cost_but_own_labour,
                                     const PaidTime& time) {
  const Wide paid = paid_seconds_millionths(time);
  if (paid <= 0) return std::nullopt;
  const Money left = without_tax - cost_but_own_labour;
  return Money(static_cast<std::int64_t>(half_even_div(Wide(left.minor()) * 3600 * million, paid)),
               left.currency());
}

Money pay_for(Money per_hour, const PaidTime& time) {
  return Money(static_cast<std::int64_t>(half_even_div(
                   Wide(per_hour.minor()) * paid_seconds_millionths(time), Wide(3600) * million)),
               per_hour.currency());
}

}  // namespace tangmark::costing
