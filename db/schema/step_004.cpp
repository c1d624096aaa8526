// SPDX-License-Identifier: MIT
// A check thermocouple has a logger of its own beside the controller's.
#include "db/schema/step_004.h"

namespace tangmark::db {

const char* const step_004 = R"sql(
-- As record_shape, of records that an independent thermocouple's logger of this kiln wrote.
ALTER TABLE kiln ADD COLUMN check_record_shape TEXT;
)sql";

}  // namespace tangmark::db
