// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "domain/blade/blade_id.h"
#include "domain/kiln/kiln_id.h"
#include "domain/measure/energy.h"
#include "domain/measure/kept.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::kiln {

/// soak: in together, out together. harden: pulled and quenched one by one. anneal: soak, then
/// controlled slow cooling.
enum class FiringKind { soak, harden, anneal };
enum class FiringState { booked, running, done, cancelled };

/// A blade in a firing, with its own time in and out. The order is the order of the quench.
struct FiringBlade {
  blade::BladeId blade;
  std::optional<blade::RouteStepId> step;
  std::int64_t position = 0;
  std::optional<Instant> time_in, time_out;
  friend bool operator==(const FiringBlade&, const FiringBlade&) = default;
};

/// One kiln run. The kiln is at the set temperature at starts_at; it heats from heat_from on.
struct Firing {
  explicit Firing(KilnId in) : kiln(in) {}
  std::int64_t number = 0;
  KilnId kiln;
  FiringKind kind = FiringKind::soak;
  Temperature set;
  Duration soak{}, rest{};
  std::optional<TemperatureDifference> cool_per_h;
  std::optional<Temperature> cool_to;
  Instant starts_at, ends_at, heat_from;
  FiringState state = FiringState::booked;
  bool locked = false;
  std::optional<Instant> actual_start, actual_end;
  Energy energy;                  ///< planned, by the kiln's model
  std::optional<Energy> metered;
  std::optional<std::string> cancelled_why;
  std::vector<FiringBlade> blades;
  friend bool operator==(const Firing&, const Firing&) = default;
};
using KeptFiring = Kept<Firing, FiringId>;

/// A usual firing of the shop.
struct Recipe {
  std::string name;
  FiringKind kind = FiringKind::soak;
  Temperature temperature, low, high;
  Duration soak{}, soak_max{};
  std::optional<TemperatureDifference> cool_per_h;
  std::optional<Temperature> cool_to;
  std::optional<std::string> preheat, note;
  friend bool operator==(const Recipe&, const Recipe&) = default;
};
using KeptRecipe = Kept<Recipe, RecipeId>;

}  // namespace tangmark::kiln

namespace tangmark {
template <>
inline constexpr auto trade_words<kiln::FiringKind> = std::array{
    std::pair{kiln::FiringKind::soak, std::string_view{"soak"}},
    std::pair{kiln::FiringKind::harden, std::string_view{"harden"}},
    std::pair{kiln::FiringKind::anneal, std::string_view{"anneal"}}};
template <>
inline constexpr auto trade_words<kiln::FiringState> = std::array{
    std::pair{kiln::FiringState::booked, std::string_view{"booked"}},
    std::pair{kiln::FiringState::running, std::string_view{"running"}},
    std::pair{kiln::FiringState::done, std::string_view{"done"}},
    std::pair{kiln::FiringState::cancelled, std::string_view{"cancelled"}}};
}  // namespace tangmark
