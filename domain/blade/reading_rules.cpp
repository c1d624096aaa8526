// SPDX-License-Identifier: MIT
#include "domain/blade/reading_rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>

namespace tangmark::blade {
namespace {

struct ScaleRange {
  std::string_view scale;
  std::int64_t low_tenths, high_tenths;
};

constexpr std::array scales{ScaleRange{"HRC", 200, 700}, ScaleRange{"HRA", 600, 870},
                            ScaleRange{"HV", 800, 12'000}, ScaleRange{"file", 200, 700}};

std::string tenths_text(std::int64_t tenths) {
  return tenths % 10 == 0 ? fmt::format("{}", tenths / 10)
                          : fmt::format("{}.{}", tenths / 10, tenths % 10);
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

Outcome<std::int64_t> tenths_of(std::string_view text, const ScaleRange& scale,
                                std::string_view field) {
  const Problem unreadable{std::string(field),
                           fmt::format("\"{}\" is not a hardness figure.", text),
                           "Write figures such as 61.5,61,61.5, or 60-62 for a file set."};
  std::int64_t whole = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), whole);
  const std::string_view rest(end, static_cast<std::size_t>(text.data() + text.size() - end));
  if (error != std::errc() || whole < 0 || whole > 100'000) return unreadable;
  std::int64_t tenth = 0;
  if (rest.size() == 2 && rest[0] == '.' && rest[1] >= '0' && rest[1] <= '9')
    tenth = rest[1] - '0';
  else if (!rest.empty())
    return unreadable;
  const std::int64_t tenths = whole * 10 + tenth;
  if (tenths < scale.low_tenths || tenths > scale.high_tenths)
    return Problem{
        std::string(field), fmt::format("{} is no believable {} reading.", text, scale.scale),
        fmt::format("Readings lie from {} to {}.", scale.low_tenths / 10, scale.high_tenths / 10)};
  return tenths;
}

Outcome<HardnessFigure> figure_of(std::string_view text, const ScaleRange& scale,
                                  std::string_view field) {
  const auto dash = text.find('-', 1);
  if (dash == std::string_view::npos) {
    const auto tenths = tenths_of(text, scale, field);
    if (!tenths) return tenths.problem();
    return HardnessFigure{*tenths, std::nullopt};
  }
  const auto low = tenths_of(trimmed(text.substr(0, dash)), scale, field);
  const auto high = tenths_of(trimmed(text.substr(dash + 1)), scale, field);
  if (!low) return low.problem();
  if (!high) return high.problem();
  if (*high <= *low)
    return Problem{std::string(field), fmt::format("The bracket {} runs downwards.", text),
                   "Write the softer figure first, such as 60-62."};
  return HardnessFigure{*low, *high};
}

}  // namespace

Catch no_reading_after_heat(std::int64_t blade, std::span<const KeptReading> readings,
                            std::optional<Instant> last_heat_at) {
  const bool stands = std::any_of(readings.begin(), readings.end(), [&](const HardnessReading& r) {
    return !r.void_why && !r.on_coupon && (!last_heat_at || r.at >= *last_heat_at);
  });
  if (stands) return std::nullopt;
  return Caught{
      14, Weight::remark, "blade",
      fmt::format("Blade {} has no hardness reading after its last heat: a certificate will say "
                  "\"not measured\".",
                  blade),
      "Read it and log it with log_hardness."};
}

Catch reading_before_heat(std::int64_t blade, Instant taken_at,
                          std::optional<Instant> last_heat_at) {
  if (!last_heat_at || taken_at >= *last_heat_at) return std::nullopt;
  return Caught{12, Weight::remark, "at",
                fmt::format("Blade {} was heated after this reading: it is kept as void.", blade),
                "Read it again after the last temper."};
}

Outcome<std::vector<HardnessFigure>> parse_hardness(std::string_view text, std::string_view scale,
                                                    std::string_view field) {
  const auto known = std::find_if(scales.begin(), scales.end(),
                                  [&](const ScaleRange& s) { return s.scale == scale; });
  if (known == scales.end())
    return Problem{"scale", fmt::format("\"{}\" is not a scale known here.", scale),
                   "Use HRC, HRA, HV or file."};
  std::vector<HardnessFigure> figures;
  std::size_t from = 0;
  while (from <= text.size()) {
    const auto comma = std::min(text.find(',', from), text.size());
    const auto one = figure_of(trimmed(text.substr(from, comma - from)), *known, field);
    if (!one) return one.problem();
    if (known->scale == "file" && !one->tenths_to)
      return Problem{std::string(field),
                     "A file test is a bracket: one file bites and the next does not.",
                     "Write it as 60-62."};
    figures.push_back(*one);
    from = comma + 1;
  }
  return figures;
}

std::string hardness_text(const HardnessReading& reading) {
  const std::string scale = reading.scale == "file" ? "HRC (files)" : reading.scale;
  if (reading.tenths_to)
    return fmt::format("{} to {} {}", tenths_text(reading.tenths), tenths_text(*reading.tenths_to),
                       scale);
  return fmt::format("{} {}", tenths_text(reading.tenths), scale);
}

}  // namespace tangmark::blade
