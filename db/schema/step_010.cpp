// SPDX-License-Identifier: MIT
#include "db/schema/step_010.h"

namespace tangmark::db {

const char* const step_010 = R"sql(
-- Gas, flux and cans that went into the making of a billet; its pieces carry their cost.
ALTER TABLE consumable_use ADD COLUMN billet_id INTEGER REFERENCES billet(id);

-- Whether an entry of the log still stands is asked of every entry that is read.
CREATE INDEX log_entry_supersedes ON log_entry(supersedes_id);
)sql";

}  // namespace tangmark::db
