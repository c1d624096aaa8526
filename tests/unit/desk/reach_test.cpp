// SPDX-License-Identifier: MIT
// Whatever a maker can do from the terminal is offered somewhere in the window.
#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

#include "db/actions/action.h"
#include "gui/desk/desk.h"
#include "tests/unit/command/program.h"

using namespace tangmark;
using namespace tangmark::desk;

namespace {

Instant demo_time() {
  return date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(7) +
         std::chrono::minutes(45);
}

bool knows(const db::Action& action, const std::string& field) {
  if (field == "at" || field == "override" || field == "note_why") return true;
  return std::any_of(action.fields.begin(), action.fields.end(),
                     [&](const db::Field& known) { return known.name == field; });
}

struct Offered {
  std::set<std::string> actions;

  void take(const Offer& offer) {
    if (const auto* form = std::get_if<OpenForm>(&offer.deed)) fits(form->action, form->filled);
    if (const auto* now = std::get_if<DoNow>(&offer.deed)) fits(now->action, now->fields);
  }
  void take(const PlaceView& view) {
    for (const Offer& offer : view.next.offers) take(offer);
    for (const Section& section : view.sheet.sections) {
      for (const Offer& offer : section.offers) take(offer);
      for (const TableRow& row : section.table.rows) {
        for (const Offer& offer : row.offers) take(offer);
      }
    }
  }

 private:
  // An offer that names an action or a field which does not exist would open a broken form.
  void fits(const std::string& name, const Typed& filled) {
    if (name.starts_with("desk.")) return;
    INFO(name);
    const db::Action* action = db::find_action(name);
    REQUIRE(action != nullptr);
    for (const auto& [field, value] : filled) {
      INFO(field);
      CHECK(knows(*action, field));
    }
    actions.insert(name);
  }
};

}  // namespace

// What the demo shop is not in the midst of.
void begin_more(Desk& desk) {
  REQUIRE(desk.act("lock_firing", {{"firing", "4"}}));
  REQUIRE(desk.act("start_billet", {{"kind", "pattern-welded"}, {"pieces", "14-3,7-2"}}));
  REQUIRE(desk.act("start_timer", {{"blades", "46"}, {"operation", "drill"}}));
  REQUIRE(desk.act("start_timer", {{"blades", "47"}, {"operation", "drill"}}));
  REQUIRE(desk.act("pause_timer", {{"blade", "47"}}));
  REQUIRE(desk.act("reserve", {{"item", "40"}, {"piece", "14-2D"}, {"length", "300 mm"}}));
}

void take_all(const Desk& desk, Offered& offered) {
  for (const Place place : all_places) {
    const PlaceList list = desk.list(place);
    for (std::size_t i = 0; i < list.list.size(); ++i) {
      offered.take(desk.view(place, list.list.row(i).id));
    }
    offered.take(desk.view(place, ""));
  }
}

TEST_CASE("every action is offered in some place of the window") {
  const test::DemoShop demo;
  std::chrono::hours later{0};
  auto desk = Desk::open(demo.file, [&] { return demo_time() + later; });
  REQUIRE(desk);
  begin_more(*desk);
  Offered offered;
  take_all(*desk, offered);
  REQUIRE(desk->act("send_quote", {{"commission", "42"}}));
  later = std::chrono::hours{27};  // firings of tomorrow have begun by then
  take_all(*desk, offered);
  // The bench and the quote desk take these; those of a commission that is ready are tested apart.
  for (const char* other : {"accept_plan", "log_quench", "make_quote", "take_balance", "deliver",
                            "start_trial", "add_to_trial", "end_trial"}) {
    offered.actions.insert(other);
  }
  for (const db::Action* action : db::all_actions()) {
    INFO(action->name);
    CHECK(offered.actions.count(std::string(action->name)) == 1);
  }
}
