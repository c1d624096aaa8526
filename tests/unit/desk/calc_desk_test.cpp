// SPDX-License-Identifier: MIT
#include "gui/desk/calc_desk.h"

#include <catch2/catch.hpp>

#include "domain/steel/desk_calc.h"
#include "gui/desk/bench_advice.h"
#include "gui/desk/steel_desk.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;
using Catch::Matchers::Contains;

TEST_CASE("every computation of the desk has a form that asks for all its keys") {
  const Section section = calculations_section();
  REQUIRE(section.table.rows.size() == steel::desk_calculations().size());
  for (const auto& calculation : steel::desk_calculations()) {
    const Form form = calculation_form({{"calculation", calculation.name}});
    INFO(calculation.name);
    CHECK(form.fields.size() == calculation.keys.size() + 1);
    CHECK(form.fields.back().hidden);
  }
}

TEST_CASE("the desk's answer stands with its unit, its notes and its source") {
  test::SmallShop shop;
  const auto sheet = calculation_sheet(shop.sight(), {{"calculation", "mass"},
                                                      {"length_mm", "100"},
                                                      {"width_mm", "30"},
                                                      {"thickness_mm", "3"},
                                                      {"diameter_mm", " "}});
  REQUIRE(sheet.ok());
  CHECK_THAT(as_text(*sheet), Contains("Mass  0.0707  kg"));
  CHECK_THAT(as_text(*sheet), Contains("Source: volume x density"));
  const auto refused =
      calculation_sheet(shop.sight(), {{"calculation", "mass"}, {"length_mm", "-1"}});
  REQUIRE_FALSE(refused.ok());
}

TEST_CASE("the desk knows the grades of the shop") {
  test::SmallShop shop;
  db::Row("own_grade")
      .set("name", "115W8")
      .set("limits", "C:1.1-1.2")
      .set("source", "sheet")
      .insert(shop.shop);
  const auto sheet =
      calculation_sheet(shop.sight(), {{"calculation", "grade"}, {"grade", "115w8"}});
  REQUIRE(sheet.ok());
  CHECK_THAT(as_text(*sheet), Contains("entered by the shop"));
  CHECK(steel_list(shop.sight()).list.matching("115W8").size() == 1);
  CHECK_THAT(as_text(steel_view(shop.sight(), "grade 115W8").sheet), Contains("1.1-1.2 %"));
}

TEST_CASE("a lot shows its analysis beside the limits of its grade") {
  test::SmallShop shop;
  db::Row("lot").set("analysis", "C:0.95,Mn:0.7").update(shop.shop, shop.lot);
  const std::string text = as_text(steel_view(shop.sight(), "lot 17").sheet);
  CHECK_THAT(text, Contains("Analysis against the limits of 1084"));
  CHECK_THAT(text, Contains("above the limit"));
}

TEST_CASE("the form of a quench says beforehand what speaks against it and where it can hurt") {
  test::SmallShop shop;
  shop.step(1, "harden", Temperature::celsius(900));
  const std::string text =
      advice_before(shop.sight(), "log_quench", {{"blade", "61"}, {"set", "900 C"}});
  CHECK_THAT(text, Contains("above the published window to harden 1084"));
  CHECK(advice_before(shop.sight(), "log_hardness", {{"blade", "61"}}).empty());
  CHECK_THAT(advice_before(shop.sight(), "log_step", {{"blade", "61"}, {"operation", "etch"}}),
             Contains("Ferric chloride"));
}
