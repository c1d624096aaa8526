// SPDX-License-Identifier: MIT
#include "domain/kiln/record_heads.h"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <vector>

#include "domain/steel/figure_text.h"

namespace tangmark::kiln {
namespace {

// "Temp_F (TC1)" into "temp", "f", "tc1"; a degree sign, in UTF-8 or Latin-1, parts words too.
std::vector<std::string> words_of(std::string_view head) {
  std::vector<std::string> words(1);
  for (const char c : steel::lower(head)) {
    const bool of_word = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '%';
    if (of_word) {
      words.back() += c;
    } else if (!words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

bool any_of_words(const std::vector<std::string>& words, std::initializer_list<const char*> known) {
  return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
    return std::find(known.begin(), known.end(), word) != known.end();
  });
}

std::optional<TemperatureUnit> unit_in(const std::vector<std::string>& words) {
  if (any_of_words(words, {"f", "degf", "fahrenheit", "tempf"})) return TemperatureUnit::fahrenheit;
  if (any_of_words(words, {"c", "degc", "celsius", "centigrade", "tempc"})) {
    return TemperatureUnit::celsius;
  }
  if (any_of_words(words, {"k", "kelvin"})) return TemperatureUnit::kelvin;
  return std::nullopt;
}

std::optional<ElapsedUnit> elapsed_unit_in(const std::vector<std::string>& words) {
  if (any_of_words(words, {"ms", "msec", "millis", "milliseconds"}))
    return ElapsedUnit::millisecond;
  if (any_of_words(words, {"s", "sec", "secs", "second", "seconds"})) return ElapsedUnit::second;
  if (any_of_words(words, {"m", "min", "mins", "minute", "minutes"})) return ElapsedUnit::minute;
  if (any_of_words(words, {"h", "hr", "hrs", "hour", "hours"})) return ElapsedUnit::hour;
  return std::nullopt;
}

}  // namespace

Head read_head(std::string_view text) {
  const auto words = words_of(text);
  Head head;
  const bool other =
      any_of_words(words, {"set",     "setpoint", "sp",    "target",  "output",  "out",   "power",
                           "duty",    "%",        "pct",   "percent", "segment", "seg",   "step",
                           "status",  "state",    "alarm", "event",   "note",    "notes", "comment",
                           "battery", "humidity", "rh",    "index",   "no",      "nr",    "number",
                           "row",     "sample",   "count", "id",      "cycle",   "amps",  "current",
                           "volts",   "watts",    "kwh",   "unit",    "units",   "soll",  "relay"});
  const bool time =
      any_of_words(words, {"time",  "times",   "elapsed", "timestamp", "date",     "datetime",
                           "clock", "seconds", "sec",     "minutes",   "min",      "mins",
                           "hours", "hrs",     "epoch",   "unix",      "duration", "runtime",
                           "zeit",  "uhrzeit", "datum",   "ms",        "millis"});
  const bool sensor = any_of_words(
      words, {"temp", "temperature", "tempc", "tempf", "pv", "actual", "process", "probe", "sensor",
              "thermocouple", "tc", "ist", "degc", "degf", "celsius", "fahrenheit", "measured"});
  // A small t is a time, a large one or one with a unit of temperature is a temperature.
  const bool small_t = any_of_words(words, {"t"}) && text.find('T') == std::string_view::npos;
  head.elapsed =
      any_of_words(words, {"elapsed", "duration", "runtime", "seconds", "minutes", "sec"});
  if (other) {
    head.role = HeadRole::other;
  } else if (sensor) {
    head.role = HeadRole::sensor;
  } else if (time || (small_t && !unit_in(words))) {
    head.role = HeadRole::time;
  }
  if (head.role == HeadRole::time) head.elapsed_unit = elapsed_unit_in(words);
  head.minutes_and_seconds = any_of_words(words, {"mm", "min"}) &&
                             any_of_words(words, {"ss", "sec"}) &&
                             !any_of_words(words, {"h", "hh"});
  if (head.role != HeadRole::time) head.unit = unit_in(words);
  return head;
}

}  // namespace tangmark::kiln
