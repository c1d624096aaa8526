// SPDX-License-Identifier: MIT
#include "db/schema/step_008.h"

namespace tangmark::db {

const char* const step_008 = R"sql(
-- What the maker set by hand in a version of a quote, "line = value" each on a line of its own; and
-- the rate at which a quote in a foreign currency was worked out: 1 USD = 0.92 EUR.
ALTER TABLE quote ADD COLUMN changes TEXT;
ALTER TABLE quote ADD COLUMN rate TEXT;

-- What a sum in a foreign currency was worth in the shop's on its day, as recorded then.
ALTER TABLE payment ADD COLUMN shop_rate TEXT;
ALTER TABLE invoice ADD COLUMN shop_rate TEXT;

-- How many blades the maker expects in a firing of a kind, where that differs from the usual load.
CREATE TABLE expected_load(
  id INTEGER PRIMARY KEY, kind TEXT NOT NULL UNIQUE CHECK(kind IN('harden','soak','anneal')),
  blades INTEGER NOT NULL CHECK(blades > 0)) STRICT;
)sql";

}  // namespace tangmark::db
