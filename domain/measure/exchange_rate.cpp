// SPDX-License-Identifier: MIT
#include "domain/measure/exchange_rate.h"

#include "domain/measure/share.h"

namespace tangmark {
namespace {

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

Problem not_a_rate(std::string_view text, Currency from, Currency to, std::string_view field) {
  return {std::string(field), "\"" + std::string(text) + "\" is no rate between these currencies.",
          "Write it as: 1 " + from.code() + " = 0.92 " + to.code() + "."};
}

}  // namespace

Outcome<ExchangeRate> parse_exchange_rate(std::string_view text, Currency from, Currency to,
                                          std::string_view field) {
  std::string_view figure = trimmed(text);
  if (const auto equals = figure.find('='); equals != std::string_view::npos) {
    if (trimmed(figure.substr(0, equals)) != "1 " + from.code())
      return not_a_rate(text, from, to, field);
    figure = trimmed(figure.substr(equals + 1));
    if (!figure.ends_with(to.code())) return not_a_rate(text, from, to, field);
  }
  if (figure.ends_with(to.code())) figure = trimmed(figure.substr(0, figure.size() - 3));
  const auto value = parse_quantity(figure, field);
  if (!value || value->millionths() <= 0) return not_a_rate(text, from, to, field);
  return ExchangeRate{from, to, value->millionths()};
}

std::string to_text(const ExchangeRate& rate) {
  return "1 " + rate.from.code() + " = " + quantity_text(Share::millionths(rate.millionths)) + " " +
         rate.to.code();
}

Money exchanged(Money amount, const ExchangeRate& rate) {
  // minor x rate x (minor units of `to` per minor unit of `from`), the two in one fraction.
  const Money minor(amount.minor(), rate.to);
  return scaled_half_even(minor, rate.millionths * rate.to.minor_per_major(),
                          1'000'000 * rate.from.minor_per_major());
}

Money exchanged_back(Money amount, const ExchangeRate& rate) {
  const Money minor(amount.minor(), rate.from);
  return scaled_half_even(minor, 1'000'000 * rate.from.minor_per_major(),
                          rate.millionths * rate.to.minor_per_major());
}

}  // namespace tangmark
