// SPDX-License-Identifier: MIT
// Whom a certificate was made for is a person's name: history keeps it hashed with a salt of its
// own row, so that erasing both leaves nothing to guess from.
#include "db/schema/step_011.h"

namespace tangmark::db {

const char* const step_011 = R"sql(
ALTER TABLE certificate_words ADD COLUMN salt BLOB;
UPDATE certificate_words SET salt = randomblob(16) WHERE made_for IS NOT NULL;

-- Names that history kept in clear are hashed where they stand, from the first of them on; the rows
-- behind are linked anew. A link that did not hold before does not hold afterwards.
CREATE TEMP TABLE said(k INTEGER PRIMARY KEY, id, at, action, reason, subject, row, old, new, hash,
                       hidden_old, hidden_new);
INSERT INTO said
SELECT row_number() OVER (ORDER BY h.id), h.id, h.at, h.action, h.reason, h.subject, h.row, h.old,
  h.new, h.hash,
  iif(h.subject = 'certificate_words' AND json_extract(h.old, '$.made_for') IS NOT NULL,
    json_set(h.old, '$.made_for', tm_digest(coalesce(w.salt, randomblob(16)),
                                            json_extract(h.old, '$.made_for'))), h.old),
  iif(h.subject = 'certificate_words' AND json_extract(h.new, '$.made_for') IS NOT NULL,
    json_set(h.new, '$.made_for', tm_digest(coalesce(w.salt, randomblob(16)),
                                            json_extract(h.new, '$.made_for')),
             '$.salt', tm_digest(w.salt)), h.new)
FROM history h LEFT JOIN certificate_words w ON h.subject = 'certificate_words' AND w.id = h.row
WHERE h.id >= (SELECT min(id) FROM history WHERE subject = 'certificate_words' AND
  (json_extract(old, '$.made_for') IS NOT NULL OR json_extract(new, '$.made_for') IS NOT NULL));

CREATE TEMP TABLE linked(id INTEGER PRIMARY KEY, old, new, hash);
INSERT INTO linked
WITH RECURSIVE chain(k, id, was, hash, old, new) AS (
  SELECT 0, 0, before.hash, before.hash, NULL, NULL FROM (SELECT (SELECT hash FROM history
    WHERE id < (SELECT min(id) FROM said) ORDER BY id DESC LIMIT 1) AS hash) AS before
  UNION ALL
  SELECT s.k, s.id, s.hash,
    iif(s.hash = tm_link(c.was, s.at, s.action, s.reason, s.subject, s.row, s.old, s.new),
        tm_link(c.hash, s.at, s.action, s.reason, s.subject, s.row, s.hidden_old, s.hidden_new),
        s.hash),
    s.hidden_old, s.hidden_new
  FROM chain c JOIN said s ON s.k = c.k + 1)
SELECT id, old, new, hash FROM chain WHERE k > 0;
UPDATE history SET old = linked.old, new = linked.new, hash = linked.hash
FROM linked WHERE linked.id = history.id;
DROP TABLE linked;
DROP TABLE said;
)sql";

}  // namespace tangmark::db
