// SPDX-License-Identifier: MIT
#include "db/actions/invoice_body.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/money_store.h"
#include "db/store/promise_reader.h"
#include "db/store/promise_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// An accepted commission of 500.00 with a deposit of 200.00 due.
std::string accepted_at_500(Maker& maker) {
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", maker.model()}});
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  maker.did("accept_quote", {{"commission", commission}});
  return commission;
}

commission::Account standing(Maker& maker) {
  return db::account(maker.shop, *db::find_commission(maker.shop, 1));
}
Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

// A finished blade for the only item.
void finish_a_blade(Maker& maker) {
  db::Row blade("blade");
  blade.set("number", 11).set("item_id", 1).set("title", "chef").set("construction", "monosteel");
  blade.set("length_nm", 240'000'000)
      .set("started_at", maker.now)
      .set("finished_at", maker.now)
      .insert(maker.shop);
}

}  // namespace

TEST_CASE("a deposit is what the quote asks when no amount is given") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  CHECK(db::deposits_awaited(maker.shop).size() == 1);
  maker.did("take_deposit", {{"commission", commission}});
  CHECK(standing(maker).received == eur(200'00));
  CHECK(db::deposits_awaited(maker.shop).empty());
  CHECK(db::money_held(db::commissions_with_money(maker.shop)) == std::vector{eur(200'00)});
  check_refused(maker, "take_deposit", {{"commission", commission}}, "amount");
  check_refused(maker, "take_deposit", {{"commission", commission}, {"amount", "20 USD"}},
                "amount");
  check_refused(maker, "take_deposit", {{"commission", commission}, {"amount", "-5.00"}}, "amount");
  check_refused(maker, "take_deposit", {{"commission", "8"}}, "commission");
}

TEST_CASE("more than agreed is taken with a word about it and given back") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  const auto result =
      maker.tries("take_balance", {{"commission", commission}, {"amount", "520.00"}});
  CHECK(warns(result, "more than agreed"));
  check_refused(maker, "refund", {{"commission", commission}, {"amount", "521.00"}, {"why", "x"}},
                "amount");
  check_refused(maker, "refund", {{"commission", commission}, {"amount", "20.00"}}, "why");
  maker.did("refund", {{"commission", commission}, {"amount", "20.00"}, {"why", "paid too much"}});
  CHECK(standing(maker).owed().is_zero());
}

TEST_CASE("a payment noted wrongly is reversed by a row, never edited") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  const auto wrong = maker.did("take_deposit", {{"commission", commission}, {"amount", "201.00"}});
  maker.did("correct_payment",
            {{"payment", wrong}, {"amount", "210.00"}, {"why", "typed 201 for 210"}});
  CHECK(standing(maker).received == eur(210'00));
  CHECK(db::payments_of(maker.shop, db::find_commission(maker.shop, 1)->id).size() == 3);
  check_refused(maker, "correct_payment",
                {{"payment", wrong}, {"amount", "211.00"}, {"why", "again"}}, "payment");
  check_refused(maker, "correct_payment", {{"payment", "2"}, {"amount", "1.00"}, {"why", "x"}},
                "payment");
  check_refused(maker, "correct_payment", {{"payment", "9"}, {"why", "x"}}, "payment");
}

TEST_CASE("an issued invoice is corrected by another that names it") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  check_refused(maker, "issue_invoice", {{"commission", commission}, {"kind", "deposit receipt"}},
                "commission");
  maker.did("take_deposit", {{"commission", commission}});
  CHECK(maker.did("issue_invoice", {{"commission", commission}, {"kind", "deposit receipt"}}) ==
        "1");
  check_refused(maker, "issue_invoice", {{"commission", commission}, {"kind", "deposit receipt"}},
                "corrects");
  CHECK(maker.did("issue_invoice", {{"commission", commission}}) == "2");
  check_refused(maker, "issue_invoice", {{"commission", commission}}, "corrects");
  check_refused(maker, "issue_invoice",
                {{"commission", commission}, {"corrects", "1"}, {"why", "x"}}, "corrects");
  check_refused(maker, "issue_invoice", {{"commission", commission}, {"corrects", "2"}}, "why");
  const auto changed =
      maker.tries("change_item", {{"item", "1"}, {"words", "with a sheath"}, {"more", "60.00"}});
  CHECK(warns(changed, "Invoice 2 is already out"));
  CHECK(maker.did("issue_invoice",
                  {{"commission", commission}, {"corrects", "2"}, {"why", "the sheath"}}) == "3");
  const auto invoice = db::find_invoice(maker.shop, 3);
  REQUIRE(invoice);
  CHECK(invoice->total == eur(560'00));
  const auto body = db::read_invoice_body(*invoice);
  CHECK(body.owed == eur(360'00));
  CHECK(body.corrects == 2);
  CHECK(body.lines.size() == 2);
  CHECK(db::read_invoice_body(*db::find_invoice(maker.shop, 2)).total == eur(500'00));
}

TEST_CASE("a change costs more or less, never both") {
  Maker maker;
  accepted_at_500(maker);
  maker.did("change_item",
            {{"item", "1"}, {"words", "no sheath"}, {"less", "40.00"}, {"blade_length", "260 mm"}});
  CHECK(standing(maker).total() == eur(460'00));
  check_refused(maker, "change_item",
                {{"item", "1"}, {"words", "x"}, {"more", "1.00"}, {"less", "1.00"}}, "less");
  check_refused(maker, "change_item", {{"item", "1"}}, "words");
  check_refused(maker, "change_item", {{"item", "7"}, {"words", "x"}}, "item");
}

TEST_CASE("nothing is delivered unfinished, unpaid or empty") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  check_refused(maker, "deliver", {{"commission", commission}}, "commission");  // no blade, unpaid
  finish_a_blade(maker);
  check_refused(maker, "deliver", {{"commission", commission}}, "commission");  // unpaid
  maker.did("take_balance", {{"commission", commission}});
  const auto result = maker.tries("deliver", {{"commission", commission}});
  CHECK(warns(result, "knife law"));
  CHECK(db::find_commission(maker.shop, 1)->state == commission::CommissionState::delivered);
  CHECK(db::money_held(db::commissions_with_money(maker.shop)).empty());
  check_refused(maker, "deliver", {{"commission", commission}}, "commission");
  maker.did("note_aftercare", {{"blade", "11"}, {"complaint", "a chip"}, {"hands_on", "40 min"}});
  check_refused(maker, "note_aftercare", {{"blade", "99"}, {"complaint", "a chip"}}, "blade");
}

TEST_CASE("a knife delivered on trust stands among the balances owed, with its age") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  finish_a_blade(maker);
  maker.did("make_ready", {{"commission", commission}});
  maker.did("deliver",
            {{"commission", commission}, {"override", "an old friend"}, {"law_checked", "yes"}});
  maker.now += std::chrono::hours(24 * 20);
  const auto owed = db::owed_balances(maker.shop, Zone(), maker.now);
  REQUIRE(owed.size() == 1);
  CHECK(owed[0].owed == eur(500'00));
  CHECK(owed[0].days == 20);
}

TEST_CASE("what is left of a customer's material asks at delivery") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  maker.did("receive_lot", {{"name", "her spring"}, {"owner", "1"}, {"mass", "1 kg"}});
  finish_a_blade(maker);
  maker.did("take_balance", {{"commission", commission}});
  check_refused(maker, "deliver", {{"commission", commission}}, "commission");
  maker.did("return_material", {{"lot", "1"}, {"note", "all of it"}});
  maker.did("deliver", {{"commission", commission}});
}

TEST_CASE("promises are kept, never overwritten, and not moved in silence") {
  Maker maker;
  const auto commission = accepted_at_500(maker);
  maker.did("promise_date", {{"commission", commission}, {"day", "2027-03-01"}});
  check_refused(maker, "promise_date", {{"commission", commission}, {"day", "2027-04-01"}}, "told");
  check_refused(maker, "promise_date", {{"commission", commission}, {"day", "2020-04-01"}}, "day");
  check_refused(maker, "tell_delay",
                {{"commission", commission}, {"new_day", "2027-02-01"}, {"words", "x"}}, "new_day");
  const auto told = maker.tries(
      "tell_delay",
      {{"commission", commission}, {"new_day", "2027-04-01"}, {"words", "the billet failed"}});
  CHECK(warns(told, "Silence is not consent"));
  const auto promises = db::promises_of(maker.shop, db::find_commission(maker.shop, 1)->id);
  REQUIRE(promises.size() == 2);
  CHECK(promises[0].day == CalendarDate(date::year{2027} / 3 / 1));
  const auto refused =
      maker.tries("record_consent", {{"commission", commission}, {"consent", "refused"}});
  CHECK(warns(refused, "did not agree"));
  check_refused(maker, "record_consent", {{"commission", commission}, {"consent", "given"}},
                "commission");
}

TEST_CASE("a day earlier than the forecast asks") {
  Maker maker;
  for (const char* weekday : {"monday", "tuesday", "wednesday", "thursday", "friday"})
    maker.did("add_bench_hours", {{"weekday", weekday}, {"from", "9:00"}, {"to", "10:00"}});
  const auto commission = accepted_at_500(maker);
  const auto forecast =
      db::forecast_day(maker.shop, *db::find_commission(maker.shop, 1), maker.now);
  REQUIRE(forecast);
  CHECK(*forecast >= CalendarDate(date::year{2026} / 12 / 1));  // six hours at an hour a day
  check_refused(maker, "promise_date", {{"commission", commission}, {"day", "2026-11-26"}}, "day");
  maker.did("promise_date", {{"commission", commission}, {"day", to_stored(*forecast)}});
}

TEST_CASE("a cancelled commission frees what was reserved and names the agreed rule") {
  Maker maker;
  maker.lot();
  const auto order = maker.order();
  maker.did("reserve", {{"item", order.item}, {"piece", "1-1"}});
  check_refused(maker, "cancel_commission", {{"commission", order.commission}}, "why");
  const auto result =
      maker.tries("cancel_commission", {{"commission", order.commission}, {"why", "moved abroad"}});
  CHECK(warns(result, "Agreed rule"));
  maker.did("reserve", {{"item", maker.order().item}, {"piece", "1-1"}});
  check_refused(maker, "cancel_commission", {{"commission", order.commission}, {"why", "again"}},
                "commission");
}

TEST_CASE("a stock knife goes into a buyer's commission once") {
  Maker maker;
  const auto knife = maker.did("add_item", {{"model", maker.model()}});
  const auto commission = maker.enquiry();
  maker.did("sell_stock_knife", {{"item", knife}, {"commission", commission}});
  check_refused(maker, "sell_stock_knife", {{"item", knife}, {"commission", commission}}, "item");
}
