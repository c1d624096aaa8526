// SPDX-License-Identifier: MIT
#include "domain/stock/steel_match.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;
using Grades = std::vector<std::optional<std::string>>;

namespace {

tangmark::Catch differs(std::optional<std::string> job, Grades piece) {
  return steel_differs(job, piece, "17-2", steel::GradeBook::published());
}

}  // namespace

TEST_CASE("catch 4: the steel on the job differs from the steel of the piece") {
  const auto caught = differs("80CrV2", {"O1"});
  REQUIRE(caught);
  CHECK(caught->number == 4);
  CHECK(caught->weight == Weight::ask);
  CHECK(caught->sentence == "The job is for 80CrV2 and piece 17-2 is O1.");
  CHECK_FALSE(differs("80CrV2", {"80crv2"}));
  CHECK_FALSE(differs("80CrV2", {"80-CrV 2"}));
}

TEST_CASE("catch 4: a piece of unknown grade does not answer a job for a grade") {
  CHECK(differs("80CrV2", {std::nullopt}));
  CHECK(differs("80CrV2", {}));
}

TEST_CASE("a job without a grade leaves the choice open") {
  CHECK_FALSE(differs(std::nullopt, {"O1"}));
}

TEST_CASE("catch 4: a billet must hold every grade of the job and no other") {
  CHECK_FALSE(differs("1095/15N20", {"15N20", "1095"}));
  CHECK_FALSE(differs("1095 + 15N20", {"1095", "15N20"}));
  CHECK(differs("1095/15N20", {"1095"}));
  CHECK(differs("1095/15N20", {"1095", "15N20", "mild steel"}));
  CHECK(differs("1095", {"1095", "15N20"}));
}

TEST_CASE("two names of one grade are one grade") {
  const steel::Grade* known = steel::GradeBook::published().find("15N20");
  REQUIRE(known);
  for (const std::string& name : known->also) CHECK_FALSE(differs("15N20", {name}));
}

TEST_CASE("grades are named with a stroke, a plus, a comma or an and-sign between") {
  CHECK(grades_named(" 1095 / 15N20") == std::vector<std::string>{"1095", "15N20"});
  CHECK(grades_named("52100 + 410, 410") == std::vector<std::string>{"52100", "410", "410"});
  CHECK(grades_named(" , ").empty());
}
