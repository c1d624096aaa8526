// SPDX-License-Identifier: MIT
// A mapping of a record's columns as the maker types it.
#include <optional>
#include <utility>

#include "domain/kiln/record_cell.h"
#include "domain/kiln/record_shape.h"
#include "domain/steel/figure_text.h"

namespace tangmark::kiln {
namespace {

template <class E>
struct Known {
  std::string_view word;
  E value;
};

// The value of a word, none when nothing was said; an unknown word is a problem of the form.
template <class E, std::size_t n>
std::optional<E> word_in(Gather& form, const std::string& text, const char* field,
                         const Known<E> (&known)[n]) {
  const std::string word = steel::lower(steel::trimmed(text));
  if (word.empty()) return std::nullopt;
  std::string words;
  for (const Known<E>& each : known) {
    if (each.word == word) return each.value;
    words += (words.empty() ? "" : ", ") + std::string(each.word);
  }
  form.add({field, "\"" + text + "\" is not known here.", "Give one of: " + words + "."});
  return std::nullopt;
}

constexpr Known<TemperatureUnit> units[] = {{"c", TemperatureUnit::celsius},
                                            {"f", TemperatureUnit::fahrenheit},
                                            {"k", TemperatureUnit::kelvin}};
constexpr Known<DateOrder> orders[] = {{"year first", DateOrder::year_first},
                                       {"day first", DateOrder::day_first},
                                       {"month first", DateOrder::month_first}};
constexpr Known<char> separators[] = {
    {"comma", ','}, {"semicolon", ';'}, {"tab", '\t'}, {"bar", '|'}, {"blanks", ' '}};
constexpr Known<char> points[] = {{"point", '.'}, {"comma", ','}};

struct Counts {
  RecordClock clock;
  std::optional<ElapsedUnit> unit;
};
constexpr Known<Counts> counts[] = {
    {"seconds", {RecordClock::elapsed, ElapsedUnit::second}},
    {"minutes", {RecordClock::elapsed, ElapsedUnit::minute}},
    {"hours", {RecordClock::elapsed, ElapsedUnit::hour}},
    {"milliseconds", {RecordClock::elapsed, ElapsedUnit::millisecond}},
    {"time of day", {RecordClock::time_of_day, std::nullopt}}};

std::vector<std::string> names_in(const std::string& text) {
  std::vector<std::string> names;
  for (const std::string_view part : cells_of(text, ',')) {
    if (const auto name = bare_cell(part); !name.empty()) names.emplace_back(name);
  }
  return names;
}

}  // namespace

Outcome<ShapeHints> read_hints(const TypedMapping& typed) {
  Gather form;
  ShapeHints hints;
  hints.unit = word_in(form, typed.unit, "unit", units);
  hints.date_order = word_in(form, typed.dates, "dates", orders);
  hints.separator = word_in(form, typed.separator, "separator", separators);
  hints.point = word_in(form, typed.decimals, "decimals", points);
  if (const auto counted = word_in(form, typed.counts, "counts", counts)) {
    hints.clock = counted->clock;
    hints.elapsed_unit = counted->unit;
  }
  hints.time = steel::trimmed(typed.time);
  hints.date = steel::trimmed(typed.date);
  hints.sensors = names_in(typed.sensors);
  hints.zone = steel::trimmed(typed.zone);
  if (!hints.zone.empty()) form.take(Zone::of(hints.zone, "zone"));
  if (form.refused()) return form.problems();
  return hints;
}

}  // namespace tangmark::kiln
