// SPDX-License-Identifier: MIT
#include "db/schema/step_005.h"

namespace tangmark::db {

const char* const step_005 = R"sql(
-- A key that seals certificates. The private half is kept only locked with the maker's passphrase,
-- here or in a file of the maker's choice; the passphrase is kept nowhere.
CREATE TABLE signing_key(
  id INTEGER PRIMARY KEY, fingerprint TEXT NOT NULL, owner TEXT NOT NULL, made_at TEXT NOT NULL,
  valid_from TEXT NOT NULL, valid_to TEXT NOT NULL, key_file TEXT, kept_at TEXT,
  retired_at TEXT, retired_why TEXT) STRICT;

-- The fingerprint of the key that signed this issue; null for an unsigned one.
ALTER TABLE certificate ADD COLUMN signed_by TEXT;
)sql";

}  // namespace tangmark::db
