// SPDX-License-Identifier: MIT
// Shop records that each lack or contradict one piece of evidence: no certificate claims what is
// missing, and none refuses what is still proven. What each claim rests on is written here from the
// evidence table of the design, not from the code under test.
#include <catch2/catch.hpp>

#include <functional>
#include <set>

#include "record_changes.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

using Claims = std::set<Claim>;

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

const Claims of_steel = {Claim::grade,     Claim::analysis,       Claim::pattern_welded,
                         Claim::layers,    Claim::laminated,      Claim::pattern_welded_bought,
                         Claim::crucible,  Claim::wootz,          Claim::smelted,
                         Claim::carbide_banded};
const Claims shape = {Claim::forged, Claim::stock_removal};
const Claims pattern_words = {Claim::grade, Claim::unidentified, Claim::laminated,
                              Claim::etched_image};

std::vector<Removal> steel_and_shape_removals() {
  using enum Claim;
  return {
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
  };
}

std::vector<Removal> billet_removals() {
  using enum Claim;
  return {
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
  };
}

std::vector<Removal> melt_removals() {
  using enum Claim;
  return {
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
  };
}

std::vector<Removal> pattern_removals() {
  using enum Claim;
  return {
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
  };
}

std::vector<Removal> cold_removals() {
  using enum Claim;
  return {
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
  };
}

std::vector<Removal> reading_removals() {
  using enum Claim;
  return {
      {"no readings", [](Dossier& d) { return !std::exchange(d.hardness, {}).empty(); },
       {hardness}},
      {"readings superseded", each_reading([](HardnessReading& r) { r.superseded = true; }),
       {hardness}},
      {"readings before the last heat",
       each_reading([](HardnessReading& r) { r.after = AfterHeat::earlier_one; }), {hardness}},
      {"readings without place", each_reading([](HardnessReading& r) { r.place.clear(); }),
       {hardness}},
      {"readings of no known time", each_reading([](HardnessReading& r) {
         r.after = AfterHeat::not_noted;
         r.taken.reset();
       }),
       {hardness}},
      {"readings without tester", each_reading([](HardnessReading& r) { r.tester.clear(); }),
       {hardness}},
  };
}

std::vector<Removal> hand_removals() {
  using enum Claim;
  return {
      {"no species",
       [](Dossier& d) { return std::exchange(d.handle[0].species, {}).has_value(); },
       {handle_species}},
      {"no source of the wood",
       [](Dossier& d) { return std::exchange(d.handle[0].source, {}).has_value(); },
       {handle_species}},
      {"nobody who answers for the wood",
       [](Dossier& d) {
         d.handle[0].evidence = SpeciesEvidence::not_known;
         return true;
       },
       {handle_species}},
      {"no handle work", [](Dossier& d) { return drop_if(d, Operation::handle); }, {sole_author}},
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
}

std::vector<Removal> removals() {
  std::vector<Removal> all;
  for (auto topic : {steel_and_shape_removals, billet_removals, melt_removals, pattern_removals,
                     cold_removals, reading_removals, hand_removals}) {
    for (Removal& one : topic()) all.push_back(std::move(one));
  }
  return all;
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
      // What is missing is left out, or told as not known; it is no reason to refuse the rest.
      CHECK(compose(d).may_issue());
      for (const Claim claim : before) {
        if (removal.lost.contains(claim) || removal.may_change.contains(claim)) continue;
        INFO("kept " << claim_id(claim));
        CHECK(after.contains(claim));
      }
    }
  CHECK(records >= 200);
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
