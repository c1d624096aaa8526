// SPDX-License-Identifier: MIT
#include "domain/blade/blocks.h"

#include <catch2/catch.hpp>

#include "tests/unit/blade/a_blade.h"

using namespace tangmark;
using namespace tangmark::blade;
using tangmark::blade::test::ABlade;
using tangmark::blade::test::at;

namespace {

void stops_everything(const ABlade& blade, int number, const std::string& words) {
  for (const Stage stage : {Stage::handle, Stage::certificate, Stage::delivery}) {
    const Catches caught = blocks(blade.state(), stage, at(10));
    REQUIRE(caught.size() == 1);
    CHECK(caught[0].number == number);
    CHECK(caught[0].weight == Weight::stop);
    CHECK(caught[0].sentence.find(words) != std::string::npos);
    CHECK(caught[0].sentence.find(word_of(stage)) != std::string::npos);
    CHECK_FALSE(caught[0].remedy.empty());
  }
}

}  // namespace

TEST_CASE("8: a quenched blade not yet tempered goes to no handle, certificate or delivery") {
  stops_everything(ABlade().logs("harden", at(0)), 8, "was quenched 10 h ago and is not tempered");
}

TEST_CASE("9: a missing second temper stops handle, certificate and delivery") {
  stops_everything(ABlade().logs("harden", at(0)).logs("temper", at(1)), 9,
                   "has had 1 of 2 tempers");
  stops_everything(
      ABlade().logs("harden", at(0)).logs("temper", at(1)).logs("temper", at(3)).cooled(false), 9,
      "does not count");
}

TEST_CASE("9: hardening that the route plans and nobody logged stops them too") {
  stops_everything(ABlade().plans("harden").plans("temper"), 9, "plans hardening");
}

TEST_CASE("17: a fault without a decision stops handle, certificate and delivery") {
  stops_everything(ABlade().shows("crack"), 17, "Finding 1 (crack)");
  CHECK(blocks(ABlade().shows("crack", Decision::fix_and_disclose).state(), Stage::delivery, at(1))
            .empty());
}

TEST_CASE("27: a scrapped blade comes to nothing more, nor one decided as scrap") {
  ABlade scrapped;
  scrapped.scrapped = true;
  CHECK(blocks(scrapped.state(), Stage::delivery, at(1)).at(0).number == 27);
  CHECK(
      blocks(ABlade().shows("crack", Decision::scrap).state(), Stage::handle, at(1)).at(0).number ==
      27);
}

TEST_CASE("a blade tempered twice with everything decided may go on") {
  const auto blade = ABlade()
                         .plans("harden")
                         .done(at(0))
                         .logs("harden", at(0))
                         .logs("temper", at(1))
                         .logs("temper", at(4))
                         .cooled(true);
  CHECK(blocks(blade.state(), Stage::handle, at(9)).empty());
}
