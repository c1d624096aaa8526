// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "db/actions/form.h"
#include "db/actions/work.h"
#include "domain/measure/money.h"

namespace tangmark::db {

/// An amount of a form, none when nothing is given. A bare one is in that currency: of a commission
/// that is reckoned in another than the shop's.
std::optional<Money> maybe_money_in(Form& form, std::string_view field, Currency usual);

/// The rate that a sum in this currency is kept with, as recorded for the day of the work: none for
/// the shop's own, and none with a warning when nothing was noted.
std::optional<std::string> rate_to_keep(Work& work, Currency currency);

}  // namespace tangmark::db
