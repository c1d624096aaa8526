// SPDX-License-Identifier: MIT
// Shop records that each lack or contradict one piece of evidence: no certificate claims what is
// missing, and none refuses what is still proven. What each claim rests on is written here from the
// evidence table of the design, not from the code under test.
#include <catch2/catch.hpp>

#include <functional>
#include <set>

#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

using Claims = std::set<Claim>;

constexpr std::array bases = {"bar",   "hamon",    "pattern", "bought",    "laminated", "wootz",
                              "banded", "smelted", "image",   "stainless", "spring"};

Claims stated_in(const Dossier& d) {
  Claims claims;
  // "Not measured." stands among the statements, at the lowest level, and claims nothing.
  for (const Statement& one : compose(d).statements)
    if (one.claim != Claim::hardness || one.level != Level::e) claims.insert(one.claim);
  return claims;
}

/// One change of a record. `change` answers whether the record had what it takes away.
struct Removal {
  const char* name;
  std::function<bool(Dossier&)> change;
  Claims lost;              ///< must no longer be stated
  Claims may_change = {};   ///< may be stated otherwise, as what takes the place of the lost
};

bool drop_if(Dossier& d, Operation operation) {
  const std::size_t before = d.log.size();
  drop(d, operation);
  return d.log.size() < before;
}

bool drop_finding(Dossier& d, FindingKind kind) {
  return std::erase_if(d.findings, [&](const Finding& f) { return f.kind == kind; }) > 0;
}

bool supersede_finding(Dossier& d, FindingKind kind) {
  bool any = false;
  for (Finding& f : d.findings)
    if (f.kind == kind) any = f.superseded = true;
  return any;
}

bool supersede(Dossier& d, Operation operation) {
  bool any = false;
  for (BenchEntry& entry : d.log)
    if (entry.operation == operation) any = entry.superseded = true;
  return any;
}

template <class Change>
std::function<bool(Dossier&)> each_reading(Change change) {
  return [change](Dossier& d) {
    for (HardnessReading& reading : d.hardness) change(reading);
    return !d.hardness.empty();
  };
}

template <class Change>
std::function<bool(Dossier&)> each_lot(Change change) {
  return [change](Dossier& d) {
    bool any = false;
    for (Lot& lot : d.steel.lots) any = change(lot) || any;
    return any;
  };
}

template <class Change>
std::function<bool(Dossier&)> of_crucible(Change change) {
  return [change](Dossier& d) {
    if (d.steel.melts.empty() || d.steel.melts[0].kind != MeltKind::crucible) return false;
    change(d.steel.melts[0]);
    return true;
  };
}

const Claims of_steel = {Claim::grade,     Claim::analysis,       Claim::pattern_welded,
                         Claim::layers,    Claim::laminated,      Claim::pattern_welded_bought,
                         Claim::crucible,  Claim::wootz,          Claim::smelted,
                         Claim::carbide_banded};
const Claims shape = {Claim::forged, Claim::stock_removal};
const Claims pattern_words = {Claim::grade, Claim::unidentified, Claim::laminated,
                              Claim::etched_image};

std::vector<Removal> removals() {
  using enum Claim;
  std::vector<Removal> all = {
      {"no piece", [](Dossier& d) { return d.steel.blade_piece = std::nullopt, true; }, of_steel,
       {unidentified, sole_author, etched_image, hamon, differential}},
      {"no analysis", each_lot([](Lot& l) { return std::exchange(l.analysis, {}).has_value(); }),
       {analysis}, {grade}},
      {"no grade", each_lot([](Lot& l) { return std::exchange(l.grade, {}).has_value(); }),
       {grade},
       {unidentified, analysis, pattern_welded, laminated, carbide_banded, layers, hamon,
        differential}},
      {"no forging", [](Dossier& d) { return drop_if(d, Operation::forge); }, {forged},
       {stock_removal, sole_author}},
      {"forging superseded", [](Dossier& d) { return supersede(d, Operation::forge); }, {forged},
       {stock_removal, sole_author}},
      {"no grinding",
       [](Dossier& d) {
         const bool profiled = drop_if(d, Operation::profile);
         const bool rough = drop_if(d, Operation::rough_grind);
         return drop_if(d, Operation::finish_grind) && profiled && rough;
       },
       {stock_removal}, {sole_author, forged}},
      {"a forging among the grinding",
       [](Dossier& d) {
         const auto before = stated_in(d);
         BenchEntry forge;
         forge.number = 80;
         forge.operation = Operation::forge;
         forge.from = clock(5);
         forge.to = clock(5, 30);
         d.log.insert(d.log.begin(), forge);
         return before.contains(stock_removal);
       },
       {stock_removal}, {forged}},
      {"no weld",
       [](Dossier& d) {
         if (d.steel.billets.empty()) return false;
         std::erase_if(d.steel.billets[0].stages,
                       [](const WeldStage& s) { return s.work == StageWork::weld; });
         return true;
       },
       {pattern_welded, layers, laminated}, {unidentified, grade}},
      {"no stack",
       [](Dossier& d) {
         if (d.steel.billets.empty()) return false;
         std::erase_if(d.steel.billets[0].stages,
                       [](const WeldStage& s) { return s.work == StageWork::stack; });
         return true;
       },
       {pattern_welded, layers, laminated},
       {unidentified, grade, analysis, sole_author, carbide_banded}},
      {"one steel only in the stack",
       [](Dossier& d) {
         if (d.steel.billets.empty()) return false;
         d.steel.billets[0].stages[0].parts.resize(1);
         return true;
       },
       {pattern_welded, laminated}, {unidentified, grade, analysis, layers}},
      {"not sold as pattern-welded",
       each_lot([](Lot& l) {
         return std::exchange(l.sold_as, SoldAs::one_steel) == SoldAs::pattern_welded;
       }),
       {pattern_welded_bought}, {unidentified, grade, layers}},
      {"no charge", of_crucible([](Melt& m) { m.charge.clear(); }), {crucible, wootz},
       {unidentified, grade}},
      {"no lining", of_crucible([](Melt& m) { m.lining.reset(); }), {crucible, wootz},
       {unidentified, grade}},
      {"no peak", of_crucible([](Melt& m) { m.peak.reset(); }), {crucible, wootz},
       {unidentified, grade}},
      {"no time at heat", of_crucible([](Melt& m) { m.time.reset(); }), {crucible, wootz},
       {unidentified, grade}},
      {"no ingot mass", of_crucible([](Melt& m) { m.ingot_mass.reset(); }), {crucible, wootz},
       {unidentified, grade}},
      {"smelted, not melted", of_crucible([](Melt& m) { m.kind = MeltKind::bloomery; }),
       {crucible, wootz}, {smelted, unidentified, grade}},
      {"no carbides seen",
       [](Dossier& d) { return drop_finding(d, FindingKind::pattern_carbides); },
       {wootz, carbide_banded}, {grade}},
      {"carbides superseded",
       [](Dossier& d) { return supersede_finding(d, FindingKind::pattern_carbides); },
       {wootz, carbide_banded}, {grade}},
      {"no etch", [](Dossier& d) { return drop_if(d, Operation::etch); },
       {carbide_banded, etched_image}, {wootz, grade}},
      {"no thermal cycles", [](Dossier& d) { return drop_if(d, Operation::thermal_cycle); },
       {carbide_banded}, {grade}},
      {"cycles superseded", [](Dossier& d) { return supersede(d, Operation::thermal_cycle); },
       {carbide_banded}, {grade}},
      {"no hamon seen", [](Dossier& d) { return drop_finding(d, FindingKind::hamon_seen); },
       {hamon, differential}},
      {"hamon superseded",
       [](Dossier& d) { return supersede_finding(d, FindingKind::hamon_seen); },
       {hamon, differential}},
      {"no clay",
       [](Dossier& d) { return std::exchange(line(d, Operation::harden).quench->clay, false); },
       {hamon, differential}},
      {"no stencil",
       [](Dossier& d) {
         for (BenchEntry& e : d.log)
           if (e.etch && e.etch->purpose == EtchPurpose::image) {
             e.etch->purpose = EtchPurpose::show_steel;
             e.etch->resist.reset();
             return true;
           }
         return false;
       },
       {etched_image}},
      {"no cold step", [](Dossier& d) { return drop_if(d, Operation::sub_zero); }, {sub_zero},
       {heat_treatment}},
      {"cold step superseded", [](Dossier& d) { return supersede(d, Operation::sub_zero); },
       {sub_zero}, {heat_treatment}},
      {"no cold temperature",
       [](Dossier& d) {
         for (BenchEntry& e : d.log)
           if (e.cold) return std::exchange(e.cold->temperature, {}).has_value();
         return false;
       },
       {sub_zero}, {heat_treatment}},
      {"no cold time",
       [](Dossier& d) {
         for (BenchEntry& e : d.log)
           if (e.cold) return std::exchange(e.cold->time, {}).has_value();
         return false;
       },
       {sub_zero}, {heat_treatment}},
      {"no readings", [](Dossier& d) { return !std::exchange(d.hardness, {}).empty(); },
       {hardness}},
      {"readings superseded", each_reading([](HardnessReading& r) { r.superseded = true; }),
       {hardness}},
      {"readings before the last heat",
       each_reading([](HardnessReading& r) { r.after = AfterHeat::earlier_one; }), {hardness}},
      {"readings without place", each_reading([](HardnessReading& r) { r.place.clear(); }),
       {hardness}},
      {"readings without tester", each_reading([](HardnessReading& r) { r.tester.clear(); }),
       {hardness}},
      {"no species",
       [](Dossier& d) { return std::exchange(d.handle[0].species, {}).has_value(); },
       {handle_species}},
      {"hardened elsewhere",
       [](Dossier& d) {
         OutsideWork work;
         work.kind = OutsideKind::heat_treatment;
         work.what = "hardened";
         work.by = "a heat-treat service";
         d.outside.push_back(work);
         return true;
       },
       {sole_author}, {outside_work, heat_treatment}},
      {"ground elsewhere",
       [](Dossier& d) {
         OutsideWork work;
         work.kind = OutsideKind::grinding;
         work.what = "ground";
         work.by = "a grinder";
         d.outside.push_back(work);
         return true;
       },
       {sole_author}, {outside_work, stock_removal}},
  };
  return all;
}

/// Two things on record that cannot both be true, or a state in which nothing may be issued.
struct Contradiction {
  const char* name;
  std::function<bool(Dossier&)> change;
};

std::vector<Contradiction> contradictions_to_try() {
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
      {"mark of another melt", each_lot([](Lot& l) { return l.mark = BarMark::differs, true; })},
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
       [](Dossier& d) { return d.hardness[0].taken = clock(6), true; }},
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

/// Words a maker may wish to print, and the claim that each of them makes.
struct WordOf {
  const char* title;
  Claims any_of;  ///< the word is true when one of these is proven
};

std::vector<WordOf> words_to_try() {
  using enum Claim;
  return {{"Forged knife", {forged}},
          {"Crucible steel knife", {crucible}},
          {"Wootz knife", {wootz}},
          {"Pattern-welded knife", {pattern_welded, pattern_welded_bought}},
          {"Knife with hamon", {hamon}},
          {"Sub-zero treated knife", {sub_zero}},
          {"San mai knife", {laminated}},
          {"Differentially hardened knife", {differential}},
          {"Knife with layers", {layers, pattern_welded_bought}},
          {"Geschmiedetes Messer", {forged}},
          {"Tiegelstahl", {crucible}},
          {"Couteau en acier de creuset", {crucible}}};
}

}  // namespace

TEST_CASE("no certificate claims what one missing piece of evidence bore, none refuses the rest") {
  int records = 0;
  for (const char* base : bases)
    for (const Removal& removal : removals()) {
      Dossier d = blade_called(base);
      const Claims before = stated_in(d);
      if (!removal.change(d)) continue;
      ++records;
      INFO(base << ": " << removal.name);
      const Claims after = stated_in(d);
      for (const Claim claim : removal.lost) {
        INFO("lost " << claim_id(claim));
        CHECK_FALSE(after.contains(claim));
        if (before.contains(claim)) CHECK(missing(asked(d, claim), claim) != nullptr);
      }
      for (const Claim claim : before) {
        if (removal.lost.contains(claim) || removal.may_change.contains(claim)) continue;
        INFO("kept " << claim_id(claim));
        CHECK(after.contains(claim));
      }
    }
  CHECK(records >= 150);
}

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

TEST_CASE("a word is printed exactly where the record bears it") {
  for (const char* base : bases)
    for (const WordOf& word : words_to_try()) {
      Dossier d = blade_called(base);
      const Claims proven = stated_in(d);
      const bool borne = std::any_of(word.any_of.begin(), word.any_of.end(),
                                     [&](Claim claim) { return proven.contains(claim); });
      d.title = word.title;
      INFO(base << ": " << word.title);
      CHECK(compose(d).may_issue() == borne);
    }
}
