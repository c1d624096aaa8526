// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/action.h"

namespace tangmark::db {

extern const Action issue_certificate;
extern const Action revoke_certificate;

}  // namespace tangmark::db
