// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/action.h"

namespace tangmark::db {

extern const Action add_route_step;
extern const Action add_to_trial;
extern const Action assign_blade;
extern const Action attach_photo;
extern const Action correct;
extern const Action end_trial;
extern const Action finish_blade;
extern const Action fit_handle;
extern const Action log_finding;
extern const Action log_hardness;
extern const Action log_quench;
extern const Action log_step;
extern const Action log_temper;
extern const Action scrap_blade;
extern const Action settle_finding;
extern const Action pause_timer;
extern const Action resume_timer;
extern const Action skip_step;
extern const Action start_trial;
extern const Action start_timer;
extern const Action stop_timer;

}  // namespace tangmark::db
