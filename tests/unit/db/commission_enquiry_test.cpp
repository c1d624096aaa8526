// SPDX-License-Identifier: MIT
#include "db/history.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/customer_store.h"
#include "db/store/item_store.h"
#include "db/store/model_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

TEST_CASE("an enquiry is noted in the buyer's words and is not an order") {
  Maker maker;
  const auto buyer = maker.did("new_customer", {{"name", "Ida Holm"}, {"country", "Norway"}});
  const auto number = maker.did("new_commission", {{"customer", buyer},
                                                   {"buyers_words", "something for pike"},
                                                   {"budget", "400.00"},
                                                   {"wanted_by", "2027-05-12"}});
  CHECK(number == "1");
  const auto commission = db::find_commission(maker.shop, 1);
  REQUIRE(commission);
  CHECK(commission->state == commission::CommissionState::enquiry);
  CHECK(commission->destination == "Norway");
  CHECK(commission->budget == Money(400'00, Currency()));
  check_refused(maker, "take_deposit", {{"commission", number}, {"amount", "100.00"}},
                "commission");
  check_refused(maker, "deliver", {{"commission", number}}, "commission");
}

TEST_CASE("an enquiry that cannot be is refused at its field") {
  Maker maker;
  const auto buyer = maker.buyer();
  check_refused(maker, "new_customer", {}, "name");
  check_refused(maker, "new_customer", {{"name", "Bad \xFF bytes"}}, "name");
  check_refused(maker, "new_commission", {}, "customer");
  check_refused(maker, "new_commission", {{"customer", "77"}}, "customer");
  check_refused(maker, "new_commission", {{"customer", "Nobody"}}, "customer");
  check_refused(maker, "new_commission", {{"customer", buyer}, {"wanted_by", "2026-02-30"}},
                "wanted_by");
  check_refused(maker, "new_commission", {{"customer", buyer}, {"wanted_by", "2020-01-01"}},
                "wanted_by");
  check_refused(maker, "new_commission", {{"customer", buyer}, {"budget", "a lot"}}, "budget");
  check_refused(maker, "new_commission", {{"customer", buyer}, {"budget", "400 USD"}}, "budget");
  check_refused(maker, "new_commission", {{"customer", buyer}, {"currency", "EURO"}}, "currency");
  check_refused(maker, "note_contact", {{"commission", "3"}, {"words", "hello"}}, "commission");
}

TEST_CASE("a buyer is found by name while only one has it") {
  Maker maker;
  maker.buyer("Ida Holm");
  maker.did("new_commission", {{"customer", "ida holm"}});
  const auto second = maker.tries("new_customer", {{"name", "Ida Holm"}});
  CHECK(warns(second, "another customer of this name"));
  check_refused(maker, "new_commission", {{"customer", "Ida Holm"}}, "customer");
}

TEST_CASE("a person is erased and the history chain stays whole") {
  Maker maker;
  const auto buyer =
      maker.did("new_customer", {{"name", "Ida Holm"}, {"contact", "ida@example.org"}});
  const auto commission = maker.did("new_commission", {{"customer", buyer}});
  check_refused(maker, "erase_customer", {{"customer", buyer}}, "customer");
  maker.did("decline_quote", {{"commission", commission}, {"why", "too long a wait"}});
  maker.did("erase_customer", {{"customer", buyer}});
  const auto erased = db::load_customer(maker.shop, commission::CustomerId{1});
  REQUIRE(erased);
  CHECK_FALSE(erased->name);
  CHECK_FALSE(erased->contact);
  CHECK(content_of(maker.shop).find("Ida Holm") == std::string::npos);
  CHECK(db::check_history(maker.shop).empty());
  check_refused(maker, "erase_customer", {{"customer", buyer}}, "customer");
  check_refused(maker, "new_commission", {{"customer", buyer}}, "customer");
}

TEST_CASE("the last word with a buyer is the latest of all that was said") {
  Maker maker;
  const auto number = maker.enquiry();
  maker.now += std::chrono::hours(48);
  maker.did("note_contact",
            {{"commission", number}, {"channel", "telephone"}, {"words", "wants walnut"}});
  const auto commission = db::find_commission(maker.shop, 1);
  CHECK(db::last_contact_day(maker.shop, *commission, Zone()) ==
        CalendarDate(date::year{2026} / 11 / 27));
  CHECK(db::contacts_of(maker.shop, commission->id).size() == 1);
}

TEST_CASE("an item takes from its model what nobody says otherwise") {
  Maker maker;
  const auto commission = maker.enquiry();
  const auto item = maker.did(
      "add_item", {{"commission", commission}, {"model", maker.model()}, {"grade", "52100"}});
  const auto kept = db::load_item(maker.shop, commission::ItemId{std::stoll(item)});
  REQUIRE(kept);
  CHECK(kept->title == "chef 240");
  CHECK(kept->grade == "52100");
  CHECK(kept->blade_length == Length::millimetres(240));
  CHECK(maker.did("add_item", {{"title", "stock paring knife"}, {"blade_length", "90 mm"}}) == "2");
  CHECK(db::stock_knives(maker.shop).size() == 1);
}

TEST_CASE("an item that cannot be is refused at its field") {
  Maker maker;
  const auto commission = maker.enquiry();
  check_refused(maker, "add_item", {{"commission", commission}}, "title");
  check_refused(maker, "add_item", {{"commission", commission}, {"title", "knife"}},
                "blade_length");
  check_refused(maker, "add_item",
                {{"commission", "9"}, {"title", "knife"}, {"blade_length", "9 in"}}, "commission");
  check_refused(maker, "add_item",
                {{"title", "knife"}, {"blade_length", "9 in"}, {"hand", "third"}}, "hand");
  check_refused(maker, "add_item", {{"model", "no such"}}, "model");
  check_refused(maker, "add_item",
                {{"title", "knife"}, {"blade_length", "9 in"}, {"handle_lot", maker.lot()}},
                "handle_lot");
  maker.did("decline_quote", {{"commission", commission}});
  check_refused(maker, "add_item",
                {{"commission", commission}, {"title", "knife"}, {"blade_length", "9 in"}},
                "commission");
}

TEST_CASE("a watched species going abroad is prompted about when the item is added") {
  Maker maker;
  const auto buyer = maker.did("new_customer", {{"name", "Ida Holm"}, {"country", "Norway"}});
  const auto commission = maker.did("new_commission", {{"customer", buyer}});
  const auto wood = maker.did("receive_lot", {{"kind", "handle"},
                                              {"name", "dark block"},
                                              {"species", "cocobolo"},
                                              {"species_latin", "Dalbergia retusa"},
                                              {"quantity", "1"},
                                              {"unit", "block"},
                                              {"price", "40.00"}});
  const auto result = maker.tries("add_item", {{"commission", commission},
                                               {"title", "knife"},
                                               {"blade_length", "200 mm"},
                                               {"handle_lot", wood}});
  CHECK(warns(result, "Appendix II"));
  CHECK(warns(result, "Verify"));
}

TEST_CASE("a model keeps its route and its uses in their order") {
  Maker maker;
  maker.model();
  const auto model = db::find_model(maker.shop, "CHEF 240");
  REQUIRE(model);
  const auto steps = db::steps_of_model(maker.shop, model->id);
  REQUIRE(steps.size() == 3);
  CHECK(steps[1].operation == "harden");
  CHECK(steps[1].survival == Share::percent(95));
  CHECK(db::uses_of_model(maker.shop, model->id).size() == 2);
  check_refused(maker, "add_model",
                {{"name", "chef 240"},
                 {"blade_length", "1 m"},
                 {"blank_length", "1 m"},
                 {"blank_width", "1 mm"},
                 {"blank_thickness", "1 mm"}},
                "name");
  check_refused(maker, "add_model", {{"name", "x"}}, "blade_length");
  check_refused(maker, "add_model_step", {{"model", "chef 240"}, {"operation", "juggle"}},
                "operation");
  check_refused(maker, "add_model_step",
                {{"model", "chef 240"}, {"operation", "temper"}, {"survival", "0 %"}}, "survival");
  check_refused(
      maker, "add_model_step",
      {{"model", "chef 240"}, {"operation", "temper"}, {"low", "210 C"}, {"high", "200 C"}},
      "high");
  check_refused(maker, "add_model_use",
                {{"model", "chef 240"}, {"text", "glue"}, {"quantity", "0"}, {"each", "1.00"}},
                "quantity");
  check_refused(maker, "add_model_use",
                {{"model", "chef 240"}, {"text", "glue"}, {"quantity", "1"}, {"each", "1.00 USD"}},
                "each");
}

TEST_CASE("what an item waits for stands until it is released") {
  Maker maker;
  const auto order = maker.order();
  const auto hold =
      maker.did("hold", {{"item", order.item}, {"what", "epoxy to cure"}, {"until", "2026-11-27"}});
  CHECK(db::standing_holds(maker.shop).size() == 1);
  maker.did("release_hold", {{"hold", hold}});
  CHECK(db::standing_holds(maker.shop).empty());
  check_refused(maker, "release_hold", {{"hold", hold}}, "hold");
  check_refused(maker, "hold", {{"item", order.item}}, "what");
  check_refused(maker, "hold", {{"item", "99"}, {"what", "glue"}}, "item");
}

TEST_CASE("work sent outside comes back once") {
  Maker maker;
  const auto order = maker.order();
  check_refused(maker, "send_outside", {{"operation", "sheath"}, {"who", "the saddler"}}, "item");
  check_refused(maker, "send_outside",
                {{"item", order.item},
                 {"operation", "sheath"},
                 {"who", "the saddler"},
                 {"due_back", "2026-11-01"}},
                "due_back");
  const auto sent = maker.did("send_outside", {{"item", order.item},
                                               {"operation", "sheath"},
                                               {"who", "the saddler"},
                                               {"due_back", "2026-12-10"}});
  maker.did("back_from_outside", {{"outside_work", sent}, {"cost", "80.00"}});
  check_refused(maker, "back_from_outside", {{"outside_work", sent}}, "outside_work");
}
