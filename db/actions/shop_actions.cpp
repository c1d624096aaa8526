// SPDX-License-Identifier: MIT
#include "db/actions/registry.h"
#include "db/actions/shop_action_list.h"

namespace tangmark::db {

std::vector<const Action*> shop_actions() {
  return {&change_setting, &add_bench_hours, &remove_bench_hours, &add_day_off,
          &add_operation,  &add_grade,       &add_window,         &add_temper_table,
          &usual_refund,   &use_label_sheet};
}

}  // namespace tangmark::db
