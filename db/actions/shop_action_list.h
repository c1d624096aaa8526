// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/action.h"

namespace tangmark::db {

extern const Action add_bench_hours;
extern const Action add_day_off;
extern const Action add_grade;
extern const Action add_operation;
extern const Action add_temper_table;
extern const Action add_window;
extern const Action change_setting;
extern const Action remove_bench_hours;
extern const Action use_label_sheet;
extern const Action usual_refund;

}  // namespace tangmark::db
