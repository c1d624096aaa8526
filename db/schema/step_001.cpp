// SPDX-License-Identifier: MIT
// The first schema. Released steps are never edited: a change is a new step.
//
// Columns name their unit: _nm nanometres, _ug micrograms, _ul microlitres, _j joules, _s seconds,
// _k1800 counts of 1/1800 K above absolute zero, _minor minor units of the row's currency, _ppm
// millionths. Instants are UTC text "2026-11-25T06:51:00Z", dates "2026-11-25".
#include "db/schema/step_001.h"

namespace tangmark::db {

const char* const step_001 = R"sql(
CREATE TABLE setting(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, value TEXT NOT NULL) STRICT;

-- The last number given out of each kind. Numbers never repeat, even when what carried one is gone.
CREATE TABLE counter(
  id INTEGER PRIMARY KEY, kind TEXT NOT NULL UNIQUE, last INTEGER NOT NULL) STRICT;

-- Operations and grades that this shop added to the ones of the trade.
CREATE TABLE own_operation(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, hot INTEGER NOT NULL, note TEXT) STRICT;
CREATE TABLE own_grade(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, limits TEXT NOT NULL,
  harden_lo_k1800 INTEGER, harden_hi_k1800 INTEGER, temper_lo_k1800 INTEGER,
  temper_hi_k1800 INTEGER, source TEXT NOT NULL) STRICT;

-- When somebody is at the bench: weekday 1 (Monday) to 7, and days off.
CREATE TABLE bench_hours(
  id INTEGER PRIMARY KEY, weekday INTEGER NOT NULL CHECK(weekday BETWEEN 1 AND 7),
  from_s INTEGER NOT NULL, to_s INTEGER NOT NULL CHECK(to_s > from_s)) STRICT;
CREATE TABLE day_off(
  id INTEGER PRIMARY KEY, day TEXT NOT NULL UNIQUE, why TEXT) STRICT;

-- Files that came from outside: photos, documents, kiln records.
CREATE TABLE attachment(
  id INTEGER PRIMARY KEY, kind TEXT NOT NULL CHECK(kind IN('photo','document','kiln record')),
  name TEXT NOT NULL, media_type TEXT NOT NULL, bytes BLOB NOT NULL, taken_at TEXT,
  added_at TEXT NOT NULL, caption TEXT, subject TEXT NOT NULL, subject_id INTEGER NOT NULL) STRICT;
CREATE INDEX attachment_subject ON attachment(subject, subject_id);

-- ---------------------------------------------------------------- commissions
-- Personal fields are name, contact, address and note; history keeps salted hashes of them only.
CREATE TABLE customer(
  id INTEGER PRIMARY KEY, name TEXT, contact TEXT, address TEXT, note TEXT, salt BLOB,
  country TEXT, added_at TEXT NOT NULL, erased_at TEXT) STRICT;

CREATE TABLE commission(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  customer_id INTEGER NOT NULL REFERENCES customer(id),
  state TEXT NOT NULL CHECK(state IN('enquiry','quoted','accepted','in work','ready','delivered',
    'declined','cancelled')),
  opened_at TEXT NOT NULL, channel TEXT, buyers_words TEXT, budget_minor INTEGER, currency TEXT NOT NULL,
  wanted_by TEXT, wanted_why TEXT, destination TEXT, reply_by TEXT,
  refund_rule TEXT, specification_confirmed_on TEXT, accepted_on TEXT, delivered_on TEXT,
  cancelled_why TEXT, law_checked_on TEXT) STRICT;
CREATE INDEX commission_customer ON commission(customer_id);

-- Everything said between shop and buyer that matters later.
CREATE TABLE contact(
  id INTEGER PRIMARY KEY, commission_id INTEGER NOT NULL REFERENCES commission(id),
  at TEXT NOT NULL, channel TEXT, words TEXT NOT NULL) STRICT;
CREATE INDEX contact_commission ON contact(commission_id);

CREATE TABLE model(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, description TEXT, construction TEXT NOT NULL,
  grade TEXT, blade_length_nm INTEGER NOT NULL, blank_length_nm INTEGER NOT NULL,
  blank_width_nm INTEGER NOT NULL, blank_thickness_nm INTEGER NOT NULL, yield_ppm INTEGER NOT NULL,
  price_minor INTEGER, currency TEXT NOT NULL, price_per_mm_minor INTEGER,
  hardness_aim TEXT, retired_on TEXT) STRICT;
CREATE TABLE model_step(
  id INTEGER PRIMARY KEY, model_id INTEGER NOT NULL REFERENCES model(id), position INTEGER NOT NULL,
  operation TEXT NOT NULL, hands_on_s INTEGER NOT NULL, attended_s INTEGER NOT NULL,
  unattended_s INTEGER NOT NULL, survival_ppm INTEGER NOT NULL DEFAULT 1000000,
  temperature_k1800 INTEGER, low_k1800 INTEGER, high_k1800 INTEGER, soak_s INTEGER, soak_max_s INTEGER,
  medium TEXT, gap_max_s INTEGER, cool_k1800_per_h INTEGER, cool_to_k1800 INTEGER,
  unattended_allowed INTEGER NOT NULL DEFAULT 0, note TEXT, UNIQUE(model_id, position)) STRICT;
-- What a piece of this model uses beside its steel: belts, handle, gas, etchant, sheath bought in ...
CREATE TABLE model_use(
  id INTEGER PRIMARY KEY, model_id INTEGER NOT NULL REFERENCES model(id), position INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK(kind IN('material','used up','gas','made elsewhere','packing')),
  text TEXT NOT NULL, quantity_ppm INTEGER NOT NULL, unit TEXT NOT NULL, each_minor INTEGER NOT NULL,
  low_ppm INTEGER, high_ppm INTEGER, UNIQUE(model_id, position)) STRICT;

CREATE TABLE item(
  id INTEGER PRIMARY KEY, commission_id INTEGER REFERENCES commission(id), position INTEGER NOT NULL,
  model_id INTEGER REFERENCES model(id), title TEXT NOT NULL, description TEXT,
  construction TEXT NOT NULL, grade TEXT, blade_length_nm INTEGER NOT NULL, hand TEXT,
  handle TEXT, handle_lot_id INTEGER REFERENCES lot(id), sheath TEXT, hardness_aim TEXT,
  dishwasher INTEGER NOT NULL DEFAULT 0, asking_minor INTEGER, currency TEXT NOT NULL,
  made_to_specification INTEGER NOT NULL DEFAULT 0, handle_fitted_at TEXT, cancelled_on TEXT) STRICT;
CREATE INDEX item_commission ON item(commission_id);
CREATE TABLE item_change(
  id INTEGER PRIMARY KEY, item_id INTEGER NOT NULL REFERENCES item(id), number INTEGER NOT NULL,
  at TEXT NOT NULL, words TEXT NOT NULL, price_minor INTEGER, currency TEXT NOT NULL,
  UNIQUE(item_id, number)) STRICT;

CREATE TABLE quote(
  id INTEGER PRIMARY KEY, commission_id INTEGER NOT NULL REFERENCES commission(id),
  version INTEGER NOT NULL, made_at TEXT NOT NULL, valid_until TEXT NOT NULL, currency TEXT NOT NULL,
  cost_minor INTEGER NOT NULL, price_minor INTEGER NOT NULL, tax_minor INTEGER NOT NULL,
  total_minor INTEGER NOT NULL, deposit_minor INTEGER NOT NULL, floor_minor INTEGER NOT NULL,
  earned_per_hour_minor INTEGER NOT NULL, tax_mode TEXT NOT NULL CHECK(tax_mode IN('exclusive','inclusive','none')),
  tax_ppm INTEGER NOT NULL, price_how TEXT NOT NULL, hands_on_s INTEGER NOT NULL,
  attended_s INTEGER NOT NULL, unattended_s INTEGER NOT NULL, assumptions TEXT,
  sent_at TEXT, answered_at TEXT, answer TEXT CHECK(answer IN('accepted','declined','superseded')),
  UNIQUE(commission_id, version)) STRICT;
-- Cost lines (the shop's own) and price lines (what the buyer reads); frozen with the quote.
CREATE TABLE quote_line(
  id INTEGER PRIMARY KEY, quote_id INTEGER NOT NULL REFERENCES quote(id), side TEXT NOT NULL
    CHECK(side IN('cost','price')), position INTEGER NOT NULL, kind TEXT NOT NULL, text TEXT NOT NULL,
  quantity TEXT, unit TEXT, each_minor INTEGER, amount_minor INTEGER NOT NULL,
  UNIQUE(quote_id, side, position)) STRICT;

-- Money received (positive) or given back (negative). Never edited: a mistake is reversed by a row.
CREATE TABLE payment(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  commission_id INTEGER NOT NULL REFERENCES commission(id),
  kind TEXT NOT NULL CHECK(kind IN('deposit','balance','refund','correction')),
  amount_minor INTEGER NOT NULL, currency TEXT NOT NULL, rate TEXT, at TEXT NOT NULL, method TEXT,
  corrects_id INTEGER REFERENCES payment(id), note TEXT) STRICT;
CREATE INDEX payment_commission ON payment(commission_id);
-- Issued papers about money; corrected by another document, never edited.
CREATE TABLE invoice(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  commission_id INTEGER NOT NULL REFERENCES commission(id),
  kind TEXT NOT NULL CHECK(kind IN('deposit receipt','balance invoice','correction')),
  issued_at TEXT NOT NULL, total_minor INTEGER NOT NULL, currency TEXT NOT NULL,
  corrects_id INTEGER REFERENCES invoice(id), body TEXT NOT NULL) STRICT;

-- A date given, to whom, on what day. Never overwritten: a new date is a new row.
CREATE TABLE promise(
  id INTEGER PRIMARY KEY, commission_id INTEGER NOT NULL REFERENCES commission(id),
  day TEXT NOT NULL, made_at TEXT NOT NULL, words TEXT, told TEXT) STRICT;
CREATE INDEX promise_commission ON promise(commission_id);
CREATE TABLE delay_notice(
  id INTEGER PRIMARY KEY, commission_id INTEGER NOT NULL REFERENCES commission(id),
  at TEXT NOT NULL, new_day TEXT NOT NULL, words TEXT NOT NULL,
  consent TEXT NOT NULL CHECK(consent IN('asked','given','refused')), consent_at TEXT) STRICT;
CREATE TABLE aftercare(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL REFERENCES blade(id), at TEXT NOT NULL,
  complaint TEXT NOT NULL, condition TEXT, cause TEXT, work TEXT, hands_on_s INTEGER NOT NULL DEFAULT 0,
  paid_by TEXT) STRICT;
-- What a commission waits for: glue, post, wood, the engraver, the buyer's answer.
CREATE TABLE hold(
  id INTEGER PRIMARY KEY, item_id INTEGER NOT NULL REFERENCES item(id), what TEXT NOT NULL,
  since TEXT NOT NULL, until TEXT, ended_at TEXT) STRICT;
CREATE TABLE outside_work(
  id INTEGER PRIMARY KEY, item_id INTEGER REFERENCES item(id), blade_id INTEGER REFERENCES blade(id),
  operation TEXT NOT NULL, who TEXT NOT NULL, sent_at TEXT NOT NULL, due_back TEXT, back_at TEXT,
  their_words TEXT, cost_minor INTEGER, currency TEXT) STRICT;

-- ---------------------------------------------------------------------- stock
-- One purchase of one material from one supplier, or a customer's own material (owner_id set).
CREATE TABLE lot(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  kind TEXT NOT NULL CHECK(kind IN('steel','handle','belt','gas','oil','etchant','adhesive','other')),
  name TEXT NOT NULL, supplier TEXT, invoice TEXT, received_at TEXT NOT NULL,
  owner_id INTEGER REFERENCES customer(id), returned_at TEXT, return_note TEXT,
  grade TEXT, section TEXT CHECK(section IN('flat','round')), thickness_nm INTEGER, width_nm INTEGER,
  diameter_nm INTEGER, length_nm INTEGER, count INTEGER NOT NULL DEFAULT 1, mass_ug INTEGER,
  density_kg_m3 INTEGER, condition TEXT, melt_number TEXT,
  document TEXT NOT NULL DEFAULT 'none' CHECK(document IN('3.2','3.1','2.2','2.1','label','word','none')),
  mark_matched INTEGER NOT NULL DEFAULT 0, mark_words TEXT, analysis TEXT, identified_by TEXT,
  bought_as TEXT, stated_layers INTEGER, stated_maker TEXT,
  species TEXT, species_latin TEXT, source TEXT, papers TEXT, stabilised INTEGER NOT NULL DEFAULT 0,
  quantity_ppm INTEGER, unit TEXT, expires_on TEXT, floor_ppm INTEGER,
  price_minor INTEGER NOT NULL, currency TEXT NOT NULL) STRICT;

-- Any part of a bar or billet. A bar has no parent; an offcut is a piece whose parent is a piece.
CREATE TABLE piece(
  id INTEGER PRIMARY KEY, tag TEXT NOT NULL UNIQUE, lot_id INTEGER REFERENCES lot(id),
  billet_id INTEGER REFERENCES billet(id), parent_id INTEGER REFERENCES piece(id),
  cut_id INTEGER REFERENCES cut(id), length_nm INTEGER, width_nm INTEGER, thickness_nm INTEGER,
  diameter_nm INTEGER, mass_ug INTEGER NOT NULL,
  mark TEXT NOT NULL CHECK(mark IN('carries the mark','tagged','identity gap')),
  state TEXT NOT NULL CHECK(state IN('on hand','cut up','in a billet','blank','returned','scrap')),
  place TEXT, made_at TEXT NOT NULL, note TEXT) STRICT;
CREATE INDEX piece_lot ON piece(lot_id);
CREATE INDEX piece_parent ON piece(parent_id);
CREATE INDEX piece_billet ON piece(billet_id);

CREATE TABLE cut(
  id INTEGER PRIMARY KEY, piece_id INTEGER NOT NULL REFERENCES piece(id), at TEXT NOT NULL,
  kerf_nm INTEGER NOT NULL, mass_before_ug INTEGER NOT NULL, mass_after_ug INTEGER NOT NULL,
  swarf_ug INTEGER NOT NULL, gap_ug INTEGER NOT NULL, mark_went_to TEXT NOT NULL) STRICT;

-- So much of a piece or lot promised to an item. Length for bars, mass for billets.
CREATE TABLE reservation(
  id INTEGER PRIMARY KEY, item_id INTEGER NOT NULL REFERENCES item(id),
  piece_id INTEGER REFERENCES piece(id), lot_id INTEGER REFERENCES lot(id),
  length_nm INTEGER, mass_ug INTEGER, quantity_ppm INTEGER, at TEXT NOT NULL, released_at TEXT) STRICT;
CREATE INDEX reservation_piece ON reservation(piece_id);

CREATE TABLE billet(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  kind TEXT NOT NULL CHECK(kind IN('pattern-welded','laminated','ingot','smelted')),
  name TEXT, made_by TEXT NOT NULL, started_at TEXT NOT NULL, finished_at TEXT, layers INTEGER,
  pattern TEXT, scrapped_at TEXT, note TEXT) STRICT;
CREATE TABLE billet_part(
  id INTEGER PRIMARY KEY, billet_id INTEGER NOT NULL REFERENCES billet(id), position INTEGER NOT NULL,
  piece_id INTEGER NOT NULL REFERENCES piece(id), role TEXT NOT NULL CHECK(role IN('layer','core','cladding','charge')),
  layers INTEGER NOT NULL DEFAULT 1, mass_ug INTEGER NOT NULL) STRICT;
CREATE INDEX billet_part_piece ON billet_part(piece_id);
CREATE INDEX billet_part_billet ON billet_part(billet_id);
-- One stage of making a billet: in = out + crop + scale + swarf, and the gap that nobody explains.
CREATE TABLE weld_stage(
  id INTEGER PRIMARY KEY, billet_id INTEGER NOT NULL REFERENCES billet(id), number INTEGER NOT NULL,
  at TEXT NOT NULL, entered_at TEXT NOT NULL, operation TEXT NOT NULL CHECK(operation IN('stack','weld','draw','fold','cut','twist','crop')),
  pieces INTEGER NOT NULL DEFAULT 1, mass_in_ug INTEGER NOT NULL, mass_out_ug INTEGER NOT NULL,
  crop_ug INTEGER NOT NULL DEFAULT 0, scale_ug INTEGER NOT NULL DEFAULT 0, swarf_ug INTEGER NOT NULL DEFAULT 0,
  gap_ug INTEGER NOT NULL, thickness_nm INTEGER, temperature_k1800 INTEGER, flux TEXT, who TEXT,
  hands_on_s INTEGER NOT NULL DEFAULT 0, note TEXT, UNIQUE(billet_id, number)) STRICT;
CREATE TABLE melt(
  id INTEGER PRIMARY KEY, billet_id INTEGER NOT NULL UNIQUE REFERENCES billet(id), at TEXT NOT NULL,
  entered_at TEXT NOT NULL, charge TEXT NOT NULL, charge_ug INTEGER NOT NULL, lining TEXT NOT NULL,
  peak_k1800 INTEGER NOT NULL, at_peak_s INTEGER NOT NULL, cooled TEXT, ingot_ug INTEGER NOT NULL,
  carbon_ppm INTEGER, carbon_how TEXT, who TEXT) STRICT;

-- Use of a consumable lot: a belt binned, gas weighed, etchant poured.
CREATE TABLE consumable_use(
  id INTEGER PRIMARY KEY, lot_id INTEGER NOT NULL REFERENCES lot(id), at TEXT NOT NULL,
  quantity_ppm INTEGER NOT NULL, blade_id INTEGER REFERENCES blade(id), note TEXT) STRICT;
CREATE INDEX consumable_use_lot ON consumable_use(lot_id);
-- A tank or tray: quench oil, brine, plates, etchant.
CREATE TABLE bath(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, medium TEXT NOT NULL,
  use TEXT NOT NULL CHECK(use IN('quench','etch','other')), lot_id INTEGER REFERENCES lot(id),
  depth_nm INTEGER, volume_ul INTEGER, low_k1800 INTEGER, high_k1800 INTEGER, filled_at TEXT,
  checked_at TEXT, check_days INTEGER, strength_ppm INTEGER, retired_at TEXT) STRICT;

-- --------------------------------------------------------------------- blades
CREATE TABLE blade(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, item_id INTEGER REFERENCES item(id),
  model_id INTEGER REFERENCES model(id), piece_id INTEGER REFERENCES piece(id), title TEXT NOT NULL,
  construction TEXT NOT NULL, grade TEXT, length_nm INTEGER NOT NULL, width_nm INTEGER,
  thickness_nm INTEGER, hardness_aim TEXT, started_at TEXT NOT NULL, due TEXT, finished_at TEXT,
  scrapped_at TEXT, scrap_why TEXT, scrap_cost_to TEXT CHECK(scrap_cost_to IN('job','shop')),
  delivered_at TEXT) STRICT;
CREATE INDEX blade_item ON blade(item_id);
CREATE INDEX blade_piece ON blade(piece_id);

CREATE TABLE route_step(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL REFERENCES blade(id), position INTEGER NOT NULL,
  operation TEXT NOT NULL, hands_on_s INTEGER NOT NULL, attended_s INTEGER NOT NULL,
  unattended_s INTEGER NOT NULL, survival_ppm INTEGER NOT NULL DEFAULT 1000000,
  temperature_k1800 INTEGER, low_k1800 INTEGER, high_k1800 INTEGER, soak_s INTEGER, soak_max_s INTEGER,
  medium TEXT, gap_max_s INTEGER, cool_k1800_per_h INTEGER, cool_to_k1800 INTEGER,
  unattended_allowed INTEGER NOT NULL DEFAULT 0, note TEXT,
  done_at TEXT, skipped_why TEXT, UNIQUE(blade_id, position)) STRICT;

-- What really happened, append only. A correction is a new row that names the one it supersedes.
CREATE TABLE log_entry(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL REFERENCES blade(id),
  route_step_id INTEGER REFERENCES route_step(id), operation TEXT NOT NULL,
  started_at TEXT NOT NULL, ended_at TEXT, entered_at TEXT NOT NULL,
  how_timed TEXT NOT NULL CHECK(how_timed IN('live','entered later','estimated')),
  supersedes_id INTEGER REFERENCES log_entry(id), why TEXT, who TEXT,
  hands_on_s INTEGER NOT NULL DEFAULT 0, attended_s INTEGER NOT NULL DEFAULT 0,
  firing_id INTEGER REFERENCES firing(id),
  set_k1800 INTEGER, read_k1800 INTEGER, hold_s INTEGER, time_in TEXT, time_out TEXT, cooling TEXT,
  protection TEXT, bath_id INTEGER REFERENCES bath(id), medium TEXT, bath_k1800 INTEGER,
  seconds_to_bath_ms INTEGER, clay INTEGER, edge_only INTEGER, temper_number INTEGER,
  cooled_to_room INTEGER, cycles INTEGER, warp_nm INTEGER, edge_nm INTEGER, grit TEXT, belts_ppm INTEGER,
  etchant TEXT, strength_ppm INTEGER, passes INTEGER, resist INTEGER, mass_in_ug INTEGER,
  mass_out_ug INTEGER, gas_ug INTEGER, result TEXT, note TEXT) STRICT;
CREATE INDEX log_entry_blade ON log_entry(blade_id);

CREATE TABLE hardness_reading(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL REFERENCES blade(id), at TEXT NOT NULL,
  entered_at TEXT NOT NULL, place TEXT NOT NULL, along_ppm INTEGER, up_ppm INTEGER, scale TEXT NOT NULL,
  tenths INTEGER NOT NULL, tenths_to INTEGER, tester TEXT, block_nominal_tenths INTEGER,
  block_read_tenths INTEGER, on_coupon INTEGER NOT NULL DEFAULT 0, void_why TEXT) STRICT;
CREATE INDEX hardness_blade ON hardness_reading(blade_id);

CREATE TABLE finding(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, blade_id INTEGER NOT NULL REFERENCES blade(id),
  at TEXT NOT NULL, kind TEXT NOT NULL, words TEXT NOT NULL, place TEXT, side TEXT, size_nm INTEGER,
  affects INTEGER NOT NULL, decision TEXT NOT NULL CHECK(decision IN('open','scrap','fix and disclose',
    'disclose','sell as second','buyer accepts','no fault')),
  decided_at TEXT, decided_words TEXT) STRICT;
CREATE INDEX finding_blade ON finding(blade_id);

-- ----------------------------------------------------------------------- kiln
CREATE TABLE kiln(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, kind TEXT NOT NULL CHECK(kind IN('kiln','oven')),
  slots INTEGER NOT NULL, usable_length_nm INTEGER NOT NULL, low_k1800 INTEGER NOT NULL,
  high_k1800 INTEGER NOT NULL, heat_k1800_per_h INTEGER NOT NULL, tau_s INTEGER NOT NULL,
  heat_w INTEGER NOT NULL, hold_mw_per_c INTEGER NOT NULL, load_s INTEGER NOT NULL, unload_s INTEGER NOT NULL,
  circuit TEXT, values_from TEXT NOT NULL DEFAULT 'plate', checked_on TEXT, check_days INTEGER,
  wear_minor INTEGER NOT NULL DEFAULT 0, currency TEXT NOT NULL, out_of_use_on TEXT) STRICT;
CREATE TABLE recipe(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, kind TEXT NOT NULL CHECK(kind IN('soak','harden','anneal')),
  temperature_k1800 INTEGER NOT NULL, low_k1800 INTEGER NOT NULL, high_k1800 INTEGER NOT NULL,
  soak_s INTEGER NOT NULL, soak_max_s INTEGER NOT NULL, cool_k1800_per_h INTEGER,
  cool_to_k1800 INTEGER, preheat TEXT, note TEXT) STRICT;
CREATE TABLE firing(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, kiln_id INTEGER NOT NULL REFERENCES kiln(id),
  kind TEXT NOT NULL CHECK(kind IN('soak','harden','anneal')), set_k1800 INTEGER NOT NULL,
  soak_s INTEGER NOT NULL, rest_s INTEGER NOT NULL DEFAULT 0, cool_k1800_per_h INTEGER, cool_to_k1800 INTEGER,
  starts_at TEXT NOT NULL, ends_at TEXT NOT NULL, heat_from TEXT NOT NULL,
  state TEXT NOT NULL CHECK(state IN('booked','running','done','cancelled')), locked INTEGER NOT NULL DEFAULT 0,
  actual_start TEXT, actual_end TEXT, energy_j INTEGER NOT NULL, metered_j INTEGER, cancelled_why TEXT) STRICT;
CREATE INDEX firing_kiln ON firing(kiln_id);
CREATE TABLE firing_blade(
  id INTEGER PRIMARY KEY, firing_id INTEGER NOT NULL REFERENCES firing(id), blade_id INTEGER NOT NULL REFERENCES blade(id),
  route_step_id INTEGER REFERENCES route_step(id), position INTEGER NOT NULL, time_in TEXT, time_out TEXT,
  UNIQUE(firing_id, blade_id)) STRICT;
CREATE INDEX firing_blade_step ON firing_blade(route_step_id);
CREATE INDEX firing_blade_blade ON firing_blade(blade_id);
CREATE TABLE kiln_record(
  id INTEGER PRIMARY KEY, firing_id INTEGER REFERENCES firing(id), kiln_id INTEGER NOT NULL REFERENCES kiln(id),
  attachment_id INTEGER NOT NULL REFERENCES attachment(id), starts_at TEXT NOT NULL, ends_at TEXT NOT NULL,
  samples INTEGER NOT NULL, peak_k1800 INTEGER NOT NULL, sensors TEXT NOT NULL,
  independent INTEGER NOT NULL DEFAULT 0, settings TEXT NOT NULL) STRICT;
CREATE INDEX kiln_record_firing ON kiln_record(firing_id);

-- --------------------------------------------------------------- certificates
CREATE TABLE certificate(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL, blade_id INTEGER NOT NULL REFERENCES blade(id),
  issue INTEGER NOT NULL, issued_at TEXT NOT NULL, record TEXT NOT NULL, digest TEXT NOT NULL, pdf BLOB NOT NULL,
  replaces_id INTEGER REFERENCES certificate(id), why TEXT, revoked_at TEXT, revoked_why TEXT,
  UNIQUE(number, issue)) STRICT;
CREATE INDEX certificate_blade ON certificate(blade_id);

-- A catch of the trade that the maker set aside, and why.
CREATE TABLE override(
  id INTEGER PRIMARY KEY, at TEXT NOT NULL, action TEXT NOT NULL, catch INTEGER NOT NULL,
  sentence TEXT NOT NULL, reason TEXT NOT NULL) STRICT;

-- Every change of every table above: appended, chained by SHA-256.
CREATE TABLE history(
  id INTEGER PRIMARY KEY, at TEXT NOT NULL, action TEXT NOT NULL, reason TEXT NOT NULL,
  subject TEXT NOT NULL, row INTEGER NOT NULL, old TEXT, new TEXT, hash TEXT NOT NULL) STRICT;
CREATE INDEX history_row ON history(subject, row);
)sql";

}  // namespace tangmark::db
