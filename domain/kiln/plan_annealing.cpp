// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_annealing.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

// A blade without a place weighs more than anything a plan may cost to have it.
constexpr std::int64_t unplaced_mc = 1'000'000'000'000;

// In shares of what a firing costs: by how much the estimate of a change may be too high, and by how
// much a change may be too dear while it still spreads.
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
  if (table_.settle(unplaced_mc, 0)) table_.keep();
  else table_.undo();
}

/// Puts in a whole chain, or what of it is not locked, each time in another way: first without
/// crowding others, then overlooking places, last after everything that is planned so far.
bool PlanAnnealing::try_insert(int blade, int attempt) {
  const BladeFacts& facts = tables_.blade(blade);
  const int last_end = table_.order().empty() ? 0 : table_.batch(table_.order().back()).end;
  fitting_.overlook(attempt < 2 ? 0 : 60 * std::min(attempt, 6));
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

int PlanAnnealing::random_firing() {
  return table_.order()[at(chance_.below(static_cast<int>(table_.order().size())))];
}

bool PlanAnnealing::take_out(Stretch s) {
  for (int op = s.first; op <= s.second; ++op)
    if (table_.batch_of(op) < 0 || !movable(op)) return false;
  for (int op = s.first; op <= s.second; ++op) table_.leave(op);
  taken_.push_back(s);
  return true;
}

/// Any blade; one that is late rather than one that is not.
int PlanAnnealing::random_blade() {
  const int count = static_cast<int>(tables_.blades().size());
  const int one = chance_.below(count);
  if (chance_.one_in(2)) return one;
  const int other = chance_.below(count);
  auto lateness = [&](int b) {
    const BladeFacts& facts = tables_.blade(b);
    return facts.late_mc * std::max(0, table_.end_of(facts.first_op + facts.ops - 1) - facts.due);
  };
  return lateness(other) > lateness(one) ? other : one;
}

/// Some blades that have to do with each other: those that share a firing with the first.
void PlanAnnealing::take_blades(int count) {
  int blade = random_blade();
  std::vector<int> near;
  for (int i = 0; i < tables_.blade(blade).ops; ++i)
    if (const int b = table_.batch_of(tables_.op_of(blade, i)); b >= 0)
      for (int m : table_.batch(b).members) near.push_back(tables_.op(m).blade);
  for (int i = 0; i < count; ++i) {
    const BladeFacts& facts = tables_.blade(blade);
    int first = facts.first_op;
    int last = facts.first_op + facts.ops - 1;
    if (chance_.one_in(3)) first += chance_.below(facts.ops);
    if (chance_.one_in(3)) last = first + chance_.below(last - first + 1);
    take_out({first, last});
    blade = near.empty() || chance_.one_in(4)
                ? chance_.below(static_cast<int>(tables_.blades().size()))
                : near[at(chance_.below(static_cast<int>(near.size())))];
  }
}

/// Everything in one firing, with what comes before or after it for its blades.
void PlanAnnealing::take_firing() {
  const std::vector<int> members = table_.batch(random_firing()).members;
  const int style = chance_.below(4);
  for (int m : members) {
    const OpFacts& o = tables_.op(m);
    const BladeFacts& blade = tables_.blade(o.blade);
    const int end = blade.first_op + blade.ops - 1;
    if (style == 0) take_out({m, m});
    if (style == 1) take_out({m, end});
    if (style == 2) take_out({blade.first_op, end});
    if (style == 3) take_out({blade.first_op, m});
  }
}

/// All firings that begin within some hours.
void PlanAnnealing::take_day() {
  const int from = table_.batch(random_firing()).start;
  const int until = from + 60 + chance_.below(720);
  std::vector<int> ops;
  for (int b : table_.order())
    if (table_.batch(b).start >= from && table_.batch(b).start < until)
      for (int m : table_.batch(b).members) ops.push_back(m);
  std::sort(ops.begin(), ops.end());
  for (std::size_t i = 0; i < ops.size() && taken_.size() < 8;) {
    std::size_t j = i;
    while (j + 1 < ops.size() && ops[j + 1] == ops[j] + 1 &&
           tables_.op(ops[j + 1]).blade == tables_.op(ops[j]).blade)
      ++j;
    take_out({ops[i], ops[j]});
    i = j + 1;
  }
}

/// One stretch of two that follow each other: the second could not find a place before the first.
void PlanAnnealing::join_stretches() {
  std::sort(taken_.begin(), taken_.end());
  std::size_t kept = 0;
  for (std::size_t i = 1; i < taken_.size(); ++i) {
    Stretch& last = taken_[kept];
    const Stretch& next = taken_[i];
    if (next.first == last.second + 1 && tables_.op(next.first).index > 0) last.second = next.second;
    else taken_[++kept] = next;
  }
  taken_.resize(kept + 1);
}

bool PlanAnnealing::put_back() {
  join_stretches();
  for (std::size_t i = taken_.size(); i > 1; --i)
    std::swap(taken_[i - 1], taken_[at(chance_.below(static_cast<int>(i)))]);
  std::int64_t spent = 0;
  const std::int64_t slack = part(estimate_slack, firing_mc_);
  for (const Stretch& s : taken_)
    if (!fitting_.fit(s.first, s.second, limit_ - table_.cost_mc() - spent + slack))
      return false;
    else spent += fitting_.cost_mc();
  return true;
}

/// A blade without a place, to be put in together with what is taken out for it.
void PlanAnnealing::take_unplaced() {
  const int blade = unplaced_[at(chance_.below(static_cast<int>(unplaced_.size())))];
  const BladeFacts& facts = tables_.blade(blade);
  const int end = facts.first_op + facts.ops;
  for (int op = facts.first_op; op < end; ++op)
    if (table_.batch_of(op) >= 0) return;  // partly locked: only the careful way serves
  taken_.push_back({facts.first_op, end - 1});
  trying_ = blade;
  limit_ += unplaced_mc;
}

bool PlanAnnealing::remake() {
  taken_.clear();
  if (!unplaced_.empty() && chance_.one_in(4)) take_unplaced();
  const int style = chance_.below(10);
  if (style < 5) take_blades(1 + chance_.below(3));
  else if (style < 8) take_firing();
  else take_day();
  fitting_.overlook(chance_.below(250));
  return !taken_.empty() && put_back();
}

bool PlanAnnealing::shift_firing() {
  const int b = random_firing();
  const int p = table_.position(b);
  int kiln = table_.batch(b).kiln;
  if (chance_.one_in(2)) kiln = chance_.below(tables_.kilns());
  const int n = static_cast<int>(table_.order().size());
  const int to = std::clamp(p - 4 + chance_.below(9), 0, n - 1);
  table_.hold(b, 0);
  return table_.move(b, kiln, to);
}

bool PlanAnnealing::hold_firing() {
  const int b = random_firing();
  const Batch& batch = table_.batch(b);
  if (batch.locked) return false;
  int until = 0;
  if (batch.not_before == 0 || chance_.one_in(2)) {
    if (batch.after >= 0 && chance_.one_in(2)) {
      until = table_.batch(batch.after).start - (batch.end - batch.start) - chance_.below(10);
    } else {
      until = tables_.in_window(batch.start + chance_.below(900), 1);
      if (until == never) return false;
    }
  }
  table_.hold(b, until);
  return true;
}

bool PlanAnnealing::change_temp() {
  const int b = random_firing();
  const Batch& batch = table_.batch(b);
  const int m = batch.members[at(chance_.below(static_cast<int>(batch.members.size())))];
  if (batch.locked || tables_.op(m).target_c == batch.temp_c) return false;
  return table_.set_temp(b, tables_.op(m).target_c);
}

bool PlanAnnealing::try_step() {
  const int style = chance_.below(16);
  if (style < 10) return remake();
  if (style < 13) return shift_firing();
  if (style < 15) return hold_firing();
  return change_temp();
}

/// Makes one change; keeps it when it costs at most `allowance` more than before.
void PlanAnnealing::step() {
  const std::int64_t before = table_.cost_mc();
  const double allowance = -warmth_ * std::log(1 - chance_.share());
  limit_ = before + static_cast<std::int64_t>(allowance);
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
