// SPDX-License-Identifier: MIT
// Shop records in which two things cannot both be true, or which are in a state that stops the issue.
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

std::vector<Contradiction> contradictory_states() {
  return {
      {"a piece that is not on record",
       [](Dossier& d) { return d.steel.blade_piece = PieceTag{"99"}, true; }},
      {"a piece that is its own parent",
       [](Dossier& d) { return d.steel.pieces.back().from = d.steel.pieces.back().tag, true; }},
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
       }},
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
  for (auto topic : {contradictory_papers, contradictory_times, contradictory_states}) {
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
  CHECK(records >= 180);
}
