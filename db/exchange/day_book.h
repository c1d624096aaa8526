// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "db/actions/action.h"
#include "db/shop_file.h"

namespace tangmark::db {

/// A day book: what was done, day by day, as plain lines that anyone can read and type.
///
///     # Words behind a hash are for the reader.
///     zone Europe/London            (of the times below; the shop's own when not said)
///     day -214                      (days before now; or: day 2026-04-25)
///     09:30 new_customer name="Ilse Varn" country=Norway as=ilse
///     09:35 new_commission customer=$ilse words="a hunter for the autumn"
///           wanted_by=+60d as=varn  (indented lines go on)
///
/// `as=NAME` keeps the number of what was made; `$NAME` stands for it later, in any book. A value
/// "+60d" or "-3d" is the date so many days from the line's day, "@9:10" that time on it and
/// "+1d@9:10" that time a day later. A line may begin with "-53m": so many minutes before now.
struct DayBook {
  std::string name;  ///< for problems: "kitchen.daybook, line 14"
  std::string text;
  std::filesystem::path folder = {};  ///< where files that it names without a folder are
};

/// Asked before every line: true ends the work, and the shop is as it was.
using Stopped = std::function<bool()>;

/// Does all lines of all books in the order of their times, as one: either every line was done, or
/// the shop is as it was and the problem names book and line. Returns how many were done.
Outcome<int> perform_day_books(ShopFile& shop, const std::vector<DayBook>& books, Instant now,
                               const Stopped& stopped = {});

/// Begins a shop in a new file and does in it all day books (*.daybook) of a folder, in the order
/// of their names. When one is refused, or the work is stopped, no file is left. A path where
/// something already is stays untouched and is refused. Returns how many lines were done.
Outcome<int> begin_shop_from_day_books(const std::filesystem::path& path,
                                       const std::filesystem::path& folder, Instant now,
                                       const Stopped& stopped = {});

/// Does one action for each record of a table whose first record names the action's fields; a
/// column "at" says when. All or nothing. Returns how many were done.
Outcome<int> perform_table(ShopFile& shop, const Action& action, std::string_view name,
                           std::string_view text, Instant now);

}  // namespace tangmark::db
