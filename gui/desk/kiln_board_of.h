// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "gui/desk/kiln_board.h"
#include "gui/desk/kiln_desk.h"

namespace tangmark::desk {

/// The board of the shop's kilns around now, with a proposal drawn in when there is one, else with
/// the conflicts of what is booked.
KilnBoard board_of(const Sight& sight, const std::string& selected,
                   const std::optional<KilnProposal>& proposal, KilnMemory& memory);

/// "805 °C harden".
std::string caption_of(const Sight& sight, const db::FiringRow& firing);

}  // namespace tangmark::desk
