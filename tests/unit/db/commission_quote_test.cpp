// SPDX-License-Identifier: MIT
#include "db/history.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/quote_inputs.h"
#include "db/store/quote_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;
using commission::QuoteAnswer;
using commission::QuoteSide;

namespace {

// A commission for one chef's knife, with its steel on the rack.
std::string asked_for_a_chef(Maker& maker) {
  maker.lot();
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", maker.model()}});
  return commission;
}

commission::KeptQuote newest(Maker& maker) {
  return *db::latest_quote(maker.shop, db::find_commission(maker.shop, 1)->id);
}

Money sum_of(const commission::Quote& quote, QuoteSide side) {
  Money sum(0, Currency());
  for (const auto& line : quote.lines)
    if (line.side == side) sum += line.amount;
  return sum;
}

}  // namespace

TEST_CASE("a quote's cost lines sum to its cost and its price lines to its price") {
  Maker maker;
  const auto commission = asked_for_a_chef(maker);
  CHECK(maker.did("make_quote", {{"commission", commission}}) == "1/1");
  const auto quote = newest(maker);
  CHECK(sum_of(quote, QuoteSide::cost) == quote.cost);
  CHECK(sum_of(quote, QuoteSide::price) == quote.price);
  CHECK(quote.hands_on == std::chrono::hours(6));
  CHECK(quote.price > quote.cost);
  CHECK(quote.price.minor() % 500 == 0);  // the shop's price step of 5.00
  CHECK(quote.deposit.minor() * 10 == quote.total.minor() * 4);
}

TEST_CASE("a quote agrees with a cost worked out by hand") {
  Maker maker;
  maker.set("hourly_rate", "40.00");
  maker.set("overhead_per_hour", "10.00");
  maker.set("packing", "8.00");
  const auto commission = asked_for_a_chef(maker);
  maker.did("make_quote", {{"commission", commission}, {"markup", "0 %"}});
  const auto quote = newest(maker);
  // Bar: 1000 mm at 31.40 holds two blanks (2 x 390 + 1 kerf of 2 = 782 mm); 218 mm stays on the
  // rack, so a blank pays 390 mm and half a kerf or a whole one: 12.25 to 12.31. Grind: 2 h x 50 =
  // 100, half a belt 4; harden 0.5 h x 50 = 25; handle 3.5 h x 50 = 175, block 25. Lost at 5 %:
  // what is spent up to the quench, (12.28 + 104 + 25) / 0.95 - itself = 7.44. Sum: 12.28 + 104 +
  // 25 + 175 + 25 + 7.44 + packing 8 = 356.72.
  CHECK(quote.cost.minor() == Approx(356'72).margin(8));
}

TEST_CASE("a quote is worked out without being stored") {
  Maker maker;
  const auto number = asked_for_a_chef(maker);
  const std::string before = content_of(maker.shop);
  const auto draft =
      db::draft_quote(maker.shop, *db::find_commission(maker.shop, 1), {}, maker.now);
  REQUIRE(draft);
  CHECK(content_of(maker.shop) == before);
  maker.did("make_quote", {{"commission", number}});
  CHECK(newest(maker).total == draft->quote.total);
}

TEST_CASE("prices go by hand, by margin, by mark-up or by the list") {
  Maker maker;
  const auto commission = asked_for_a_chef(maker);
  maker.did("make_quote", {{"commission", commission}, {"price", "444.00"}});
  CHECK(newest(maker).price == Money(444'00, Currency()));
  maker.did("make_quote", {{"commission", commission}, {"by_list", "yes"}});
  CHECK(newest(maker).price == Money(420'00, Currency()));
  const auto cheap = maker.tries("make_quote", {{"commission", commission}, {"price", "50.00"}});
  CHECK(warns(cheap, "less than your own rate"));
  check_refused(maker, "make_quote",
                {{"commission", commission}, {"price", "1.00"}, {"margin", "20 %"}}, "price");
  check_refused(maker, "make_quote", {{"commission", commission}, {"margin", "100 %"}}, "margin");
  check_refused(maker, "make_quote", {{"commission", commission}, {"price", "10 USD"}}, "price");
}

TEST_CASE("a commission with nothing to quote is refused") {
  Maker maker;
  const auto commission = maker.enquiry();
  check_refused(maker, "make_quote", {{"commission", commission}}, "commission");
  maker.did("add_item",
            {{"commission", commission}, {"title", "mystery"}, {"blade_length", "100 mm"}});
  check_refused(maker, "make_quote", {{"commission", commission}}, "commission");
}

TEST_CASE("steel that is not on record is said and not guessed") {
  Maker maker;
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", maker.model()}});
  const auto result = maker.tries("make_quote", {{"commission", commission}});
  CHECK(warns(result, "no lot of 80CrV2 is on record"));
}

TEST_CASE("a quote counts the hours the maker accepted, and tells what the record proposes") {
  Maker maker;
  const auto commission = asked_for_a_chef(maker);
  for (int n = 0; n < 3; ++n) {
    db::Row blade("blade");
    blade.set("number", 11 + n)
        .set("model_id", 1)
        .set("title", "chef")
        .set("construction", "monosteel");
    blade.set("length_nm", 240'000'000).set("started_at", maker.now).set("finished_at", maker.now);
    const auto id = blade.insert(maker.shop);
    db::Row entry("log_entry");
    entry.set("blade_id", id).set("operation", "rough grind").set("started_at", maker.now);
    entry.set("entered_at", maker.now).set("how_timed", "live").set("hands_on_s", 4 * 3600);
    entry.insert(maker.shop);
  }
  const auto result = maker.tries("make_quote", {{"commission", commission}});
  CHECK(warns(result, "the record would change hands-on of rough grind: 2.00 h counted, 3.00"));
  CHECK(newest(maker).hands_on == std::chrono::hours(6));
  // Guess 2 h and three actuals of 4 h count alike: 3 h, one more, once it is taken.
  maker.did("accept_estimate",
            {{"model", "chef 240"}, {"what", "hands-on"}, {"of", "rough grind"}});
  maker.did("make_quote", {{"commission", commission}});
  CHECK(newest(maker).hands_on == std::chrono::hours(7));
}

TEST_CASE("a firing is shared by slot and its energy is in the quote") {
  Maker maker;
  db::Row kiln("kiln");
  kiln.set("name", "long kiln")
      .set("kind", "kiln")
      .set("slots", 6)
      .set("usable_length_nm", 500'000'000);
  kiln.set("low_k1800", Temperature::celsius(400)).set("high_k1800", Temperature::celsius(1200));
  kiln.set("heat_k1800_per_h", 1000 * 1800)
      .set("tau_s", 10'000)
      .set("heat_w", 3000)
      .set("hold_mw_per_c", 1000);
  kiln.set("load_s", 600).set("unload_s", 600).set("currency", "EUR").insert(maker.shop);
  maker.did("make_quote", {{"commission", asked_for_a_chef(maker)}});
  bool energy = false;
  for (const auto& line : newest(maker).lines) energy = energy || line.kind == "energy";
  CHECK(energy);
}

TEST_CASE("sending, accepting and superseding quotes") {
  Maker maker;
  const auto commission = asked_for_a_chef(maker);
  check_refused(maker, "send_quote", {{"commission", commission}}, "commission");
  maker.did("make_quote", {{"commission", commission}});
  maker.did("send_quote", {{"commission", commission}});
  check_refused(maker, "send_quote", {{"commission", commission}}, "version");
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  check_refused(maker, "accept_quote", {{"commission", commission}, {"version", "7"}}, "version");
  maker.did("accept_quote", {{"commission", commission}, {"version", "1"}});
  const auto kept = db::find_commission(maker.shop, 1);
  CHECK(kept->state == commission::CommissionState::accepted);
  CHECK(kept->refund_rule);
  const auto quotes = db::quotes_of(maker.shop, kept->id);
  REQUIRE(quotes.size() == 2);
  CHECK(quotes[0].answer == QuoteAnswer::superseded);
  CHECK(quotes[1].answer == QuoteAnswer::accepted);
  check_refused(maker, "accept_quote", {{"commission", commission}, {"version", "1"}}, "version");
  check_refused(maker, "decline_quote", {{"commission", commission}}, "commission");
  CHECK(db::check_history(maker.shop).empty());
}

TEST_CASE("a quote past its day is accepted with a word about it") {
  Maker maker;
  const auto commission = asked_for_a_chef(maker);
  maker.did("make_quote", {{"commission", commission}, {"valid_days", "10"}});
  maker.now += std::chrono::hours(24 * 11);
  CHECK(warns(maker.tries("accept_quote", {{"commission", commission}}), "was good until"));
}
