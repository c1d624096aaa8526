// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/action.h"

namespace tangmark::db {

extern const Action name_certificate, word_certificate, issue_certificate, revoke_certificate,
    make_key, renew_key, retire_key;

}  // namespace tangmark::db
