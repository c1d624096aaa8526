// SPDX-License-Identifier: MIT
#include "domain/steel/figure_text.h"

#include <array>
#include <charconv>
#include <cmath>

namespace tangmark::steel {

Outcome<double> parse_figure(std::string_view text, std::string_view field) {
  const std::string_view digits = trimmed(text);
  double value = 0;
  const auto [end, fault] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  const bool whole_text = !digits.empty() && end == digits.data() + digits.size();
  if (fault == std::errc{} && whole_text && std::isfinite(value)) return value;
  const bool comma = digits.find(',') != std::string_view::npos;
  return Problem{std::string(field), "\"" + std::string(digits) + "\" is not a plain number.",
                 comma ? "Write the decimals after a point." : "Write a number such as 0.95."};
}

std::string figure_text(double value) {
  std::array<char, 32> out;
  const auto [end, fault] = std::to_chars(out.data(), out.data() + out.size(), value);
  return fault == std::errc{} ? std::string(out.data(), end) : std::string("?");
}

std::string rounded_text(double value, int decimals) {
  std::array<char, 400> out;
  const auto [end, fault] = std::to_chars(out.data(), out.data() + out.size(), value,
                                          std::chars_format::fixed, decimals);
  if (fault != std::errc{}) return "?";
  std::string text(out.data(), end);
  if (text.find('.') == std::string::npos) return text == "-0" ? "0" : text;
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

std::string_view trimmed(std::string_view text) {
  const auto blank = [](char c) { return c == ' ' || c == '\t'; };
  while (!text.empty() && blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && blank(text.back())) text.remove_suffix(1);
  return text;
}

std::string lower(std::string_view text) {
  std::string small(text);
  for (char& c : small) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return small;
}

std::vector<std::string_view> split_outside_brackets(std::string_view text, char separator) {
  std::vector<std::string_view> parts;
  std::size_t start = 0;
  int depth = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '(') ++depth;
    if (text[i] == ')') --depth;
    if (text[i] != separator || depth > 0) continue;
    parts.push_back(trimmed(text.substr(start, i - start)));
    start = i + 1;
  }
  parts.push_back(trimmed(text.substr(start)));
  return parts;
}

std::pair<std::string_view, std::string_view> number_then_unit(std::string_view text) {
  text = trimmed(text);
  double ignored = 0;
  const char* begin = text.data();
  const auto [end, fault] = std::from_chars(begin, begin + text.size(), ignored);
  const auto length = fault == std::errc{} ? static_cast<std::size_t>(end - begin) : 0;
  return {text.substr(0, length), trimmed(text.substr(length))};
}

}  // namespace tangmark::steel
