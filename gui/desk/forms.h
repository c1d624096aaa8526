// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/actions/action.h"
#include "gui/desk/form.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The form of an action of the shop, made from the fields the action asks for: what refers to
/// something in the shop becomes a choice of what there is. `filled` goes into the fields that the
/// action has; the rest of it is left out. An unknown action gives a form with no fields.
Form form_of(const std::string& action, const Sight& sight, const Typed& filled);

/// Fields of an action or a question as a form shows them.
std::vector<FormField> form_fields(const std::vector<db::Field>& fields, const Sight& sight,
                                   const Typed& filled);

/// What an action's target says: "Log it", "Take the deposit".
std::string submit_words(const std::string& action);

}  // namespace tangmark::desk
