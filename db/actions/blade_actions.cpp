// SPDX-License-Identifier: MIT
#include "db/actions/registry.h"

namespace tangmark::db {

std::vector<const Action*> blade_actions() { return {}; }

}  // namespace tangmark::db
