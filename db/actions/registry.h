// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "db/actions/action.h"

namespace tangmark::db {

// Each group lists its own actions, in the order a job takes; registry.cpp joins them. An action is
// a constant in its own file, declared here under its group.
std::vector<const Action*> commission_actions();
std::vector<const Action*> stock_actions();
std::vector<const Action*> blade_actions();
std::vector<const Action*> kiln_actions();
std::vector<const Action*> certificate_actions();
std::vector<const Action*> shop_actions();

}  // namespace tangmark::db
