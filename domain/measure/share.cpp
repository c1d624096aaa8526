// SPDX-License-Identifier: MIT
#include "domain/measure/share.h"

#include <array>

#include "domain/measure/figure.h"

namespace tangmark {
namespace {

constexpr figures::Unit percent = {"%", 10'000};
constexpr figures::Unit fraction = {"", 1'000'000};
constexpr std::array<figures::Unit, 2> share_units = {{percent, {"percent", 10'000}}};

constexpr figures::Kind share_kind = {.noun = "a share",
                                      .measure = "share",
                                      .example = "40 % or 0.4",
                                      .units = share_units,
                                      .most = 1'000'000'000,
                                      .most_text = "100000 %"};

constexpr figures::Kind count_kind = {.noun = "a count",
                                      .measure = "count",
                                      .example = "0.5 or 12",
                                      .units = {},
                                      .most = 1'000'000'000'000,
                                      .most_text = "a million"};

}  // namespace

Outcome<Share> parse_share(std::string_view text, std::string_view field) {
  const auto term = figures::read_term(text, share_kind, field);
  if (!term) return term.problems();
  if (!term->rest.empty()) return figures::not_a(text, share_kind, field);
  const bool bare = term->unit == nullptr;
  if (bare && term->figure.numerator > term->figure.denominator) {
    return Problem{std::string(field),
                   figures::quoted(text) + " could be a percentage or a multiple.",
                   "Write the % sign, such as 40 %, or a fraction up to 1, such as 0.4."};
  }
  const auto millionths = figures::counts(term->figure, bare ? fraction : percent);
  if (millionths > share_kind.most) return figures::too_much(text, share_kind, field);
  return Share::millionths(static_cast<std::int64_t>(millionths));
}

Outcome<Share> parse_quantity(std::string_view text, std::string_view field) {
  const auto millionths = figures::read_quantity(text, count_kind, fraction, field);
  if (!millionths) return millionths.problems();
  return Share::millionths(*millionths);
}

std::string quantity_text(Share quantity) {
  return figures::shortest(quantity.millionths(), 6);
}

std::string to_text(Share share) {
  return figures::shortest(share.millionths(), 4) + " %";
}

}  // namespace tangmark
