// SPDX-License-Identifier: MIT
#include "db/store/settings_store.h"

#include <catch2/catch.hpp>

#include "tests/shop_fixture.h"

using namespace tangmark;
using tangmark::test::ShopOnTheBench;

TEST_CASE("every setting survives being written and read") {
  ShopOnTheBench bench;
  bench.did("change_setting", {{"name", "temperature_unit"}, {"value", "F"}});
  bench.did("change_setting", {{"name", "length_unit"}, {"value", "in"}});
  bench.did("change_setting", {{"name", "kerf"}, {"value", "3/64 in"}});
  bench.did("change_setting", {{"name", "temper_tolerance"}, {"value", "10 F"}});
  bench.did("change_setting", {{"name", "zone"}, {"value", "America/New_York"}});
  bench.did("change_setting", {{"name", "hourly_rate"}, {"value", "42.50"}});
  const auto first = db::load_settings(bench.shop);
  CHECK(first.hourly_rate.minor() == 4250);
  CHECK(first.kerf == Length::nanometres(25'400'000LL * 3 / 64));
  CHECK(first.temper_tolerance == TemperatureDifference::fahrenheit(10));
  auto again = first;
  for (const auto& setting : db::settings_as_text(first)) {
    INFO(setting.name << " = " << setting.value);
    auto changed = db::with_setting(again, setting.name, setting.value);
    REQUIRE(changed);
    again = *changed;
  }
  for (std::size_t i = 0; i < db::settings_as_text(first).size(); ++i)
    CHECK(db::settings_as_text(again)[i].value == db::settings_as_text(first)[i].value);
}

TEST_CASE("a new currency keeps every amount's figure") {
  ShopOnTheBench bench;
  bench.did("change_setting", {{"name", "currency"}, {"value", "GBP"}});
  const auto settings = db::load_settings(bench.shop);
  CHECK(settings.hourly_rate == Money(3500, *Currency::of("GBP")));
  CHECK(settings.shop_cost_of_late_day.currency().code() == "GBP");
}
