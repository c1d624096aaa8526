// SPDX-License-Identifier: MIT
// The one-line form in which a record's shape is kept with its kiln.
#include <array>
#include <charconv>

#include "domain/kiln/record_shape.h"
#include "domain/steel/figure_text.h"

namespace tangmark::kiln {
namespace {

template <class E>
using Words = std::vector<std::pair<E, std::string_view>>;

const Words<char>& marks() {
  static const Words<char> words = {
      {',', "comma"}, {';', "semicolon"}, {'\t', "tab"},
      {'|', "bar"},   {' ', "blanks"},    {'.', "point"}};
  return words;
}
const Words<RecordClock>& clocks() {
  static const Words<RecordClock> words = {{RecordClock::elapsed, "elapsed"},
                                           {RecordClock::time_of_day, "time-of-day"},
                                           {RecordClock::local_time, "local"},
                                           {RecordClock::instant, "instant"}};
  return words;
}
const Words<ElapsedUnit>& elapsed_units() {
  static const Words<ElapsedUnit> words = {{ElapsedUnit::millisecond, "ms"},
                                           {ElapsedUnit::second, "s"},
                                           {ElapsedUnit::minute, "min"},
                                           {ElapsedUnit::hour, "h"}};
  return words;
}
const Words<DateOrder>& date_orders() {
  static const Words<DateOrder> words = {{DateOrder::year_first, "ymd"},
                                         {DateOrder::day_first, "dmy"},
                                         {DateOrder::month_first, "mdy"}};
  return words;
}
const Words<TemperatureUnit>& units() {
  static const Words<TemperatureUnit> words = {{TemperatureUnit::celsius, "C"},
                                               {TemperatureUnit::fahrenheit, "F"},
                                               {TemperatureUnit::kelvin, "K"}};
  return words;
}

template <class E>
std::string word_of(const Words<E>& words, E value) {
  for (const auto& [known, word] : words) {
    if (known == value) return std::string(word);
  }
  return "?";
}

template <class E>
bool read_word(const Words<E>& words, std::string_view text, E& value) {
  for (const auto& [known, word] : words) {
    if (word == text) {
      value = known;
      return true;
    }
  }
  return false;
}

bool read_column(std::string_view text, std::size_t& column) {
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), column);
  return fault == std::errc{} && end == text.data() + text.size() && column < 1000;
}

// "1:C:TC1"; the name is the rest and may hold anything but the separator of sensors.
bool read_sensor(std::string_view text, SensorColumn& sensor) {
  const std::size_t first = text.find(':');
  const std::size_t second = first == text.npos ? first : text.find(':', first + 1);
  if (second == text.npos) return false;
  sensor.name = text.substr(second + 1);
  return read_column(text.substr(0, first), sensor.column) &&
         read_word(units(), text.substr(first + 1, second - first - 1), sensor.unit);
}

bool read_sensors(std::string_view text, std::vector<SensorColumn>& sensors) {
  for (const std::string_view part : cells_of(text, '|')) {
    sensors.emplace_back();
    if (!read_sensor(part, sensors.back())) return false;
  }
  return true;
}

bool read_entry(std::string_view key, std::string_view value, RecordShape& shape) {
  if (key == "cut") return read_word(marks(), value, shape.separator);
  if (key == "point") return read_word(marks(), value, shape.point);
  if (key == "clock") return read_word(clocks(), value, shape.clock);
  if (key == "unit") return read_word(elapsed_units(), value, shape.elapsed_unit);
  if (key == "dates") return read_word(date_orders(), value, shape.date_order);
  if (key == "time") return read_column(value, shape.time_column);
  if (key == "date") return read_column(value, shape.date_column.emplace());
  if (key == "sensors") return read_sensors(value, shape.sensors);
  if (key == "zone") {
    shape.zone = value;
    return Zone::of(value).ok();
  }
  return false;
}

}  // namespace

std::string shape_to_stored(const RecordShape& shape) {
  std::string text = "cut=" + word_of(marks(), shape.separator) +
                     ";point=" + word_of(marks(), shape.point) +
                     ";clock=" + word_of(clocks(), shape.clock) +
                     ";unit=" + word_of(elapsed_units(), shape.elapsed_unit) +
                     ";dates=" + word_of(date_orders(), shape.date_order) +
                     ";time=" + std::to_string(shape.time_column);
  if (shape.date_column) text += ";date=" + std::to_string(*shape.date_column);
  if (!shape.zone.empty()) text += ";zone=" + shape.zone;
  text += ";sensors=";
  for (std::size_t i = 0; i < shape.sensors.size(); ++i) {
    const SensorColumn& sensor = shape.sensors[i];
    std::string name = sensor.name;
    for (char& c : name) {
      if (c == '|' || c == ';') c = ' ';
    }
    text += (i == 0 ? "" : "|") + std::to_string(sensor.column) + ':' +
            word_of(units(), sensor.unit) + ':' + name;
  }
  return text;
}

Outcome<RecordShape> shape_from_stored(std::string_view text, std::string_view field) {
  RecordShape shape;
  for (const std::string_view entry : cells_of(text, ';')) {
    const std::size_t mark = std::min(entry.find('='), entry.size());
    const std::string_view value = entry.substr(std::min(mark + 1, entry.size()));
    if (!read_entry(entry.substr(0, mark), value, shape)) {
      return Problem{std::string(field), "The kept shape of this kiln's records cannot be read.",
                     "Attach a record again, so that its shape is recognised anew."};
    }
  }
  const bool cuts_decimals = shape.separator == shape.point && shape.point != ',';
  if (shape.sensors.empty() || cuts_decimals) {
    return Problem{std::string(field), "The kept shape of this kiln's records is not whole.",
                   "Attach a record again, so that its shape is recognised anew."};
  }
  return shape;
}

}  // namespace tangmark::kiln
