// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/blade/blade_id.h"
#include "domain/kiln/kiln_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::blade {

/// How a time in the log came about. A late entry is never made to look live.
enum class HowTimed { live, entered_later, estimated };

/// What an etch was for: bringing out what the steel holds, the maker's mark through a stencil, or
/// an image that is no pattern of the steel.
enum class EtchFor { pattern, makers_mark, image };

/// What really happened to a blade in one operation. Append only: a correction is a new entry that
/// names the one it supersedes. Fields that an operation does not have stay empty.
struct LogEntry {
  BladeId blade;
  std::optional<RouteStepId> step{};
  std::string operation{};
  Instant started_at{};
  std::optional<Instant> ended_at{};
  Instant entered_at{};
  HowTimed how_timed = HowTimed::live;
  std::optional<LogEntryId> supersedes{};
  std::optional<std::string> why{};  ///< of a correction
  std::optional<std::string> who{};  ///< an outside hand; none: this shop
  Duration hands_on{}, attended{};
  std::optional<kiln::FiringId> firing{};

  // Heat.
  std::optional<Temperature> set{};   ///< the set point
  std::optional<Temperature> read{};  ///< what a display or thermometer showed
  std::optional<Duration> hold{};     ///< of this blade, at temperature
  std::optional<Instant> time_in{}, time_out{};
  std::optional<std::string> cooling{};     ///< "still air", "oven ramp", "vermiculite"
  std::optional<std::string> protection{};  ///< "foil", "paste", "bare"
  std::optional<std::int64_t> cycles{};     ///< of a thermal cycle or normalizing

  // Quench.
  std::optional<stock::BathId> bath{};
  std::optional<std::string> medium{};
  std::optional<Temperature> bath_temperature{};
  std::optional<std::chrono::milliseconds> to_bath{};
  std::optional<bool> clay{}, edge_only{};

  // Temper.
  std::optional<std::int64_t> temper_number{};
  std::optional<bool> cooled_to_room{};  ///< before this temper

  // Bench.
  /// Warp measured; edge thickness before the quench or behind the edge.
  std::optional<Length> warp{}, edge{};
  std::optional<std::string> grit{};
  std::optional<Share> belts{};  ///< counted as binned, in millionths of one
  std::optional<std::string> etchant{};
  std::optional<Share> strength{};  ///< of the etchant, by mass
  std::optional<std::int64_t> passes{};
  std::optional<bool> resist{};  ///< a stencil or lacquer kept the etchant off
  std::optional<EtchFor> etch_for{};
  std::optional<std::int64_t> contrast{};  ///< of the pattern after the etch, 0 none to 5 clearest
  std::optional<Mass> mass_in{}, mass_out{}, gas{};
  std::optional<std::string> result{};  ///< "file skates", "straight within 0.3"
  std::optional<std::string> note{};
  friend bool operator==(const LogEntry&, const LogEntry&) = default;
};
using KeptLogEntry = Kept<LogEntry, LogEntryId>;

}  // namespace tangmark::blade

namespace tangmark {
template <>
inline constexpr auto trade_words<blade::EtchFor> =
    std::array{std::pair{blade::EtchFor::pattern, std::string_view{"pattern"}},
               std::pair{blade::EtchFor::makers_mark, std::string_view{"maker's mark"}},
               std::pair{blade::EtchFor::image, std::string_view{"image"}}};
template <>
inline constexpr auto trade_words<blade::HowTimed> =
    std::array{std::pair{blade::HowTimed::live, std::string_view{"live"}},
               std::pair{blade::HowTimed::entered_later, std::string_view{"entered later"}},
               std::pair{blade::HowTimed::estimated, std::string_view{"estimated"}}};
}  // namespace tangmark
