-- A shop file as schema step 1 left it: one blade, its mark etched. The triggers that keep history
-- are laid anew whenever a file is taken a step forward, so they are left out here.
PRAGMA application_id = 1415671399;
PRAGMA user_version = 1;
BEGIN TRANSACTION;
CREATE TABLE aftercare(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL REFERENCES blade(id), at TEXT NOT NULL,
  complaint TEXT NOT NULL, condition TEXT, cause TEXT, work TEXT, hands_on_s INTEGER NOT NULL DEFAULT 0,
  paid_by TEXT) STRICT;
CREATE TABLE attachment(
  id INTEGER PRIMARY KEY, kind TEXT NOT NULL CHECK(kind IN('photo','document','kiln record')),
  name TEXT NOT NULL, media_type TEXT NOT NULL, bytes BLOB NOT NULL, taken_at TEXT,
  added_at TEXT NOT NULL, caption TEXT, subject TEXT NOT NULL, subject_id INTEGER NOT NULL) STRICT;
CREATE TABLE bath(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, medium TEXT NOT NULL,
  use TEXT NOT NULL CHECK(use IN('quench','etch','other')), lot_id INTEGER REFERENCES lot(id),
  depth_nm INTEGER, volume_ul INTEGER, low_k1800 INTEGER, high_k1800 INTEGER, filled_at TEXT,
  checked_at TEXT, check_days INTEGER, strength_ppm INTEGER, retired_at TEXT) STRICT;
CREATE TABLE bench_hours(
  id INTEGER PRIMARY KEY, weekday INTEGER NOT NULL CHECK(weekday BETWEEN 1 AND 7),
  from_s INTEGER NOT NULL, to_s INTEGER NOT NULL CHECK(to_s > from_s)) STRICT;
CREATE TABLE billet(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  kind TEXT NOT NULL CHECK(kind IN('pattern-welded','laminated','ingot','smelted')),
  name TEXT, made_by TEXT NOT NULL, started_at TEXT NOT NULL, finished_at TEXT, layers INTEGER,
  pattern TEXT, scrapped_at TEXT, note TEXT) STRICT;
CREATE TABLE billet_part(
  id INTEGER PRIMARY KEY, billet_id INTEGER NOT NULL REFERENCES billet(id), position INTEGER NOT NULL,
  piece_id INTEGER NOT NULL REFERENCES piece(id), role TEXT NOT NULL CHECK(role IN('layer','core','cladding','charge')),
  layers INTEGER NOT NULL DEFAULT 1, mass_ug INTEGER NOT NULL) STRICT;
CREATE TABLE blade(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, item_id INTEGER REFERENCES item(id),
  model_id INTEGER REFERENCES model(id), piece_id INTEGER REFERENCES piece(id), title TEXT NOT NULL,
  construction TEXT NOT NULL, grade TEXT, length_nm INTEGER NOT NULL, width_nm INTEGER,
  thickness_nm INTEGER, hardness_aim TEXT, started_at TEXT NOT NULL, due TEXT, finished_at TEXT,
  scrapped_at TEXT, scrap_why TEXT, scrap_cost_to TEXT CHECK(scrap_cost_to IN('job','shop')),
  delivered_at TEXT) STRICT;
INSERT INTO "blade" VALUES(1,11,NULL,NULL,NULL,'petty 150','monosteel','1084',150000000,NULL,NULL,NULL,'2026-11-20T08:01:00Z',NULL,NULL,NULL,NULL,NULL,NULL);
CREATE TABLE certificate(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL, blade_id INTEGER NOT NULL REFERENCES blade(id),
  issue INTEGER NOT NULL, issued_at TEXT NOT NULL, record TEXT NOT NULL, digest TEXT NOT NULL, pdf BLOB NOT NULL,
  replaces_id INTEGER REFERENCES certificate(id), why TEXT, revoked_at TEXT, revoked_why TEXT,
  UNIQUE(number, issue)) STRICT;
CREATE TABLE commission(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  customer_id INTEGER NOT NULL REFERENCES customer(id),
  state TEXT NOT NULL CHECK(state IN('enquiry','quoted','accepted','in work','ready','delivered',
    'declined','cancelled')),
  opened_at TEXT NOT NULL, channel TEXT, buyers_words TEXT, budget_minor INTEGER, currency TEXT NOT NULL,
  wanted_by TEXT, wanted_why TEXT, destination TEXT, reply_by TEXT,
  refund_rule TEXT, specification_confirmed_on TEXT, accepted_on TEXT, delivered_on TEXT,
  cancelled_why TEXT, law_checked_on TEXT) STRICT;
CREATE TABLE consumable_use(
  id INTEGER PRIMARY KEY, lot_id INTEGER NOT NULL REFERENCES lot(id), at TEXT NOT NULL,
  quantity_ppm INTEGER NOT NULL, blade_id INTEGER REFERENCES blade(id), note TEXT) STRICT;
CREATE TABLE contact(
  id INTEGER PRIMARY KEY, commission_id INTEGER NOT NULL REFERENCES commission(id),
  at TEXT NOT NULL, channel TEXT, words TEXT NOT NULL) STRICT;
CREATE TABLE counter(
  id INTEGER PRIMARY KEY, kind TEXT NOT NULL UNIQUE, last INTEGER NOT NULL) STRICT;
INSERT INTO "counter" VALUES(1,'blade',11);
CREATE TABLE customer(
  id INTEGER PRIMARY KEY, name TEXT, contact TEXT, address TEXT, note TEXT, salt BLOB,
  country TEXT, added_at TEXT NOT NULL, erased_at TEXT) STRICT;
CREATE TABLE cut(
  id INTEGER PRIMARY KEY, piece_id INTEGER NOT NULL REFERENCES piece(id), at TEXT NOT NULL,
  kerf_nm INTEGER NOT NULL, mass_before_ug INTEGER NOT NULL, mass_after_ug INTEGER NOT NULL,
  swarf_ug INTEGER NOT NULL, gap_ug INTEGER NOT NULL, mark_went_to TEXT NOT NULL) STRICT;
CREATE TABLE day_off(
  id INTEGER PRIMARY KEY, day TEXT NOT NULL UNIQUE, why TEXT) STRICT;
CREATE TABLE delay_notice(
  id INTEGER PRIMARY KEY, commission_id INTEGER NOT NULL REFERENCES commission(id),
  at TEXT NOT NULL, new_day TEXT NOT NULL, words TEXT NOT NULL,
  consent TEXT NOT NULL CHECK(consent IN('asked','given','refused')), consent_at TEXT) STRICT;
CREATE TABLE finding(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, blade_id INTEGER NOT NULL REFERENCES blade(id),
  at TEXT NOT NULL, kind TEXT NOT NULL, words TEXT NOT NULL, place TEXT, side TEXT, size_nm INTEGER,
  affects INTEGER NOT NULL, decision TEXT NOT NULL CHECK(decision IN('open','scrap','fix and disclose',
    'disclose','sell as second','buyer accepts','no fault')),
  decided_at TEXT, decided_words TEXT) STRICT;
CREATE TABLE firing(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE, kiln_id INTEGER NOT NULL REFERENCES kiln(id),
  kind TEXT NOT NULL CHECK(kind IN('soak','harden','anneal')), set_k1800 INTEGER NOT NULL,
  soak_s INTEGER NOT NULL, rest_s INTEGER NOT NULL DEFAULT 0, cool_k1800_per_h INTEGER, cool_to_k1800 INTEGER,
  starts_at TEXT NOT NULL, ends_at TEXT NOT NULL, heat_from TEXT NOT NULL,
  state TEXT NOT NULL CHECK(state IN('booked','running','done','cancelled')), locked INTEGER NOT NULL DEFAULT 0,
  actual_start TEXT, actual_end TEXT, energy_j INTEGER NOT NULL, metered_j INTEGER, cancelled_why TEXT) STRICT;
CREATE TABLE firing_blade(
  id INTEGER PRIMARY KEY, firing_id INTEGER NOT NULL REFERENCES firing(id), blade_id INTEGER NOT NULL REFERENCES blade(id),
  route_step_id INTEGER REFERENCES route_step(id), position INTEGER NOT NULL, time_in TEXT, time_out TEXT,
  UNIQUE(firing_id, blade_id)) STRICT;
CREATE TABLE hardness_reading(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL REFERENCES blade(id), at TEXT NOT NULL,
  entered_at TEXT NOT NULL, place TEXT NOT NULL, along_ppm INTEGER, up_ppm INTEGER, scale TEXT NOT NULL,
  tenths INTEGER NOT NULL, tenths_to INTEGER, tester TEXT, block_nominal_tenths INTEGER,
  block_read_tenths INTEGER, on_coupon INTEGER NOT NULL DEFAULT 0, void_why TEXT) STRICT;
CREATE TABLE history(
  id INTEGER PRIMARY KEY, at TEXT NOT NULL, action TEXT NOT NULL, reason TEXT NOT NULL,
  subject TEXT NOT NULL, row INTEGER NOT NULL, old TEXT, new TEXT, hash TEXT NOT NULL) STRICT;
INSERT INTO "history" VALUES(1,'2026-11-20T08:00:00Z','change_setting','','setting',1,NULL,'{"id":1,"name":"shop_name","value":"Old Bench"}','c97e02a30d9c1bd9aa96c6073a1d862eba09cc988a3c4cd46bf208f392b66a97');
INSERT INTO "history" VALUES(2,'2026-11-20T08:00:00Z','change_setting','','setting',2,NULL,'{"id":2,"name":"maker_name","value":""}','7954cded0f1f3a8853b6162374c382091dd99bb0d21d457ab3e48031028f404e');
INSERT INTO "history" VALUES(3,'2026-11-20T08:00:00Z','change_setting','','setting',3,NULL,'{"id":3,"name":"address","value":""}','503e96d15e0eeb86652f4fac2333f095d8317b922ac3b0dc4f78f7507510efc4');
INSERT INTO "history" VALUES(4,'2026-11-20T08:00:00Z','change_setting','','setting',4,NULL,'{"id":4,"name":"country","value":""}','7e6bcdb90c4865f23fa9c2004d2b417231854a2face872102d642afcbe3ae33e');
INSERT INTO "history" VALUES(5,'2026-11-20T08:00:00Z','change_setting','','setting',5,NULL,'{"id":5,"name":"zone","value":"Etc/UTC"}','408242394e5c771ebab83c3beae42f90a69cd74c13c6c47fafb2658c6a43b45d');
INSERT INTO "history" VALUES(6,'2026-11-20T08:00:00Z','change_setting','','setting',6,NULL,'{"id":6,"name":"paper","value":"A4"}','dfa843d9b0ea21098b19eaa843ab927aa8960750821764fc936304e12397bb2b');
INSERT INTO "history" VALUES(7,'2026-11-20T08:00:00Z','change_setting','','setting',7,NULL,'{"id":7,"name":"temperature_unit","value":"C"}','47d38232aab2ddfb1006102b794a75d8e817ecc94959f23b47dad0329b695fd9');
INSERT INTO "history" VALUES(8,'2026-11-20T08:00:00Z','change_setting','','setting',8,NULL,'{"id":8,"name":"length_unit","value":"mm"}','cc35d6b0d5d26ed2e405928beb68faea2075a95cc89697ef0f58cd30abc9f07d');
INSERT INTO "history" VALUES(9,'2026-11-20T08:00:00Z','change_setting','','setting',9,NULL,'{"id":9,"name":"mass_unit","value":"g"}','c79462c1d9aaafffdcabb5c623e7b07c4a2afed598af1fb8971ebe1d3efb0ce8');
INSERT INTO "history" VALUES(10,'2026-11-20T08:00:00Z','change_setting','','setting',10,NULL,'{"id":10,"name":"currency","value":"EUR"}','f05636fbc129effb40361e00dbd56cf4b7403eb7d5775bde84d371b761a8508e');
INSERT INTO "history" VALUES(11,'2026-11-20T08:00:00Z','change_setting','','setting',11,NULL,'{"id":11,"name":"hourly_rate","value":"35.00"}','7ba9f98d200c5a3557cfb792249eb15e3d55be65fb58f79091b0a7e1e61af4f3');
INSERT INTO "history" VALUES(12,'2026-11-20T08:00:00Z','change_setting','','setting',12,NULL,'{"id":12,"name":"attended_share","value":"50 %"}','f705c8c824b41be185081e59c3a13a9492e199c3999896da09a8239218129180');
INSERT INTO "history" VALUES(13,'2026-11-20T08:00:00Z','change_setting','','setting',13,NULL,'{"id":13,"name":"overhead_per_hour","value":"12.00"}','a983884246814caf8eb11059ee13702a34b28285b6ff535afd441ab23ce587fa');
INSERT INTO "history" VALUES(14,'2026-11-20T08:00:00Z','change_setting','','setting',14,NULL,'{"id":14,"name":"margin","value":"20 %"}','a9cd44d8a11902de1f5721055040292dc04da158be7af3e47f38d8178b97d47b');
INSERT INTO "history" VALUES(15,'2026-11-20T08:00:00Z','change_setting','','setting',15,NULL,'{"id":15,"name":"price_step","value":"5.00"}','c0eabfe72d81b8c4ab56b2e3ce45fa3c35958b8b573ed93fe05d3c7b97ee59b6');
INSERT INTO "history" VALUES(16,'2026-11-20T08:00:00Z','change_setting','','setting',16,NULL,'{"id":16,"name":"deposit_share","value":"40 %"}','dd541a92216c35e9254730cc52edcf6797d598587783b9b263eb4edd62619a56');
INSERT INTO "history" VALUES(17,'2026-11-20T08:00:00Z','change_setting','','setting',17,NULL,'{"id":17,"name":"quote_valid_days","value":"30"}','7f5a07fa40b355af193d40944dc0b3321a1ce9fce61e5b2b1a9f02107a2b88cf');
INSERT INTO "history" VALUES(18,'2026-11-20T08:00:00Z','change_setting','','setting',18,NULL,'{"id":18,"name":"tax_mode","value":"none"}','30bcba0f62ba24ec7feb1f58b99bd42016b36ad18f05196d8f9cfe8bdf85385e');
INSERT INTO "history" VALUES(19,'2026-11-20T08:00:00Z','change_setting','','setting',19,NULL,'{"id":19,"name":"tax_rate","value":"0 %"}','990ea99878008e672f08808994b385b4e6ff62ccac1e031f79f4f9f4455d2af1');
INSERT INTO "history" VALUES(20,'2026-11-20T08:00:00Z','change_setting','','setting',20,NULL,'{"id":20,"name":"payment_fee","value":"0 %"}','dab5602c01b650124ea2c392ac4d13059bd0bd524cf0c7887b2ba9ffd28d3b01');
INSERT INTO "history" VALUES(21,'2026-11-20T08:00:00Z','change_setting','','setting',21,NULL,'{"id":21,"name":"packing","value":"8.00"}','aaf56736e49d9375a68dc2863cd0948e7e62d5051e05479c3a41cf305937ae89');
INSERT INTO "history" VALUES(22,'2026-11-20T08:00:00Z','change_setting','','setting',22,NULL,'{"id":22,"name":"shipping","value":"0.00"}','f3fd60fec91b9584960b74ca709921b2c6cc4fea22457a70bdd24fdad6c4d22a');
INSERT INTO "history" VALUES(23,'2026-11-20T08:00:00Z','change_setting','','setting',23,NULL,'{"id":23,"name":"refund_rule","value":"The deposit is returned in full until work begins; after that, less the material used."}','8d43b63614282db596843c0063a1be49ae18ac16c55c698f2198c777ca0db81e');
INSERT INTO "history" VALUES(24,'2026-11-20T08:00:00Z','change_setting','','setting',24,NULL,'{"id":24,"name":"tolerance_words","value":"Sizes may differ by 3 %; a pattern differs from every photograph."}','9bd62ab6f7590f3f13a35b600b9f5ba451d818e6d9437a2130084ce9457064e5');
INSERT INTO "history" VALUES(25,'2026-11-20T08:00:00Z','change_setting','','setting',25,NULL,'{"id":25,"name":"electricity_per_kwh","value":"0.35"}','e0d244e6b7eace3e41aa722bfee84e9e6bc3ecf39dae16dd890fc71c273aa888');
INSERT INTO "history" VALUES(26,'2026-11-20T08:00:00Z','change_setting','','setting',26,NULL,'{"id":26,"name":"gas_per_kg","value":"4.00"}','e4aca72370ec5e80065021517176cf832abfeeba2a350e3525c31aa05a10716d');
INSERT INTO "history" VALUES(27,'2026-11-20T08:00:00Z','change_setting','','setting',27,NULL,'{"id":27,"name":"blades_in_a_firing","value":"3"}','cc805218638254a165f5824b447432d1e7636cde95001e6a41c574f6b149b400');
INSERT INTO "history" VALUES(28,'2026-11-20T08:00:00Z','change_setting','','setting',28,NULL,'{"id":28,"name":"kerf","value":"2 mm"}','bb5b31bdbae0c0e01b8d47095b150598905cb800024bd84cb76e033020bfeb8d');
INSERT INTO "history" VALUES(29,'2026-11-20T08:00:00Z','change_setting','','setting',29,NULL,'{"id":29,"name":"keep_at_least","value":"100 mm"}','b82cf6758ee28f14875c1608cb22a115fa273347a032293dce89410806833ab4');
INSERT INTO "history" VALUES(30,'2026-11-20T08:00:00Z','change_setting','','setting',30,NULL,'{"id":30,"name":"mass_gap_allowed","value":"5 %"}','f6eaed4242b6ea54656fc9fe1ff3080934e7bb22c38df8530ff8eb41d7d50b7a');
INSERT INTO "history" VALUES(31,'2026-11-20T08:00:00Z','change_setting','','setting',31,NULL,'{"id":31,"name":"temper_remark","value":"30 min"}','92cadd7e304f177e2ee79d5481b1928bc857e087896d62e8e7413741af436aa5');
INSERT INTO "history" VALUES(32,'2026-11-20T08:00:00Z','change_setting','','setting',32,NULL,'{"id":32,"name":"temper_limit","value":"1 h 30 min"}','b4946ce2a3ece971c840588a41097c938402710b488609c4ea06bb33996ecda7');
INSERT INTO "history" VALUES(33,'2026-11-20T08:00:00Z','change_setting','','setting',33,NULL,'{"id":33,"name":"temper_tolerance","value":"5 C"}','9d94c02933113ff04a9d87ed587c83c31786d00c20228d35b93f69a086e50562');
INSERT INTO "history" VALUES(34,'2026-11-20T08:00:00Z','change_setting','','setting',34,NULL,'{"id":34,"name":"contact_days","value":"90"}','3ad33ff50347537141c16aaa0361bede46d2f26360f5e575de3646afb3645773');
INSERT INTO "history" VALUES(35,'2026-11-20T08:00:00Z','change_setting','','setting',35,NULL,'{"id":35,"name":"timer_limit","value":"12 h"}','104909e07fc3a68e551999843e3f28ff7028f25394cf87be4874b8504943cf0e');
INSERT INTO "history" VALUES(36,'2026-11-20T08:00:00Z','change_setting','','setting',36,NULL,'{"id":36,"name":"shop_cost_of_late_day","value":"20.00"}','a9235f099c7cac4a0bcac42ef17a2c7f9106121d41ea8e75519c66b6c42cf259');
INSERT INTO "history" VALUES(37,'2026-11-20T08:01:00Z','assign_blade','','counter',1,NULL,'{"id":1,"kind":"blade","last":11}','e0d988c1dae578e699f354b9a86fb15b33bcb68829a6a27907ff5e3942b7f917');
INSERT INTO "history" VALUES(38,'2026-11-20T08:01:00Z','assign_blade','','blade',1,NULL,'{"id":1,"number":11,"item_id":null,"model_id":null,"piece_id":null,"title":"petty 150","construction":"monosteel","grade":"1084","length_nm":150000000,"width_nm":null,"thickness_nm":null,"hardness_aim":null,"started_at":"2026-11-20T08:01:00Z","due":null,"finished_at":null,"scrapped_at":null,"scrap_why":null,"scrap_cost_to":null,"delivered_at":null}','f2de8cf04a269d0f17b8d650215ed86ef952e62c589126f5aade267523e4f594');
INSERT INTO "history" VALUES(39,'2026-11-20T08:01:00Z','assign_blade','','route_step',1,NULL,'{"id":1,"blade_id":1,"position":1,"operation":"harden","hands_on_s":0,"attended_s":0,"unattended_s":0,"survival_ppm":1000000,"temperature_k1800":null,"low_k1800":null,"high_k1800":null,"soak_s":null,"soak_max_s":null,"medium":null,"gap_max_s":null,"cool_k1800_per_h":null,"cool_to_k1800":null,"unattended_allowed":0,"note":null,"done_at":null,"skipped_why":null}','03a23fc7bf82c34c711478bf3d31eb17f2901bee4aa8f93008578f89791fd840');
INSERT INTO "history" VALUES(40,'2026-11-20T08:01:00Z','assign_blade','','route_step',2,NULL,'{"id":2,"blade_id":1,"position":2,"operation":"temper","hands_on_s":0,"attended_s":0,"unattended_s":0,"survival_ppm":1000000,"temperature_k1800":null,"low_k1800":null,"high_k1800":null,"soak_s":null,"soak_max_s":null,"medium":null,"gap_max_s":null,"cool_k1800_per_h":null,"cool_to_k1800":null,"unattended_allowed":0,"note":null,"done_at":null,"skipped_why":null}','c0e3865c6d845da7ebcd2d89abfaca7bf2bcd15f4db1d11e6203d28ad7483ef8');
INSERT INTO "history" VALUES(41,'2026-11-20T08:01:00Z','assign_blade','','route_step',3,NULL,'{"id":3,"blade_id":1,"position":3,"operation":"etch","hands_on_s":0,"attended_s":0,"unattended_s":0,"survival_ppm":1000000,"temperature_k1800":null,"low_k1800":null,"high_k1800":null,"soak_s":null,"soak_max_s":null,"medium":null,"gap_max_s":null,"cool_k1800_per_h":null,"cool_to_k1800":null,"unattended_allowed":0,"note":null,"done_at":null,"skipped_why":null}','d64fd7bdd1616bd02936291dadb515aa89d1b5b3541cd94f1e3ef369865ac5d7');
INSERT INTO "history" VALUES(42,'2026-11-20T09:01:00Z','log_step','','log_entry',1,NULL,'{"id":1,"blade_id":1,"route_step_id":3,"operation":"etch","started_at":"2026-11-20T09:01:00Z","ended_at":null,"entered_at":"2026-11-20T09:01:00Z","how_timed":"live","supersedes_id":null,"why":null,"who":null,"hands_on_s":600,"attended_s":0,"firing_id":null,"set_k1800":null,"read_k1800":null,"hold_s":null,"time_in":null,"time_out":null,"cooling":null,"protection":null,"bath_id":null,"medium":null,"bath_k1800":null,"seconds_to_bath_ms":null,"clay":null,"edge_only":null,"temper_number":null,"cooled_to_room":null,"cycles":null,"warp_nm":null,"edge_nm":null,"grit":null,"belts_ppm":null,"etchant":null,"strength_ppm":null,"passes":null,"resist":1,"mass_in_ug":null,"mass_out_ug":null,"gas_ug":null,"result":null,"note":"maker''s mark"}','a785a97997983d1edbf4b9b9b5bcba9f092b0920b6351499495a69c846734442');
INSERT INTO "history" VALUES(43,'2026-11-20T09:01:00Z','log_step','','route_step',3,'{"id":3,"blade_id":1,"position":3,"operation":"etch","hands_on_s":0,"attended_s":0,"unattended_s":0,"survival_ppm":1000000,"temperature_k1800":null,"low_k1800":null,"high_k1800":null,"soak_s":null,"soak_max_s":null,"medium":null,"gap_max_s":null,"cool_k1800_per_h":null,"cool_to_k1800":null,"unattended_allowed":0,"note":null,"done_at":null,"skipped_why":null}','{"id":3,"blade_id":1,"position":3,"operation":"etch","hands_on_s":0,"attended_s":0,"unattended_s":0,"survival_ppm":1000000,"temperature_k1800":null,"low_k1800":null,"high_k1800":null,"soak_s":null,"soak_max_s":null,"medium":null,"gap_max_s":null,"cool_k1800_per_h":null,"cool_to_k1800":null,"unattended_allowed":0,"note":null,"done_at":"2026-11-20T09:01:00Z","skipped_why":null}','abbdeb6ff1f931cf3ac5c2f1aa283322a3a1887bed023e7f6f9df010e03027fc');
CREATE TABLE hold(
  id INTEGER PRIMARY KEY, item_id INTEGER NOT NULL REFERENCES item(id), what TEXT NOT NULL,
  since TEXT NOT NULL, until TEXT, ended_at TEXT) STRICT;
CREATE TABLE invoice(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  commission_id INTEGER NOT NULL REFERENCES commission(id),
  kind TEXT NOT NULL CHECK(kind IN('deposit receipt','balance invoice','correction')),
  issued_at TEXT NOT NULL, total_minor INTEGER NOT NULL, currency TEXT NOT NULL,
  corrects_id INTEGER REFERENCES invoice(id), body TEXT NOT NULL) STRICT;
CREATE TABLE item(
  id INTEGER PRIMARY KEY, commission_id INTEGER REFERENCES commission(id), position INTEGER NOT NULL,
  model_id INTEGER REFERENCES model(id), title TEXT NOT NULL, description TEXT,
  construction TEXT NOT NULL, grade TEXT, blade_length_nm INTEGER NOT NULL, hand TEXT,
  handle TEXT, handle_lot_id INTEGER REFERENCES lot(id), sheath TEXT, hardness_aim TEXT,
  dishwasher INTEGER NOT NULL DEFAULT 0, asking_minor INTEGER, currency TEXT NOT NULL,
  made_to_specification INTEGER NOT NULL DEFAULT 0, handle_fitted_at TEXT, cancelled_on TEXT) STRICT;
CREATE TABLE item_change(
  id INTEGER PRIMARY KEY, item_id INTEGER NOT NULL REFERENCES item(id), number INTEGER NOT NULL,
  at TEXT NOT NULL, words TEXT NOT NULL, price_minor INTEGER, currency TEXT NOT NULL,
  UNIQUE(item_id, number)) STRICT;
CREATE TABLE kiln(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, kind TEXT NOT NULL CHECK(kind IN('kiln','oven')),
  slots INTEGER NOT NULL, usable_length_nm INTEGER NOT NULL, low_k1800 INTEGER NOT NULL,
  high_k1800 INTEGER NOT NULL, heat_k1800_per_h INTEGER NOT NULL, tau_s INTEGER NOT NULL,
  heat_w INTEGER NOT NULL, hold_mw_per_c INTEGER NOT NULL, load_s INTEGER NOT NULL, unload_s INTEGER NOT NULL,
  circuit TEXT, values_from TEXT NOT NULL DEFAULT 'plate', checked_on TEXT, check_days INTEGER,
  wear_minor INTEGER NOT NULL DEFAULT 0, currency TEXT NOT NULL, out_of_use_on TEXT) STRICT;
CREATE TABLE kiln_record(
  id INTEGER PRIMARY KEY, firing_id INTEGER REFERENCES firing(id), kiln_id INTEGER NOT NULL REFERENCES kiln(id),
  attachment_id INTEGER NOT NULL REFERENCES attachment(id), starts_at TEXT NOT NULL, ends_at TEXT NOT NULL,
  samples INTEGER NOT NULL, peak_k1800 INTEGER NOT NULL, sensors TEXT NOT NULL,
  independent INTEGER NOT NULL DEFAULT 0, settings TEXT NOT NULL) STRICT;
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
INSERT INTO "log_entry" VALUES(1,1,3,'etch','2026-11-20T09:01:00Z',NULL,'2026-11-20T09:01:00Z','live',NULL,NULL,NULL,600,0,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1,NULL,NULL,NULL,NULL,'maker''s mark');
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
CREATE TABLE melt(
  id INTEGER PRIMARY KEY, billet_id INTEGER NOT NULL UNIQUE REFERENCES billet(id), at TEXT NOT NULL,
  entered_at TEXT NOT NULL, charge TEXT NOT NULL, charge_ug INTEGER NOT NULL, lining TEXT NOT NULL,
  peak_k1800 INTEGER NOT NULL, at_peak_s INTEGER NOT NULL, cooled TEXT, ingot_ug INTEGER NOT NULL,
  carbon_ppm INTEGER, carbon_how TEXT, who TEXT) STRICT;
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
CREATE TABLE model_use(
  id INTEGER PRIMARY KEY, model_id INTEGER NOT NULL REFERENCES model(id), position INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK(kind IN('material','used up','gas','made elsewhere','packing')),
  text TEXT NOT NULL, quantity_ppm INTEGER NOT NULL, unit TEXT NOT NULL, each_minor INTEGER NOT NULL,
  low_ppm INTEGER, high_ppm INTEGER, UNIQUE(model_id, position)) STRICT;
CREATE TABLE outside_work(
  id INTEGER PRIMARY KEY, item_id INTEGER REFERENCES item(id), blade_id INTEGER REFERENCES blade(id),
  operation TEXT NOT NULL, who TEXT NOT NULL, sent_at TEXT NOT NULL, due_back TEXT, back_at TEXT,
  their_words TEXT, cost_minor INTEGER, currency TEXT) STRICT;
CREATE TABLE override(
  id INTEGER PRIMARY KEY, at TEXT NOT NULL, action TEXT NOT NULL, catch INTEGER NOT NULL,
  sentence TEXT NOT NULL, reason TEXT NOT NULL) STRICT;
CREATE TABLE own_grade(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, limits TEXT NOT NULL,
  harden_lo_k1800 INTEGER, harden_hi_k1800 INTEGER, temper_lo_k1800 INTEGER,
  temper_hi_k1800 INTEGER, source TEXT NOT NULL) STRICT;
CREATE TABLE own_operation(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, hot INTEGER NOT NULL, note TEXT) STRICT;
CREATE TABLE payment(
  id INTEGER PRIMARY KEY, number INTEGER NOT NULL UNIQUE,
  commission_id INTEGER NOT NULL REFERENCES commission(id),
  kind TEXT NOT NULL CHECK(kind IN('deposit','balance','refund','correction')),
  amount_minor INTEGER NOT NULL, currency TEXT NOT NULL, rate TEXT, at TEXT NOT NULL, method TEXT,
  corrects_id INTEGER REFERENCES payment(id), note TEXT) STRICT;
CREATE TABLE piece(
  id INTEGER PRIMARY KEY, tag TEXT NOT NULL UNIQUE, lot_id INTEGER REFERENCES lot(id),
  billet_id INTEGER REFERENCES billet(id), parent_id INTEGER REFERENCES piece(id),
  cut_id INTEGER REFERENCES cut(id), length_nm INTEGER, width_nm INTEGER, thickness_nm INTEGER,
  diameter_nm INTEGER, mass_ug INTEGER NOT NULL,
  mark TEXT NOT NULL CHECK(mark IN('carries the mark','tagged','identity gap')),
  state TEXT NOT NULL CHECK(state IN('on hand','cut up','in a billet','blank','returned','scrap')),
  place TEXT, made_at TEXT NOT NULL, note TEXT) STRICT;
CREATE TABLE promise(
  id INTEGER PRIMARY KEY, commission_id INTEGER NOT NULL REFERENCES commission(id),
  day TEXT NOT NULL, made_at TEXT NOT NULL, words TEXT, told TEXT) STRICT;
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
CREATE TABLE quote_line(
  id INTEGER PRIMARY KEY, quote_id INTEGER NOT NULL REFERENCES quote(id), side TEXT NOT NULL
    CHECK(side IN('cost','price')), position INTEGER NOT NULL, kind TEXT NOT NULL, text TEXT NOT NULL,
  quantity TEXT, unit TEXT, each_minor INTEGER, amount_minor INTEGER NOT NULL,
  UNIQUE(quote_id, side, position)) STRICT;
CREATE TABLE recipe(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, kind TEXT NOT NULL CHECK(kind IN('soak','harden','anneal')),
  temperature_k1800 INTEGER NOT NULL, low_k1800 INTEGER NOT NULL, high_k1800 INTEGER NOT NULL,
  soak_s INTEGER NOT NULL, soak_max_s INTEGER NOT NULL, cool_k1800_per_h INTEGER,
  cool_to_k1800 INTEGER, preheat TEXT, note TEXT) STRICT;
CREATE TABLE reservation(
  id INTEGER PRIMARY KEY, item_id INTEGER NOT NULL REFERENCES item(id),
  piece_id INTEGER REFERENCES piece(id), lot_id INTEGER REFERENCES lot(id),
  length_nm INTEGER, mass_ug INTEGER, quantity_ppm INTEGER, at TEXT NOT NULL, released_at TEXT) STRICT;
CREATE TABLE route_step(
  id INTEGER PRIMARY KEY, blade_id INTEGER NOT NULL REFERENCES blade(id), position INTEGER NOT NULL,
  operation TEXT NOT NULL, hands_on_s INTEGER NOT NULL, attended_s INTEGER NOT NULL,
  unattended_s INTEGER NOT NULL, survival_ppm INTEGER NOT NULL DEFAULT 1000000,
  temperature_k1800 INTEGER, low_k1800 INTEGER, high_k1800 INTEGER, soak_s INTEGER, soak_max_s INTEGER,
  medium TEXT, gap_max_s INTEGER, cool_k1800_per_h INTEGER, cool_to_k1800 INTEGER,
  unattended_allowed INTEGER NOT NULL DEFAULT 0, note TEXT,
  done_at TEXT, skipped_why TEXT, UNIQUE(blade_id, position)) STRICT;
INSERT INTO "route_step" VALUES(1,1,1,'harden',0,0,0,1000000,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0,NULL,NULL,NULL);
INSERT INTO "route_step" VALUES(2,1,2,'temper',0,0,0,1000000,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0,NULL,NULL,NULL);
INSERT INTO "route_step" VALUES(3,1,3,'etch',0,0,0,1000000,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0,NULL,'2026-11-20T09:01:00Z',NULL);
CREATE TABLE setting(
  id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE, value TEXT NOT NULL) STRICT;
INSERT INTO "setting" VALUES(1,'shop_name','Old Bench');
INSERT INTO "setting" VALUES(2,'maker_name','');
INSERT INTO "setting" VALUES(3,'address','');
INSERT INTO "setting" VALUES(4,'country','');
INSERT INTO "setting" VALUES(5,'zone','Etc/UTC');
INSERT INTO "setting" VALUES(6,'paper','A4');
INSERT INTO "setting" VALUES(7,'temperature_unit','C');
INSERT INTO "setting" VALUES(8,'length_unit','mm');
INSERT INTO "setting" VALUES(9,'mass_unit','g');
INSERT INTO "setting" VALUES(10,'currency','EUR');
INSERT INTO "setting" VALUES(11,'hourly_rate','35.00');
INSERT INTO "setting" VALUES(12,'attended_share','50 %');
INSERT INTO "setting" VALUES(13,'overhead_per_hour','12.00');
INSERT INTO "setting" VALUES(14,'margin','20 %');
INSERT INTO "setting" VALUES(15,'price_step','5.00');
INSERT INTO "setting" VALUES(16,'deposit_share','40 %');
INSERT INTO "setting" VALUES(17,'quote_valid_days','30');
INSERT INTO "setting" VALUES(18,'tax_mode','none');
INSERT INTO "setting" VALUES(19,'tax_rate','0 %');
INSERT INTO "setting" VALUES(20,'payment_fee','0 %');
INSERT INTO "setting" VALUES(21,'packing','8.00');
INSERT INTO "setting" VALUES(22,'shipping','0.00');
INSERT INTO "setting" VALUES(23,'refund_rule','The deposit is returned in full until work begins; after that, less the material used.');
INSERT INTO "setting" VALUES(24,'tolerance_words','Sizes may differ by 3 %; a pattern differs from every photograph.');
INSERT INTO "setting" VALUES(25,'electricity_per_kwh','0.35');
INSERT INTO "setting" VALUES(26,'gas_per_kg','4.00');
INSERT INTO "setting" VALUES(27,'blades_in_a_firing','3');
INSERT INTO "setting" VALUES(28,'kerf','2 mm');
INSERT INTO "setting" VALUES(29,'keep_at_least','100 mm');
INSERT INTO "setting" VALUES(30,'mass_gap_allowed','5 %');
INSERT INTO "setting" VALUES(31,'temper_remark','30 min');
INSERT INTO "setting" VALUES(32,'temper_limit','1 h 30 min');
INSERT INTO "setting" VALUES(33,'temper_tolerance','5 C');
INSERT INTO "setting" VALUES(34,'contact_days','90');
INSERT INTO "setting" VALUES(35,'timer_limit','12 h');
INSERT INTO "setting" VALUES(36,'shop_cost_of_late_day','20.00');
CREATE TABLE weld_stage(
  id INTEGER PRIMARY KEY, billet_id INTEGER NOT NULL REFERENCES billet(id), number INTEGER NOT NULL,
  at TEXT NOT NULL, entered_at TEXT NOT NULL, operation TEXT NOT NULL CHECK(operation IN('stack','weld','draw','fold','cut','twist','crop')),
  pieces INTEGER NOT NULL DEFAULT 1, mass_in_ug INTEGER NOT NULL, mass_out_ug INTEGER NOT NULL,
  crop_ug INTEGER NOT NULL DEFAULT 0, scale_ug INTEGER NOT NULL DEFAULT 0, swarf_ug INTEGER NOT NULL DEFAULT 0,
  gap_ug INTEGER NOT NULL, thickness_nm INTEGER, temperature_k1800 INTEGER, flux TEXT, who TEXT,
  hands_on_s INTEGER NOT NULL DEFAULT 0, note TEXT, UNIQUE(billet_id, number)) STRICT;
CREATE INDEX attachment_subject ON attachment(subject, subject_id);
CREATE INDEX commission_customer ON commission(customer_id);
CREATE INDEX contact_commission ON contact(commission_id);
CREATE INDEX item_commission ON item(commission_id);
CREATE INDEX payment_commission ON payment(commission_id);
CREATE INDEX promise_commission ON promise(commission_id);
CREATE INDEX piece_lot ON piece(lot_id);
CREATE INDEX piece_parent ON piece(parent_id);
CREATE INDEX piece_billet ON piece(billet_id);
CREATE INDEX reservation_piece ON reservation(piece_id);
CREATE INDEX billet_part_piece ON billet_part(piece_id);
CREATE INDEX billet_part_billet ON billet_part(billet_id);
CREATE INDEX consumable_use_lot ON consumable_use(lot_id);
CREATE INDEX blade_item ON blade(item_id);
CREATE INDEX blade_piece ON blade(piece_id);
CREATE INDEX log_entry_blade ON log_entry(blade_id);
CREATE INDEX hardness_blade ON hardness_reading(blade_id);
CREATE INDEX finding_blade ON finding(blade_id);
CREATE INDEX firing_kiln ON firing(kiln_id);
CREATE INDEX firing_blade_step ON firing_blade(route_step_id);
CREATE INDEX firing_blade_blade ON firing_blade(blade_id);
CREATE INDEX kiln_record_firing ON kiln_record(firing_id);
CREATE INDEX certificate_blade ON certificate(blade_id);
CREATE INDEX history_row ON history(subject, row);
COMMIT;
