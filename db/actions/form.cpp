// SPDX-License-Identifier: MIT
#include "db/actions/form.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "domain/measure/utf8.h"

namespace tangmark::db {
namespace {

constexpr std::uintmax_t largest_file = 64u << 20;

std::string trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1));
}

Outcome<std::int64_t> parse_whole(const std::string& text, std::int64_t low, std::int64_t high,
                                  std::string_view field) {
  std::int64_t n = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  if (error != std::errc() || end != text.data() + text.size())
    return Problem{
        std::string(field), "\"" + text + "\" is not a whole number.",
        "Write a whole number such as " + std::to_string(std::max<std::int64_t>(low, 1)) + "."};
  if (n < low || n > high)
    return Problem{
        std::string(field), text + " is out of range.",
        "Write a whole number from " + std::to_string(low) + " to " + std::to_string(high) + "."};
  return n;
}

Outcome<bool> parse_yes_no(const std::string& text, std::string_view field) {
  if (text == "yes" || text == "y" || text == "true" || text == "1") return true;
  if (text == "no" || text == "n" || text == "false" || text == "0") return false;
  return Problem{std::string(field), "\"" + text + "\" is neither yes nor no.", "Write yes or no."};
}

Outcome<std::string> sound_text(std::string text, std::string_view field) {
  if (!is_valid_utf8(text))
    return Problem{std::string(field), "The text holds bytes that are not UTF-8.",
                   "Type it again, or save the source as UTF-8."};
  const bool control = std::any_of(text.begin(), text.end(), [](char c) {
    return static_cast<unsigned char>(c) < 32 && c != '\n' && c != '\t';
  });
  if (control)
    return Problem{std::string(field), "The text holds control characters.", "Type it again."};
  if (text.size() > 20'000)
    return Problem{std::string(field), "The text is longer than 20,000 bytes.", "Shorten it."};
  return text;
}

}  // namespace

Form::Form(const Action& action, const Given& given, const commission::ShopSettings& settings,
           Instant now)
    : action_(action), given_(given), settings_(settings), now_(now), zone_(settings.zone) {}

const Field& Form::spec(std::string_view field) const {
  const auto found = std::find_if(action_.fields.begin(), action_.fields.end(),
                                  [&](const Field& f) { return f.name == field; });
  assert(found != action_.fields.end() && "an action reads only fields that it lists");
  return *found;
}

std::optional<std::string> Form::raw(std::string_view field) const {
  const Field& known = spec(field);
  if (const auto found = given_.find(field); found != given_.end()) {
    std::string text = trimmed(found->second);
    if (!text.empty()) return text;
  }
  if (!known.fallback.empty()) return std::string(known.fallback);
  return std::nullopt;
}

bool Form::has(std::string_view field) const {
  return raw(field).has_value();
}

template <class T, class Parse>
std::optional<T> Form::maybe_read(std::string_view field, Parse parse) {
  const auto text = raw(field);
  if (!text) {
    if (spec(field).required) needed(field);
    return std::nullopt;
  }
  auto value = parse(*text);
  if (value) return std::move(value).value();
  for (Problem& problem : value.problems()) gather_.add(std::move(problem));
  return std::nullopt;
}

template <class T, class Parse>
T Form::read(std::string_view field, Parse parse) {
  if (!raw(field)) {
    needed(field);
    return T{};
  }
  return maybe_read<T>(field, parse).value_or(T{});
}

std::string Form::needed(std::string_view field) {
  const Field& known = spec(field);
  const auto told = [&](const Problem& p) { return p.field == field; };
  if (std::none_of(problems().begin(), problems().end(), told))
    gather_.add({std::string(field), std::string(known.label) + " is needed.",
                 known.help.empty() ? "Fill it in."
                                    : "Fill it in, for example: " + std::string(known.help)});
  return {};
}

std::string Form::text(std::string_view field) {
  return read<std::string>(field, [&](const std::string& t) { return sound_text(t, field); });
}
std::optional<std::string> Form::maybe_text(std::string_view field) {
  const Field& known = spec(field);
  auto text =
      maybe_read<std::string>(field, [&](const std::string& t) { return sound_text(t, field); });
  if (text && known.kind == FieldKind::choice &&
      std::find(known.choices.begin(), known.choices.end(), *text) == known.choices.end()) {
    std::string list;
    for (const auto choice : known.choices)
      list += (list.empty() ? "" : ", ") + std::string(choice);
    gather_.add({std::string(field), "\"" + *text + "\" is not one of the choices.",
                 "Use one of: " + list + "."});
    return std::nullopt;
  }
  return text;
}
bool Form::yes(std::string_view field) {
  return maybe_yes(field).value_or(false);
}
std::optional<bool> Form::maybe_yes(std::string_view field) {
  return maybe_read<bool>(field, [&](const std::string& t) { return parse_yes_no(t, field); });
}
std::int64_t Form::whole(std::string_view field, std::int64_t low, std::int64_t high) {
  return read<std::int64_t>(field,
                            [&](const std::string& t) { return parse_whole(t, low, high, field); });
}
std::optional<std::int64_t> Form::maybe_whole(std::string_view field, std::int64_t low,
                                              std::int64_t high) {
  return maybe_read<std::int64_t>(
      field, [&](const std::string& t) { return parse_whole(t, low, high, field); });
}
Length Form::length(std::string_view field) {
  return read<Length>(
      field, [&](const std::string& t) { return parse_length(t, settings_.length_unit, field); });
}
std::optional<Length> Form::maybe_length(std::string_view field) {
  return maybe_read<Length>(
      field, [&](const std::string& t) { return parse_length(t, settings_.length_unit, field); });
}
Mass Form::mass(std::string_view field) {
  return read<Mass>(
      field, [&](const std::string& t) { return parse_mass(t, settings_.mass_unit, field); });
}
std::optional<Mass> Form::maybe_mass(std::string_view field) {
  return maybe_read<Mass>(
      field, [&](const std::string& t) { return parse_mass(t, settings_.mass_unit, field); });
}
std::optional<Volume> Form::maybe_volume(std::string_view field) {
  return maybe_read<Volume>(field, [&](const std::string& t) { return parse_volume(t, field); });
}
Temperature Form::temperature(std::string_view field) {
  return read<Temperature>(field, [&](const std::string& t) {
    return parse_temperature(t, settings_.temperature_unit, field);
  });
}
std::optional<Temperature> Form::maybe_temperature(std::string_view field) {
  return maybe_read<Temperature>(field, [&](const std::string& t) {
    return parse_temperature(t, settings_.temperature_unit, field);
  });
}
std::optional<TemperatureDifference> Form::maybe_temperature_step(std::string_view field) {
  return maybe_read<TemperatureDifference>(field, [&](const std::string& t) {
    return parse_temperature_difference(t, settings_.temperature_unit, field);
  });
}
Money Form::money(std::string_view field) {
  return read<Money>(
      field, [&](const std::string& t) { return parse_money(t, settings_.currency, field); });
}
std::optional<Money> Form::maybe_money(std::string_view field) {
  return maybe_read<Money>(
      field, [&](const std::string& t) { return parse_money(t, settings_.currency, field); });
}
Share Form::share(std::string_view field) {
  return read<Share>(field, [&](const std::string& t) { return parse_share(t, field); });
}
std::optional<Share> Form::maybe_share(std::string_view field) {
  return maybe_read<Share>(field, [&](const std::string& t) { return parse_share(t, field); });
}
std::optional<Share> Form::maybe_quantity(std::string_view field) {
  return maybe_read<Share>(field, [&](const std::string& t) { return parse_quantity(t, field); });
}
CalendarDate Form::date(std::string_view field) {
  return read<CalendarDate>(field, [&](const std::string& t) { return parse_date(t, field); });
}
std::optional<CalendarDate> Form::maybe_date(std::string_view field) {
  return maybe_read<CalendarDate>(field,
                                  [&](const std::string& t) { return parse_date(t, field); });
}
Instant Form::instant(std::string_view field) {
  return read<Instant>(field,
                       [&](const std::string& t) { return parse_instant(t, zone_, now_, field); });
}
std::optional<Instant> Form::maybe_instant(std::string_view field) {
  return maybe_read<Instant>(
      field, [&](const std::string& t) { return parse_instant(t, zone_, now_, field); });
}
Duration Form::duration(std::string_view field) {
  return read<Duration>(field, [&](const std::string& t) { return parse_duration(t, field); });
}
std::optional<Duration> Form::maybe_duration(std::string_view field) {
  return maybe_read<Duration>(field,
                              [&](const std::string& t) { return parse_duration(t, field); });
}

std::optional<Form::File> Form::maybe_file(std::string_view field) {
  return maybe_read<File>(field, [&](const std::string& given) -> Outcome<File> {
    const std::filesystem::path path(given);
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error))
      return Problem{std::string(field), "There is no file " + given + ".", "Check the name."};
    if (std::filesystem::file_size(path, error) > largest_file)
      return Problem{std::string(field), given + " is larger than 64 MiB.",
                     "Choose a smaller file."};
    std::ifstream file(path, std::ios::binary);
    std::string bytes(std::istreambuf_iterator<char>(file), {});
    if (!file.good() && !file.eof())
      return Problem{std::string(field), given + " cannot be read.", "Check that you may read it."};
    return File{path.filename().string(), std::move(bytes)};
  });
}

std::vector<std::string> Form::list(std::string_view field) {
  std::vector<std::string> parts;
  const auto text = maybe_text(field);
  if (!text) return parts;
  std::size_t from = 0;
  while (from <= text->size()) {
    const auto comma = std::min(text->find(',', from), text->size());
    std::string part = trimmed(std::string_view(*text).substr(from, comma - from));
    if (!part.empty()) parts.push_back(std::move(part));
    from = comma + 1;
  }
  return parts;
}

}  // namespace tangmark::db
