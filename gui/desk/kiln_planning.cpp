// SPDX-License-Identifier: MIT
// Planning all kilns anew, as a difference to what is booked.
#include <algorithm>
#include <chrono>

#include "db/store/kiln_fit_store.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_difference.h"
#include "domain/kiln/plan_json.h"
#include "domain/kiln/replanning.h"
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

Money cost_of(const Sight& sight, Energy energy) {
  return scaled_half_even(sight.settings.electricity_per_kwh, energy.joules(), 3'600'000);
}

Money money_of(const Sight& sight, std::int64_t millicents) {
  return Money((millicents + 500) / 1000, sight.settings.currency);
}

void add_changes(const db::ShopCase& shop, const db::PlanDifference& difference,
                 KilnProposal& proposal) {
  std::int64_t added = 0;
  for (const auto& change : difference.changes) {
    if (change.what == What::kept) continue;
    ProposedFiring proposed;
    proposed.firing = row_of(shop, change.firing);
    for (const db::ShopCase::Movable& was : shop.movable)
      if (proposed.firing.kiln.empty() && change.before && was.firing.id == change.before->id)
        proposed.firing.kiln = was.kiln;  // of a kiln that is out of use
    if (change.before) proposed.number = change.before->number;
    proposed.dropped = change.what == What::dropped;
    proposed.stays = change.what == What::reloaded;
    proposed.why = change.why;
    proposed.firing.number = proposed.number.value_or(-++added);  // until it is booked
    proposal.firings.push_back(std::move(proposed));
  }
  proposal.title = proposal.firings.empty() ? "What is booked is as good as any plan found"
                                            : "Proposed: " + db::counted_changes(difference);
}

void add_figures(const Sight& sight, const db::PlanDifference& difference, KilnProposal& proposal) {
  const auto energy = [&](Energy e) { return to_text(e) + ", " + to_text(cost_of(sight, e)); };
  proposal.figures = {
      {"Energy", energy(difference.energy_before), "", energy(difference.energy_after)},
      {"Your hands", to_text(difference.hands_on_before), "", to_text(difference.hands_on_after)}};
  if (difference.moved > 0)
    proposal.sentences.push_back(
        std::to_string(difference.moved) +
        (difference.moved == 1 ? " booked firing does" : " booked firings do") +
        " not stay where planned; each is reckoned as " +
        to_text(sight.settings.cost_of_moved_firing) + ", which you set in the shop place.");
}

void add_kilns(const Sight& sight, const db::ShopCase& shop, KilnProposal& proposal) {
  std::vector<std::string> plates;
  for (const std::string& name : shop.plate_kilns) plates.push_back("the " + name);
  if (!plates.empty())
    proposal.sentences.push_back(sentence_case(listed(plates)) +
                                 (plates.size() == 1 ? " is" : " are") +
                                 " planned by plate values: no record is fitted.");
  for (const kiln::KeptKiln& k : db::all_kilns(sight.shop))
    if (shop.kilns.contains(k.name) && k.values_from != "plate")
      proposal.sentences.push_back(
          db::values_in_words(sight.shop, k, sight.settings.temperature_unit));
}

// Best cost and what no plan can be under, as far as the search has come.
std::string how_far(const Sight& sight, const kiln::SearchProgress& progress) {
  std::string sentence = "Best so far " + to_text(money_of(sight, progress.best_mc)) +
                         "; no plan can be under " + to_text(money_of(sight, progress.bound_mc)) +
                         ".";
  if (progress.unplaced > 0)
    sentence += " " + std::to_string(progress.unplaced) +
                (progress.unplaced == 1 ? " blade has" : " blades have") + " no place yet.";
  return sentence;
}

kiln::Replanned search(const Sight& sight, const db::ShopCase& shop, double seconds,
                       const Going& going) {
  kiln::SearchLimits limits;
  const auto begun = std::chrono::steady_clock::now();
  limits.time_used = [begun, seconds, &going] {
    if (going.stop) return 1.0;
    const std::chrono::duration<double> used = std::chrono::steady_clock::now() - begun;
    return used.count() / seconds;
  };
  limits.progress = [&](const kiln::SearchProgress& progress) {
    going.tell(how_far(sight, progress));
  };
  limits.words = shop.words();
  return kiln::replan_firings(shop.a_case, shop.booked(), limits, 1);
}

}  // namespace

KilnProposal plan_kilns(const Sight& sight, double seconds, const Going& going) {
  const db::ShopCase shop = db::shop_case(sight.shop, sight.now, db::Keep::locked_only);
  const kiln::Replanned found = search(sight, shop, seconds, going);
  const db::PlanDifference difference = db::difference(shop, found.answer.plan);
  KilnProposal proposal;
  add_changes(shop, difference, proposal);
  for (const kiln::Unplaced& blade : found.answer.unplaced)
    proposal.sentences.push_back("Blade " + blade.blade + " finds no place: " + blade.why + " " +
                                 blade.change);
  for (const auto& shift : difference.shifts)
    proposal.sentences.push_back(db::in_words(shift, sight.zone()));
  add_figures(sight, difference, proposal);
  for (const std::string& sentence : shop.left_aside) proposal.sentences.push_back(sentence);
  if (found.answer.proven) proposal.sentences.push_back("No better plan exists.");
  add_kilns(sight, shop, proposal);
  proposal.take = {
      "accept_plan",
      {{"from", to_stored(shop.origin)}, {"plan", kiln::write_firing_plan(found.answer.plan)}}};
  return proposal;
}

}  // namespace tangmark::desk
