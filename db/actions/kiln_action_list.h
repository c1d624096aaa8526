// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/action.h"

namespace tangmark::db {

extern const Action accept_plan;
extern const Action add_kiln;
extern const Action attach_record;
extern const Action add_recipe;
extern const Action book_firing;
extern const Action cancel_firing;
extern const Action change_kiln;
extern const Action correct_record;
extern const Action expect_load;
extern const Action fit_kiln;
extern const Action lock_firing;
extern const Action move_firing;
extern const Action run_firing;
extern const Action unlock_firing;

}  // namespace tangmark::db
