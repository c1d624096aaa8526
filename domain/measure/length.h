// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"

namespace tangmark {

enum class LengthUnit { millimetre, inch };

/// An exact length in whole nanometres; 1/64 in and 0.01 mm are both exact.
class Length {
 public:
  constexpr Length() = default;
  static constexpr Length nanometres(std::int64_t n) { return Length(n); }
  static constexpr Length millimetres(std::int64_t mm) { return Length(mm * 1'000'000); }
  static Length nearest_millimetres(double mm);
  constexpr std::int64_t nanometres() const { return nm_; }
  constexpr double in_millimetres() const { return static_cast<double>(nm_) / 1e6; }
  constexpr double in_inches() const { return static_cast<double>(nm_) / 25.4e6; }
  friend constexpr Length operator+(Length a, Length b) { return Length(a.nm_ + b.nm_); }
  friend constexpr Length operator-(Length a, Length b) { return Length(a.nm_ - b.nm_); }
  friend constexpr Length operator*(Length a, std::int64_t n) { return Length(a.nm_ * n); }
  friend constexpr auto operator<=>(Length, Length) = default;

 private:
  explicit constexpr Length(std::int64_t n) : nm_(n) {}
  std::int64_t nm_ = 0;
};

/// Reads "3.2 mm", "25 cm", "0.6 m", "1/8 in", "1 1/2\"", "0.125 in", "2 ft"; a bare number is in
/// `usual`. Refuses negative figures and anything above 10 m.
Outcome<Length> parse_length(std::string_view text, LengthUnit usual, std::string_view field);
/// "3.2 mm" (up to three decimals), or in inches a fraction to 1/64 when exact ("1 1/2 in"), else
/// three decimals ("0.126 in").
std::string to_text(Length l, LengthUnit unit);

}  // namespace tangmark
