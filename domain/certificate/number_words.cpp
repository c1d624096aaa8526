// SPDX-License-Identifier: MIT
#include "domain/certificate/number_words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace tangmark::certificate {
namespace {

using NumberWord = std::pair<std::string_view, int>;

// Words that stand alone. "One" and its like are counted only behind a ten: "one steel" is no
// figure.
constexpr auto words = std::to_array<NumberWord>({
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
    {"thirteen", 13},
    {"fourteen", 14},
    {"fifteen", 15},
    {"sixteen", 16},
    {"seventeen", 17},
    {"eighteen", 18},
    {"nineteen", 19},
    {"twenty", 20},
    {"thirty", 30},
    {"forty", 40},
    {"fifty", 50},
    {"sixty", 60},
    {"seventy", 70},
    {"eighty", 80},
    {"ninety", 90},
    {"hundred", 100},
    {"hundreds", 100},
    {"thousand", 1000},
    {"thousands", 1000},
    {"dozens", 24},
    {"hunderte", 100},
    {"tausende", 1000},
    {"deux", 2},
    {"trois", 3},
    {"quatre", 4},
    {"cinq", 5},
    {"sept", 7},
    {"huit", 8},
    {"neuf", 9},
    {"dix", 10},
    {"onze", 11},
    {"douze", 12},
    {"treize", 13},
    {"quatorze", 14},
    {"quinze", 15},
    {"seize", 16},
    {"vingt", 20},
    {"trente", 30},
    {"quarante", 40},
    {"cinquante", 50},
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
    {"nove", 9},
    {"dieci", 10},
    {"venti", 20},
    {"trenta", 30},
    {"quaranta", 40},
    {"cinquanta", 50},
    {"sessanta", 60},
    {"settanta", 70},
    {"cento", 100},
    {"centinaia", 100},
    {"mila", 1000},
    {"migliaia", 1000},
    {"dos", 2},
    {"tres", 3},
    {"cuatro", 4},
    {"cinco", 5},
    {"seis", 6},
    {"siete", 7},
    {"ocho", 8},
    {"nueve", 9},
    {"diez", 10},
    {"veinte", 20},
    {"treinta", 30},
    {"cuarenta", 40},
    {"cincuenta", 50},
    {"sesenta", 60},
    {"setenta", 70},
    {"cien", 100},
    {"ciento", 100},
    {"cientos", 100},
    {"doscientas", 200},
    {"doscientos", 200},
    {"trescientas", 300},
    {"trescientos", 300},
    {"cuatrocientas", 400},
    {"cuatrocientos", 400},
    {"quinientas", 500},
    {"quinientos", 500},
    {"mil", 1000},
    {"miles", 1000},
});

constexpr auto ones =
    std::to_array<std::string_view>({"one", "ein", "eins", "un", "une", "uno", "una"});

constexpr auto german_units = std::to_array<NumberWord>(
    {{"ein", 1},       {"eins", 1},      {"zwei", 2},      {"zwo", 2},       {"drei", 3},
     {"vier", 4},      {"funf", 5},      {"fuenf", 5},     {"sechs", 6},     {"sieben", 7},
     {"acht", 8},      {"neun", 9},      {"zehn", 10},     {"elf", 11},      {"zwolf", 12},
     {"zwoelf", 12},   {"dreizehn", 13}, {"vierzehn", 14}, {"funfzehn", 15}, {"fuenfzehn", 15},
     {"sechzehn", 16}, {"siebzehn", 17}, {"achtzehn", 18}, {"neunzehn", 19}});
constexpr auto german_tens = std::to_array<NumberWord>({{"zwanzig", 20},
                                                        {"dreissig", 30},
                                                        {"vierzig", 40},
                                                        {"funfzig", 50},
                                                        {"fuenfzig", 50},
                                                        {"sechzig", 60},
                                                        {"siebzig", 70},
                                                        {"achtzig", 80},
                                                        {"neunzig", 90}});
constexpr auto italian_tens = std::to_array<NumberWord>({{"vent", 20},
                                                         {"trent", 30},
                                                         {"quarant", 40},
                                                         {"cinquant", 50},
                                                         {"sessant", 60},
                                                         {"settant", 70},
                                                         {"ottant", 80},
                                                         {"novant", 90}});
constexpr auto italian_units = std::to_array<NumberWord>({{"uno", 1},
                                                          {"due", 2},
                                                          {"tre", 3},
                                                          {"quattro", 4},
                                                          {"cinque", 5},
                                                          {"sei", 6},
                                                          {"sette", 7},
                                                          {"otto", 8},
                                                          {"nove", 9}});

template <std::size_t N>
std::optional<int> in(const std::array<NumberWord, N>& table, std::string_view word) {
  const auto found = std::find_if(table.begin(), table.end(),
                                  [&](const NumberWord& row) { return row.first == word; });
  if (found == table.end()) return std::nullopt;
  return found->second;
}

// "zwei", "sechzig", "zweiundsechzig".
std::optional<int> german_below_hundred(std::string_view word) {
  if (const auto unit = in(german_units, word)) return unit;
  if (const auto ten = in(german_tens, word)) return ten;
  const std::size_t joint = word.find("und");
  if (joint == std::string_view::npos) return std::nullopt;
  const auto unit = in(german_units, word.substr(0, joint));
  const auto ten = in(german_tens, word.substr(joint + 3));
  if (!unit || !ten || *unit > 9) return std::nullopt;
  return *unit + *ten;
}

// What stands before and behind "hundert" or "tausend": "dreihundertzwolf".
std::optional<int> german(std::string_view word) {
  for (const auto& [name, worth] : {NumberWord{"tausend", 1000}, NumberWord{"hundert", 100}}) {
    const std::size_t at = word.find(name);
    if (at == std::string_view::npos) continue;
    const std::string_view front = word.substr(0, at);
    const std::string_view back = word.substr(at + name.size());
    const auto times = front.empty() ? std::optional(1) : german(front);
    const auto rest = back.empty() ? std::optional(0) : german(back);
    if (!times || !rest) return std::nullopt;
    return *times * worth + *rest;
  }
  return german_below_hundred(word);
}

// "sessantadue", "sessantotto", "trecento", "duemila".
std::optional<int> italian(std::string_view word) {
  for (const auto& [name, worth] : {NumberWord{"mila", 1000}, NumberWord{"cento", 100}}) {
    if (word.size() <= name.size() || !word.ends_with(name)) continue;
    const auto times = in(italian_units, word.substr(0, word.size() - name.size()));
    if (times) return *times * worth;
  }
  for (const auto& [stem, ten] : italian_tens) {
    if (!word.starts_with(stem)) continue;
    std::string_view rest = word.substr(stem.size());
    if (rest.starts_with('a') || rest.starts_with('i')) rest.remove_prefix(1);
    if (const auto unit = in(italian_units, rest)) return ten + *unit;
  }
  return std::nullopt;
}

}  // namespace

std::optional<double> number_word(std::string_view folded) {
  if (std::find(ones.begin(), ones.end(), folded) != ones.end()) return std::nullopt;
  for (const auto& found : {in(words, folded), german(folded), italian(folded)})
    if (found) return *found;
  return std::nullopt;
}

bool is_one(std::string_view folded) {
  return std::find(ones.begin(), ones.end(), folded) != ones.end();
}

}  // namespace tangmark::certificate
