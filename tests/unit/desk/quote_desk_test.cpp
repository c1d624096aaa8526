// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include <algorithm>

#include "gui/desk/quote_desk.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;

namespace {

// A hunter of two operations of ten minutes each, at 36.00 an hour and nothing else.
struct QuotedShop : test::SmallShop {
  QuotedShop() {
    settings.hourly_rate = Money(36'00, Currency());
    settings.overhead_per_hour = Money(0, Currency());
    settings.packing = Money(4'00, Currency());
    settings.price_step = Money(1, Currency());
    for (const auto& [name, value] : {std::pair{"hourly_rate", "36.00"},
                                      {"overhead_per_hour", "0.00"},
                                      {"packing", "4.00"},
                                      {"price_step", "0.01"}})
      db::Row("setting").set("name", name).set("value", value).insert(shop);
    step(1, "rough grind");
    step(2, "harden");
  }

  db::QuoteInputs inputs() const {
    auto read = read_quote_inputs(sight(), "3");
    if (!read) FAIL(read.problem().sentence);
    return *read;
  }
};

const QuoteRow& row_named(const QuoteLive& live, const std::string& text) {
  const auto found = std::find_if(live.rows.begin(), live.rows.end(), [&](const QuoteRow& row) {
    return !row.head && row.text == text;
  });
  REQUIRE(found != live.rows.end());
  return *found;
}

QuoteTyped at_price(const std::string& price) {
  QuoteTyped typed;
  typed.price = price;
  return typed;
}

}  // namespace

TEST_CASE("a figure changed in its place moves margin, earnings and floor at once") {
  const QuotedShop shop;
  const auto inputs = shop.inputs();
  const auto before = answer_quote(shop.sight(), inputs, at_price("50.00"));
  REQUIRE(before);
  // Two times 6.00 of hours and 4.00 of packing: 34.00 are left, and the hours earn 46.00 / (1/3
  // h).
  CHECK(before->answer.margin == "34.00");
  CHECK(before->answer.floor == "16.00");
  CHECK(before->answer.earned_per_hour == "138.00");
  const auto typed =
      with_figure(at_price("50.00"), row_named(*before, "rough grind"), QuoteCell::how_much, "1 h");
  const auto after = answer_quote(shop.sight(), inputs, typed);
  REQUIRE(after);
  CHECK(row_named(*after, "rough grind").amount == "36.00");
  CHECK(row_named(*after, "rough grind").by_hand);
  CHECK(after->answer.margin == "4.00");
  CHECK(after->answer.floor == "46.00");
  CHECK(after->price == "50.00");
}

TEST_CASE("a figure taken out again is what the models say") {
  const QuotedShop shop;
  const auto inputs = shop.inputs();
  const auto plain = answer_quote(shop.sight(), inputs, at_price("50.00"));
  REQUIRE(plain);
  const QuoteRow row = row_named(*plain, "rough grind");
  QuoteTyped typed = with_figure(at_price("50.00"), row, QuoteCell::how_much, "1 h");
  typed = with_figure(typed, row, QuoteCell::each, "40.00");
  REQUIRE(typed.changes.size() == 2);
  CHECK(typed.changes[1].what == "Hourly rate");
  typed = with_figure(typed, row, QuoteCell::how_much, "");
  typed = with_figure(typed, row, QuoteCell::each, "");
  CHECK(typed.changes.empty());
  CHECK(answer_quote(shop.sight(), inputs, typed)->answer.margin == plain->answer.margin);
}

TEST_CASE("what comes through a hardening may be changed, and the loss follows") {
  const QuotedShop shop;
  const auto inputs = shop.inputs();
  const auto plain = answer_quote(shop.sight(), inputs, at_price("50.00"));
  REQUIRE(plain);
  const auto typed =
      with_figure(at_price("50.00"), row_named(*plain, "harden"), QuoteCell::how_much, "75");
  // Both steps are paid before the loss: 12.00 / 0.75 - 12.00 = 4.00.
  const auto lossy = answer_quote(shop.sight(), inputs, typed);
  if (!lossy) FAIL(lossy.problem().sentence);
  const auto survival = std::find_if(lossy->rows.begin(), lossy->rows.end(),
                                     [](const QuoteRow& r) { return r.name == "harden survives"; });
  REQUIRE(survival != lossy->rows.end());
}

TEST_CASE("a margin, a mark-up or the hand makes the price") {
  const QuotedShop shop;
  const auto inputs = shop.inputs();
  QuoteTyped typed;
  typed.price_by = PriceBy::margin;
  typed.share = "20";
  CHECK(answer_quote(shop.sight(), inputs, typed)->price == "20.00");  // 16.00 / 0.8
  typed.price_by = PriceBy::markup;
  typed.share = "50 %";
  CHECK(answer_quote(shop.sight(), inputs, typed)->price == "24.00");
  typed.price_by = PriceBy::list;
  CHECK(answer_quote(shop.sight(), inputs, typed).problem().field == "price");
  CHECK(answer_quote(shop.sight(), inputs, at_price("dear")).problem().field == "price");
}

TEST_CASE("movers of a fixed price are told from the floor as it stands") {
  const QuotedShop shop;
  const auto live = answer_quote(shop.sight(), shop.inputs(), at_price("500.00"));
  REQUIRE(live);
  REQUIRE_FALSE(live->movers.empty());
  for (const Mover& mover : live->movers) {
    CHECK(mover.low <= 0);
    CHECK(mover.high >= 0);
    CHECK(mover.high < 10);  // a tenth of hours worth 6.00, and not the 484.00 above the floor
  }
}

TEST_CASE("what is typed on the desk is what the quote is made from") {
  QuotedShop shop;
  QuoteTyped typed = at_price("61.00");
  typed.changes = {{"rough grind", "1 h"}, {"+ Mosaic pin", "2 at 3.00"}};
  const Typed fields = make_quote_fields("3", typed);
  CHECK(fields.at("price") == "61.00");
  CHECK(fields.at("lines") == "rough grind = 1 h\n+ Mosaic pin = 2 at 3.00\n");
  typed.price_by = PriceBy::margin;
  typed.share = "25";
  CHECK(make_quote_fields("3", typed).at("margin") == "25 %");
  CHECK(make_quote_fields("3", typed).count("price") == 0);
}

TEST_CASE("versions stand side by side with what is on the desk") {
  QuotedShop shop;
  const PlaceView view = quote_versions_view(shop.sight(), "3", at_price("50.00"));
  const std::string text = as_text(view.sheet);
  const auto& columns = view.sheet.sections.front().table.columns;
  CHECK(std::any_of(columns.begin(), columns.end(),
                    [](const Column& column) { return column.title == "on the desk"; }));
  CHECK_THAT(text, Catch::Contains("Earned per hour"));
  REQUIRE_FALSE(view.next.offers.empty());
  CHECK(std::get<PlaceWork>(view.next.offers.front().deed).name == "quote again");
}
