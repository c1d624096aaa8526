// SPDX-License-Identifier: MIT
#include "domain/steel/composition.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::steel;

TEST_CASE("a composition reads back as it was written") {
  for (const char* text :
       {"C:0.95,Mn:0.3", "C:1.1", "C:0.67,Mn:0.6,Si:0.4,Cr:13", "C:0.123456789"}) {
    CHECK(to_text(parse_composition(text, "composition").value()) == text);
  }
  CHECK(to_text(parse_composition(" (c:0.95, mn=0.3) ", "composition").value()) == "C:0.95,Mn:0.3");
}

TEST_CASE("a composition that means nothing is refused") {
  for (const char* bad : {"", "C", "C:", "C:x", "C:0.9,C:0.8", "Xy:1", "Fe:98", "C:-0.1", "C:101",
                          "C:60,Cr:60", "C:0,9", "C:nan", "C:inf", "C:0.9,", ",C:0.9", "C:1e400"}) {
    CAPTURE(bad);
    const auto read = parse_composition(bad, "composition");
    REQUIRE_FALSE(read.ok());
    CHECK(read.problem().field == "composition");
    CHECK_FALSE(read.problem().sentence.empty());
  }
}

TEST_CASE("what was not stated is not a measured zero") {
  const auto read = parse_composition("C:0.9,V:0", "composition").value();
  CHECK(read.stated(Element::V) == 0.0);
  CHECK_FALSE(read.stated(Element::Cr).has_value());
  CHECK(read.weight_percent(Element::Cr) == 0.0);
}

TEST_CASE("a blend is the mean by mass, whatever the unit of the masses") {
  const auto plain = parse_composition("C:0.95,Mn:0.3", "a").value();
  const auto nickel = parse_composition("C:0.75,Ni:2.0", "b").value();
  for (const double unit : {1.0, 1000.0}) {
    const auto mixed = blend({{plain, 0.6 * unit}, {nickel, 0.4 * unit}}).value();
    CHECK(mixed.weight_percent(Element::C) == Approx(0.87));
    CHECK(mixed.weight_percent(Element::Mn) == Approx(0.18));
    CHECK(mixed.weight_percent(Element::Ni) == Approx(0.8));
    CHECK_FALSE(mixed.stated(Element::Cr).has_value());
  }
  CHECK_FALSE(blend({}).ok());
  CHECK_FALSE(blend({{plain, 0}}).ok());
}
