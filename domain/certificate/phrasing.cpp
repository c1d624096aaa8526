// SPDX-License-Identifier: MIT
#include "domain/certificate/phrasing.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace tangmark::certificate {

std::string listed(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 == parts.size() ? " and " : ", ";
    text += parts[i];
  }
  return text;
}

std::string times_text(int n) {
  if (n == 1) return "once";
  if (n == 2) return "twice";
  return std::to_string(n) + " times";
}

std::string counted(long long n, std::string_view one, std::string_view many) {
  return std::to_string(n) + " " + std::string(n == 1 ? one : many);
}

std::string tenths_text(int tenths) {
  const int whole = std::abs(tenths) / 10;
  const int part = std::abs(tenths) % 10;
  std::string text = (tenths < 0 ? "-" : "") + std::to_string(whole);
  if (part != 0) text += "." + std::to_string(part);
  return text;
}

std::string capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string percent_figure(Share share) {
  const std::int64_t millionths = share.millionths();
  std::string digits = std::to_string(std::abs(millionths) % 10'000);
  digits.insert(0, 4 - digits.size(), '0');
  while (digits.size() > 2 && digits.back() == '0') digits.pop_back();
  return (millionths < 0 ? "-" : "") + std::to_string(std::abs(millionths) / 10'000) + "." + digits;
}

std::vector<std::string> elements_in_order(const Analysis& analysis) {
  static constexpr std::array<std::string_view, 12> usual = {"C",  "Mn", "Si", "P", "S",  "Cr",
                                                             "Ni", "Mo", "V",  "W", "Co", "Cu"};
  std::vector<std::string> order;
  for (std::string_view symbol : usual)
    if (analysis.contains(std::string(symbol))) order.emplace_back(symbol);
  for (const auto& [symbol, share] : analysis)
    if (std::find(usual.begin(), usual.end(), symbol) == usual.end()) order.push_back(symbol);
  return order;
}

std::string analysis_text(const Analysis& analysis) {
  std::string text;
  for (const std::string& symbol : elements_in_order(analysis))
    text += (text.empty() ? "" : ", ") + symbol + " " + percent_figure(analysis.at(symbol));
  return text;
}

std::string lot_name(const Lot& lot) {
  return "lot " + lot.tag.text;
}

std::string line_name(const BenchEntry& entry) {
  return "line " + std::to_string(entry.number);
}

std::string hand_name(const Hand& hand) {
  if (!hand.name.empty()) return hand.name;
  return hand.outside() ? "an outside maker whose name is not on record" : "this shop";
}

}  // namespace tangmark::certificate
