// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/store/quote_store.h"
#include "domain/commission/commission.h"

namespace tangmark::db {

/// The version of a commission's quote that the form names, the newest when it names none; a
/// problem in the form when there is none.
std::optional<commission::KeptQuote> asked_quote(
    Work& work, Form& form, const std::optional<commission::KeptCommission>& commission);
/// "12/2": commission and version.
std::string quote_number(const commission::KeptCommission& commission,
                         const commission::Quote& quote);

}  // namespace tangmark::db
