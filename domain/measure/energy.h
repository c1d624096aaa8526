// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"

namespace tangmark {

/// An exact energy in whole joules. 1 kWh is 3,600,000 J.
class Energy {
 public:
  constexpr Energy() = default;
  static constexpr Energy joules(std::int64_t n) { return Energy(n); }
  static constexpr Energy watt_minutes(std::int64_t n) { return Energy(n * 60); }
  constexpr std::int64_t joules() const { return j_; }
  constexpr double in_kilowatt_hours() const { return static_cast<double>(j_) / 3.6e6; }
  friend constexpr Energy operator+(Energy a, Energy b) { return Energy(a.j_ + b.j_); }
  friend constexpr Energy operator-(Energy a, Energy b) { return Energy(a.j_ - b.j_); }
  friend constexpr auto operator<=>(Energy, Energy) = default;

 private:
  explicit constexpr Energy(std::int64_t n) : j_(n) {}
  std::int64_t j_ = 0;
};

/// Reads "4.2 kWh", "15 MJ", "12000 Btu"; a bare number is kWh. Btu is the IT Btu, 1055.056 J.
Outcome<Energy> parse_energy(std::string_view text, std::string_view field);
/// "4.20 kWh".
std::string to_text(Energy e);

/// A volume in whole microlitres: oil in a tank, liquid gas, etchant.
class Volume {
 public:
  constexpr Volume() = default;
  static constexpr Volume microlitres(std::int64_t n) { return Volume(n); }
  constexpr std::int64_t microlitres() const { return ul_; }
  constexpr double in_litres() const { return static_cast<double>(ul_) / 1e6; }
  friend constexpr Volume operator+(Volume a, Volume b) { return Volume(a.ul_ + b.ul_); }
  friend constexpr Volume operator-(Volume a, Volume b) { return Volume(a.ul_ - b.ul_); }
  friend constexpr auto operator<=>(Volume, Volume) = default;

 private:
  explicit constexpr Volume(std::int64_t n) : ul_(n) {}
  std::int64_t ul_ = 0;
};

/// Reads "15 l", "250 ml", "2 US gal", "1 qt"; a bare number is litres. "gal" alone is refused as
/// it means two things.
Outcome<Volume> parse_volume(std::string_view text, std::string_view field);
/// "15 l", "250 ml".
std::string to_text(Volume v);

}  // namespace tangmark
