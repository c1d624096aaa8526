// SPDX-License-Identifier: MIT
#pragma once

#include "domain/blade/state.h"
#include "domain/measure/caught.h"

namespace tangmark::blade {

/// What a blade in a hard state cannot come to.
enum class Stage { handle, certificate, delivery };

/// The hard states of a blade, each of which stops handle, certificate and delivery until it is
/// answered: quenched and not tempered (8), tempered fewer times than planned, or planned to be
/// hardened and not yet (9), a finding without a decision (17), scrapped (27). Empty when nothing
/// stands in the way.
Catches blocks(const BladeState& state, Stage stage, Instant now);

}  // namespace tangmark::blade

namespace tangmark {
template <>
inline constexpr auto trade_words<blade::Stage> =
    std::array{std::pair{blade::Stage::handle, std::string_view{"handle"}},
               std::pair{blade::Stage::certificate, std::string_view{"certificate"}},
               std::pair{blade::Stage::delivery, std::string_view{"delivery"}}};
}  // namespace tangmark
