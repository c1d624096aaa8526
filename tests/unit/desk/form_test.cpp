// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/form.h"
#include "gui/desk/forms.h"
#include "gui/desk/window_words.h"

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

TEST_CASE(
    "an action's form asks for what the action asks for, and for when, why and what to set aside") {
  const db::ShopFile shop = db::ShopFile::in_memory(Instant{});
  const commission::ShopSettings settings;
  const Sight sight{shop, settings, Instant{}};
  const Form form = form_of("add_bench_hours", sight, {{"from", "9:00"}, {"nonsense", "1"}});
  REQUIRE(form.fields.size() == 6);
  CHECK(form.fields[0].name == "override");
  CHECK(form.fields[0].hidden);
  CHECK(form.fields[1].entry == Entry::choice);
  CHECK(form.fields[1].choices.size() == 7);
  CHECK(form.fields[2].value == "9:00");
  CHECK(form.fields[2].required);
  CHECK(form.fields[4].name == "at");
  CHECK(form.fields[4].hidden);
}

TEST_CASE("an action that does not exist gives a form that says so and asks nothing") {
  const db::ShopFile shop = db::ShopFile::in_memory(Instant{});
  const commission::ShopSettings settings;
  const Form form = form_of("fly", {shop, settings, Instant{}}, {});
  CHECK(form.fields.empty());
  CHECK(form.title == "There is no action fly.");
}

TEST_CASE("a problem is said in the words of the window, and what may be set aside is asked for") {
  const Problems said = in_window_words(
      {{"operation", "Blade 52 is not tempered.",
        "Temper it first and log it with log_temper. Or give override with the reason, which is "
        "kept."}});
  CHECK(said.front().remedy ==
        "Temper it first and log it with \"Log the temper\". Or say at \"Set aside because\" why "
        "it is done all the same; the reason is kept.");
  CHECK(may_be_set_aside(said));
  CHECK_FALSE(may_be_set_aside(in_window_words({{"day", "That day is gone.", "Take another."}})));
}
