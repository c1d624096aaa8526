// SPDX-License-Identifier: MIT
#include "domain/blade/rank_test.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>
#include <random>

namespace tangmark::blade {
namespace {

constexpr std::size_t most_exact = 11;
constexpr std::uint64_t drawn_pairings = 1'000'000;
constexpr std::uint64_t draw_seed = 20250101;

// Ranks doubled, so that shared ranks are whole numbers and a sum of products is exact.
std::vector<std::int64_t> doubled_ranks(std::span<const double> values) {
  std::vector<std::int64_t> doubled;
  for (const double rank : ranks_of(values)) doubled.push_back(std::llround(2 * rank));
  return doubled;
}

double mean_product(const std::vector<std::int64_t>& a, const std::vector<std::int64_t>& b) {
  const double n = static_cast<double>(a.size());
  const auto sum = [](const auto& v) {
    return static_cast<double>(std::reduce(v.begin(), v.end()));
  };
  return sum(a) * sum(b) / n;
}

std::int64_t product_sum(const std::vector<std::int64_t>& a, const std::vector<std::int64_t>& b) {
  return std::inner_product(a.begin(), a.end(), b.begin(), std::int64_t{0});
}

// Counts the pairings at least as far from the mean as the one observed. With ranks fixed, the
// correlation is a straight line in the sum of their products, so only that sum is kept up to date.
class Pairings {
 public:
  Pairings(const std::vector<std::int64_t>& a, std::vector<std::int64_t> b)
      : a_(a),
        b_(std::move(b)),
        sum_(product_sum(a_, b_)),
        mean_(mean_product(a_, b_)),
        far_(std::abs(static_cast<double>(sum_) - mean_) - 1e-9) {}

  // Heap's way through all orders: each differs from the last by one exchange.
  void go_through_all() {
    count();
    std::vector<std::size_t> turn(b_.size(), 0);
    for (std::size_t i = 1; i < b_.size();) {
      if (turn[i] < i) {
        exchange(i % 2 == 0 ? 0 : turn[i], i);
        count();
        ++turn[i];
        i = 1;
      } else {
        turn[i++] = 0;
      }
    }
  }

  void draw(std::uint64_t times) {
    count();  // the observed order is one of those that could have come
    std::mt19937_64 chance(draw_seed);
    while (seen_ < times) {
      for (std::size_t i = b_.size() - 1; i > 0; --i) std::swap(b_[i], b_[chance() % (i + 1)]);
      sum_ = product_sum(a_, b_);
      count();
    }
  }

  std::uint64_t seen() const { return seen_; }
  double share_as_far() const { return static_cast<double>(as_far_) / static_cast<double>(seen_); }

 private:
  void exchange(std::size_t i, std::size_t j) {
    sum_ += (a_[i] - a_[j]) * (b_[j] - b_[i]);
    std::swap(b_[i], b_[j]);
  }
  void count() {
    ++seen_;
    if (std::abs(static_cast<double>(sum_) - mean_) >= far_) ++as_far_;
  }

  const std::vector<std::int64_t>& a_;
  std::vector<std::int64_t> b_;
  std::int64_t sum_;
  double mean_, far_;
  std::uint64_t seen_ = 0, as_far_ = 0;
};

double spread(const std::vector<std::int64_t>& ranks) {
  return static_cast<double>(product_sum(ranks, ranks)) - mean_product(ranks, ranks);
}

}  // namespace

std::vector<double> ranks_of(std::span<const double> values) {
  std::vector<std::size_t> order(values.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
  std::vector<double> ranks(values.size());
  for (std::size_t first = 0; first < order.size();) {
    std::size_t end = first;
    while (end < order.size() && values[order[end]] == values[order[first]]) ++end;
    const double shared = static_cast<double>(first + 1 + end) / 2;
    for (; first < end; ++first) ranks[order[first]] = shared;
  }
  return ranks;
}

std::optional<RankTest> rank_test(std::span<const double> xs, std::span<const double> ys) {
  assert(xs.size() == ys.size() && "every blade has both measures");
  if (xs.size() < 2) return std::nullopt;
  const auto a = doubled_ranks(xs), b = doubled_ranks(ys);
  const double spread_a = spread(a), spread_b = spread(b);
  if (spread_a <= 0 || spread_b <= 0) return std::nullopt;
  RankTest test;
  test.n = xs.size();
  test.rho = (static_cast<double>(product_sum(a, b)) - mean_product(a, b)) /
             std::sqrt(spread_a * spread_b);
  test.exact = test.n <= most_exact;
  Pairings pairings(a, b);
  if (test.exact)
    pairings.go_through_all();
  else
    pairings.draw(drawn_pairings);
  test.pairings = pairings.seen();
  test.p = pairings.share_as_far();
  return test;
}

double least_p(std::size_t n) {
  return 2 / std::tgamma(static_cast<double>(n) + 1);
}

}  // namespace tangmark::blade
