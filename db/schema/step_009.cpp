// SPDX-License-Identifier: MIT
#include "db/schema/step_009.h"

namespace tangmark::db {

const char* const step_009 = R"sql(
-- What the maker says himself on the certificate of a blade: the name he chose among the truthful
-- ones, and his own words, which are read against the record at every issue.
CREATE TABLE certificate_words(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL UNIQUE REFERENCES blade(id),
  name TEXT, notes TEXT, care TEXT, made_for TEXT, finish TEXT, health TEXT, differs TEXT,
  claims TEXT, knife_ug INTEGER, behind_edge_nm INTEGER) STRICT;

-- The sheet of labels that the shop prints on, as the maker measured it; the newest row counts.
CREATE TABLE label_stock(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL, sheet_width_nm INTEGER NOT NULL,
  sheet_height_nm INTEGER NOT NULL, across INTEGER NOT NULL, down INTEGER NOT NULL,
  left_nm INTEGER NOT NULL, top_nm INTEGER NOT NULL, width_nm INTEGER NOT NULL,
  height_nm INTEGER NOT NULL, pitch_across_nm INTEGER NOT NULL, pitch_down_nm INTEGER NOT NULL) STRICT;

-- Whether a soft area or a fault reaches the edge: such a blade is not told of as a cutting tool.
ALTER TABLE finding ADD COLUMN reaches_edge INTEGER;
)sql";

}  // namespace tangmark::db
