// SPDX-License-Identifier: MIT
// Commissions in foreign money, from the quote to the ledger, and papers that correct papers.
#include "db/actions/invoice_body.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/ledger.h"
#include "db/store/money_store.h"
#include "db/store/quote_store.h"
#include "db/store/refund_store.h"
#include "db/store/settings_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

const Currency usd = *Currency::of("USD");

Money eur(std::int64_t minor) {
  return {minor, Currency()};
}

std::string a_chef_abroad(Maker& maker) {
  const auto commission =
      maker.did("new_commission", {{"customer", maker.buyer()}, {"currency", "USD"}});
  maker.did("add_item", {{"commission", commission}, {"model", maker.model()}});
  return commission;
}

commission::KeptCommission named(Maker& maker, const std::string& number) {
  return *db::find_commission(maker.shop, std::stoll(number));
}

std::vector<db::LedgerLine> lines_of(Maker& maker) {
  return db::ledger(maker.shop, 2026, db::load_settings(maker.shop));
}

}  // namespace

TEST_CASE("a quote abroad needs a rate and says which one it was made at") {
  Maker maker;
  const auto commission = a_chef_abroad(maker);
  const auto refused = maker.tries("make_quote", {{"commission", commission}});
  REQUIRE_FALSE(refused);
  CHECK(refused.problem().field == "rate");
  maker.did("note_rate", {{"currency", "USD"}, {"rate", "0.8"}, {"source", "the bank"}});
  maker.did("make_quote", {{"commission", commission}, {"markup", "0 %"}});
  const auto abroad = *db::latest_quote(maker.shop, named(maker, commission).id);
  CHECK(abroad.rate == std::optional<std::string>("1 USD = 0.8 EUR"));
  CHECK(abroad.total.currency() == usd);
  // The same knife at home: its cost in EUR is the cost abroad at the rate, to the cent of a line.
  const auto home = maker.enquiry();
  maker.did("add_item", {{"commission", home}, {"model", "chef 240"}});
  maker.did("make_quote", {{"commission", home}, {"markup", "0 %"}});
  const auto at_home = *db::latest_quote(maker.shop, named(maker, home).id);
  CHECK(abroad.cost.minor() == Approx(static_cast<double>(at_home.cost.minor()) / 0.8).margin(10));
  Money sum(0, usd);
  for (const auto& line : abroad.lines)
    if (line.side == commission::QuoteSide::cost) sum += line.amount;
  CHECK(sum == abroad.cost);
}

TEST_CASE("sums abroad are kept with the rate of their day, and the ledger counts them at it") {
  Maker maker;
  maker.did("note_rate", {{"currency", "USD"}, {"rate", "0.8"}, {"source", "the bank"}});
  const auto commission = a_chef_abroad(maker);
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  maker.did("accept_quote", {{"commission", commission}});
  maker.did("take_deposit", {{"commission", commission}, {"amount", "100.00"}});
  maker.did("issue_invoice", {{"commission", commission}});
  maker.now += std::chrono::hours(24);
  maker.did("note_rate", {{"currency", "USD"}, {"rate", "0.9"}, {"source", "the bank"}});
  maker.did("take_balance", {{"commission", commission}, {"amount", "400.00"}});
  CHECK(db::account(maker.shop, named(maker, commission)).owed().is_zero());
  Money received = eur(0), invoiced = eur(0);
  for (const auto& line : lines_of(maker)) {
    if (line.kind == db::LedgerKind::received) received += *line.in_shop_currency;
    if (line.kind == db::LedgerKind::invoice) invoiced += *line.in_shop_currency;
  }
  CHECK(received == eur(80'00 + 360'00));  // 100 at 0.8 and 400 at 0.9
  CHECK(invoiced == eur(400'00));          // 500 at the 0.8 of its day
  bool at_rates = false;
  for (const auto& total : db::year_totals(lines_of(maker), Currency()))
    if (total.what == "received from buyers, all at the recorded rates") {
      at_rates = true;
      CHECK(total.amount == eur(440'00));
    }
  CHECK(at_rates);
}

TEST_CASE("a rate noted later changes nothing that was kept") {
  Maker maker;
  maker.did("note_rate", {{"currency", "USD"}, {"rate", "0.8"}});
  const auto commission = a_chef_abroad(maker);
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  maker.did("accept_quote", {{"commission", commission}});
  maker.did("take_deposit", {{"commission", commission}, {"amount", "100.00"}});
  const auto before = lines_of(maker);
  maker.did("note_rate", {{"currency", "USD"}, {"rate", "0.7"}});
  const auto after = lines_of(maker);
  REQUIRE(before.size() == after.size());
  for (std::size_t i = 0; i < after.size(); ++i)
    CHECK(after[i].in_shop_currency == before[i].in_shop_currency);
}

TEST_CASE("a credit note takes an invoice back in full, and another may be issued after it") {
  Maker maker;
  maker.model();
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", "chef 240"}});
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  maker.did("accept_quote", {{"commission", commission}});
  CHECK_FALSE(
      maker.tries("issue_invoice",
                  {{"commission", commission}, {"kind", "credit note"}, {"why", "withdrawn"}}));
  const auto first = maker.did("issue_invoice", {{"commission", commission}});
  CHECK_FALSE(maker.tries("issue_invoice", {{"commission", commission}, {"kind", "credit note"}}));
  const auto credit = maker.did(
      "issue_invoice", {{"commission", commission}, {"kind", "credit note"}, {"why", "withdrawn"}});
  const auto paper = *db::find_invoice(maker.shop, std::stoll(credit));
  const auto body = db::read_invoice_body(paper);
  CHECK(body.credit);
  CHECK(body.corrects == std::stoll(first));
  CHECK(paper.total == eur(-500'00));
  CHECK_FALSE(db::standing_invoice(maker.shop, named(maker, commission).id));
  Money asked = eur(0);
  for (const auto& line : lines_of(maker))
    if (line.without_tax) asked += line.amount;
  CHECK(asked.is_zero());
  maker.did("issue_invoice", {{"commission", commission}});
  CHECK(db::standing_invoice(maker.shop, named(maker, commission).id));
}

TEST_CASE("a receipt is corrected by another that names it and says why") {
  Maker maker;
  maker.model();
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", "chef 240"}});
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  maker.did("accept_quote", {{"commission", commission}});
  const auto payment =
      maker.did("take_deposit", {{"commission", commission}, {"amount", "201.00"}});
  const auto receipt =
      maker.did("issue_invoice", {{"commission", commission}, {"kind", "deposit receipt"}});
  maker.did("correct_payment",
            {{"payment", payment}, {"amount", "210.00"}, {"why", "typed wrong"}});
  CHECK_FALSE(maker.tries(
      "issue_invoice",
      {{"commission", commission}, {"kind", "deposit receipt"}, {"corrects", receipt}}));
  const auto second = maker.did("issue_invoice", {{"commission", commission},
                                                  {"kind", "deposit receipt"},
                                                  {"corrects", receipt},
                                                  {"why", "210 came, not 201"}});
  CHECK(db::find_invoice(maker.shop, std::stoll(second))->total == eur(210'00));
  CHECK(db::find_invoice(maker.shop, std::stoll(receipt))->total == eur(201'00));
}

TEST_CASE("the refund terms of the shop are frozen with a commission and do not follow it later") {
  Maker maker;
  maker.model();
  maker.did("usual_refund", {{"terms", "in full"}});
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", "chef 240"}});
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  maker.did("accept_quote", {{"commission", commission}});
  maker.did("usual_refund", {{"terms", "none"}});
  CHECK(*db::refund_terms_of(maker.shop, named(maker, commission).id) ==
        commission::RefundTerms::full);
}
