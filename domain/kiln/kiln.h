// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/kiln/kiln_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/money.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::kiln {

enum class KilnKind { kiln, oven };

/// A kiln or temper oven with its real limits. The thermal model is the plain one of the planner:
/// straight heating, exponential cooling, holding power in proportion to the difference from the
/// room.
struct Kiln {
  std::string name;
  KilnKind kind = KilnKind::kiln;
  std::int64_t slots = 1;  ///< blades in one firing
  Length usable_length;
  Temperature low, high;   ///< set temperatures it can hold
  TemperatureDifference heat_per_h;
  /// By how much each blade inside slows the heating; empty until records of different loads say.
  std::optional<TemperatureDifference> load_per_h;
  Duration tau{};          ///< time constant of cooling, door shut
  std::int64_t heat_w = 0;          ///< power while heating
  std::int64_t hold_mw_per_c = 0;   ///< holding power per degree above the room, milliwatts
  Duration load{}, unload{};
  std::optional<std::string> circuit;  ///< of kilns on one circuit only one may be on
  std::string values_from = "plate";   ///< "plate" or "kiln records"
  std::optional<CalendarDate> checked_on;   ///< thermocouple against another
  std::optional<std::int64_t> check_days;   ///< the shop's own rule
  Money wear;                               ///< elements and brick, for each firing
  std::optional<CalendarDate> out_of_use_on;
  friend bool operator==(const Kiln&, const Kiln&) = default;
};
using KeptKiln = Kept<Kiln, KilnId>;

}  // namespace tangmark::kiln

namespace tangmark {
template <>
inline constexpr auto trade_words<kiln::KilnKind> = std::array{
    std::pair{kiln::KilnKind::kiln, std::string_view{"kiln"}},
    std::pair{kiln::KilnKind::oven, std::string_view{"oven"}}};
}  // namespace tangmark
