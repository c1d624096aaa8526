// SPDX-License-Identifier: MIT
// Planning all kilns anew, as a difference to what is booked.
#include <chrono>

#include "db/store/plan_case.h"
#include "domain/kiln/plan_json.h"
#include "domain/kiln/plan_search.h"
#include "gui/desk/kiln_desk.h"

namespace tangmark::desk {
namespace {

using What = db::PlanDifference::What;

db::FiringRow row_of(const db::ShopCase& shop, const kiln::Firing& firing) {
  db::FiringRow row;
  row.number = firing.number;
  row.kiln_id = firing.kiln.row();
  for (const auto& [name, id] : shop.kilns) {
    if (id == firing.kiln) row.kiln = name;
  }
  row.kind = word_of(firing.kind);
  row.state = word_of(firing.state);
  row.set = firing.set;
  row.soak = firing.soak;
  row.rest = firing.rest;
  row.cool_per_hour = firing.cool_per_h;
  row.cool_to = firing.cool_to;
  row.heat_from = firing.heat_from;
  row.starts_at = firing.starts_at;
  row.ends_at = firing.ends_at;
  row.energy = firing.energy;
  for (const kiln::FiringBlade& member : firing.blades) {
    for (const auto& [name, chain] : shop.chains) {
      if (chain.blade != member.blade) continue;
      const auto step = std::find(chain.steps.begin(), chain.steps.end(), member.step);
      const std::string operation =
          step == chain.steps.end()
              ? row.kind
              : chain.names[static_cast<std::size_t>(step - chain.steps.begin())];
      row.members.push_back({std::stoll(name), operation, {}, {}, {}, {}});
    }
  }
  return row;
}

std::string counted(std::size_t n, const std::string& one, const std::string& many) {
  return std::to_string(n) + " " + (n == 1 ? one : many);
}

void add_changes(const db::ShopCase& shop, const db::PlanDifference& difference, KilnProposal& proposal) {
  std::size_t added = 0, moved = 0, dropped = 0, kept = 0;
  for (const auto& change : difference.changes) {
    ProposedFiring proposed;
    proposed.firing = row_of(shop, change.firing);
    if (change.before) proposed.number = change.before->number;
    switch (change.what) {
      case What::kept: ++kept; continue;
      case What::moved: ++moved; break;
      case What::dropped: ++dropped; proposed.dropped = true; break;
      case What::added:
        proposed.number.reset();
        proposed.firing.number = -static_cast<std::int64_t>(++added);  // until it is booked
        break;
    }
    if (proposed.number) proposed.firing.number = *proposed.number;
    proposal.firings.push_back(std::move(proposed));
  }
  proposal.title = proposal.firings.empty()
                       ? "What is booked is as good as any plan found"
                       : "Proposed: " + counted(added, "firing added", "firings added") + ", " +
                             std::to_string(moved) + " moved, " + std::to_string(dropped) + " dropped";
  if (kept > 0) {
    proposal.sentences.push_back(counted(kept, "booked firing stays", "booked firings stay") + " where " +
                                 (kept == 1 ? "it is." : "they are."));
  }
}

void add_lateness(const db::PlanDifference& difference, KilnProposal& proposal) {
  for (const auto& late : difference.lateness) {
    std::string sentence = db::in_words(late) + ".";
    sentence.front() = 'B';
    proposal.sentences.push_back(std::move(sentence));
  }
}

}  // namespace

KilnProposal plan_kilns(const Sight& sight, double seconds, const std::atomic<bool>& stop) {
  const db::ShopCase shop = db::shop_case(sight.shop, sight.now, db::Keep::locked_only);
  kiln::SearchLimits limits;
  const auto begun = std::chrono::steady_clock::now();
  limits.time_used = [begun, seconds, &stop] {
    if (stop) return 1.0;
    const std::chrono::duration<double> used = std::chrono::steady_clock::now() - begun;
    return used.count() / seconds;
  };
  const kiln::PlanAnswer answer = kiln::plan_firings(shop.a_case, limits, 1);
  const db::PlanDifference difference = db::difference(shop, answer.plan);
  KilnProposal proposal;
  add_changes(shop, difference, proposal);
  add_lateness(difference, proposal);
  for (const kiln::Unplaced& blade : answer.unplaced) {
    proposal.sentences.push_back("Blade " + blade.blade + " finds no place: " + blade.why + " " + blade.change);
  }
  for (const std::string& sentence : shop.left_aside) proposal.sentences.push_back(sentence);
  proposal.figures = {{"Energy", to_text(difference.energy_before), "", to_text(difference.energy_after)},
                      {"Your hands", to_text(difference.hands_on_before), "", to_text(difference.hands_on_after)}};
  proposal.take = {"accept_plan",
                   {{"from", to_stored(shop.origin)}, {"plan", kiln::write_firing_plan(answer.plan)}}};
  return proposal;
}

}  // namespace tangmark::desk
