// SPDX-License-Identifier: MIT
// What a kiln's records said when the maker took it over, and what a set-aside catch was about.
#include "db/schema/step_007.h"

namespace tangmark::db {

const char* const step_007 = R"sql(
-- By how much each blade inside slows the kiln's heating; null until records of different loads say.
ALTER TABLE kiln ADD COLUMN load_k1800_per_h INTEGER;

-- A fit as it was taken over into the kiln's values. Errors are roots of mean squared deviations.
CREATE TABLE kiln_fit(
  id INTEGER PRIMARY KEY, kiln_id INTEGER NOT NULL REFERENCES kiln(id), fitted_at TEXT NOT NULL,
  heat_k1800_per_h INTEGER, heat_error_k1800 INTEGER, heat_records INTEGER,
  load_k1800_per_h INTEGER,
  tau_s INTEGER, cool_error_k1800 INTEGER, cool_records INTEGER,
  heat_w INTEGER, hold_mw_per_c INTEGER, power_error_j INTEGER, power_records INTEGER) STRICT;
CREATE INDEX kiln_fit_kiln ON kiln_fit(kiln_id);

-- The row that a catch was set aside for: "firing", its id. Null where it was for none yet.
ALTER TABLE override ADD COLUMN subject TEXT;
ALTER TABLE override ADD COLUMN subject_id INTEGER;
)sql";

}  // namespace tangmark::db
