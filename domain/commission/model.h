// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/commission/commission_id.h"
#include "domain/commission/construction.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/money.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// A knife pattern the shop makes again, with its usual blank, route, hours and uses.
struct Model {
  std::string name{};
  std::optional<std::string> description{};
  Construction construction = Construction::monosteel;
  std::optional<std::string> grade{};
  Length blade_length{};
  Length blank_length{}, blank_width{}, blank_thickness{};
  Share yield =
      Share::whole();  ///< of the mass taken from the bar, what is still there in the blank
  std::optional<Money> price{};         ///< list price
  std::optional<Money> price_per_mm{};  ///< added to the list price for each mm above blade_length
  Currency currency{};
  std::optional<std::string> hardness_aim{};  ///< "60-61 HRC"
  std::optional<CalendarDate> retired_on{};
  friend bool operator==(const Model&, const Model&) = default;
};
using KeptModel = Kept<Model, ModelId>;

/// One operation of a model's usual route, with its three kinds of time kept apart.
struct ModelStep {
  ModelId model;
  std::int64_t position = 0;
  std::string operation{};  ///< "harden", "temper", or one of the shop's own
  Duration hands_on{}, attended{}, unattended{};
  Share survival = Share::whole();  ///< of the blades that reach it
  std::optional<Temperature> temperature{}, low{}, high{};
  std::optional<Duration> soak{}, soak_max{};
  std::optional<std::string> medium{};  ///< what it is quenched or etched in
  std::optional<Duration> gap_max{};    ///< the longest wait after the step before
  std::optional<TemperatureDifference> cool_per_h{};
  std::optional<Temperature> cool_to{};
  bool unattended_allowed = false;
  std::optional<std::string> note{};
  friend bool operator==(const ModelStep&, const ModelStep&) = default;
};
using KeptModelStep = Kept<ModelStep, ModelStepId>;

enum class UseKind { material, used_up, gas, made_elsewhere, packing };

/// What one piece of a model uses beside its steel.
struct ModelUse {
  ModelId model;
  std::int64_t position = 0;
  UseKind kind = UseKind::used_up;
  std::string text{};
  Share quantity{};  ///< in `unit`, in millionths
  std::string unit{};
  Money each{};
  std::optional<Share> low{}, high{};  ///< the range the quantity is known to lie in
  friend bool operator==(const ModelUse&, const ModelUse&) = default;
};
using KeptModelUse = Kept<ModelUse, ModelUseId>;

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::UseKind> =
    std::array{std::pair{commission::UseKind::material, std::string_view{"material"}},
               std::pair{commission::UseKind::used_up, std::string_view{"used up"}},
               std::pair{commission::UseKind::gas, std::string_view{"gas"}},
               std::pair{commission::UseKind::made_elsewhere, std::string_view{"made elsewhere"}},
               std::pair{commission::UseKind::packing, std::string_view{"packing"}}};
}  // namespace tangmark
