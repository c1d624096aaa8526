// SPDX-License-Identifier: MIT
#include "db/schema/step_012.h"

namespace tangmark::db {

const char* const step_012 = R"sql(
-- How long a bath takes to give off two thirds of what a quench brought: its time constant.
ALTER TABLE bath ADD COLUMN cooling_tau_s INTEGER;
)sql";

}  // namespace tangmark::db
