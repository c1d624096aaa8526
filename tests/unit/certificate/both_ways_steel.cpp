// SPDX-License-Identifier: MIT
#include "both_ways.h"
#include "record_changes.h"

namespace tangmark::certificate::sample {
namespace {

Lot& lot(Dossier& d) {
  return d.steel.lots.front();
}
Melt& melt(Dossier& d) {
  return d.steel.melts.front();
}
void lose_the_mark(Dossier& d) {
  d.steel.pieces.back().identity = Identity::gap;
}
void untie(Dossier& d) {
  d.steel.blade_piece.reset();
}

BothWays grade_of_bar() {
  return {
      Claim::grade,
      "a bar bought by label",
      bar_blade(),
      {{"no piece", untie},
       {"no grade", [](Dossier& d) { lot(d).grade.reset(); }},
       {"no paper and nobody's word", [](Dossier& d) { lot(d).document = SupplyDocument::none; }},
       {"found steel", [](Dossier& d) { lot(d).recycled_from = "a leaf spring"; }},
       {"a piece that lost its mark", lose_the_mark},
       {"an analysis outside the limits",
        [](Dossier& d) {
          lot(d).analysis = Analysis{{"C", Share::percent(2)}};
        }},
       {"a mark of another melt", [](Dossier& d) { lot(d).mark = BarMark::differs; }}}};
}

BothWays analysis_of_bar() {
  return {Claim::analysis,
          "a bar with an inspection certificate",
          stainless_blade(),
          {{"no piece", untie},
           {"no analysis", [](Dossier& d) { lot(d).analysis.reset(); }},
           {"an empty analysis", [](Dossier& d) { lot(d).analysis->clear(); }},
           {"a label, which has no results",
            [](Dossier& d) { lot(d).document = SupplyDocument::label; }},
           {"a declaration, which has no results",
            [](Dossier& d) { lot(d).document = SupplyDocument::type_2_1; }},
           {"a piece that lost its mark", lose_the_mark},
           {"an element outside its limits",
            [](Dossier& d) { lot(d).analysis->at("Cr") = Share::percent(5); }}}};
}

BothWays not_identified() {
  return {Claim::unidentified,
          "a spring that nobody answers for",
          spring_blade(),
          {{"a laboratory that answers for it", [](Dossier& d) {
              const Lot known = bar_blade().steel.lots.front();
              lot(d).grade = known.grade;
              lot(d).facts = known.facts;
              lot(d).analysis = Analysis{{"C", Share::millionths(9500)},
                                         {"Mn", Share::millionths(4000)}};
              lot(d).analysis_source = AnalysisSource::laboratory;
            }}}};
}

std::vector<Without> parts_of_crucible_record() {
  return {{"no piece", untie},
          {"no charge", [](Dossier& d) { melt(d).charge.clear(); }},
          {"a charge that was not weighed", [](Dossier& d) { melt(d).charge[0].mass = Mass(); }},
          {"no lining", [](Dossier& d) { melt(d).lining.reset(); }},
          {"no peak", [](Dossier& d) { melt(d).peak.reset(); }},
          {"no time at heat", [](Dossier& d) { melt(d).time.reset(); }},
          {"no ingot mass", [](Dossier& d) { melt(d).ingot_mass.reset(); }},
          {"smelted, not melted", [](Dossier& d) { melt(d).kind = MeltKind::bloomery; }},
          {"a piece that lost its mark", lose_the_mark}};
}

BothWays wootz_of_ingot() {
  BothWays one{Claim::wootz, "an ingot of a crucible", wootz_blade(), parts_of_crucible_record()};
  one.withouts.push_back({"no carbides seen", [](Dossier& d) { d.findings.clear(); }});
  one.withouts.push_back({"carbides superseded", [](Dossier& d) {
                            supersede_finding(d, FindingKind::pattern_carbides);
                          }});
  one.withouts.push_back({"the pattern seen otherwise than after an etch",
                          [](Dossier& d) { d.findings[0].after = SeenAfter::other; }});
  return one;
}

BothWays smelted_from_ore() {
  return {Claim::smelted,
          "a bloom",
          smelted_blade(),
          {{"no piece", untie},
           {"no charge", [](Dossier& d) { melt(d).charge.clear(); }},
           {"a charge that was not weighed", [](Dossier& d) { melt(d).charge[1].mass = Mass(); }},
           {"nothing weighed of what was won", [](Dossier& d) { melt(d).ingot_mass.reset(); }},
           {"melted in a crucible", [](Dossier& d) { melt(d).kind = MeltKind::crucible; }},
           {"a piece that lost its mark", lose_the_mark}}};
}

BothWays banded_bar() {
  return {Claim::carbide_banded,
          "a cycled bar of 52100",
          banded_blade(),
          {{"no piece", untie},
           {"no grade", [](Dossier& d) { lot(d).grade.reset(); }},
           {"no element that bands",
            [](Dossier& d) { lot(d).facts->limits = {{"C", {Share::millionths(4000), {}}}}; }},
           {"carbon at the threshold, not above",
            [](Dossier& d) { lot(d).facts->limits = {{"C", {Share::millionths(7600), {}}}}; }},
           {"no thermal cycles", [](Dossier& d) { drop(d, Operation::thermal_cycle); }},
           {"cycles superseded", [](Dossier& d) { supersede(d, Operation::thermal_cycle); }},
           {"no etch", [](Dossier& d) { drop(d, Operation::etch); }},
           {"an etch of the maker's mark alone",
            [](Dossier& d) { line(d, Operation::etch).etch->purpose = EtchPurpose::makers_mark; }},
           {"no bands seen", [](Dossier& d) { d.findings.clear(); }},
           {"a bar bought as pattern-welded",
            [](Dossier& d) { lot(d).sold_as = SoldAs::pattern_welded; }}}};
}

BothWays etched_through_a_stencil() {
  return {Claim::etched_image,
          "a bar with an etched image",
          image_blade(),
          {{"no piece", untie},
           {"no etch", [](Dossier& d) { drop(d, Operation::etch); }},
           {"no stencil", [](Dossier& d) { line(d, Operation::etch).etch->resist.reset(); }},
           {"an etch that shows the steel",
            [](Dossier& d) { line(d, Operation::etch).etch->purpose = EtchPurpose::show_steel; }},
           {"a bar bought as pattern-welded",
            [](Dossier& d) { lot(d).sold_as = SoldAs::pattern_welded; }}}};
}

}  // namespace

std::vector<BothWays> both_ways_of_steel() {
  return {grade_of_bar(),
          analysis_of_bar(),
          not_identified(),
          {Claim::crucible, "an ingot of a crucible", wootz_blade(), parts_of_crucible_record()},
          wootz_of_ingot(),
          smelted_from_ore(),
          banded_bar(),
          etched_through_a_stencil()};
}

std::vector<BothWays> both_ways() {
  std::vector<BothWays> all = both_ways_of_steel();
  for (auto more : {both_ways_of_construction, both_ways_of_work})
    for (BothWays& one : more()) all.push_back(std::move(one));
  return all;
}

}  // namespace tangmark::certificate::sample
