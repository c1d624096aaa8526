// SPDX-License-Identifier: MIT
#include "domain/blade/state.h"

#include <catch2/catch.hpp>

#include "tests/unit/blade/a_blade.h"

using namespace tangmark;
using namespace tangmark::blade;
using tangmark::blade::test::ABlade;
using tangmark::blade::test::at;

TEST_CASE("a blade is not quenched until its log says so") {
  CHECK(ABlade().state().stage == HeatStage::not_quenched);
  CHECK(ABlade().logs("forge", at(0)).state().stage == HeatStage::not_quenched);
  CHECK(ABlade().logs("harden", at(1)).state().stage == HeatStage::quenched);
}

TEST_CASE("two tempers are needed unless the route says otherwise") {
  CHECK(ABlade().logs("harden", at(0)).logs("temper", at(1)).state().stage ==
        HeatStage::tempered_in_part);
  CHECK(ABlade().logs("harden", at(0)).logs("temper", at(1)).logs("temper", at(4)).state().stage ==
        HeatStage::tempered);
  CHECK(ABlade()
            .plans("harden")
            .plans("temper")
            .logs("harden", at(0))
            .logs("temper", at(1))
            .state()
            .stage == HeatStage::tempered);
  CHECK(ABlade().plans("temper").plans("temper").plans("temper").state().tempers_planned == 3);
}

TEST_CASE("a skipped temper is not waited for, but one is always needed") {
  CHECK(ABlade().plans("temper").plans("temper").skipped("thin").state().tempers_planned == 1);
  CHECK(
      ABlade().plans("temper").skipped("x").plans("temper").skipped("x").state().tempers_planned ==
      1);
}

TEST_CASE("a temper begun warm does not count") {
  const auto state = ABlade()
                         .logs("harden", at(0))
                         .logs("temper", at(1))
                         .logs("temper", at(3))
                         .cooled(false)
                         .state();
  CHECK(state.stage == HeatStage::tempered_in_part);
  CHECK(state.tempers_done == 1);
  CHECK(state.tempers_not_cooled == 1);
}

TEST_CASE("soak and quench in two entries are one hardening") {
  const auto state =
      ABlade().logs("harden", at(0)).logs("harden", at(0, 12)).in("medium oil").state();
  CHECK(state.hardenings == 1);
  CHECK(state.quenched_at == at(0, 12));
  CHECK(state.quench_medium == "medium oil");
}

TEST_CASE("hardening again forgets the tempers") {
  const auto state = ABlade()
                         .logs("harden", at(0))
                         .logs("temper", at(1))
                         .logs("temper", at(4))
                         .logs("harden", at(9))
                         .state();
  CHECK(state.hardenings == 2);
  CHECK(state.tempers_done == 0);
  CHECK(state.stage == HeatStage::quenched);
}

TEST_CASE("annealing makes a hard blade soft again") {
  const auto state =
      ABlade().logs("harden", at(0)).logs("temper", at(1)).logs("anneal", at(9)).state();
  CHECK(state.stage == HeatStage::not_quenched);
  CHECK(state.hardenings == 1);
  CHECK(ABlade().logs("harden", at(0)).logs("stress relief", at(1)).state().stage ==
        HeatStage::quenched);
}

TEST_CASE("a pattern that came out waits for no decision, a crack does") {
  CHECK(ABlade().shows("layers seen", Decision::open, false).state().open_findings.empty());
  CHECK(ABlade().shows("layers seen", Decision::open, true).state().open_findings.size() == 1);
  CHECK(ABlade().shows("crack", Decision::open, false).state().open_findings.size() == 1);
  CHECK(ABlade().shows("crack", Decision::disclose).state().open_findings.empty());
}

TEST_CASE("the state of a waiting blade is said with its clock") {
  const auto state = ABlade().logs("harden", at(0)).state();
  CHECK(state_text(state, at(2, 5)) == "quenched 2 h 05 min ago, not tempered");
  CHECK(state_text(ABlade().logs("harden", at(0)).logs("temper", at(1)).state(), at(2)) ==
        "tempered once of 2");
  CHECK(state_text(ABlade().logs("harden", at(0)).logs("hold warm", at(0, 5)).state(), at(1)) ==
        "quenched 1 h ago, not tempered (held warm)");
}
