// SPDX-License-Identifier: MIT
#include "domain/steel/temper_table.h"

#include <catch2/catch.hpp>

#include "domain/steel/grade.h"
#include "domain/steel/temper_hardness.h"

using namespace tangmark;
using namespace tangmark::steel;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;

TEST_CASE("rows of a temper table are read as a maker types them") {
  for (const char* text : {"150 C: 64, 204 C: 61", "150C:64\n204C:61\n", "302F:64;399.2F:61"}) {
    CAPTURE(text);
    const auto rows = parse_temper_rows(text, "rows");
    REQUIRE(rows);
    REQUIRE(rows->size() == 2);
    CHECK((*rows)[0].temper == Temperature::celsius(150));
    CHECK((*rows)[1].hardness.points == 61);
  }
}

TEST_CASE("rows that make no table are refused with what is wrong") {
  for (const char* text : {"", "150 C: 64", "150: 64, 204: 61", "150 C 64, 204 C 61",
                           "204 C: 61, 150 C: 64", "150 C: 64, 150 C: 63", "150 C: 6, 204 C: 61",
                           "150 C: 64, 204 C: 99", "150 C: hard, 204 C: 61"}) {
    CAPTURE(text);
    const auto rows = parse_temper_rows(text, "rows");
    REQUIRE_FALSE(rows);
    CHECK(rows.problem().field == "rows");
    CHECK_FALSE(rows.problem().remedy.empty());
  }
}

TEST_CASE("a table that the shop entered serves expectations of a grade without a published one") {
  TemperTable table;
  table.hold = 2h;
  table.rows = parse_temper_rows("150 C: 64, 204 C: 61", "rows").value();
  table.as_quenched = RockwellC{65};
  table.source = "supplier's sheet (entered by the shop)";
  table.origin = GradeOrigin::entered_by_shop;
  const GradeBook book = GradeBook::published().with_figures("1084", {}, {table});
  const Grade& grade = *book.find("1084");
  const auto expected = expected_hardness(grade, {{Temperature::celsius(204), 2h}});
  REQUIRE(expected);
  CHECK(expected->low.points == 59);
  CHECK(expected->high.points == 63);
  CHECK_THAT(expected->sources.front(), Contains("entered by the shop"));
  CHECK(expected->band == "one table and two points either way");
  CHECK(expected_as_quenched(grade)->high.points == 67);
  CHECK_FALSE(expected_hardness(grade, {{Temperature::celsius(300), 2h}}).ok());
  // The published book is as it was.
  CHECK(GradeBook::published().find("1084")->tempers.empty());
}

TEST_CASE("a window that the shop entered stands before the published one") {
  HeatTreatWindow own;
  own.operation = "harden";
  own.low = Temperature::celsius(805);
  own.high = Temperature::celsius(815);
  own.source = "supplier's sheet";
  own.origin = GradeOrigin::entered_by_shop;
  const GradeBook book = GradeBook::published().with_figures("15n20", {own}, {});
  CHECK(book.find("75Ni8")->window_for("harden")->low == Temperature::celsius(805));
  CHECK(book.find("75Ni8")->window_for("normalize") != nullptr);
}
