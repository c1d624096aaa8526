// SPDX-License-Identifier: MIT
#include "domain/steel/grade.h"

#include <catch2/catch.hpp>

#include "domain/steel/analysis_check.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

Composition analysis(const char* text) { return parse_composition(text, "analysis").value(); }
const Grade& grade(const char* name) {
  const Grade* found = GradeBook::published().find(name);
  REQUIRE(found);
  return *found;
}

}  // namespace

TEST_CASE("every published grade has a carbon figure and a source") {
  CHECK(GradeBook::published().grades().size() >= 40);
  for (const Grade& grade : GradeBook::published().grades()) {
    CAPTURE(grade.name);
    CHECK(grade.limit_of(Element::C));
    CHECK_FALSE(grade.source.empty());
    CHECK(GradeBook::published().find(grade.name) == &grade);
    CHECK(grade.window_for("harden"));
    for (const HeatTreatWindow& window : grade.windows) {
      CHECK(window.low <= window.high);
      CHECK_FALSE(window.source.empty());
    }
  }
}

TEST_CASE("a grade is found by its other name, whatever the case and dashes") {
  CHECK(grade("75ni8").name == "15N20");
  CHECK(grade("aebl").name == "AEB-L");
  CHECK(grade("w 1").name == "W1");
  CHECK_FALSE(GradeBook::published().find("1234"));
}

TEST_CASE("the middle of the limits stands in for an analysis") {
  const Composition middle = middle_of_limits(grade("W1"));
  CHECK(middle.weight_percent(Element::C) == Approx(1.10));
  CHECK(middle.weight_percent(Element::Mn) == Approx(0.25));
  CHECK(middle.weight_percent(Element::Cr) == Approx(0.075));
  CHECK(middle_of_limits(grade("AEB-L")).weight_percent(Element::Cr) == Approx(13.0));
}

TEST_CASE("an analysis is held against the limits element by element") {
  const auto good = check_analysis(analysis("C:0.95,Mn:0.40,P:0.010,S:0.008"), grade("1095"));
  CHECK(good.inside_limits);
  CHECK(good.remarks.empty());

  const auto high = check_analysis(analysis("C:1.05,Mn:0.40"), grade("1095"));
  CHECK_FALSE(high.inside_limits);
  REQUIRE(high.remarks.size() == 1);
  CHECK(high.remarks[0] == "C 1.05 % is above the grade's limit (0.9-1.03 %).");

  const auto vanadium = check_analysis(analysis("C:1.00,Mn:0.30,Si:0.2,V:0.05"), grade("W2"));
  CHECK_FALSE(vanadium.inside_limits);

  const auto nominal = check_analysis(analysis("C:0.67,Cr:13"), grade("AEB-L"));
  CHECK_FALSE(nominal.inside_limits);
}

TEST_CASE("a grade the shop enters stands before the published one") {
  Grade own;
  own.name = "W1";
  own.source = "supplier's sheet";
  own.origin = GradeOrigin::entered_by_shop;
  const auto book = GradeBook::published().with(own);
  REQUIRE(book);
  CHECK(book->find("W1")->origin == GradeOrigin::entered_by_shop);
  own.source = " ";
  CHECK_FALSE(GradeBook::published().with(own).ok());
}

TEST_CASE("a limit is read as a range, a most, a least or a nominal figure") {
  CHECK(to_text(parse_limit(Element::C, "0.70-0.80", "C").value()) == "0.7-0.8 %");
  CHECK(to_text(parse_limit(Element::P, "<=0.030", "P").value()) == "at most 0.03 %");
  CHECK(to_text(parse_limit(Element::V, ">=0.15", "V").value()) == "at least 0.15 %");
  CHECK(to_text(parse_limit(Element::Cr, "=13", "Cr").value()) == "about 13 %");
  for (const char* bad : {"", "0.8-0.7", "x", "<=", "<=101", "-0.1", "0.1-"}) {
    CAPTURE(bad);
    CHECK_FALSE(parse_limit(Element::C, bad, "C").ok());
  }
}
