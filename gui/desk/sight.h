// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/when.h"

namespace tangmark::desk {

/// What a place looks with: the shop file, its settings, and the time.
struct Sight {
  const db::ShopFile& shop;
  const commission::ShopSettings& settings;
  Instant now;

  const Zone& zone() const { return settings.zone; }
  CalendarDate today() const { return settings.zone.date_of(now); }
};

/// Figures as this shop shows them.
std::string words(const Sight& sight, Temperature t);
std::string words(const Sight& sight, Length l);
std::string words(const Sight& sight, Mass m);
/// "26 Nov, 09:17", with the year when it is not this one.
std::string when(const Sight& sight, Instant at);
/// "since 47 min", "since 2 d 1 h".
std::string ago(const Sight& sight, Instant at);
/// "Fri 12 Feb", with the year when it is not this one.
std::string day(const Sight& sight, CalendarDate date);
/// "today", "tomorrow", "in 6 days", "3 days ago".
std::string days_away(const Sight& sight, CalendarDate date);
/// The number that a text is, or nothing.
std::optional<std::int64_t> number_of(const std::string& text);
/// First letter large.
std::string sentence_case(std::string text);
/// "41", "41 and 42", "41, 42 and 43".
std::string listed(const std::vector<std::string>& names);

}  // namespace tangmark::desk
