// SPDX-License-Identifier: MIT
#include "db/actions/blade_action_list.h"
#include "db/actions/registry.h"

namespace tangmark::db {

std::vector<const Action*> blade_actions() {
  return {&assign_blade, &add_route_step, &skip_step,   &log_step,       &log_quench,
          &log_temper,   &log_hardness,   &log_finding, &settle_finding, &attach_photo,
          &fit_handle,   &finish_blade,   &scrap_blade, &correct,        &start_trial,
          &add_to_trial, &end_trial,
          &start_timer,  &pause_timer,    &resume_timer, &stop_timer};
}

}  // namespace tangmark::db
