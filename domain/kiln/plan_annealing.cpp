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
    for (const PlanMember& m : f->members)
      for (int blade = 0; blade < static_cast<int>(c.blades.size()); ++blade)
        if (c.blades[at(blade)].id == m.blade) table_.join(b, tables_.op_of(blade, m.operation));
    table_.lock(b, *f);
  }
  if (table_.settle()) table_.keep();
  else table_.undo();
}

/// Puts in a whole chain, or what of it is not locked. Several tries, each overlooking other ways.
bool PlanAnnealing::insert_blade(int blade) {
  const BladeFacts& facts = tables_.blade(blade);
  for (int attempt = 0; attempt < 12; ++attempt) {
    fitting_.overlook(attempt == 0 ? 0 : 50 * attempt);
    table_.begin();
    bool fits = true;
    for (int op = facts.first_op; op < facts.first_op + facts.ops && fits;) {
      int last = op;
      while (last + 1 < facts.first_op + facts.ops && table_.batch_of(last + 1) < 0) ++last;
      if (table_.batch_of(op) < 0) fits = fitting_.fit(op, last);
      op = last + 1;
    }
    if (fits && table_.settle(200)) {
      table_.keep();
      return true;
    }
    table_.undo();
  }
  return false;
}

void PlanAnnealing::start() {
  lock_firings();
  std::vector<int> blades(tables_.blades().size());
  std::iota(blades.begin(), blades.end(), 0);
  std::stable_sort(blades.begin(), blades.end(),
                   [&](int a, int b) { return tables_.blade(a).due < tables_.blade(b).due; });
  for (int b : blades)
    if (!insert_blade(b)) unplaced_.push_back(b);
  note_best();
}

void PlanAnnealing::note_best() {
  best_ = table_.plan();
  best_cost_ = cost();
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

/// Some blades that have to do with each other: those that share a firing with the first.
void PlanAnnealing::take_blades(int count) {
  int blade = chance_.below(static_cast<int>(tables_.blades().size()));
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
  for (const Stretch& s : taken_)
    if (!fitting_.fit(s.first, s.second)) return false;
  return true;
}

bool PlanAnnealing::remake() {
  taken_.clear();
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

void PlanAnnealing::run(const SearchLimits& limits, std::int64_t bound_mc) {
  if (table_.order().empty() && unplaced_.empty()) return;
  double share = 0;
  while (best_cost_ > bound_mc) {
    if (iterations_ % 32 == 0) {
      const double timed = limits.time_used ? limits.time_used() : 0;
      if (timed >= 1) break;
      share = limits.iterations > 0
                  ? static_cast<double>(iterations_) / static_cast<double>(limits.iterations)
                  : timed;
      if (limits.iterations <= 0 && !limits.time_used) break;
      warmth_ = 60000 * std::pow(0.01, share);
    }
    if (limits.iterations > 0 && iterations_ >= limits.iterations) break;
    ++iterations_;
    if (!unplaced_.empty() && iterations_ % 64 == 0) {
      const int i = chance_.below(static_cast<int>(unplaced_.size()));
      if (insert_blade(unplaced_[at(i)])) unplaced_.erase(unplaced_.begin() + i);
      if (cost() < best_cost_) note_best();
      continue;
    }
    if (table_.order().empty() && iterations_ > 2000) break;
    if (table_.order().empty()) continue;
    const std::int64_t before = table_.cost_mc();
    table_.begin();
    const bool kept = try_step() && table_.settle() &&
                      static_cast<double>(table_.cost_mc() - before) <=
                          -warmth_ * std::log(1 - chance_.share());
    if (!kept) {
      table_.undo();
      continue;
    }
    table_.keep();
    if (cost() < best_cost_) note_best();
  }
}

}  // namespace tangmark::kiln
