// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/share.h"

namespace tangmark {

/// An ISO 4217 currency: three capital letters and the number of minor digits (EUR 2, JPY 0, KWD
/// 3). Source: ISO 4217:2015 list one, active currencies.
class Currency {
 public:
  /// The currency of a code, lower case accepted. Refuses a code that is not in ISO 4217, and those
  /// that it lists without a minor unit (XAU, XXX).
  static Outcome<Currency> of(std::string_view code, std::string_view field = "currency");
  Currency();  ///< EUR
  std::string code() const { return {code_.data(), 3}; }
  int minor_digits() const { return digits_; }
  std::int64_t minor_per_major() const;
  friend bool operator==(const Currency&, const Currency&) = default;

 private:
  Currency(std::array<char, 3> code, int digits) : code_(code), digits_(digits) {}
  std::array<char, 3> code_;
  int digits_;
};

/// Exact money: integer minor units of one currency. Adding two currencies is a mistake in the
/// program and asserts; overflow asserts too (about 9e16 major units).
class Money {
 public:
  Money() = default;  ///< zero EUR
  Money(std::int64_t minor, Currency currency) : minor_(minor), currency_(currency) {}
  std::int64_t minor() const { return minor_; }
  Currency currency() const { return currency_; }
  bool is_zero() const { return minor_ == 0; }

  friend Money operator+(Money a, Money b);
  friend Money operator-(Money a, Money b);
  friend Money operator-(Money a) { return {-a.minor_, a.currency_}; }
  friend Money operator*(Money a, std::int64_t n);  ///< n of the same thing, exact
  Money& operator+=(Money b) { return *this = *this + b; }
  Money& operator-=(Money b) { return *this = *this - b; }
  friend bool operator==(const Money&, const Money&) = default;
  friend std::strong_ordering operator<=>(const Money& a, const Money& b);

 private:
  std::int64_t minor_ = 0;
  Currency currency_;
};

/// a * numerator / denominator, rounded half to even to the minor unit. denominator > 0.
Money scaled_half_even(Money a, std::int64_t numerator, std::int64_t denominator);
/// A share of a, rounded half to even.
Money share_of(Money a, Share share);
/// The smallest multiple of step that is not below a. step > 0, same currency.
Money up_to_step(Money a, Money step);
/// Splits a by whole weights so that the parts sum to a exactly (largest remainder first).
std::vector<Money> split(Money a, const std::vector<std::int64_t>& weights);

/// Reads "12.50", "12.50 EUR", "EUR 1 290.00", "1290", "1'290.00"; a bare amount is in `usual`.
/// Thousands marks are a space, a thin space or an apostrophe; a comma is refused because it means
/// two things. More digits than the currency has are refused, so is a negative amount and one above
/// a million million.
Outcome<Money> parse_money(std::string_view text, Currency usual, std::string_view field);
/// "1 290.00 EUR": no-break thin groups, always all minor digits.
std::string to_text(Money money);
/// "1 290.00" without the code, for columns whose head names the currency.
std::string amount_text(Money money);

}  // namespace tangmark
