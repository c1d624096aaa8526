// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_master.h"

#include <algorithm>
#include <cmath>

namespace tangmark::stock {
namespace {

constexpr double tiny = 1e-9;
constexpr double worth_entering = 1e-7;
constexpr int pivots_between_inversions = 250;
constexpr int most_pivots = 20'000;
constexpr std::size_t most_candidates = 24;
constexpr std::size_t most_columns = 3'000, columns_kept = 1'200;

}  // namespace

CuttingMaster::CuttingMaster(std::size_t sizes, std::size_t bars, double missing)
    : sizes_(sizes),
      rows_(sizes + bars),
      missing_(missing),
      slack_cost_(rows_, 0.0),
      basis_(rows_),
      inverse_(rows_ * rows_, 0.0),
      right_(rows_),
      duals_(rows_, 0.0),
      direction_(rows_) {
  for (std::size_t r = 0; r < rows_; ++r) {
    // A little more than one, differing from row to row, keeps the simplex method from standing
    // still on the many ties of such programmes.
    right_[r] = 1 + 1e-6 * static_cast<double>((r * 7919 + 13) % 997) / 997;
    basis_[r] = {r < sizes_ ? Basic::missing : Basic::slack, r};
    inverse_[r * rows_ + r] = 1;
  }
  level_ = right_;
}

std::string CuttingMaster::key_of(const CuttingPattern& pattern) const {
  std::string key(reinterpret_cast<const char*>(pattern.sizes.data()),
                  pattern.sizes.size() * sizeof(pattern.sizes[0]));
  return std::to_string(pattern.bar) + ':' + key;
}

bool CuttingMaster::add(CuttingPattern pattern) {
  if (!known_.insert(key_of(pattern)).second) return false;
  const double cost = pattern.cost;
  allowed_.push_back(columns_.size());
  columns_.push_back({std::move(pattern), cost});
  return true;
}

void CuttingMaster::restrict_to(const std::function<bool(const CuttingPattern&)>& allowed,
                                const std::vector<bool>& must) {
  allowed_.clear();
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    Column& column = columns_[c];
    const bool may = allowed(column.pattern);
    if (may) allowed_.push_back(c);
    column.cost_now =
        may ? column.pattern.cost : missing_ * static_cast<double>(column.pattern.sizes.size() + 1);
  }
  for (std::size_t b = 0; b < must.size(); ++b) slack_cost_[sizes_ + b] = must[b] ? missing_ : 0;
}

double CuttingMaster::cost_of(const BasisEntry& entry) const {
  switch (entry.what) {
    case Basic::column:
      return columns_[entry.index].cost_now;
    case Basic::missing:
      return missing_;
    case Basic::slack:
      return slack_cost_[entry.index];
  }
  return 0;
}

/// Calls each(row, coefficient) for the entries of a variable's column.
template <class Each>
void CuttingMaster::each_entry(const BasisEntry& entry, Each each) const {
  if (entry.what == Basic::column) {
    const CuttingPattern& pattern = columns_[entry.index].pattern;
    for (const std::uint16_t i : pattern.sizes) each(std::size_t{i}, 1.0);
    each(sizes_ + pattern.bar, 1.0);
  } else {
    // A size may be in more patterns than one, a bar in fewer: the slacks point opposite ways.
    each(entry.index, entry.what == Basic::slack && entry.index < sizes_ ? -1.0 : 1.0);
  }
}

void CuttingMaster::find_duals() {
  std::fill(duals_.begin(), duals_.end(), 0.0);
  for (std::size_t k = 0; k < rows_; ++k) {
    const double cost = cost_of(basis_[k]);
    if (cost == 0) continue;
    const double* row = &inverse_[k * rows_];
    for (std::size_t j = 0; j < rows_; ++j) duals_[j] += cost * row[j];
  }
}

double CuttingMaster::reduced_cost(const CuttingPattern& pattern) const {
  double reduced = pattern.cost - duals_[sizes_ + pattern.bar];
  for (const std::uint16_t i : pattern.sizes) reduced -= duals_[i];
  return reduced;
}

double CuttingMaster::reduced_cost_now(const BasisEntry& entry) const {
  if (entry.what == Basic::slack)
    return entry.index < sizes_ ? duals_[entry.index]
                                : slack_cost_[entry.index] - duals_[entry.index];
  const Column& column = columns_[entry.index];
  double cost = column.cost_now - duals_[sizes_ + column.pattern.bar];
  for (const std::uint16_t i : column.pattern.sizes) cost -= duals_[i];
  return cost;
}

/// Looks through everything once and keeps the most promising variables; pivoting among those
/// few for a while costs far less than looking through everything before each pivot.
bool CuttingMaster::find_candidates() {
  candidates_.clear();
  const auto consider = [&](BasisEntry entry) {
    const double reduced = reduced_cost_now(entry);
    if (reduced < -worth_entering) candidates_.push_back({reduced, entry});
  };
  for (const std::size_t c : allowed_) consider({Basic::column, c});
  for (std::size_t r = 0; r < rows_; ++r) consider({Basic::slack, r});
  const auto better = [](const auto& a, const auto& b) { return a.first < b.first; };
  if (candidates_.size() > most_candidates) {
    std::nth_element(candidates_.begin(), candidates_.begin() + most_candidates, candidates_.end(),
                     better);
    candidates_.resize(most_candidates);
  }
  return !candidates_.empty();
}

bool CuttingMaster::best_candidate(BasisEntry& entering, double& reduced) {
  reduced = -worth_entering;
  bool found = false;
  for (auto& [cost, entry] : candidates_) {
    cost = reduced_cost_now(entry);
    if (cost < reduced) reduced = cost, entering = entry, found = true;
  }
  return found;
}

void CuttingMaster::pivot(const BasisEntry& entering, double reduced) {
  std::fill(direction_.begin(), direction_.end(), 0.0);
  each_entry(entering, [&](std::size_t r, double coefficient) {
    for (std::size_t k = 0; k < rows_; ++k) direction_[k] += coefficient * inverse_[k * rows_ + r];
  });
  std::size_t leaving = rows_;
  double step = 0;
  for (std::size_t k = 0; k < rows_; ++k) {
    if (direction_[k] <= tiny) continue;
    const double ratio = level_[k] / direction_[k];
    const bool tie =
        leaving != rows_ && ratio < step + 1e-12 && direction_[k] > direction_[leaving];
    if (leaving == rows_ || ratio < step - 1e-12 || tie) leaving = k, step = ratio;
  }
  if (leaving == rows_) return;  // cannot be: every variable is bounded by its bar or its sizes
  double* pivot_row = &inverse_[leaving * rows_];
  const double scale = 1 / direction_[leaving];
  for (std::size_t j = 0; j < rows_; ++j) pivot_row[j] *= scale;
  level_[leaving] *= scale;
  for (std::size_t k = 0; k < rows_; ++k) {
    const double factor = direction_[k];
    if (k == leaving || std::abs(factor) < 1e-13) continue;
    double* row = &inverse_[k * rows_];
    for (std::size_t j = 0; j < rows_; ++j) row[j] -= factor * pivot_row[j];
    level_[k] = std::max(0.0, level_[k] - factor * level_[leaving]);
  }
  for (std::size_t j = 0; j < rows_; ++j) duals_[j] += reduced * pivot_row[j];
  basis_[leaving] = entering;
  if (++pivots_since_inversion_ >= pivots_between_inversions) invert();
}

/// Works the inverse out afresh, so that rounding does not pile up. Gauss-Jordan with row pivots.
void CuttingMaster::invert() {
  pivots_since_inversion_ = 0;
  std::vector<double> matrix(rows_ * rows_, 0.0), inverse(rows_ * rows_, 0.0);
  for (std::size_t k = 0; k < rows_; ++k) {
    each_entry(basis_[k], [&](std::size_t r, double c) { matrix[r * rows_ + k] = c; });
    inverse[k * rows_ + k] = 1;
  }
  std::vector<std::size_t> row_of(rows_, rows_);
  std::vector<bool> taken(rows_, false);
  for (std::size_t k = 0; k < rows_; ++k) {
    std::size_t best = rows_;
    for (std::size_t r = 0; r < rows_; ++r)
      if (!taken[r] &&
          (best == rows_ || std::abs(matrix[r * rows_ + k]) > std::abs(matrix[best * rows_ + k])))
        best = r;
    const double pivot = matrix[best * rows_ + k];
    if (std::abs(pivot) < 1e-11) return;  // keep the old inverse rather than a singular one
    taken[best] = true;
    row_of[k] = best;
    for (std::size_t j = 0; j < rows_; ++j)
      matrix[best * rows_ + j] /= pivot, inverse[best * rows_ + j] /= pivot;
    for (std::size_t r = 0; r < rows_; ++r) {
      const double factor = matrix[r * rows_ + k];
      if (r == best || factor == 0) continue;
      for (std::size_t j = 0; j < rows_; ++j) {
        matrix[r * rows_ + j] -= factor * matrix[best * rows_ + j];
        inverse[r * rows_ + j] -= factor * inverse[best * rows_ + j];
      }
    }
  }
  for (std::size_t k = 0; k < rows_; ++k) {
    double level = 0;
    for (std::size_t j = 0; j < rows_; ++j) {
      inverse_[k * rows_ + j] = inverse[row_of[k] * rows_ + j];
      level += inverse_[k * rows_ + j] * right_[j];
    }
    level_[k] = std::max(0.0, level);
  }
  find_duals();
}

void CuttingMaster::solve(const std::function<bool()>& out_of_time) {
  find_duals();
  BasisEntry entering;
  double reduced = 0;
  int pivots = 0;
  while (pivots < most_pivots && !(out_of_time && out_of_time()) && find_candidates())
    while (best_candidate(entering, reduced) && ++pivots < most_pivots) pivot(entering, reduced);
  find_duals();
}

double CuttingMaster::value() const {
  double sum = 0;
  for (std::size_t k = 0; k < rows_; ++k) sum += cost_of(basis_[k]) * level_[k];
  return sum;
}

std::vector<std::pair<const CuttingPattern*, double>> CuttingMaster::used() const {
  std::vector<std::pair<const CuttingPattern*, double>> patterns;
  for (std::size_t k = 0; k < rows_; ++k)
    if (basis_[k].what == Basic::column && level_[k] > 1e-5)
      patterns.emplace_back(&columns_[basis_[k].index].pattern, level_[k]);
  return patterns;
}

void CuttingMaster::forget_some() {
  if (columns_.size() <= most_columns) return;
  allowed_.clear();
  std::vector<double> reduced(columns_.size());
  for (std::size_t c = 0; c < columns_.size(); ++c) reduced[c] = reduced_cost(columns_[c].pattern);
  for (const BasisEntry& entry : basis_)
    if (entry.what == Basic::column) reduced[entry.index] = -1e300;
  std::vector<double> sorted = reduced;
  std::nth_element(sorted.begin(), sorted.begin() + columns_kept, sorted.end());
  const double limit = sorted[columns_kept];
  std::vector<std::size_t> place(columns_.size(), 0);
  std::vector<Column> kept;
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    if (reduced[c] > limit) {
      known_.erase(key_of(columns_[c].pattern));
      continue;
    }
    place[c] = kept.size();
    kept.push_back(std::move(columns_[c]));
  }
  columns_ = std::move(kept);
  for (BasisEntry& entry : basis_)
    if (entry.what == Basic::column) entry.index = place[entry.index];
}

}  // namespace tangmark::stock
