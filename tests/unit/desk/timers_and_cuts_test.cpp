// SPDX-License-Identifier: MIT
// What the window shows of clocks that run and of cuts to be made.
#include <catch2/catch.hpp>

#include "gui/desk/cut_search.h"
#include "gui/desk/questions_desk.h"
#include "gui/desk/timer_offers.h"
#include "db/store/questions.h"
#include "db/store/timer_store.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;
using Catch::Contains;

namespace {

blade::KeptTimer timer_since(test::SmallShop& shop, Instant start) {
  blade::Timer timer;
  timer.number = 4;
  timer.operation = "rough grind";
  timer.blades = {blade::BladeId{shop.blade}};
  timer.entered_at = start;
  timer.stretches.push_back({start, std::nullopt});
  db::insert_timer(shop.shop, timer);
  return *db::timer_of_blade(shop.shop, blade::BladeId{shop.blade});
}

// An accepted hunter that waits for a blank of 250 mm from the bar of 700 mm of the shop.
void order_a_blank(test::SmallShop& shop) {
  const auto model = db::Row("model")
                         .set("name", "hunter")
                         .set("construction", "monosteel")
                         .set("grade", "1084")
                         .set("blade_length_nm", Length::millimetres(110))
                         .set("blank_length_nm", Length::millimetres(250))
                         .set("blank_width_nm", Length::millimetres(30))
                         .set("blank_thickness_nm", Length::millimetres(4))
                         .set("yield_ppm", 1'000'000)
                         .set("currency", "EUR")
                         .insert(shop.shop);
  db::Row("lot")
      .set("thickness_nm", Length::millimetres(4))
      .set("width_nm", Length::millimetres(30))
      .update(shop.shop, shop.lot);
  const auto commission = db::Row("commission")
                              .set("number", 8)
                              .set("customer_id", shop.customer)
                              .set("state", "accepted")
                              .set("opened_at", shop.now())
                              .set("currency", "EUR")
                              .insert(shop.shop);
  db::Row("item")
      .set("commission_id", commission)
      .set("position", 1)
      .set("title", "Hunter")
      .set("model_id", model)
      .set("construction", "monosteel")
      .set("grade", "1084")
      .set("blade_length_nm", Length::millimetres(110))
      .set("currency", "EUR")
      .insert(shop.shop);
}

}  // namespace

TEST_CASE("a clock that runs says what it is on, and stops or pauses by one press") {
  test::SmallShop shop;
  const auto timer = timer_since(shop, shop.now() - std::chrono::minutes(47));
  CHECK_THAT(timer_words(shop.sight(), timer), Contains("rough grind 61, running, 47 min so far"));
  const auto offers = timer_offers(shop.sight(), timer);
  REQUIRE(offers.size() == 2);
  CHECK(offers[0].label == "Stop and log it");
  CHECK(std::get<DoNow>(offers[0].deed).action == "stop_timer");
  CHECK(std::get<DoNow>(offers[1].deed).action == "pause_timer");
}

TEST_CASE("a clock that was forgotten proposes the time it should have stopped") {
  test::SmallShop shop;
  const auto timer = timer_since(shop, shop.now() - std::chrono::hours(30));
  CHECK_THAT(timer_words(shop.sight(), timer), Contains("It seems forgotten"));
  const auto offers = timer_offers(shop.sight(), timer);
  REQUIRE(offers.size() == 2);
  CHECK_THAT(offers[0].label, Contains("Stop it as of"));
  CHECK(std::get<DoNow>(offers[0].deed).fields.count("until") == 1);
  CHECK(std::get<OpenForm>(offers[1].deed).action == "stop_timer");
  const auto sheet = answer_sheet(shop.sight(), "31", {});
  REQUIRE(sheet);
  REQUIRE(sheet->sections.front().offers.size() == 1);
  CHECK_THAT(sheet->sections.front().offers.front().label, Contains("Stop timer 4 as of"));
}

TEST_CASE("the cuts of a lot are drawn to scale, and taken or printed by one press") {
  test::SmallShop shop;
  order_a_blank(shop);
  const auto proposal = cut_proposal(shop.sight(), "17", std::nullopt);
  REQUIRE(proposal);
  REQUIRE(proposal->drawing.bars.size() == 1);
  const DrawnBar& bar = proposal->drawing.bars.front();
  CHECK(bar.tag == "17-1");
  CHECK(bar.length_mm == 700);
  REQUIRE(bar.blanks.size() == 1);
  CHECK(bar.blanks.front().from_mm == 0);
  CHECK(bar.blanks.front().length_mm == 250);
  CHECK(bar.left_mm == 448);  // 700 less the blank and one kerf of 2
  CHECK(bar.kept);
  REQUIRE(proposal->section.offers.size() == 2);
  CHECK(std::get<DoNow>(proposal->section.offers[0].deed).action == "take_cuts");
  CHECK(std::get<ShowDocument>(proposal->section.offers[1].deed).kind == "cutting-sheet");
  CHECK_THAT(proposal->section.paragraphs.front(), Contains("No better plan exists."));
}

TEST_CASE("cuts searched for longer are shown while they are of the lot as it stands") {
  test::SmallShop shop;
  order_a_blank(shop);
  auto searched = searched_cuts(shop.sight(), "17", [] { return false; });
  REQUIRE(searched);
  searched->plan.value_used = 123'00;
  CHECK_THAT(cut_proposal(shop.sight(), "17", *searched)->section.paragraphs.front(),
             Contains("123.00"));
  searched->of.kerf_mm += 1;  // of another case: not shown
  CHECK_THAT(cut_proposal(shop.sight(), "17", *searched)->section.paragraphs.front(),
             !Contains("123.00"));
}

TEST_CASE("answers in the window speak of no terminal") {
  test::SmallShop shop;
  order_a_blank(shop);
  timer_since(shop, shop.now() - std::chrono::hours(30));
  for (const db::Question& question : db::all_questions()) {
    const auto sheet = answer_sheet(shop.sight(), std::to_string(question.number), {});
    std::string text;
    if (sheet)
      text = as_text(*sheet);
    else
      for (const Problem& problem : sheet.problems()) text += problem.sentence + problem.remedy;
    INFO(question.number << ": " << text);
    CHECK(text.find("tangmark ") == std::string::npos);
    CHECK(text.find("FILE") == std::string::npos);
    for (const db::Action* action : db::all_actions())
      if (action->name.find('_') != std::string_view::npos)
        CHECK(text.find(action->name) == std::string::npos);
  }
}
