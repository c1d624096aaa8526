// SPDX-License-Identifier: MIT
#include "domain/blade/operation.h"

#include <algorithm>
#include <array>

namespace tangmark::blade {

std::span<const TradeOperation> trade_operations() {
  static constexpr std::array operations{
      TradeOperation{"profile", Heat::none, false, false, false},
      TradeOperation{"drill", Heat::none, false, true, false},
      TradeOperation{"mark", Heat::none, false, true, false},
      TradeOperation{"forge-weld", Heat::none, true, true, false},
      TradeOperation{"forge", Heat::none, true, true, false},
      TradeOperation{"twist", Heat::none, true, true, false},
      TradeOperation{"normalize", Heat::soak, true, true, false},
      TradeOperation{"thermal cycle", Heat::soak, true, true, false},
      TradeOperation{"anneal", Heat::anneal, true, true, false},
      TradeOperation{"stress relief", Heat::soak, true, true, false},
      TradeOperation{"rough grind", Heat::none, false, true, false},
      TradeOperation{"clay", Heat::none, false, true, false},
      TradeOperation{"harden", Heat::harden, true, false, false},
      TradeOperation{"sub-zero", Heat::none, false, false, false},
      TradeOperation{"hold warm", Heat::none, true, false, false},
      TradeOperation{"snap temper", Heat::soak, true, false, false},
      TradeOperation{"temper", Heat::soak, true, false, false},
      TradeOperation{"straighten", Heat::none, false, false, false},
      TradeOperation{"finish grind", Heat::none, false, false, false},
      TradeOperation{"hand sand", Heat::none, false, false, false},
      TradeOperation{"polish", Heat::none, false, false, false},
      TradeOperation{"etch", Heat::none, false, false, false},
      TradeOperation{"fit-up", Heat::none, false, false, true},
      TradeOperation{"glue", Heat::none, false, false, true},
      TradeOperation{"handle", Heat::none, false, false, true},
      TradeOperation{"sharpen", Heat::none, false, false, true},
      TradeOperation{"sheath", Heat::none, false, false, false},
      TradeOperation{"inspect", Heat::none, false, false, false},
  };
  return operations;
}

std::optional<TradeOperation> trade_operation(std::string_view name) {
  const auto all = trade_operations();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const TradeOperation& o) { return o.name == name; });
  if (found == all.end()) return std::nullopt;
  return *found;
}

}  // namespace tangmark::blade
