// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <array>
#include <optional>

#include "domain/measure/figure.h"
#include "domain/measure/money.h"
#include "domain/measure/utf8.h"

namespace tangmark {
namespace {

constexpr std::string_view thin_space = "\xE2\x80\xAF";  // narrow no-break space, U+202F
constexpr std::array<std::string_view, 6> thousands_marks = {
    " ", "\xC2\xA0", thin_space, "\xE2\x80\x89", "'", "\xE2\x80\x99"};
constexpr std::int64_t most_major = 1'000'000'000'000;

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

Problem refuse(std::string_view text, std::string_view field, std::string_view why) {
  return {std::string(field), figures::quoted(text) + std::string(why),
          "Write an amount such as 1290.00 or 1 290.00 EUR."};
}

// Cuts a code of letters off one end of the amount; nothing when there is none.
std::string_view take_code(std::string_view& amount) {
  std::size_t n = 0;
  while (n < amount.size() && is_letter(amount[n])) ++n;
  if (n > 0) {
    const std::string_view code = amount.substr(0, n);
    amount = figures::trimmed(amount.substr(n));
    return code;
  }
  while (n < amount.size() && is_letter(amount[amount.size() - 1 - n])) ++n;
  const std::string_view code = amount.substr(amount.size() - n);
  amount = figures::trimmed(amount.substr(0, amount.size() - n));
  return code;
}

// The whole part without its thousands marks; nothing when the groups are not one to three digits
// and then threes.
std::optional<std::string> without_marks(std::string_view whole) {
  std::string digits;
  std::size_t group = 0;
  bool marked = false;
  while (!whole.empty()) {
    if (is_digit(whole.front())) {
      digits.push_back(whole.front());
      ++group;
      whole.remove_prefix(1);
      continue;
    }
    std::size_t mark = 0;
    for (std::string_view m : thousands_marks) {
      if (whole.starts_with(m)) mark = m.size();
    }
    if (mark == 0 || group == 0 || group > 3 || (marked && group != 3)) return std::nullopt;
    marked = true;
    group = 0;
    whole.remove_prefix(mark);
  }
  if (digits.empty() || (marked && group != 3)) return std::nullopt;
  return digits;
}

Outcome<Money> read_amount(std::string_view amount, Currency currency, std::string_view text,
                           std::string_view field) {
  const std::size_t point = amount.find('.');
  const auto whole = without_marks(amount.substr(0, point));
  std::string decimals(point == std::string_view::npos ? "" : amount.substr(point + 1));
  const bool bare_point = point != std::string_view::npos && decimals.empty();
  if (!whole || bare_point || decimals.find_first_not_of("0123456789") != std::string::npos) {
    return refuse(text, field, " is not an amount of money.");
  }
  const auto digits = static_cast<std::size_t>(currency.minor_digits());
  if (decimals.size() > digits) {
    const std::string remedy = digits == 0
                                   ? fmt::format("{} is written without decimals.", currency.code())
                                   : fmt::format("Write at most {} decimals.", digits);
    return Problem{
        std::string(field),
        fmt::format("{} has more decimals than {} has.", figures::quoted(text), currency.code()),
        remedy};
  }
  decimals.resize(digits, '0');
  std::int64_t minor = 0;
  const std::int64_t most = most_major * currency.minor_per_major();
  for (char c : *whole + decimals) {
    if (minor > most) break;
    minor = minor * 10 + (c - '0');
  }
  if (minor > most) return refuse(text, field, " is more than a million million.");
  return Money(minor, currency);
}

}  // namespace

Outcome<Money> parse_money(std::string_view text, Currency usual, std::string_view field) {
  std::string_view amount = figures::trimmed(text);
  if (amount.empty()) {
    return Problem{std::string(field), "There is no amount here.",
                   "Write an amount such as 1290.00 or 1 290.00 EUR."};
  }
  if (amount.find(',') != std::string_view::npos) {
    return Problem{std::string(field),
                   figures::quoted(text) + " has a comma, which means two things.",
                   "Write decimals after a point and leave the thousands unmarked or spaced, such "
                   "as 1 290.50."};
  }
  const std::string_view code = take_code(amount);
  if (amount.starts_with('-') || amount.starts_with("\xE2\x88\x92")) {
    return refuse(text, field, " is below zero.");
  }
  if (code.empty()) return read_amount(amount, usual, text, field);
  const auto currency = Currency::of(code, field);
  if (!currency) return currency.problems();
  return read_amount(amount, *currency, text, field);
}

std::string amount_text(Money money) {
  std::string text = figures::fixed(money.minor(), money.currency().minor_digits());
  const std::size_t first = money.minor() < 0 ? 1 : 0;
  const std::size_t point = text.find('.');
  std::size_t at = point == std::string::npos ? text.size() : point;
  while (at > first + 3) {
    at -= 3;
    text.insert(at, thin_space);
  }
  return text;
}

std::string to_text(Money money) {
  return amount_text(money) + " " + money.currency().code();
}

}  // namespace tangmark
