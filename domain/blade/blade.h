// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/blade/blade_id.h"
#include "domain/commission/commission_id.h"
#include "domain/commission/construction.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::blade {

enum class CostGoesTo { job, shop };

/// One blade from blank to buyer. Its number is short enough to stamp into a tang, and is never
/// given again, not even after a scrap.
struct Blade {
  std::int64_t number = 0;
  std::optional<commission::ItemId> item{};  ///< none: made without knowing for what
  std::optional<commission::ModelId> model{};
  std::optional<stock::PieceId> piece{};  ///< the blank; none: an unlisted bar
  std::string title{};
  commission::Construction construction = commission::Construction::monosteel;
  std::optional<std::string> grade{};
  Length length{};
  std::optional<Length> width{}, thickness{};
  std::optional<std::string> hardness_aim{};
  Instant started_at{};
  std::optional<CalendarDate> due{};
  std::optional<Instant> finished_at{};
  std::optional<Instant> scrapped_at{};
  std::optional<std::string> scrap_why{};
  std::optional<CostGoesTo> scrap_cost_to{};
  std::optional<Instant> delivered_at{};
  bool in_work() const { return !finished_at && !scrapped_at && !delivered_at; }
  friend bool operator==(const Blade&, const Blade&) = default;
};
using KeptBlade = Kept<Blade, BladeId>;

/// One planned operation of one blade; a blade's steps in order are its route.
struct RouteStep {
  BladeId blade;
  std::int64_t position = 0;
  std::string operation{};
  Duration hands_on{}, attended{}, unattended{};
  Share survival = Share::whole();
  std::optional<Temperature> temperature{}, low{}, high{};
  std::optional<Duration> soak{}, soak_max{};
  std::optional<std::string> medium{};
  std::optional<Duration> gap_max{};  ///< the longest wait after the step before
  std::optional<TemperatureDifference> cool_per_h{};
  std::optional<Temperature> cool_to{};
  bool unattended_allowed = false;
  std::optional<std::string> note{};
  std::optional<Instant> done_at{};
  std::optional<std::string> skipped_why{};
  bool open() const { return !done_at && !skipped_why; }
  friend bool operator==(const RouteStep&, const RouteStep&) = default;
};
using KeptRouteStep = Kept<RouteStep, RouteStepId>;

}  // namespace tangmark::blade

namespace tangmark {
template <>
inline constexpr auto trade_words<blade::CostGoesTo> =
    std::array{std::pair{blade::CostGoesTo::job, std::string_view{"job"}},
               std::pair{blade::CostGoesTo::shop, std::string_view{"shop"}}};
}  // namespace tangmark
