// SPDX-License-Identifier: MIT
#include "db/exchange/day_book.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <optional>

#include "db/store/settings_store.h"
#include "domain/measure/table_text.h"
#include "domain/measure/utf8.h"

namespace tangmark::db {
namespace {

struct Line {
  std::string place;  ///< "kitchen.daybook, line 14"
  Instant at;
  CalendarDate day;
  std::string action;
  Given given;
  std::string keep_as;
};

std::string_view without_comment(std::string_view line) {
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"') quoted = !quoted;
    if (line[i] == '#' && !quoted && (i == 0 || line[i - 1] == ' ')) return line.substr(0, i);
  }
  return line;
}

// Words parted by blanks; a quotation may stand anywhere in a word and is taken out.
std::optional<std::vector<std::string>> words_of(std::string_view line) {
  std::vector<std::string> words;
  std::string word;
  bool quoted = false, begun = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
      begun = true;
    } else if ((c == ' ' || c == '\t' || c == '\r') && !quoted) {
      if (begun) words.push_back(std::move(word));
      word.clear();
      begun = false;
    } else {
      word += c;
      begun = true;
    }
  }
  if (quoted) return std::nullopt;
  if (begun) words.push_back(std::move(word));
  return words;
}

std::optional<int> signed_number(std::string_view text) {
  if (text.starts_with('+')) text.remove_prefix(1);
  int n = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return n;
}

class BookReader {
 public:
  BookReader(const DayBook& book, const Zone& zone, Instant now, std::vector<Line>& lines)
      : book_(book), zone_(zone), now_(now), day_(zone.date_of(now)), lines_(lines) {}

  Outcome<Done> read() {
    if (!is_valid_utf8(book_.text))
      return Problem{book_.name, "The book is not UTF-8 text.", "Save it as UTF-8."};
    std::string whole;
    std::size_t first = 0, number = 0, from = 0;
    while (from <= book_.text.size()) {
      const auto end = std::min(book_.text.find('\n', from), book_.text.size());
      const std::string line(
          without_comment(std::string_view(book_.text).substr(from, end - from)));
      ++number;
      const bool goes_on = !line.empty() && (line.front() == ' ' || line.front() == '\t');
      if (!goes_on) {
        if (auto done = take(whole, first); !done) return done;
        whole.clear();
        first = number;
      }
      whole += line + " ";
      from = end + 1;
    }
    return take(whole, first);
  }

 private:
  std::string place(std::size_t line) const {
    return book_.name + ", line " + std::to_string(line);
  }

  Outcome<Done> take(const std::string& text, std::size_t line) {
    const auto words = words_of(text);
    if (!words)
      return Problem{place(line), "A quotation is not closed.", "Close it with a quotation mark."};
    if (words->empty()) return Done{};
    if (words->front() == "day") return take_day(*words, line);
    if (words->front() == "zone") return take_zone(*words, line);
    const auto at = time_of(words->front());
    if (!at || words->size() < 2)
      return Problem{place(line), "The line does not begin with a time and an action.",
                     "Write, for example: 09:30 new_customer name=..."};
    Line made{place(line), *at, day_, (*words)[1], {}, {}};
    for (std::size_t i = 2; i < words->size(); ++i)
      if (auto done = take_field(made, (*words)[i]); !done) return done;
    lines_.push_back(std::move(made));
    return Done{};
  }

  // "09:30" on the book's day, or "-53m" before now.
  Outcome<Instant> time_of(const std::string& word) const {
    if (word.starts_with('-') && word.ends_with('m'))
      if (const auto minutes = signed_number(std::string_view(word).substr(0, word.size() - 1)))
        return now_ + std::chrono::minutes(*minutes);
    return parse_instant(to_stored(day_) + " " + word, zone_, now_, "time");
  }

  Outcome<Done> take_day(const std::vector<std::string>& words, std::size_t line) {
    const Problem refused{place(line), "This is not a day.",
                          "Write, for example: day -30, or: day 2026-04-25."};
    if (words.size() != 2) return refused;
    if (const auto days = signed_number(words[1])) {
      day_ = date::sys_days(zone_.date_of(now_)) + date::days(*days);
      return Done{};
    }
    const auto day = parse_date(words[1], "day");
    if (!day) return refused;
    day_ = *day;
    return Done{};
  }

  Outcome<Done> take_zone(const std::vector<std::string>& words, std::size_t line) {
    const auto zone = words.size() == 2 ? Zone::of(words[1], "zone") : Outcome<Zone>(Problem{});
    if (!zone)
      return Problem{place(line), "This is not a time zone.",
                     "Write, for example: zone Europe/London."};
    zone_ = *zone;
    day_ = zone_.date_of(now_);
    return Done{};
  }

  Outcome<Done> take_field(Line& line, const std::string& word) {
    const auto equals = word.find('=');
    if (equals == std::string::npos)
      return Problem{line.place, "\"" + word + "\" is not of the form field=value.",
                     "Put text with blanks in quotation marks."};
    const std::string name = word.substr(0, equals);
    std::string value = word.substr(equals + 1);
    if (name == "as") {
      line.keep_as = value;
      return Done{};
    }
    value = on_its_day(value, line.day);
    if (names_a_file(line.action, name) && std::filesystem::path(value).is_relative())
      value = (book_.folder / value).string();
    line.given[name] = value;
    return Done{};
  }

  // "+3d", "@9:10" and "+3d@9:10" seen from the line's day.
  static std::string on_its_day(const std::string& value, CalendarDate day) {
    const auto clock = std::min(value.find('@'), value.size());
    const std::string_view days_word = std::string_view(value).substr(0, clock);
    if (clock == 0 && !value.empty()) return to_stored(day) + " " + value.substr(1);
    const bool signed_days = days_word.size() > 2 &&
                             (days_word.front() == '+' || days_word.front() == '-') &&
                             days_word.back() == 'd';
    const auto days =
        signed_days ? signed_number(days_word.substr(0, days_word.size() - 1)) : std::nullopt;
    if (!days) return value;
    const std::string moved = to_stored(CalendarDate(date::sys_days(day) + date::days(*days)));
    return clock == value.size() ? moved : moved + " " + value.substr(clock + 1);
  }

  static bool names_a_file(const std::string& action, const std::string& field) {
    const Action* known = find_action(action);
    if (!known) return false;
    return std::any_of(known->fields.begin(), known->fields.end(), [&](const Field& f) {
      return f.name == field && f.kind == FieldKind::file;
    });
  }

  const DayBook& book_;
  Zone zone_;
  Instant now_;
  CalendarDate day_;
  std::vector<Line>& lines_;
};

Problems at_place(Problems problems, const std::string& place) {
  for (Problem& problem : problems)
    problem.field = place + (problem.field.empty() ? "" : ", " + problem.field);
  return problems;
}

// "$name" anywhere in a value stands for a number that an earlier line made.
Outcome<Done> put_names_in(Line& line, const std::map<std::string, std::string>& names) {
  for (auto& [field, value] : line.given) {
    for (auto dollar = value.find('$'); dollar != std::string::npos;
         dollar = value.find('$', dollar)) {
      std::size_t end = dollar + 1;
      while (end < value.size() &&
             (std::isalnum(static_cast<unsigned char>(value[end])) || value[end] == '_'))
        ++end;
      const std::string name = value.substr(dollar + 1, end - dollar - 1);
      const auto known = names.find(name);
      if (known == names.end())
        return Problem{line.place + ", " + field,
                       "Nothing was named \"" + name + "\" before this line.",
                       "Name it with as=" + name + " where it is made."};
      value.replace(dollar, end - dollar, known->second);
      dollar += known->second.size();
    }
  }
  return Done{};
}

}  // namespace

Outcome<int> perform_day_books(ShopFile& shop, const std::vector<DayBook>& books, Instant now,
                               const Stopped& stopped) {
  const Zone zone = load_settings(shop).zone;
  std::vector<Line> lines;
  for (const DayBook& book : books)
    if (auto read = BookReader(book, zone, now, lines).read(); !read) return read.problems();
  std::stable_sort(lines.begin(), lines.end(),
                   [](const Line& a, const Line& b) { return a.at < b.at; });
  std::map<std::string, std::string> names;
  Batch batch(shop);
  for (Line& line : lines) {
    if (stopped && stopped()) return Problem{"", "It was stopped, and nothing was written.", ""};
    if (auto named = put_names_in(line, names); !named) return named.problems();
    auto done = perform(shop, line.action, line.given, line.at);
    if (!done) return at_place(done.problems(), line.place);
    if (!line.keep_as.empty()) names[line.keep_as] = done->number;
  }
  batch.keep();
  return static_cast<int>(lines.size());
}

Outcome<int> perform_table(ShopFile& shop, const Action& action, std::string_view name,
                           std::string_view text, Instant now) {
  TableReader reader(text, name);
  TableRow row;
  if (!reader.next(row)) {
    if (reader.refused()) return reader.problem();
    return Problem{std::string(name), "The table is empty.",
                   "Give the fields' names in its first line."};
  }
  const std::vector<std::string> head = row.cells;
  Batch batch(shop);
  int done = 0;
  while (reader.next(row)) {
    Given given;
    for (std::size_t i = 0; i < head.size(); ++i)
      if (!row.cells[i].empty()) given[head[i]] = row.cells[i];
    auto result = perform(shop, action, given, now);
    if (!result)
      return at_place(result.problems(), std::string(name) + ", line " + std::to_string(row.line));
    ++done;
  }
  if (reader.refused()) return reader.problem();
  batch.keep();
  return done;
}

}  // namespace tangmark::db
