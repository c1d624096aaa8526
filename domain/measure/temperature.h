// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"

namespace tangmark {

enum class TemperatureUnit { celsius, fahrenheit, kelvin };

/// A step between two temperatures. 50 F of ramp is not the temperature 50 F.
/// Counted in 1/1800 K: exact for thousandths of a degree F and hundredths of a degree C.
class TemperatureDifference {
 public:
  constexpr TemperatureDifference() = default;
  static constexpr TemperatureDifference counts(std::int64_t n) { return TemperatureDifference(n); }
  static constexpr TemperatureDifference celsius(std::int64_t c) {
    return TemperatureDifference(c * 1800);
  }
  static constexpr TemperatureDifference fahrenheit(std::int64_t f) {
    return TemperatureDifference(f * 1000);
  }
  constexpr std::int64_t counts() const { return n_; }
  constexpr double kelvins() const { return static_cast<double>(n_) / 1800.0; }
  friend constexpr auto operator<=>(TemperatureDifference, TemperatureDifference) = default;

 private:
  explicit constexpr TemperatureDifference(std::int64_t n) : n_(n) {}
  std::int64_t n_ = 0;
};

/// An exact temperature: an integer count of 1/1800 K above absolute zero.
class Temperature {
 public:
  constexpr Temperature() : n_(zero_c) {}  ///< 0 C
  static constexpr Temperature counts(std::int64_t n) { return Temperature(n); }
  /// From hundredths of a degree C (79'000 is 790 C) or thousandths of a degree F; exact.
  static constexpr Temperature centi_celsius(std::int64_t c100) {
    return Temperature(zero_c + c100 * 18);
  }
  static constexpr Temperature celsius(std::int64_t c) { return centi_celsius(c * 100); }
  static constexpr Temperature milli_fahrenheit(std::int64_t f1000) {
    return Temperature(zero_f + f1000);
  }
  static constexpr Temperature fahrenheit(std::int64_t f) { return milli_fahrenheit(f * 1000); }
  /// Nearest count to a computed figure, for results of formulas and of measuring.
  static Temperature nearest_celsius(double c);
  constexpr std::int64_t counts() const { return n_; }
  constexpr double in_celsius() const { return static_cast<double>(n_ - zero_c) / 1800.0; }
  constexpr double in_fahrenheit() const { return static_cast<double>(n_ - zero_f) / 1000.0; }
  constexpr double in_kelvin() const { return static_cast<double>(n_) / 1800.0; }
  /// Whole degrees C, half away from zero: for the planner, whose format has whole degrees.
  std::int64_t whole_celsius() const;
  friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
    return TemperatureDifference::counts(a.n_ - b.n_);
  }
  friend constexpr Temperature operator+(Temperature a, TemperatureDifference d) {
    return Temperature(a.n_ + d.counts());
  }
  friend constexpr auto operator<=>(Temperature, Temperature) = default;

 private:
  static constexpr std::int64_t zero_c = 491'670;  // 273.15 K
  static constexpr std::int64_t zero_f = 459'670;  // 255.372222 K
  explicit constexpr Temperature(std::int64_t n) : n_(n) {}
  std::int64_t n_;
};

/// Reads "802 C", "1475F", "1475 °F", "802.5", "1073 K"; a bare number is in `usual`.
/// Refuses below absolute zero and above 2000 C: no kiln of this trade goes there.
Outcome<Temperature> parse_temperature(std::string_view text, TemperatureUnit usual,
                                       std::string_view field);
/// Reads a step such as "50 F", "28 C", "10 K".
Outcome<TemperatureDifference> parse_temperature_difference(std::string_view text,
                                                            TemperatureUnit usual,
                                                            std::string_view field);
/// "802 °C", "1475 °F", with up to two decimals when they are there and none when whole.
std::string to_text(Temperature t, TemperatureUnit unit);
/// The same figure without the unit.
std::string figure(Temperature t, TemperatureUnit unit);

}  // namespace tangmark
