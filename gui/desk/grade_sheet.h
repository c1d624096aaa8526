// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/steel/grade.h"
#include "domain/steel/step_advice.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// One grade: its limits, its windows and what temper tables say, each with its source.
PlaceView grade_view(const Sight& sight, const steel::Grade& grade);
/// "limits and 3 windows, entered by the shop"; one line for lists.
std::string grade_line(const steel::Grade& grade);

/// A mill analysis beside the limits of its grade, element by element. Empty when the grade is in
/// no book; with the words of the analysis when it cannot be read.
Section analysis_section(const Sight& sight, const std::string& grade, const std::string& analysis);

/// Sentences of the steel desk with the source of each beside it.
Section advice_section(const std::string& title, const std::vector<steel::Advice>& advice);

}  // namespace tangmark::desk
