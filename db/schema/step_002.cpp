// SPDX-License-Identifier: MIT
// What an etch was for and what it showed, how a kiln's logger writes, corrections of its records,
// and questions asked across blades. New columns stand last and may be NULL, so that the history of
// older rows still agrees with them.
#include "db/schema/step_002.h"

namespace tangmark::db {

const char* const step_002 = R"sql(
-- NULL in entries of before: then the dossier judges by the resist and the note, as it used to.
ALTER TABLE log_entry ADD COLUMN etch_for TEXT CHECK(etch_for IN('pattern','maker''s mark','image'));
-- Of the pattern, judged by eye after the etch: 0 none to 5 as clear as it gets.
ALTER TABLE log_entry ADD COLUMN contrast INTEGER CHECK(contrast BETWEEN 0 AND 5);

-- The mapping of the records of this kiln's logger, as kiln::shape_to_stored writes it.
ALTER TABLE kiln ADD COLUMN record_shape TEXT;
-- How much the logger of this kiln reads wrong, found with a check thermocouple, and applied by the
-- maker to one record. The file that was attached stays as it is.
CREATE TABLE record_correction(
  id INTEGER PRIMARY KEY, kiln_record_id INTEGER NOT NULL REFERENCES kiln_record(id),
  sensor INTEGER NOT NULL, by_k1800 INTEGER NOT NULL, at TEXT NOT NULL, why TEXT NOT NULL,
  withdrawn_at TEXT) STRICT;
CREATE INDEX record_correction_record ON record_correction(kiln_record_id);

-- A question asked across blades: chosen variables against one outcome.
CREATE TABLE trial(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, question TEXT NOT NULL,
  variables TEXT NOT NULL, outcome TEXT NOT NULL, started_at TEXT NOT NULL, ended_at TEXT,
  conclusion TEXT) STRICT;
CREATE TABLE trial_blade(
  id INTEGER PRIMARY KEY, trial_id INTEGER NOT NULL REFERENCES trial(id),
  blade_id INTEGER NOT NULL REFERENCES blade(id), added_at TEXT NOT NULL,
  UNIQUE(trial_id, blade_id)) STRICT;
CREATE INDEX trial_blade_blade ON trial_blade(blade_id);
)sql";

}  // namespace tangmark::db
