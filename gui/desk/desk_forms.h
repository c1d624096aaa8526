// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/measure/outcome.h"
#include "gui/desk/desk.h"
#include "gui/desk/form.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// Forms that change nothing in the shop: "desk.backup", "desk.export", "desk.print".
bool is_desk_form(const std::string& name);
Form desk_form(const std::string& name, const Typed& filled);
Outcome<Said> desk_act(const std::string& name, const Sight& sight, const Typed& typed);

/// What was done, in one sentence, after an action of the shop: "Lot 17 is received."
std::string done_words(const std::string& action, const std::string& number);
/// Where to look after it: at what was made, or at what it was done to.
std::optional<GoTo> place_after(const std::string& action, const std::string& number,
                                const Typed& typed);

/// "~/x" with the home folder of whoever runs the program.
std::string with_home(const std::string& path);

}  // namespace tangmark::desk
