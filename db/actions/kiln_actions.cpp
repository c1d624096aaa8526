// SPDX-License-Identifier: MIT
#include "db/actions/registry.h"

namespace tangmark::db {

std::vector<const Action*> kiln_actions() { return {}; }

}  // namespace tangmark::db
