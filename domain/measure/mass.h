// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "domain/measure/length.h"
#include "domain/measure/outcome.h"

namespace tangmark {

enum class MassUnit { gram, pound };

/// An exact mass in whole micrograms. A pound is 453,592,370 micrograms (NIST SP 811).
class Mass {
 public:
  constexpr Mass() = default;
  static constexpr Mass micrograms(std::int64_t n) { return Mass(n); }
  static constexpr Mass grams(std::int64_t g) { return Mass(g * 1'000'000); }
  static Mass nearest_grams(double g);
  constexpr std::int64_t micrograms() const { return ug_; }
  constexpr double in_grams() const { return static_cast<double>(ug_) / 1e6; }
  constexpr double in_kilograms() const { return static_cast<double>(ug_) / 1e9; }
  friend constexpr Mass operator+(Mass a, Mass b) { return Mass(a.ug_ + b.ug_); }
  friend constexpr Mass operator-(Mass a, Mass b) { return Mass(a.ug_ - b.ug_); }
  friend constexpr auto operator<=>(Mass, Mass) = default;

 private:
  explicit constexpr Mass(std::int64_t n) : ug_(n) {}
  std::int64_t ug_ = 0;
};

/// Kilograms per cubic metre, whole. Carbon steel 7850 (common practice).
struct Density {
  std::int64_t kg_per_m3 = 7850;
  friend constexpr auto operator<=>(Density, Density) = default;
};

/// Mass of a rectangular bar, to the nearest microgram.
Mass bar_mass(Length length, Length width, Length thickness, Density density);
/// Mass of a round bar, to the nearest microgram.
Mass round_mass(Length length, Length diameter, Density density);

/// Reads "235 g", "1.2 kg", "3 lb", "8 oz", "2 lb 3 oz"; a bare number is grams for MassUnit::gram
/// and pounds for MassUnit::pound. Refuses negative figures and anything above 10 t. An ounce is
/// the avoirdupois ounce; "oz t" is refused.
Outcome<Mass> parse_mass(std::string_view text, MassUnit usual, std::string_view field);
/// "235 g", "1.204 kg", or "8.3 oz", "2.66 lb".
std::string to_text(Mass m, MassUnit unit);

}  // namespace tangmark
