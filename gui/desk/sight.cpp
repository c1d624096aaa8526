// SPDX-License-Identifier: MIT
#include "gui/desk/sight.h"

#include <charconv>

namespace tangmark::desk {

std::string words(const Sight& sight, Temperature t) {
  return to_text(t, sight.settings.temperature_unit);
}

std::string words(const Sight& sight, Length l) { return to_text(l, sight.settings.length_unit); }

std::string words(const Sight& sight, Mass m) { return to_text(m, sight.settings.mass_unit); }

std::string when(const Sight& sight, Instant at) {
  const CalendarDate date = sight.zone().date_of(at);
  const std::string clock = clock_text(at, sight.zone());
  if (date == sight.today()) return "today, " + clock;
  if (date.year() == sight.today().year()) return short_text(date) + ", " + clock;
  return short_text(date) + " " + std::to_string(static_cast<int>(date.year())) + ", " + clock;
}

std::string ago(const Sight& sight, Instant at) {
  const Duration span = sight.now > at ? sight.now - at : Duration{0};
  return "since " + to_text(std::chrono::duration_cast<std::chrono::minutes>(span));
}

std::string day(const Sight& sight, CalendarDate date) {
  const std::string whole = to_text(date);
  // The year goes without saying while it is this one.
  const std::string year = " " + std::to_string(static_cast<int>(date.year()));
  if (date.year() == sight.today().year() && whole.ends_with(year)) {
    return whole.substr(0, whole.size() - year.size());
  }
  return whole;
}

std::string days_away(const Sight& sight, CalendarDate date) {
  const auto days = (date::sys_days{date} - date::sys_days{sight.today()}).count();
  if (days == 0) return "today";
  if (days == 1) return "tomorrow";
  if (days == -1) return "yesterday";
  if (days > 0) return "in " + std::to_string(days) + " days";
  return std::to_string(-days) + " days ago";
}

std::optional<std::int64_t> number_of(const std::string& text) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (text.empty() || error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return number;
}

std::string sentence_case(std::string text) {
  if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  }
  return text;
}

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? " and " : ", ";
    text += names[i];
  }
  return text;
}

}  // namespace tangmark::desk
