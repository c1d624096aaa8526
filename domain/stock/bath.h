// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/measure/energy.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::stock {

enum class BathUse { quench, etch, other };

/// A tank or tray: quench oil, brine, plates, etchant.
struct Bath {
  std::string name{};
  std::string medium{};  ///< "medium oil", "brine", "plates", "ferric chloride"
  BathUse use = BathUse::quench;
  std::optional<LotId> lot{};
  std::optional<Length> depth{};
  std::optional<Volume> volume{};
  std::optional<Temperature> low{}, high{};  ///< the band it is used in
  /// Time constant of its way back after a quench; with volume and band, firings are planned by it.
  std::optional<Duration> cooling{};
  std::optional<Instant> filled_at{}, checked_at{};
  std::optional<std::int64_t> check_days{};  ///< a check is due this many days after the last
  std::optional<Share> strength{};           ///< mass fraction of an etchant or brine
  std::optional<Instant> retired_at{};
  friend bool operator==(const Bath&, const Bath&) = default;
};
using KeptBath = Kept<Bath, BathId>;

}  // namespace tangmark::stock

namespace tangmark {
template <>
inline constexpr auto trade_words<stock::BathUse> =
    std::array{std::pair{stock::BathUse::quench, std::string_view{"quench"}},
               std::pair{stock::BathUse::etch, std::string_view{"etch"}},
               std::pair{stock::BathUse::other, std::string_view{"other"}}};
}  // namespace tangmark
