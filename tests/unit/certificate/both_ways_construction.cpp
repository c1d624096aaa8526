// SPDX-License-Identifier: MIT
#include "both_ways.h"
#include "record_changes.h"

namespace tangmark::certificate::sample {
namespace {

Billet& billet(Dossier& d) {
  return d.steel.billets.front();
}
void drop_stages(Dossier& d, StageWork work) {
  std::erase_if(billet(d).stages, [&](const WeldStage& stage) { return stage.work == work; });
}
void lose_the_mark(Dossier& d) {
  d.steel.pieces.back().identity = Identity::gap;
}
void untie(Dossier& d) {
  d.steel.blade_piece.reset();
}
void welded_elsewhere(Dossier& d) {
  for (WeldStage& stage : billet(d).stages) stage.hand = {Whose::outside, "a smith of the hills"};
}

std::vector<Without> of_a_welded_billet() {
  return {{"no piece", untie},
          {"no stack", [](Dossier& d) { drop_stages(d, StageWork::stack); }},
          {"no weld", [](Dossier& d) { drop_stages(d, StageWork::weld); }},
          {"the last stack never welded", [](Dossier& d) { billet(d).stages.pop_back(); }},
          {"a piece that lost its mark", lose_the_mark},
          {"a constituent that is not on record", [](Dossier& d) { d.steel.lots.pop_back(); }}};
}

BothWays welded_here() {
  BothWays one{Claim::pattern_welded, "a billet of two steels", pattern_blade(),
               of_a_welded_billet()};
  one.withouts.push_back(
      {"one steel only", [](Dossier& d) { billet(d).stages[0].parts.resize(1); }});
  one.withouts.push_back({"welded by an outside smith", welded_elsewhere});
  return one;
}

BothWays counted_layers() {
  BothWays one{Claim::layers, "a billet of two steels", pattern_blade(), of_a_welded_billet()};
  one.withouts.push_back({"one layer only", [](Dossier& d) {
                            billet(d).stages.resize(2);
                            billet(d).stages[0].parts = {{{"17-2"}, 1, Role::layer}};
                          }});
  one.withouts.push_back(
      {"a cut into no pieces", [](Dossier& d) { billet(d).stages[2].pieces = 0; }});
  return one;
}

BothWays bought_ready_welded() {
  return {Claim::pattern_welded_bought,
          "a bar bought as pattern-welded",
          bought_pattern_blade(),
          {{"no piece", untie},
           {"sold as one steel",
            [](Dossier& d) { d.steel.lots[0].sold_as = SoldAs::one_steel; }},
           {"nobody who sold it", [](Dossier& d) { d.steel.lots[0].supplier.clear(); }},
           {"a piece that lost its mark", lose_the_mark}}};
}

BothWays welded_by_a_smith() {
  Dossier d = pattern_blade();
  welded_elsewhere(d);
  return {Claim::pattern_welded_bought,
          "a billet welded by an outside smith",
          std::move(d),
          {{"no piece", untie},
           {"the last stack never welded", [](Dossier& d2) { billet(d2).stages.pop_back(); }},
           {"welded here after all",
            [](Dossier& d2) {
              for (WeldStage& stage : billet(d2).stages) stage.hand = {};
            }},
           {"a piece that lost its mark", lose_the_mark}}};
}

BothWays core_and_sides() {
  BothWays one{Claim::laminated, "a core between two sides", laminated_blade(),
               of_a_welded_billet()};
  one.withouts.push_back(
      {"no core", [](Dossier& d) { billet(d).stages[0].parts[0].role = Role::layer; }});
  one.withouts.push_back(
      {"no sides", [](Dossier& d) { billet(d).stages[0].parts.resize(1); }});
  return one;
}

BothWays bought_laminated() {
  Dossier d = bar_blade();
  d.steel.lots[0].sold_as = SoldAs::laminated;
  return {Claim::laminated,
          "a bar bought as laminated",
          std::move(d),
          {{"no piece", untie},
           {"sold as one steel",
            [](Dossier& d2) { d2.steel.lots[0].sold_as = SoldAs::one_steel; }},
           {"nobody who sold it", [](Dossier& d2) { d2.steel.lots[0].supplier.clear(); }},
           {"a piece that lost its mark", lose_the_mark}}};
}

}  // namespace

std::vector<BothWays> both_ways_of_construction() {
  return {welded_here(),       counted_layers(), bought_ready_welded(),
          welded_by_a_smith(), core_and_sides(), bought_laminated()};
}

}  // namespace tangmark::certificate::sample
