// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/measure/outcome.h"
#include "gui/desk/form.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The computations of the steel desk, each with the form that asks for its keys. They are the very
/// ones that `tangmark calc` does, and know the shop's own grades.
Section calculations_section();
/// The form "desk.calc" of one computation; filled["calculation"] is its name.
Form calculation_form(const Typed& filled);
/// What it answers: figures, what must be said beside them, and the source.
Outcome<Sheet> calculation_sheet(const Sight& sight, const Typed& typed);

}  // namespace tangmark::desk
