// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "db/actions/form.h"
#include "db/actions/work.h"
#include "domain/stock/billet.h"

namespace tangmark::db {

/// One stage of a billet as the maker logs it.
struct StageWish {
  stock::StageWork operation = stock::StageWork::weld;
  std::optional<std::int64_t> pieces;
  std::optional<Mass> mass_in;  ///< what the billet weighed last when not given
  Mass mass_out, crop, scale, swarf;
  std::optional<Length> thickness;
  std::optional<Temperature> temperature;
  std::optional<std::string> flux, who;
  Duration hands_on{};
  std::optional<std::string> note;
};

/// A problem in the form when the billet is finished or scrapped, or was not begun by then.
void check_open(Form& form, const stock::KeptBillet& billet, Instant at);

/// Catches (2), stores the stage and the layers by its arithmetic; the stage's number is the
/// result.
Outcome<ActionResult> log_stage(Work& work, const stock::KeptBillet& billet, const StageWish& wish);

}  // namespace tangmark::db
