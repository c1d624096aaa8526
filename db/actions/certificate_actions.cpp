// SPDX-License-Identifier: MIT
#include "db/actions/certificate_action_list.h"
#include "db/actions/registry.h"

namespace tangmark::db {

std::vector<const Action*> certificate_actions() { return {&issue_certificate, &revoke_certificate}; }

}  // namespace tangmark::db
