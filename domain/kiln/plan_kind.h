// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>
#include <utility>

#include "domain/kiln/plan_case.h"
#include "domain/measure/trade_word.h"

namespace tangmark {
/// How the kinds of work are written in a case and in sentences.
template <>
inline constexpr auto trade_words<kiln::PlanKind> =
    std::array{std::pair{kiln::PlanKind::soak, std::string_view{"soak"}},
               std::pair{kiln::PlanKind::harden, std::string_view{"harden"}},
               std::pair{kiln::PlanKind::anneal, std::string_view{"anneal"}}};
}  // namespace tangmark
