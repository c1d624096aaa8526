// SPDX-License-Identifier: MIT
// Heat-treat windows and temper tables that the shop enters, for its own grades and published ones.
#include "db/schema/step_006.h"

namespace tangmark::db {

const char* const step_006 = R"sql(
-- One window of one heat-treat step of a grade, by the grade's name. A newer one of the same step
-- takes the place of the one before, which is then withdrawn.
CREATE TABLE own_window(
  id INTEGER PRIMARY KEY, grade TEXT NOT NULL,
  operation TEXT NOT NULL CHECK(operation IN('normalize','anneal','harden','temper')),
  lo_k1800 INTEGER NOT NULL, hi_k1800 INTEGER NOT NULL CHECK(hi_k1800 >= lo_k1800),
  hold_least_s INTEGER, hold_most_s INTEGER, cooling TEXT, fall_per_h_k1800 INTEGER,
  until_k1800 INTEGER, source TEXT NOT NULL, withdrawn_at TEXT) STRICT;
CREATE INDEX own_window_grade ON own_window(grade);

-- One temper table of a grade; rows are kept as typed ("150 C: 63, 200 C: 61").
CREATE TABLE own_temper_table(
  id INTEGER PRIMARY KEY, grade TEXT NOT NULL, hardened_k1800 INTEGER, medium TEXT,
  hold_s INTEGER NOT NULL CHECK(hold_s > 0), times INTEGER NOT NULL CHECK(times > 0),
  as_quenched_tenths INTEGER, rows TEXT NOT NULL, source TEXT NOT NULL,
  withdrawn_at TEXT) STRICT;
CREATE INDEX own_temper_table_grade ON own_temper_table(grade);
)sql";

}  // namespace tangmark::db
