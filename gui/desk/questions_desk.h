// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/outcome.h"
#include "gui/desk/form.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The questions a maker asks weekly, each one press away: at once, or by a form that asks for what
/// it must be told.
Section questions_section();
/// The form of a question by its number, as text.
Form question_form(const Sight& sight, const std::string& number, const Typed& filled);
/// The answer as a sheet: sentences, and the table behind them.
Outcome<Sheet> answer_sheet(const Sight& sight, const std::string& number, const Typed& typed);

}  // namespace tangmark::desk
