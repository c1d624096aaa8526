// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"
#include "gui/desk/form.h"
#include "gui/desk/place_view.h"

namespace tangmark::desk {

/// What is shown before a shop is open: open one, or begin a new one.
PlaceView welcome_view();
/// The form of "open_shop" or "new_shop".
Form welcome_form(const std::string& name);
/// Does what the form asks and names the shop file to open. A path where something already is stays
/// untouched and is refused.
Outcome<std::filesystem::path> welcome_shop(const std::string& name, const Typed& typed, Instant now);

}  // namespace tangmark::desk
