// SPDX-License-Identifier: MIT
#include "db/actions/kiln_action_list.h"
#include "db/actions/registry.h"

namespace tangmark::db {

std::vector<const Action*> kiln_actions() {
  return {&add_kiln,    &change_kiln,   &add_recipe,     &book_firing,
          &move_firing, &cancel_firing, &lock_firing,    &unlock_firing,
          &run_firing,  &attach_record, &correct_record, &accept_plan,
          &fit_kiln,    &expect_load};
}

}  // namespace tangmark::db
