// SPDX-License-Identifier: MIT
#pragma once

#include "db/row.h"
#include "db/shop_file.h"
#include "gui/desk/sight.h"
#include "tests/kiln_row.h"

namespace tangmark::test {

/// A shop of one bar, one commission, two blades and two kilns, written row by row, so that a test
/// spells out only the fact it is about.
struct SmallShop {
  db::ShopFile shop = db::ShopFile::in_memory(now());
  commission::ShopSettings settings;
  std::int64_t customer, commission, item, lot, bar, blank, blade, kiln;

  static Instant now() {
    return date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(10);
  }
  desk::Sight sight() const { return {shop, settings, now()}; }

  SmallShop() {
    take_order();
    buy_steel();
    begin_blade();
    kiln = test::insert_kiln_row(shop, "Long kiln");
  }

  void take_order() {
    using db::Row;
    customer = Row("customer").set("name", "Ola Example").set("added_at", now()).insert(shop);
    commission = Row("commission")
                     .set("number", 3)
                     .set("customer_id", customer)
                     .set("state", "in work")
                     .set("opened_at", now())
                     .set("currency", "EUR")
                     .insert(shop);
    item = Row("item")
               .set("commission_id", commission)
               .set("position", 1)
               .set("title", "Hunter")
               .set("construction", "monosteel")
               .set("blade_length_nm", Length::millimetres(110))
               .set("currency", "EUR")
               .insert(shop);
  }

  void buy_steel() {
    using db::Row;
    lot = Row("lot")
              .set("number", 17)
              .set("kind", "steel")
              .set("name", "1084 flat")
              .set("grade", "1084")
              .set("received_at", now())
              .set("price_minor", 6400)
              .set("currency", "EUR")
              .insert(shop);
    bar = Row("piece")
              .set("tag", "17-1")
              .set("lot_id", lot)
              .set("length_nm", Length::millimetres(700))
              .set("mass_ug", Mass::grams(800))
              .set("mark", "carries the mark")
              .set("state", "on hand")
              .set("made_at", now())
              .insert(shop);
    blank = Row("piece")
                .set("tag", "17-1A")
                .set("lot_id", lot)
                .set("parent_id", bar)
                .set("length_nm", Length::millimetres(250))
                .set("mass_ug", Mass::grams(280))
                .set("mark", "tagged")
                .set("state", "blank")
                .set("made_at", now())
                .insert(shop);
  }

  void begin_blade() {
    using db::Row;
    blade = Row("blade")
                .set("number", 61)
                .set("item_id", item)
                .set("piece_id", blank)
                .set("title", "Hunter")
                .set("construction", "monosteel")
                .set("grade", "1084")
                .set("length_nm", Length::millimetres(110))
                .set("started_at", now())
                .insert(shop);
  }

  std::int64_t step(int position, const char* operation, std::optional<Temperature> at = {}) {
    db::Row row("route_step");
    row.set("blade_id", blade)
        .set("position", position)
        .set("operation", operation)
        .set("hands_on_s", 600)
        .set("attended_s", 0)
        .set("unattended_s", 0)
        .set("temperature_k1800", at);
    if (at) row.set("soak_s", 600);
    return row.insert(shop);
  }
  std::int64_t logged(const char* operation, Instant at) {
    return db::Row("log_entry")
        .set("blade_id", blade)
        .set("operation", operation)
        .set("started_at", at)
        .set("ended_at", at)
        .set("entered_at", at)
        .set("how_timed", "live")
        .insert(shop);
  }
  std::int64_t firing(int number, Instant start) {
    return db::Row("firing")
        .set("number", number)
        .set("kiln_id", kiln)
        .set("kind", "soak")
        .set("set_k1800", Temperature::celsius(200))
        .set("soak_s", 7200)
        .set("starts_at", start)
        .set("ends_at", start + std::chrono::minutes(130))
        .set("heat_from", start - std::chrono::minutes(12))
        .set("state", "booked")
        .set("energy_j", 0)
        .insert(shop);
  }
};

}  // namespace tangmark::test
