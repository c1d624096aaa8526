// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_annealing.h"

#include <algorithm>
#include <limits>
#include <cmath>
#include <numeric>

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

// In shares of what a firing costs: by how much the estimate of a change may be too high, and by
// how much a change may be too dear while it still spreads.
constexpr double estimate_slack = 0.2;
constexpr double patience = 0.6;
// A minute by which firings are pushed is reckoned as this share of a firing.
constexpr double push_share = 0.002;

std::int64_t part(double share, std::int64_t of) {
  return static_cast<std::int64_t>(share * static_cast<double>(of));
}
}  // namespace

PlanAnnealing::PlanAnnealing(const PlanTables& tables, std::uint64_t seed)
    : tables_(tables), chance_(seed), table_(tables), fitting_(table_, chance_) {}

std::int64_t PlanAnnealing::cost() const {
  return table_.cost_mc() + unplaced_mc * static_cast<std::int64_t>(unplaced_.size());
}

bool PlanAnnealing::movable(int op) const {
  const int b = table_.batch_of(op);
  return b < 0 || !table_.batch(b).locked;
}

void PlanAnnealing::lock_firings() {
  const PlanCase& c = tables_.the_case();
  std::vector<const PlanFiring*> locked;
  for (const PlanFiring& f : c.locked) locked.push_back(&f);
  std::stable_sort(locked.begin(), locked.end(), [](const PlanFiring* a, const PlanFiring* b) {
    return a->start_min < b->start_min;
  });
  table_.begin();
  for (const PlanFiring* f : locked) {
    int kiln = 0;
    while (tables_.kiln(kiln).kiln.id != f->kiln) ++kiln;
    const int b = table_.open(kiln, f->kind, static_cast<int>(table_.order().size()), f->start_min);
    std::vector<int> members;
    for (const PlanMember& m : f->members)
      for (int blade = 0; blade < static_cast<int>(c.blades.size()); ++blade)
        if (c.blades[at(blade)].id == m.blade) members.push_back(tables_.op_of(blade, m.operation));
    table_.lock(b, *f, members);
  }
  // They stand whatever they cost.
  if (table_.settle(std::numeric_limits<std::int64_t>::max(), 0)) table_.keep();
  else table_.undo();
}

/// Puts in a whole chain, or what of it is not locked, each time in another way: first without
/// crowding others, then overlooking places, last after everything that is planned so far.
bool PlanAnnealing::try_insert(int blade, int attempt) {
  const BladeFacts& facts = tables_.blade(blade);
  const int last_end = table_.order().empty() ? 0 : table_.batch(table_.order().back()).end;
  const bool whole_view = attempt < 2 || attempt >= 9;  // the last ones leave nothing to chance
  fitting_.overlook(whole_view ? 0 : 60 * std::min(attempt, 6));
  fitting_.crowd(attempt % 2 == 0 ? ChainFitting::Crowding::never
                                  : ChainFitting::Crowding::sometimes);
  fitting_.not_before(attempt < 6 ? 0 : (last_end - facts.release) / 6 * (attempt - 5) +
                                            facts.release);
  table_.begin();
  bool fits = true;
  const int end = facts.first_op + facts.ops;
  for (int op = facts.first_op; op < end && fits; ++op) {
    if (table_.batch_of(op) >= 0) continue;
    int last = op;
    while (last + 1 < end && table_.batch_of(last + 1) < 0) ++last;
    fits = fitting_.fit(op, last, unplaced_mc);
    op = last;
  }
  fitting_.crowd(ChainFitting::Crowding::sometimes);
  fitting_.not_before(0);
  return fits && table_.settle(unplaced_mc, 200);
}

bool PlanAnnealing::insert_blade(int blade) {
  std::optional<std::int64_t> best;
  PlanChance best_chance = chance_;
  int best_attempt = 0;
  for (int attempt = 0; attempt < 12 && !(best && attempt >= 4); ++attempt) {
    const PlanChance before = chance_;
    if (try_insert(blade, attempt) && (!best || table_.cost_mc() < *best)) {
      best = table_.cost_mc();
      best_chance = before;
      best_attempt = attempt;
    }
    table_.undo();
  }
  if (!best) return false;
  chance_ = best_chance;  // the same chances make the same plan once more
  try_insert(blade, best_attempt);
  table_.keep();
  return true;
}

void PlanAnnealing::start() {
  lock_firings();
  std::vector<int> blades(tables_.blades().size());
  std::iota(blades.begin(), blades.end(), 0);
  std::stable_sort(blades.begin(), blades.end(),
                   [&](int a, int b) { return tables_.blade(a).due < tables_.blade(b).due; });
  for (int b : blades)
    if (!insert_blade(b)) unplaced_.push_back(b);
  weigh();
  note_best();
  write_best();
}

/// What a firing costs in this case: prices may be those of any country, or none at all.
void PlanAnnealing::weigh() {
  std::int64_t firings = 0;
  for (int b : table_.order()) firings += table_.batch(b).cost_mc;
  const auto count = std::max<std::int64_t>(1, static_cast<std::int64_t>(table_.order().size()));
  firing_mc_ = std::max({std::int64_t{1}, firings / count, table_.cost_mc() / (20 * count)});
  slack_mc_ = part(estimate_slack, firing_mc_);
  fitting_.price_of_pushing(std::max<std::int64_t>(1, part(push_share, firing_mc_)));
}

/// The plan itself is written down only when the search is about to leave it.
void PlanAnnealing::note_best() {
  best_cost_ = cost();
  best_pending_ = true;
}

void PlanAnnealing::write_best() {
  if (!best_pending_) return;
  best_pending_ = false;
  best_ = table_.plan();
  best_unplaced_ = unplaced_;
}

/// Makes one change; keeps it when it costs at most `allowance` more than before.
void PlanAnnealing::step() {
  const double allowance = -warmth_ * std::log(1 - chance_.share());
  limit_ = table_.cost_mc() + static_cast<std::int64_t>(allowance);
  trying_ = -1;
  table_.begin();
  const bool made = try_step() && table_.settle(limit_ + part(patience, firing_mc_), 12) &&
                    table_.cost_mc() <= limit_;
  if (!made) return table_.undo();
  const std::int64_t after = cost() - (trying_ >= 0 ? unplaced_mc : 0);
  if (best_pending_ && after > best_cost_) {
    // About to leave the best plan: write it down first, and let this change pass.
    table_.undo();
    return write_best();
  }
  table_.keep();
  if (trying_ >= 0) std::erase(unplaced_, trying_);
  if (after < best_cost_) note_best();
}

void PlanAnnealing::retry_unplaced() {
  const int i = chance_.below(static_cast<int>(unplaced_.size()));
  write_best();
  if (insert_blade(unplaced_[at(i)])) unplaced_.erase(unplaced_.begin() + i);
  if (cost() < best_cost_) note_best();
}

/// False when there is nothing to do.
bool PlanAnnealing::any_step(SearchClock& clock) {
  clock.count();
  ++steps_;
  const bool empty = table_.order().empty();
  if (empty && (unplaced_.empty() || steps_ > 2000)) return false;
  if (!unplaced_.empty() && (empty || steps_ % 64 == 0)) retry_unplaced();
  else step();
  return true;
}

void PlanAnnealing::try_out(SearchClock& clock, std::int64_t steps, std::int64_t bound_mc) {
  warmth_ = Spell{}.warmest * static_cast<double>(firing_mc_);
  for (std::int64_t i = 0; i < steps && best_cost_ > bound_mc; ++i) {
    if (clock.looks_up() && clock.over()) break;
    if (!any_step(clock)) break;
  }
  write_best();
}

void PlanAnnealing::run(SearchClock& clock, const Spell& spell, std::int64_t bound_mc) {
  const double from = clock.share();
  const double warmest = spell.warmest * static_cast<double>(firing_mc_);
  while (best_cost_ > bound_mc) {
    if (clock.looks_up()) {
      if (clock.share() >= spell.until) break;
      const double passed = (clock.share() - from) / std::max(1e-9, spell.until - from);
      warmth_ = warmest * std::pow(spell.coldest / spell.warmest, passed);
      clock.tell(best_cost_ % unplaced_mc, bound_mc, static_cast<int>(unplaced_.size()));
    }
    if (!any_step(clock)) break;
  }
  write_best();
}

}  // namespace tangmark::kiln
