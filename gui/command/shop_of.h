// SPDX-License-Identifier: MIT
#pragma once

#include "db/shop_file.h"
#include "gui/command/json_text.h"

namespace tangmark::command {

/// Opens the shop file that is the first word, tells its notice, and does the work on it. Under
/// --json a refusal is one JSON object too.
Exit with_shop(const Call& call, const std::function<Exit(db::ShopFile&)>& work);

}  // namespace tangmark::command
