// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"

namespace tangmark {

/// A part of a whole as whole millionths: 25 % is 250,000. Exact for percentages to four decimals.
/// May exceed one (mark-up of 150 %) and may be negative (a loss), where the user of it allows.
class Share {
 public:
  constexpr Share() = default;
  static constexpr Share millionths(std::int64_t n) { return Share(n); }
  static constexpr Share percent(std::int64_t n) { return Share(n * 10'000); }
  static constexpr Share whole() { return Share(1'000'000); }
  constexpr std::int64_t millionths() const { return millionths_; }
  constexpr double fraction() const { return static_cast<double>(millionths_) / 1e6; }
  friend constexpr Share operator+(Share a, Share b) {
    return Share(a.millionths_ + b.millionths_);
  }
  friend constexpr Share operator-(Share a, Share b) {
    return Share(a.millionths_ - b.millionths_);
  }
  friend constexpr bool operator==(Share, Share) = default;
  friend constexpr auto operator<=>(Share, Share) = default;

 private:
  explicit constexpr Share(std::int64_t n) : millionths_(n) {}
  std::int64_t millionths_ = 0;
};

/// Reads "40 %", "40%", "0.4", to the nearest millionth. A bare number above 1 is refused as
/// ambiguous, so is a figure below zero or above 100,000 %.
Outcome<Share> parse_share(std::string_view text, std::string_view field);
/// Reads a plain count of things such as "0.5", "12" or "1/4" belts, as millionths of one. Refuses
/// negative counts and anything above a million.
Outcome<Share> parse_quantity(std::string_view text, std::string_view field);
/// "0.5", "12": a plain count, up to six decimals.
std::string quantity_text(Share quantity);
/// "40 %", "12.5 %".
std::string to_text(Share share);

}  // namespace tangmark
