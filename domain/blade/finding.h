// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/blade/blade_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::blade {

/// What became of a finding. `open` blocks handle, certificate and delivery.
enum class Decision {
  open,
  scrap,
  fix_and_disclose,
  disclose,
  sell_as_second,
  buyer_accepts,
  no_fault
};

/// Something seen on a blade: a crack, warp, soft area, delamination, inclusion, decarb, or the
/// pattern or hamon that came out.
struct Finding {
  std::int64_t number = 0;
  BladeId blade;
  Instant at{};
  /// "crack", "delamination", "soft area", "pattern result", "hamon", "warp" ...
  std::string kind{};
  std::string words{};
  std::optional<std::string> place{}, side{};
  std::optional<Length> size{};
  bool affects = true;  ///< the blade's worth or use; such a finding is always printed
  Decision decision = Decision::open;
  std::optional<Instant> decided_at{};
  std::optional<std::string> decided_words{};
  friend bool operator==(const Finding&, const Finding&) = default;
};
using KeptFinding = Kept<Finding, FindingId>;

}  // namespace tangmark::blade

namespace tangmark {
template <>
inline constexpr auto trade_words<blade::Decision> =
    std::array{std::pair{blade::Decision::open, std::string_view{"open"}},
               std::pair{blade::Decision::scrap, std::string_view{"scrap"}},
               std::pair{blade::Decision::fix_and_disclose, std::string_view{"fix and disclose"}},
               std::pair{blade::Decision::disclose, std::string_view{"disclose"}},
               std::pair{blade::Decision::sell_as_second, std::string_view{"sell as second"}},
               std::pair{blade::Decision::buyer_accepts, std::string_view{"buyer accepts"}},
               std::pair{blade::Decision::no_fault, std::string_view{"no fault"}}};
}  // namespace tangmark
