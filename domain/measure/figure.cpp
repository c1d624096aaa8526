// SPDX-License-Identifier: MIT
#include "domain/measure/figure.h"

#include <array>
#include <cassert>
#include <cstdlib>
#include <optional>

#include "domain/measure/utf8.h"

namespace tangmark::figures {
namespace {

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

constexpr std::array<std::string_view, 9> spaces = {
    " ", "\t", "\n", "\r", "\v", "\f", "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89"};

std::string_view without_leading_space(std::string_view text) {
  for (bool found = true; found;) {
    found = false;
    for (std::string_view s : spaces) {
      if (!text.starts_with(s)) continue;
      text.remove_prefix(s.size());
      found = true;
    }
  }
  return text;
}

bool same_letters(std::string_view a, std::string_view b) {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (lower(a[i]) != lower(b[i])) return false;
  }
  return true;
}

// Digits at the front of rest, added behind value; false when they are more than 18.
bool take_digits(std::string_view& rest, std::int64_t& value, int& count) {
  constexpr std::int64_t most = 100'000'000'000'000'000;
  for (; !rest.empty() && is_digit(rest.front()); rest.remove_prefix(1), ++count) {
    if (value >= most) return false;
    value = value * 10 + (rest.front() - '0');
  }
  return true;
}

std::optional<std::int64_t> take_whole(std::string_view& rest) {
  std::int64_t value = 0;
  int count = 0;
  if (!take_digits(rest, value, count) || count == 0) return std::nullopt;
  return value;
}

// "/64" behind a numerator; nullopt and rest unchanged when there is none.
std::optional<std::int64_t> take_denominator(std::string_view& rest) {
  std::string_view ahead = without_leading_space(rest);
  if (!ahead.starts_with('/')) return std::nullopt;
  ahead = without_leading_space(ahead.substr(1));
  const auto denominator = take_whole(ahead);
  if (denominator) rest = ahead;
  return denominator;
}

enum class Reading { good, no_figure, too_long, by_zero };

Reading make_fraction(std::int64_t whole, std::int64_t numerator, std::int64_t denominator,
                      Exact& exact) {
  if (denominator == 0) return Reading::by_zero;
  const Wide sum = Wide{whole} * denominator + numerator;
  if (!fits(sum)) return Reading::too_long;
  exact = {static_cast<std::int64_t>(sum), denominator};
  return Reading::good;
}

Reading take_decimals(std::string_view& rest, std::int64_t whole, int whole_digits, Exact& exact) {
  int decimals = 0;
  if (rest.starts_with('.')) {
    rest.remove_prefix(1);
    if (!take_digits(rest, whole, decimals)) return Reading::too_long;
  }
  if (whole_digits + decimals == 0) return Reading::no_figure;
  if (decimals > 18) return Reading::too_long;  // 0.000... with more noughts than we can count
  exact = {whole, 1};
  for (int i = 0; i < decimals; ++i) exact.denominator *= 10;
  return Reading::good;
}

// An unsigned figure at the front of rest: decimal, fraction, or whole and fraction.
Reading take_figure(std::string_view& rest, Exact& exact) {
  std::int64_t whole = 0;
  int digits = 0;
  if (!take_digits(rest, whole, digits)) return Reading::too_long;
  if (digits == 0 || rest.starts_with('.')) return take_decimals(rest, whole, digits, exact);
  if (const auto denominator = take_denominator(rest)) {
    return make_fraction(0, whole, *denominator, exact);
  }
  std::string_view ahead = without_leading_space(rest);
  if (ahead.starts_with('-')) ahead.remove_prefix(1);
  if (const auto numerator = take_whole(ahead)) {
    if (const auto denominator = take_denominator(ahead)) {
      rest = ahead;
      return make_fraction(whole, *numerator, *denominator, exact);
    }
  }
  exact = {whole, 1};
  return Reading::good;
}

bool take_minus(std::string_view& rest) {
  for (std::string_view minus : {std::string_view("-"), std::string_view("\xE2\x88\x92")}) {
    if (!rest.starts_with(minus)) continue;
    rest = without_leading_space(rest.substr(minus.size()));
    return true;
  }
  if (rest.starts_with('+')) rest.remove_prefix(1);
  return false;
}

std::string_view unit_spelling(std::string_view& rest) {
  std::size_t n = 0;
  while (n < rest.size() && !is_digit(rest[n]) && rest[n] != '.' && rest[n] != '-') ++n;
  // A point behind an abbreviation ("3 in.") belongs to it; before a digit it starts a figure.
  if (n > 0 && n < rest.size() && rest[n] == '.' &&
      (n + 1 == rest.size() || !is_digit(rest[n + 1])))
    ++n;
  const std::string_view spelling = trimmed(rest.substr(0, n));
  rest = without_leading_space(rest.substr(n));
  return spelling.ends_with('.') ? spelling.substr(0, spelling.size() - 1) : spelling;
}

const Unit* find_unit(std::string_view spelling, const Kind& kind) {
  for (const Unit& unit : kind.units) {
    if (unit.letters == Letters::as_written ? unit.spelling == spelling
                                            : same_letters(unit.spelling, spelling)) {
      return &unit;
    }
  }
  return nullptr;
}

std::string usual_remedy(const Kind& kind) {
  return "Write " + std::string(kind.noun) + " such as " + std::string(kind.example) + ".";
}

Problem figure_problem(Reading reading, std::string_view text, const Kind& kind,
                       std::string_view field) {
  if (reading == Reading::too_long) {
    return {std::string(field), quoted(text) + " has more digits than can be counted.",
            usual_remedy(kind)};
  }
  if (reading == Reading::by_zero) {
    return {std::string(field), quoted(text) + " has a fraction over zero.", usual_remedy(kind)};
  }
  return not_a(text, kind, field);
}

Problem unit_problem(std::string_view spelling, std::string_view text, const Kind& kind,
                     std::string_view field) {
  for (const Ambiguous& a : kind.ambiguous) {
    if (same_letters(a.spelling, spelling)) {
      return {std::string(field), std::string(a.sentence), std::string(a.remedy)};
    }
  }
  return {std::string(field),
          quoted(text) + " is not " + std::string(kind.noun) + ": " + quoted(spelling) +
              " is not a unit of " + std::string(kind.measure) + ".",
          usual_remedy(kind)};
}

Problem comma_problem(std::string_view text, std::string_view field) {
  return {std::string(field), quoted(text) + " has a comma, which means two things.",
          "Write decimals after a point and put no mark between thousands, such as 1290.5."};
}

}  // namespace

Wide half_even(Wide n, Wide d) {
  assert(d > 0 && "a denominator is above zero");
  Wide quotient = n / d;
  Wide remainder = n % d;
  if (remainder < 0) {
    remainder += d;
    --quotient;
  }
  const Wide to_next = d - remainder;
  const bool up = remainder > to_next || (remainder == to_next && quotient % 2 != 0);
  return up ? quotient + 1 : quotient;
}

bool fits(Wide n) {
  return n <= INT64_MAX && n >= -Wide{INT64_MAX};
}

Wide counts(Exact figure, const Unit& unit) {
  return half_even(Wide{figure.numerator} * unit.numerator,
                   Wide{figure.denominator} * unit.denominator);
}

std::string_view trimmed(std::string_view text) {
  text = without_leading_space(text);
  for (bool found = true; found;) {
    found = false;
    for (std::string_view s : spaces) {
      if (!text.ends_with(s)) continue;
      text.remove_suffix(s.size());
      found = true;
    }
  }
  return text;
}

std::string quoted(std::string_view text) {
  constexpr std::size_t most = 40;
  std::string out = "\"";
  std::string_view rest = text;
  for (std::size_t n = 0; n < most && !rest.empty(); ++n) {
    const char32_t c = take_code_point(rest);
    append_code_point(out, c < 0x20 || c == 0x7F || c == 0xFFFD ? U'?' : c);
  }
  if (!rest.empty()) out += "...";
  return out + "\"";
}

Problem not_a(std::string_view text, const Kind& kind, std::string_view field) {
  const std::string noun(kind.noun);
  if (trimmed(text).empty()) {
    return {std::string(field), "There is no " + std::string(kind.measure) + " here.",
            usual_remedy(kind)};
  }
  return {std::string(field), quoted(text) + " is not " + noun + ".", usual_remedy(kind)};
}

Problem too_much(std::string_view text, const Kind& kind, std::string_view field) {
  return {std::string(field), quoted(text) + " is more than " + std::string(kind.most_text) + ".",
          "Check the figure and its unit."};
}

Outcome<Term> read_term(std::string_view text, const Kind& kind, std::string_view field) {
  std::string_view rest = without_leading_space(text);
  if (rest.find(',') != std::string_view::npos) return comma_problem(text, field);
  const bool below_zero = take_minus(rest);
  Term term;
  const Reading reading = take_figure(rest, term.figure);
  if (reading != Reading::good) return figure_problem(reading, text, kind, field);
  if (below_zero && kind.sign == Sign::refused && term.figure.numerator != 0) {
    return Problem{std::string(field), quoted(text) + " is below zero.", usual_remedy(kind)};
  }
  if (below_zero) term.figure.numerator = -term.figure.numerator;
  rest = without_leading_space(rest);
  const std::string_view spelling = unit_spelling(rest);
  term.rest = rest;
  if (spelling.empty()) return term;
  term.unit = find_unit(spelling, kind);
  if (term.unit == nullptr) return unit_problem(spelling, text, kind, field);
  return term;
}

Outcome<std::int64_t> read_quantity(std::string_view text, const Kind& kind, const Unit& usual,
                                    std::string_view field) {
  Wide sum = 0;
  const Unit* larger = nullptr;
  for (std::string_view rest = text;;) {
    auto term = read_term(rest, kind, field);
    if (!term) return rest == text ? term.problem() : not_a(text, kind, field);
    const bool alone = larger == nullptr && term->rest.empty();
    if (term->unit == nullptr && !alone) return not_a(text, kind, field);
    const Unit& unit = term->unit == nullptr ? usual : *term->unit;
    const bool falling = larger == nullptr || Wide{unit.numerator} * larger->denominator <
                                                  Wide{larger->numerator} * unit.denominator;
    if (!falling) return not_a(text, kind, field);
    sum += counts(term->figure, unit);
    if (sum > kind.most || -sum > kind.most) return too_much(text, kind, field);
    if (term->rest.empty()) return static_cast<std::int64_t>(sum);
    larger = &unit;
    rest = term->rest;
  }
}

std::string fixed(std::int64_t value, int digits) {
  std::string text = std::to_string(value);
  const std::size_t sign = value < 0 ? 1 : 0;
  const auto decimals = static_cast<std::size_t>(digits);
  if (text.size() - sign <= decimals) text.insert(sign, decimals + 1 + sign - text.size(), '0');
  if (digits > 0) text.insert(text.size() - decimals, ".");
  return text;
}

std::string shortest(std::int64_t value, int digits) {
  for (; digits > 0 && value % 10 == 0; --digits) value /= 10;
  return fixed(value, digits);
}

}  // namespace tangmark::figures
