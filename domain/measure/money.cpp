// SPDX-License-Identifier: MIT
#include "domain/measure/money.h"

#include <algorithm>
#include <cassert>
#include <numeric>

#include "domain/measure/currency_table.h"
#include "domain/measure/figure.h"

namespace tangmark {
namespace {

using figures::Wide;

std::int64_t checked_money(Wide minor) {
  assert(figures::fits(minor) && "money is counted in 64 bits");
  return static_cast<std::int64_t>(minor);
}

char capital(char c) {
  return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

}  // namespace

Currency::Currency() : code_{'E', 'U', 'R'}, digits_(2) {}

Outcome<Currency> Currency::of(std::string_view code, std::string_view field) {
  std::string letters(figures::trimmed(code));
  std::transform(letters.begin(), letters.end(), letters.begin(), capital);
  const auto digits = minor_digits_of(letters);
  if (!digits) {
    return Problem{std::string(field), figures::quoted(code) + " is not a currency code.",
                   "Write the three letters of ISO 4217, such as EUR, USD or GBP."};
  }
  return Currency({letters[0], letters[1], letters[2]}, *digits);
}

std::int64_t Currency::minor_per_major() const {
  std::int64_t n = 1;
  for (int i = 0; i < digits_; ++i) n *= 10;
  return n;
}

Money operator+(Money a, Money b) {
  assert(a.currency_ == b.currency_ && "two currencies are never added");
  return {checked_money(Wide{a.minor_} + b.minor_), a.currency_};
}

Money operator-(Money a, Money b) {
  assert(a.currency_ == b.currency_ && "two currencies are never subtracted");
  return {checked_money(Wide{a.minor_} - b.minor_), a.currency_};
}

Money operator*(Money a, std::int64_t n) {
  return {checked_money(Wide{a.minor_} * n), a.currency_};
}

std::strong_ordering operator<=>(const Money& a, const Money& b) {
  assert(a.currency_ == b.currency_ && "two currencies are never compared by size");
  return a.minor_ <=> b.minor_;
}

Money scaled_half_even(Money a, std::int64_t numerator, std::int64_t denominator) {
  return {checked_money(figures::half_even(Wide{a.minor()} * numerator, denominator)),
          a.currency()};
}

Money share_of(Money a, Share share) {
  return scaled_half_even(a, share.millionths(), Share::whole().millionths());
}

Money up_to_step(Money a, Money step) {
  assert(a.currency() == step.currency() && "a price step is in the currency of the price");
  assert(step.minor() > 0 && "a price step is above zero");
  Wide steps = Wide{a.minor()} / step.minor();
  if (steps * step.minor() < a.minor()) ++steps;
  return {checked_money(steps * step.minor()), a.currency()};
}

std::vector<Money> split(Money a, const std::vector<std::int64_t>& weights) {
  Wide total = 0;
  for (std::int64_t w : weights) {
    assert(w >= 0 && "a weight is not below zero");
    total += w;
  }
  assert(total > 0 && "money is split by at least one weight");
  // Split the amount without its sign, so that a refund splits as the charge did.
  const Wide amount = a.minor() < 0 ? -Wide{a.minor()} : Wide{a.minor()};
  std::vector<std::int64_t> parts;
  std::vector<Wide> remainders;
  Wide left = amount;
  for (std::int64_t w : weights) {
    parts.push_back(checked_money(amount * w / total));
    remainders.push_back(amount * w % total);
    left -= parts.back();
  }
  std::vector<std::size_t> order(weights.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t x, std::size_t y) { return remainders[x] > remainders[y]; });
  for (std::size_t i = 0; left > 0; ++i, --left) ++parts[order[i]];
  std::vector<Money> split;
  for (std::int64_t part : parts) split.emplace_back(a.minor() < 0 ? -part : part, a.currency());
  return split;
}

}  // namespace tangmark
