// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>
#include <utility>

#include "domain/measure/trade_word.h"

namespace tangmark::commission {

/// How a blade is meant to be built. What a certificate may say of it is decided by evidence alone.
enum class Construction { monosteel, pattern_welded, laminated, crucible, smelted, found_steel };

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::Construction> = std::array{
    std::pair{commission::Construction::monosteel, std::string_view{"monosteel"}},
    std::pair{commission::Construction::pattern_welded, std::string_view{"pattern-welded"}},
    std::pair{commission::Construction::laminated, std::string_view{"laminated"}},
    std::pair{commission::Construction::crucible, std::string_view{"crucible"}},
    std::pair{commission::Construction::smelted, std::string_view{"smelted"}},
    std::pair{commission::Construction::found_steel, std::string_view{"found steel"}}};
}  // namespace tangmark
