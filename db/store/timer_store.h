// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/timer.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/outcome.h"

namespace tangmark::db {

/// The timer whose number was typed into `field`; refuses one that is not in the shop.
Outcome<blade::KeptTimer> timer_named(const ShopFile& shop, std::string_view text,
                                      std::string_view field);
/// Running and paused timers, the oldest first.
std::vector<blade::KeptTimer> open_timers(const ShopFile& shop);
/// The open timer that a blade is on; a blade is on one at most.
std::optional<blade::KeptTimer> timer_of_blade(const ShopFile& shop, blade::BladeId blade);
/// Every timer that ran in a time, this one too, so that its minutes can be shared fairly.
std::vector<blade::KeptTimer> timers_beside(const ShopFile& shop, const blade::KeptTimer& timer);

blade::TimerId insert_timer(const ShopFile& shop, const blade::Timer& timer);
void store_timer_state(const ShopFile& shop, blade::TimerId timer, blade::TimerState state,
                       std::optional<std::string> why = std::nullopt);
void begin_stretch(const ShopFile& shop, blade::TimerId timer, Instant from);
/// Ends the stretch that still runs, if any; stretches begun after `to` end at their own start.
void end_stretches(const ShopFile& shop, blade::TimerId timer, Instant to);
/// Which entry of the bench log a blade's part of the timer became.
void store_timer_entry(const ShopFile& shop, blade::TimerId timer, blade::BladeId blade,
                       blade::LogEntryId entry);

/// Whether a timer was forgotten, by the shop's bench hours and limit; the time planned is that of
/// the open steps of its blades.
std::optional<blade::Forgotten> forgotten_timer(const ShopFile& shop, const blade::Timer& timer,
                                                const commission::ShopSettings& settings,
                                                Instant now);

}  // namespace tangmark::db
