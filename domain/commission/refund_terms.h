// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>
#include <utility>

#include "domain/measure/money.h"
#include "domain/measure/trade_word.h"

namespace tangmark::commission {

/// The part of a refund rule that can be worked out. It is agreed with the order and frozen with
/// it; the rule's full words stand beside it. What the law gives the buyer comes first, and differs
/// by country.
enum class RefundTerms {
  full,           ///< everything, whenever
  less_material,  ///< everything until work begins, then less the material used
  until_work,     ///< everything until work begins, then nothing
  none            ///< nothing: what came in buys the place in the queue
};

/// What goes back to a buyer who withdraws: never below nothing, never above what came in. All
/// amounts in one currency.
Money refund_by(RefundTerms terms, Money received, bool work_has_begun, Money material_used);

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::RefundTerms> = std::array{
    std::pair{commission::RefundTerms::full, std::string_view{"in full"}},
    std::pair{commission::RefundTerms::less_material, std::string_view{"less material used"}},
    std::pair{commission::RefundTerms::until_work, std::string_view{"until work begins"}},
    std::pair{commission::RefundTerms::none, std::string_view{"none"}}};
}  // namespace tangmark
