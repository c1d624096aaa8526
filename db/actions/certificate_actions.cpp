// SPDX-License-Identifier: MIT
#include "db/actions/certificate_action_list.h"
#include "db/actions/registry.h"

namespace tangmark::db {

std::vector<const Action*> certificate_actions() {
  return {&name_certificate, &word_certificate, &issue_certificate, &revoke_certificate,
          &make_key,         &renew_key,        &retire_key};
}

}  // namespace tangmark::db
