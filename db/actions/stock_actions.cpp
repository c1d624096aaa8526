// SPDX-License-Identifier: MIT
#include "db/actions/registry.h"
#include "db/actions/stock_action_list.h"

namespace tangmark::db {

std::vector<const Action*> stock_actions() {
  return {&receive_lot, &reserve,       &release_reservation, &cut_piece,
          &take_cuts,   &start_billet,  &weld_stage,          &crop,
          &melt_ingot,  &finish_billet, &return_material,     &add_bath,
          &check_bath,  &use_consumable};
}

}  // namespace tangmark::db
