// SPDX-License-Identifier: MIT
#include "both_ways.h"
#include "record_changes.h"

namespace tangmark::certificate::sample {
namespace {

void readings(Dossier& d, const std::function<void(HardnessReading&)>& change) {
  for (HardnessReading& reading : d.hardness) change(reading);
}
Quench& quench(Dossier& d) {
  return *line(d, Operation::harden).quench;
}
Cold& cold(Dossier& d) {
  return *line(d, Operation::sub_zero).cold;
}
void by_another_hand(Dossier& d, Operation operation) {
  line(d, operation).hand = {Whose::shop_hand, "a helper"};
}
void add_outside(Dossier& d, OutsideKind kind, const char* what) {
  OutsideWork work;
  work.kind = kind;
  work.what = what;
  work.by = "a service in town";
  d.outside.push_back(work);
}
void not_tempered(Dossier& d) {
  drop(d, Operation::temper);
}

std::vector<BothWays> of_shape() {
  Dossier outside = bar_blade();
  add_outside(outside, OutsideKind::sheath, "sheath");
  return {
      {Claim::forged,
       "a forged blade",
       pattern_blade(),
       {{"no forging", [](Dossier& d) { drop(d, Operation::forge); }},
        {"forging superseded", [](Dossier& d) { supersede(d, Operation::forge); }}}},
      {Claim::stock_removal,
       "a ground blade",
       bar_blade(),
       {{"no cutting and no grinding",
         [](Dossier& d) {
           drop(d, Operation::profile);
           drop(d, Operation::rough_grind);
           drop(d, Operation::finish_grind);
         }},
        {"a forging among it",
         [](Dossier& d) { line(d, Operation::rough_grind).operation = Operation::forge; }}}},
      {Claim::outside_work,
       "a blade with a sheath from outside",
       std::move(outside),
       {{"none on record", [](Dossier& d) { d.outside.clear(); }},
        {"nobody named", [](Dossier& d) { d.outside[0].by.clear(); }},
        {"not said what", [](Dossier& d) { d.outside[0].what.clear(); }}}}};
}

BothWays alone() {
  return {Claim::sole_author,
          "a blade of one hand",
          bar_blade(),
          {{"no shaping logged",
            [](Dossier& d) {
              drop(d, Operation::profile);
              drop(d, Operation::rough_grind);
              drop(d, Operation::finish_grind);
            }},
           {"no hardening logged", [](Dossier& d) { drop(d, Operation::harden); }},
           {"no temper logged", not_tempered},
           {"no handle work logged", [](Dossier& d) { drop(d, Operation::handle); }},
           {"ground by a helper", [](Dossier& d) { by_another_hand(d, Operation::rough_grind); }},
           {"hardened by a helper", [](Dossier& d) { by_another_hand(d, Operation::harden); }},
           {"heat treated outside",
            [](Dossier& d) { add_outside(d, OutsideKind::heat_treatment, "hardened"); }},
           {"a sheath from outside",
            [](Dossier& d) { add_outside(d, OutsideKind::sheath, "sheath"); }},
           {"a bar bought ready welded",
            [](Dossier& d) { d.steel.lots[0].sold_as = SoldAs::laminated; }},
           {"no maker", [](Dossier& d) { d.maker.clear(); }}}};
}

std::vector<BothWays> of_heat() {
  return {{Claim::heat_treatment,
           "a blade hardened and tempered here",
           bar_blade(),
           {{"no hardening", [](Dossier& d) { drop(d, Operation::harden); }},
            {"hardening superseded", [](Dossier& d) { supersede(d, Operation::harden); }},
            {"no temper", not_tempered}}},
          {Claim::sub_zero,
           "a blade cooled at -196 °C",
           stainless_blade(),
           {{"no cold step", [](Dossier& d) { drop(d, Operation::sub_zero); }},
            {"cold step superseded", [](Dossier& d) { supersede(d, Operation::sub_zero); }},
            {"no temperature", [](Dossier& d) { cold(d).temperature.reset(); }},
            {"no time", [](Dossier& d) { cold(d).time.reset(); }},
            {"zero, not below", [](Dossier& d) { cold(d).temperature = Temperature::celsius(0); }},
            {"no quench before it", [](Dossier& d) { drop(d, Operation::harden); }}}}};
}

std::vector<Without> of_a_differential_quench() {
  return {{"no quench logged", [](Dossier& d) { line(d, Operation::harden).quench.reset(); }},
          {"no clay", [](Dossier& d) { quench(d).clay = false; }},
          {"a quench in air", [](Dossier& d) { quench(d).still_air = true; }},
          {"a steel that hardens in air",
           [](Dossier& d) { d.steel.lots[0].facts->hardens_in = HardensIn::air; }},
          {"no line seen", [](Dossier& d) { d.findings.clear(); }},
          {"the line superseded",
           [](Dossier& d) { supersede_finding(d, FindingKind::hamon_seen); }},
          {"the line seen otherwise than after etch or polish",
           [](Dossier& d) { d.findings[0].after = SeenAfter::other; }},
          {"the line seen before the quench", [](Dossier& d) { d.findings[0].seen = clock(8); }}};
}

BothWays soft_back_by_readings() {
  Dossier d = hamon_blade();
  d.findings.clear();
  d.hardness[0].place = "spine";
  d.hardness[0].tenths = 450;
  return {Claim::differential,
          "an edge harder than its back by readings",
          std::move(d),
          {{"readings too near each other", [](Dossier& d2) { d2.hardness[0].tenths = 600; }},
           {"readings on a coupon",
            [](Dossier& d2) {
              readings(d2, [](HardnessReading& r) { r.on = MeasuredOn::coupon; });
            }},
           {"readings superseded",
            [](Dossier& d2) { readings(d2, [](HardnessReading& r) { r.superseded = true; }); }},
           {"no clay", [](Dossier& d2) { quench(d2).clay = false; }}}};
}

BothWays measured() {
  const auto each = [](std::function<void(HardnessReading&)> change) {
    return [change](Dossier& d) { readings(d, change); };
  };
  return {Claim::hardness,
          "a blade measured twice",
          bar_blade(),
          {{"no reading", [](Dossier& d) { d.hardness.clear(); }},
           {"readings superseded", each([](HardnessReading& r) { r.superseded = true; })},
           {"readings before the last heat",
            each([](HardnessReading& r) { r.after = AfterHeat::earlier_one; })},
           {"readings of no known time", each([](HardnessReading& r) {
              r.after = AfterHeat::not_noted;
              r.taken.reset();
            })},
           {"no place", each([](HardnessReading& r) { r.place.clear(); })},
           {"no tester", each([](HardnessReading& r) { r.tester.clear(); })}}};
}

BothWays known_wood() {
  return {Claim::handle_species,
          "scales of a known wood",
          bar_blade(),
          {{"no handle", [](Dossier& d) { d.handle.clear(); }},
           {"no material", [](Dossier& d) { d.handle[0].material.clear(); }},
           {"no species", [](Dossier& d) { d.handle[0].species.reset(); }},
           {"an empty species", [](Dossier& d) { d.handle[0].species = ""; }},
           {"no source", [](Dossier& d) { d.handle[0].source.reset(); }},
           {"nobody who answers for it",
            [](Dossier& d) { d.handle[0].evidence = SpeciesEvidence::not_known; }}}};
}

}  // namespace

std::vector<BothWays> both_ways_of_work() {
  std::vector<BothWays> all = of_shape();
  for (BothWays& one : of_heat()) all.push_back(std::move(one));
  all.push_back(alone());
  all.push_back({Claim::hamon, "a clay quench with a line", hamon_blade(),
                 of_a_differential_quench()});
  all.push_back({Claim::differential, "a clay quench with a line", hamon_blade(),
                 of_a_differential_quench()});
  all.push_back(soft_back_by_readings());
  all.push_back(measured());
  all.push_back(known_wood());
  return all;
}

}  // namespace tangmark::certificate::sample
