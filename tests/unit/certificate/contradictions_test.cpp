// SPDX-License-Identifier: MIT
// Shop records in which two things cannot both be true, or which are in a state that stops the
// issue.
#include <catch2/catch.hpp>

#include "record_changes.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

/// Two things on record that cannot both be true, or a state in which nothing may be issued.
struct Contradiction {
  const char* name;
  std::function<bool(Dossier&)> change;
};

std::vector<Contradiction> contradictory_papers() {
  return {
      {"analysis of another steel", each_lot([](Lot& l) {
         if (!l.analysis || !l.facts) return false;
         l.analysis->at("C") = Share::percent(4);
         return true;
       })},
      {"document of another grade",
       each_lot([](Lot& l) { return l.grade && (l.document_grade = "D2", true); })},
      {"document of another melt",
       each_lot([](Lot& l) { return l.melt_number && (l.document_melt_number = "X1", true); })},
      {"mark of another melt", each_lot([](Lot& l) { return l.mark = BarMark::differs, true; })}};
}

std::vector<Contradiction> contradictory_times() {
  return {
      {"two soaks",
       [](Dossier& d) {
         BenchEntry other = line(d, Operation::harden);
         other.number = 91;
         other.heat->hold = std::chrono::minutes(18);
         const auto at = std::find_if(d.log.begin(), d.log.end(), [](const BenchEntry& e) {
           return e.operation == Operation::harden;
         });
         d.log.insert(at + 1, other);
         return true;
       }},
      {"temper before the quench",
       [](Dossier& d) {
         line(d, Operation::temper).from = clock(8);
         line(d, Operation::temper).to = clock(10, 30);
         return true;
       }},
      {"a step that ends before it begins",
       [](Dossier& d) { return d.log[0].to = *d.log[0].from - std::chrono::hours(1), true; }},
      {"a hold longer than its heat",
       [](Dossier& d) {
         return line(d, Operation::harden).heat->hold = std::chrono::hours(3), true;
       }},
      {"a temper after the handle",
       [](Dossier& d) {
         BenchEntry temper = line(d, Operation::temper, 1);
         temper.temper->number = 3;
         temper.from = clock(23);
         temper.to = clock(23, 30);
         temper.heat.reset();
         d.log.push_back(temper);
         return true;
       }},
      {"a reading before its heat",
       [](Dossier& d) { return d.hardness[0].taken = clock(6), true; }}};
}

std::vector<Contradiction> contradictory_heats() {
  return {
      {"annealed after the hardening",
       [](Dossier& d) {
         BenchEntry anneal = line(d, Operation::harden);
         anneal.number = 92;
         anneal.operation = Operation::anneal;
         anneal.quench.reset();
         anneal.heat.reset();
         anneal.from = clock(16);
         anneal.to = clock(17);
         const auto measured = std::find_if(d.log.begin(), d.log.end(), [](const BenchEntry& e) {
           return e.operation == Operation::finish_grind;
         });
         for (HardnessReading& reading : d.hardness) reading.taken = clock(18);
         d.log.insert(measured, anneal);
         return true;
       }},
      {"a temper as hot as the hardening",
       [](Dossier& d) {
         line(d, Operation::temper).heat->set = Temperature::celsius(810);
         return true;
       }},
      {"two fires at one time",
       [](Dossier& d) {
         BenchEntry cycle = line(d, Operation::harden);
         cycle.number = 93;
         cycle.operation = Operation::stress_relief;
         cycle.quench.reset();
         cycle.heat.reset();
         cycle.from = clock(8, 35);
         cycle.to = clock(8, 45);
         const auto at = std::find_if(d.log.begin(), d.log.end(), [](const BenchEntry& e) {
           return e.operation == Operation::harden;
         });
         d.log.insert(at, cycle);
         return true;
       }}};
}

std::vector<Contradiction> contradictory_states() {
  return {
      {"no temper", [](Dossier& d) { return drop_if(d, Operation::temper); }},
      {"one temper of two",
       [](Dossier& d) { return line(d, Operation::temper, 1).superseded = true; }},
      {"a crack without decision",
       [](Dossier& d) {
         Finding crack;
         crack.number = 70;
         crack.kind = FindingKind::crack;
         d.findings.push_back(crack);
         return true;
       }},
      {"scrapped",
       [](Dossier& d) {
         Finding crack;
         crack.number = 70;
         crack.kind = FindingKind::crack;
         crack.decision = Decision::scrapped;
         d.findings.push_back(crack);
         return true;
       }},
      {"no blade number", [](Dossier& d) { return d.blade = 0, true; }},
      {"no maker", [](Dossier& d) { return d.maker.clear(), true; }},
      {"outside work not back",
       [](Dossier& d) {
         using namespace date::literals;
         OutsideWork work;
         work.kind = OutsideKind::sheath;
         work.what = "sheath";
         work.sent = 2026_y / 11 / 2;
         d.outside.push_back(work);
         return true;
       }}};
}

std::vector<Contradiction> contradictory_trails() {
  return {
      {"a piece that is not on record",
       [](Dossier& d) { return d.steel.blade_piece = PieceTag{"99"}, true; }},
      {"a piece that is its own parent",
       [](Dossier& d) { return d.steel.pieces.back().from = d.steel.pieces.back().tag, true; }},
      {"a twist that nobody logged", [](Dossier& d) {
         if (d.steel.billets.empty()) return false;
         std::erase_if(d.steel.billets[0].stages,
                       [](const WeldStage& s) { return s.work == StageWork::twist; });
         d.steel.billets[0].pattern_name = "star twist";
         return true;
       }}};
}

std::vector<Contradiction> contradictory_findings() {
  return {
      {"a hamon in an air-hardening steel",
       [](Dossier& d) {
         bool air = false;
         for (Lot& lot : d.steel.lots)
           if (lot.facts) lot.facts->hardens_in = HardensIn::air, air = true;
         Finding seen;
         seen.number = 71;
         seen.kind = FindingKind::hamon_seen;
         seen.after = SeenAfter::polish;
         seen.decision = Decision::no_fault;
         d.findings.push_back(seen);
         return air && d.steel.billets.empty();
       }},
      {"a pattern and none", [](Dossier& d) {
         Finding seen;
         seen.number = 71;
         seen.kind = FindingKind::pattern_carbides;
         seen.decision = Decision::no_fault;
         d.findings.push_back(seen);
         seen.number = 72;
         seen.kind = FindingKind::no_pattern;
         d.findings.push_back(seen);
         return true;
       }}};
}

std::vector<Contradiction> contradictions_to_try() {
  std::vector<Contradiction> all;
  for (auto topic :
       {contradictory_papers, contradictory_times, contradictory_heats, contradictory_states,
        contradictory_trails, contradictory_findings}) {
    for (Contradiction& one : topic()) all.push_back(std::move(one));
  }
  return all;
}

}  // namespace

TEST_CASE("a record that contradicts itself gets no certificate, whatever the blade") {
  int records = 0;
  for (const char* base : bases)
    for (const Contradiction& contradiction : contradictions_to_try()) {
      Dossier d = blade_called(base);
      REQUIRE(compose(d).may_issue());
      if (!contradiction.change(d)) continue;
      ++records;
      INFO(base << ": " << contradiction.name);
      CHECK_FALSE(compose(d).may_issue());
      CHECK_FALSE(compose(d).blocks.empty());
    }
  CHECK(records >= 200);
}

TEST_CASE(
    "a hamon that was seen before the quench, or only through a stencil, is none of this blade's") {
  Dossier d = hamon_blade();
  REQUIRE(granted(d, Claim::hamon));
  SECTION("seen before the hardening that it carries") {
    d.findings[0].seen = clock(8);
    CHECK(refused(d, Claim::hamon, "after the hardening that the blade carries"));
    CHECK_FALSE(granted(d, Claim::differential));
  }
  SECTION("seen after an etch, where an image was etched through a resist") {
    add(d, Operation::etch, clock(20, 21), clock(20, 25)).etch =
        Etch{EtchPurpose::image, "ferric chloride", "a vinyl stencil"};
    REQUIRE(granted(d, Claim::hamon));
    d.findings[0].after = SeenAfter::etch;
    CHECK(refused(d, Claim::hamon, "an image was etched on this blade through a resist"));
  }
}

TEST_CASE("a correction of a printed fact is told, with what stood there first, when and why") {
  using namespace date::literals;
  Dossier d = bar_blade();
  BenchEntry& wrong = line(d, Operation::temper);
  BenchEntry right = wrong;
  wrong.superseded = true;
  wrong.superseded_on = 2026_y / 11 / 9;
  wrong.superseded_why = "read the wrong line of the card";
  right.number = 95;
  right.corrects = wrong.number;
  SECTION("a hold") {
    wrong.heat->hold = std::chrono::hours(1);
    d.log.insert(d.log.begin() + (&wrong - d.log.data()) + 1, right);
    CHECK(told(d, "Corrected on Mon 9 Nov 2026, temper 1, hold: first written as 1 h. Reason: read "
                  "the wrong line of the card."));
    CHECK(compose(d).may_issue());
  }
  SECTION("a note changes nothing that is printed") {
    right.note = "slow cooling";
    d.log.insert(d.log.begin() + (&wrong - d.log.data()) + 1, right);
    CHECK_FALSE(told(d, "Corrected on"));
  }
  SECTION("a line struck out") {
    BenchEntry cycle = right;
    cycle.number = 96;
    cycle.operation = Operation::normalize;
    cycle.superseded = true;
    cycle.superseded_on = 2026_y / 11 / 9;
    cycle.superseded_why = "another blade";
    cycle.corrects.reset();
    wrong.superseded = false;
    wrong.superseded_on.reset();
    d.log.push_back(cycle);
    CHECK(told(d, "Struck out on Mon 9 Nov 2026: normalize. Reason: another blade."));
  }
}

TEST_CASE("a correction outside the bench log is told, and its reason read like any text") {
  using namespace date::literals;
  Dossier d = bar_blade();
  d.corrections.push_back({"melt number of lot 5", "Q44", false, 2026_y / 11 / 9, "misread"});
  CHECK(told(d, "melt number of lot 5: first written as Q44. Reason: misread."));
  d.corrections[0].why = "it was damascus";
  CHECK_FALSE(compose(d).may_issue());
}
