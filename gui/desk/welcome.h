// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <variant>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"
#include "gui/desk/form.h"
#include "gui/desk/going.h"
#include "gui/desk/place_view.h"

namespace tangmark::desk {

/// What is shown before a shop is open: open one, or begin a new one.
PlaceView welcome_view();
/// The form of "open_shop", "new_shop" or "demo_shop".
Form welcome_form(const std::string& name);

/// A shop that takes a while to write. `work` runs on a thread of its own; stopped, it leaves no
/// file.
struct ShopWriting {
  std::string doing;  ///< "Writing the demo shop"
  std::function<Outcome<std::filesystem::path>(const Going& going)> work;
};

/// Does what the form asks and names the shop file to open, or what must be written first. A path
/// where something already is stays untouched and is refused.
Outcome<std::variant<std::filesystem::path, ShopWriting>> welcome_shop(const std::string& name,
                                                                       const Typed& typed,
                                                                       Instant now);

}  // namespace tangmark::desk
