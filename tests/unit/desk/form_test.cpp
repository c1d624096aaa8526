// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/form.h"
#include "gui/desk/forms.h"


using namespace tangmark;
using namespace tangmark::desk;

TEST_CASE("a problem stands beside its own field, and what has no field stands above the form") {
  Form form;
  form.fields.emplace_back();
  form.fields.back().name = "length";
  const Problems problems{{"length", "A knife is not 3 km long.", "Check the unit."},
                          {"file", "The file may not be written.", ""}};
  CHECK(beside(problems, "length") == "A knife is not 3 km long. Check the unit.");
  CHECK(above(problems, form) == "The file may not be written.");
}

TEST_CASE("an action's form asks for what the action asks for, and for when, why and what to set aside") {
  const db::ShopFile shop = db::ShopFile::in_memory(Instant{});
  const commission::ShopSettings settings;
  const Sight sight{shop, settings, Instant{}};
  const Form form = form_of("add_bench_hours", sight, {{"from", "9:00"}, {"nonsense", "1"}});
  REQUIRE(form.fields.size() == 6);
  CHECK(form.fields[0].entry == Entry::choice);
  CHECK(form.fields[0].choices.size() == 7);
  CHECK(form.fields[1].value == "9:00");
  CHECK(form.fields[1].required);
  CHECK(form.fields[3].name == "at");
  CHECK(form.fields[3].hidden);
}

TEST_CASE("an action that does not exist gives a form that says so and asks nothing") {
  const db::ShopFile shop = db::ShopFile::in_memory(Instant{});
  const commission::ShopSettings settings;
  const Form form = form_of("fly", {shop, settings, Instant{}}, {});
  CHECK(form.fields.empty());
  CHECK(form.title == "There is no action fly.");
}
