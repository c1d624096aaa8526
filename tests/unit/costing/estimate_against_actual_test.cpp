// SPDX-License-Identifier: MIT
#include "domain/costing/estimate_against_actual.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::costing;

namespace {

Money eur(std::int64_t minor) { return {minor, Currency()}; }

CostSheet a_sheet(std::vector<CostLine> lines) {
  CostSheet sheet;
  sheet.lines = std::move(lines);
  return sheet;
}
CostLine hours(const char* name, std::int64_t thousandths, std::int64_t minor) {
  return {LineKind::hours, name, {thousandths, "h"}, eur(40'00), eur(minor), 0};
}

}  // namespace

TEST_CASE("a difference is split into using more and paying more") {
  // 2 h at 40 quoted, 3 h at 45 actual: one hour more at 40, and 3 x 5 dearer.
  const auto c = compare(a_sheet({hours("Handle", 2000, 80'00)}),
                         a_sheet({hours("Handle", 3000, 135'00)}));
  REQUIRE(c->lines.size() == 1);
  CHECK(c->lines[0].by_quantity == eur(40'00));
  CHECK(c->lines[0].by_price == eur(15'00));
  CHECK(c->actual - c->quoted == eur(55'00));
}

TEST_CASE("using less than quoted is a difference below zero") {
  const auto c = compare(a_sheet({hours("Handle", 2000, 80'00)}),
                         a_sheet({hours("Handle", 500, 20'00)}));
  CHECK(c->lines[0].by_quantity == eur(-60'00));
  CHECK(c->lines[0].by_price == eur(0));
}

TEST_CASE("lines on one side only are compared with nothing") {
  const auto c = compare(a_sheet({hours("Handle", 1000, 40'00)}),
                         a_sheet({hours("Etch", 500, 20'00), hours("Etch", 500, 20'00)}));
  REQUIRE(c->lines.size() == 2);
  CHECK(c->lines[0].actual == eur(0));
  CHECK(c->lines[0].by_quantity == eur(-40'00));
  CHECK(c->lines[1].actual == eur(40'00));
  CHECK(c->lines[1].by_quantity == eur(40'00));
  CHECK(c->actual == c->quoted);
}

TEST_CASE("why they differ names the largest three") {
  std::vector<CostLine> quoted, actual;
  for (int i = 0; i < 5; ++i) {
    const std::string name = "Operation " + std::to_string(i);
    quoted.push_back(hours(name.c_str(), 1000, 40'00));
    actual.push_back(hours(name.c_str(), 1000 + 100 * i, 40'00 + 4'00 * i));
  }
  const auto why = why_they_differ(*compare(a_sheet(quoted), a_sheet(actual)));
  REQUIRE(why.size() == 3);
  CHECK(why[0].text == "Operation 4");
  CHECK(why[2].text == "Operation 2");
}

TEST_CASE("two currencies are not compared") {
  CostSheet dollars;
  dollars.price.cost = Money(1, *Currency::of("USD"));
  CHECK(compare(CostSheet{}, dollars).problem().field == "currency");
}
