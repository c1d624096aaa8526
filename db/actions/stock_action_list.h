// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/action.h"

namespace tangmark::db {

// From the door to the scrap bin.
extern const Action receive_lot;
extern const Action reserve;
extern const Action release_reservation;
extern const Action cut_piece;
extern const Action take_cuts;
extern const Action start_billet;
extern const Action weld_stage;
extern const Action crop;
extern const Action melt_ingot;
extern const Action finish_billet;
extern const Action return_material;
extern const Action add_bath;
extern const Action check_bath;
extern const Action use_consumable;

}  // namespace tangmark::db
