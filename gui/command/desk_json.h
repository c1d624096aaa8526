// SPDX-License-Identifier: MIT
#pragma once

#include "domain/steel/desk_value.h"
#include "gui/command/json_text.h"

namespace tangmark::command {

/// What the steel desk answers, as JSON: numbers stay numbers, nothing and infinity are null.
Json json_of(const steel::DeskValue& value);
/// One value for a person: words bare, everything else as JSON.
std::string plain_text(const Json& json);

}  // namespace tangmark::command
