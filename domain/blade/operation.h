// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace tangmark::blade {

/// What kind of firing an operation needs, if any.
enum class Heat {
  none,    ///< no kiln: forge, grinder, bench
  soak,    ///< in together, out together: temper, stress relief, normalize
  harden,  ///< pulled and quenched one by one
  anneal,  ///< soak, then controlled slow cooling
};

/// An operation of the trade and what it does to the order of work.
/// Source: common practice, no source.
struct TradeOperation {
  std::string_view name;
  Heat heat;
  bool hot;            ///< above what a handle survives, in a kiln or a forge
  bool before_quench;  ///< belongs before hardening when it is on the route at all
  bool after_temper;   ///< only once the blade has had all its tempers: handle, glue, sharpen ...
};

/// All operations of the trade, in the usual order of a job.
std::span<const TradeOperation> trade_operations();
/// The operation of a name; nothing for one that the shop added itself.
std::optional<TradeOperation> trade_operation(std::string_view name);

}  // namespace tangmark::blade
