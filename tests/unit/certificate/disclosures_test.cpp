// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

TEST_CASE("what happened to the blade after its quench is told") {
  Dossier d = bar_blade();
  CHECK_FALSE(told(d, "Hardened"));
  SECTION("hardened again") {
    BenchEntry first = line(d, Operation::harden);
    first.from = clock(2);
    first.to = clock(2, 20);
    first.number = 77;
    d.log.insert(d.log.begin(), first);
    CHECK(told(d, "Hardened twice"));
    CHECK(compose(d).may_issue());
  }
  SECTION("straightened") {
    BenchEntry straighten;
    straighten.operation = Operation::straighten;
    d.log.push_back(straighten);
    CHECK(told(d, "Straightened after hardening once."));
    straighten.superseded = true;
    d.log.back() = straighten;
    CHECK_FALSE(told(d, "Straightened"));
  }
  SECTION("tempered more often than planned") {
    d.tempers_planned = 1;
    CHECK(told(d, "Tempered twice; the route planned once."));
  }
}

TEST_CASE("faults are told whatever was decided, pattern results only when they affect the blade") {
  Dossier d = bar_blade();
  Finding finding;
  finding.number = 1;
  finding.decision = Decision::no_fault;
  for (FindingKind kind : {FindingKind::crack, FindingKind::delamination}) {
    finding.kind = kind;
    d.findings = {finding};
    CHECK(compose(d).disclosures.front().finding == 1);
  }
  for (FindingKind kind : {FindingKind::soft_area, FindingKind::inclusion, FindingKind::decarb,
                           FindingKind::overheated_edge, FindingKind::shorter_than_drawn}) {
    finding.kind = kind;
    finding.decision = Decision::removed;
    d.findings = {finding};
    CHECK(compose(d).disclosures.front().finding == 1);
  }
  finding.kind = FindingKind::hamon_seen;
  finding.decision = Decision::no_fault;
  d.findings = {finding};
  CHECK_FALSE(compose(d).disclosures.front().finding);
  finding.kind = FindingKind::soft_area;
  finding.decision = Decision::left_disclosed;
  finding.reaches_edge = true;
  d.findings = {finding};
  CHECK(told(d, "It reaches the edge: not for use as a cutting tool."));
}

TEST_CASE("handle, finish, steel and order are told") {
  Dossier d = bar_blade();
  CHECK(told(d, "This steel rusts. Keep it dry."));
  CHECK_FALSE(told(stainless_blade(), "rusts"));
  CHECK(told(pattern_blade(), "Contains nickel: 15N20 (lot 22), 2.02 % by its analysis."));
  d.handle[0].treatments = {"pores filled with clear epoxy"};
  CHECK(told(d, "Bog oak: pores filled with clear epoxy."));
  d.handle[0].health_notes = {"resin not food-rated"};
  CHECK(told(d, "resin not food-rated"));
  d.finish = {"forced patina"};
  CHECK(told(d, "Finish: forced patina."));
  d.order.ordered_grade = "52100";
  CHECK(told(d, "Ordered in 52100, made in another steel."));
  d.order.ordered_grade = "1095";
  CHECK_FALSE(told(d, "Ordered in"));
  d.order.aim_low_tenths = 610;
  d.order.aim_high_tenths = 630;
  CHECK(told(d, "Hardness outside the aim of the order: 60.5 HRC"));
  d.order.differences = {"blade 4 mm shorter than drawn"};
  CHECK(told(d, "Other than ordered: blade 4 mm shorter than drawn."));
  CHECK(told(spring_blade(), "brought by the customer"));
}
