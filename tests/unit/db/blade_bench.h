// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "db/row.h"
#include "db/store/blade_state.h"
#include "db/store/blade_store.h"
#include "tests/shop_fixture.h"

namespace tangmark::test {

/// A shop with blades on its bench.
struct Bench : ShopOnTheBench {
  /// A blade with a route given as a list; its number.
  std::string a_blade(const std::string& route =
                          "profile,drill,normalize,harden,temper,temper,finish grind,handle") {
    return did(
        "assign_blade",
        {{"title", "petty 150"}, {"length", "150 mm"}, {"grade", "80CrV2"}, {"route", route}});
  }
  void later(int minutes) { now += std::chrono::minutes(minutes); }
  blade::KeptBlade blade(const std::string& number) const {
    return *db::blade_named(shop, number, "blade");
  }
  db::BladeOnRecord record(const std::string& number) const {
    return db::load_record(shop, blade(number));
  }
  /// Quenched in medium oil just now.
  std::string quenched(const std::string& number) {
    return did("log_quench",
               {{"blade", number}, {"medium", "medium oil"}, {"set", "830 C"}, {"hold", "10 min"}});
  }
  std::string tempered(const std::string& number, const std::string& cooled) {
    return did("log_temper",
               {{"blade", number}, {"set", "200 C"}, {"hold", "2 h"}, {"cooled_to_room", cooled}});
  }
  /// Hardened and tempered twice over the next hours.
  void heat_treated(const std::string& number) {
    quenched(number);
    later(150);
    tempered(number, "");
    later(200);
    tempered(number, "yes");
  }
  /// A bar of one grade, on hand; its tag.
  std::string a_bar(const std::string& tag, const std::string& grade) {
    db::Row lot("lot");
    lot.set("number", ++lots)
        .set("kind", "steel")
        .set("name", grade + " flat")
        .set("received_at", now);
    lot.set("grade", grade).set("price_minor", 2400).set("currency", "EUR");
    db::Row piece("piece");
    piece.set("tag", tag)
        .set("lot_id", lot.insert(shop))
        .set("length_nm", Length::millimetres(300));
    piece.set("mass_ug", Mass::micrograms(400'000'000))
        .set("mark", "tagged")
        .set("state", "on hand")
        .set("made_at", now);
    piece.insert(shop);
    return tag;
  }
  std::string state_of_piece(const std::string& tag) const {
    db::Query query(shop, "SELECT state FROM piece WHERE tag = ?");
    query.bind(tag);
    return query.next() ? query.text("state") : "";
  }

 private:
  int lots = 0;
};

/// The refusal's first field and sentence, or "done".
inline std::string refusal(const Outcome<db::ActionResult>& result) {
  return result ? "done" : result.problem().field + ": " + result.problem().sentence;
}

}  // namespace tangmark::test
