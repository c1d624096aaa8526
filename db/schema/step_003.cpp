// SPDX-License-Identifier: MIT
// Timers at the bench, what the record taught, the price list, and money in several currencies.
#include "db/schema/step_003.h"

namespace tangmark::db {

const char* const step_003 = R"sql(
-- A clock on one operation of one or several blades. It runs in stretches; a pause ends one.
CREATE TABLE timer(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, operation TEXT NOT NULL,
  kind TEXT NOT NULL CHECK(kind IN('hands-on','attended')), who TEXT,
  state TEXT NOT NULL CHECK(state IN('running','paused','stopped','discarded')),
  entered_at TEXT NOT NULL, why TEXT) STRICT;
CREATE TABLE timer_blade(
  id INTEGER PRIMARY KEY, timer_id INTEGER NOT NULL REFERENCES timer(id),
  blade_id INTEGER NOT NULL REFERENCES blade(id), log_entry_id INTEGER REFERENCES log_entry(id),
  UNIQUE(timer_id, blade_id)) STRICT;
CREATE INDEX timer_blade_blade ON timer_blade(blade_id);
CREATE TABLE timer_stretch(
  id INTEGER PRIMARY KEY, timer_id INTEGER NOT NULL REFERENCES timer(id), from_at TEXT NOT NULL,
  to_at TEXT) STRICT;
CREATE INDEX timer_stretch_timer ON timer_stretch(timer_id);

-- A figure of a model that the maker changed because the record said so. `guess` is what the model
-- said before it ever learned; figures are seconds for times and millionths for the rest.
CREATE TABLE learnt(
  id INTEGER PRIMARY KEY, model_id INTEGER NOT NULL REFERENCES model(id),
  what TEXT NOT NULL CHECK(what IN('hands-on','attended','survival','use')), of TEXT NOT NULL,
  guess INTEGER NOT NULL, before INTEGER NOT NULL, figure INTEGER NOT NULL, n INTEGER NOT NULL,
  at TEXT NOT NULL) STRICT;
CREATE INDEX learnt_model ON learnt(model_id);

-- What a steel or an option adds to a model's list price; without a model, to every model's.
CREATE TABLE price_extra(
  id INTEGER PRIMARY KEY, model_id INTEGER REFERENCES model(id),
  kind TEXT NOT NULL CHECK(kind IN('steel','option')), name TEXT NOT NULL,
  price_minor INTEGER NOT NULL, currency TEXT NOT NULL, since TEXT NOT NULL,
  retired_on TEXT) STRICT;
CREATE TABLE item_option(
  id INTEGER PRIMARY KEY, item_id INTEGER NOT NULL REFERENCES item(id), name TEXT NOT NULL,
  price_minor INTEGER NOT NULL, currency TEXT NOT NULL, taken_off_at TEXT) STRICT;
CREATE INDEX item_option_item ON item_option(item_id);

-- What one unit of a foreign currency was worth in the shop's, in millionths, from that day on.
CREATE TABLE exchange_rate(
  id INTEGER PRIMARY KEY, currency TEXT NOT NULL, shop_currency TEXT NOT NULL,
  rate_ppm INTEGER NOT NULL CHECK(rate_ppm > 0), day TEXT NOT NULL, source TEXT) STRICT;
CREATE INDEX exchange_rate_currency ON exchange_rate(currency, day);

-- What came in when it was not in the commission's currency; the amount is what it was worth.
ALTER TABLE payment ADD COLUMN paid_minor INTEGER;
ALTER TABLE payment ADD COLUMN paid_currency TEXT;
-- The refund rule that can be worked out, frozen with the commission.
ALTER TABLE commission ADD COLUMN refund_terms TEXT;
)sql";

}  // namespace tangmark::db
