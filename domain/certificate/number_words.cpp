// SPDX-License-Identifier: MIT
#include "domain/certificate/number_words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace tangmark::certificate {
namespace {

using Row = std::pair<std::string_view, int>;

constexpr std::array<Row, 96> words = {{
    {"two", 2},
    {"three", 3},
    {"four", 4},
    {"five", 5},
    {"six", 6},
    {"seven", 7},
    {"eight", 8},
    {"nine", 9},
    {"ten", 10},
    {"eleven", 11},
    {"twelve", 12},
    {"twenty", 20},
    {"thirty", 30},
    {"forty", 40},
    {"fifty", 50},
    {"sixty", 60},
    {"hundred", 100},
    {"hundreds", 100},
    {"thousand", 1000},
    {"thousands", 1000},
    {"zwei", 2},
    {"drei", 3},
    {"vier", 4},
    {"funf", 5},
    {"fuenf", 5},
    {"sechs", 6},
    {"sieben", 7},
    {"acht", 8},
    {"neun", 9},
    {"zehn", 10},
    {"zwolf", 12},
    {"zwanzig", 20},
    {"dreissig", 30},
    {"sechzig", 60},
    {"hundert", 100},
    {"hunderte", 100},
    {"einhundert", 100},
    {"zweihundert", 200},
    {"dreihundert", 300},
    {"vierhundert", 400},
    {"funfhundert", 500},
    {"fuenfhundert", 500},
    {"sechshundert", 600},
    {"siebenhundert", 700},
    {"achthundert", 800},
    {"neunhundert", 900},
    {"tausend", 1000},
    {"tausende", 1000},
    {"deux", 2},
    {"trois", 3},
    {"quatre", 4},
    {"cinq", 5},
    {"sept", 7},
    {"huit", 8},
    {"neuf", 9},
    {"dix", 10},
    {"douze", 12},
    {"soixante", 60},
    {"cent", 100},
    {"cents", 100},
    {"centaines", 100},
    {"mille", 1000},
    {"milliers", 1000},
    {"due", 2},
    {"tre", 3},
    {"quattro", 4},
    {"cinque", 5},
    {"sette", 7},
    {"otto", 8},
    {"dieci", 10},
    {"cento", 100},
    {"centinaia", 100},
    {"duecento", 200},
    {"trecento", 300},
    {"quattrocento", 400},
    {"cinquecento", 500},
    {"mila", 1000},
    {"migliaia", 1000},
    {"dos", 2},
    {"tres", 3},
    {"cuatro", 4},
    {"cinco", 5},
    {"siete", 7},
    {"ocho", 8},
    {"nueve", 9},
    {"diez", 10},
    {"cien", 100},
    {"cientos", 100},
    {"doscientas", 200},
    {"doscientos", 200},
    {"trescientas", 300},
    {"trescientos", 300},
    {"quinientas", 500},
    {"quinientos", 500},
    {"mil", 1000},
    {"miles", 1000},
}};

}  // namespace

std::optional<double> number_word(std::string_view folded) {
  const auto found =
      std::find_if(words.begin(), words.end(), [&](const Row& row) { return row.first == folded; });
  if (found == words.end()) return std::nullopt;
  return found->second;
}

}  // namespace tangmark::certificate
