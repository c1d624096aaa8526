// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace tangmark::blade {

/// How an association of two measures over n blades is judged.
struct RankTest {
  std::size_t n = 0;
  double rho = 0;  ///< Spearman's rank correlation, -1 to 1; ties share the mean of their ranks
  double p = 1;    ///< share of all pairings whose correlation is at least as far from nought
  std::uint64_t pairings = 0;  ///< looked at: n! when exact
  bool exact = false;          ///< every pairing was looked at, not a draw of them
};

/// Ranks from 1, ties sharing the mean of theirs.
std::vector<double> ranks_of(std::span<const double> values);

/// Spearman's rank correlation and the two-sided permutation test on it: the values of one measure
/// are dealt to the blades in every order. **Source**: Spearman, Am. J. Psychol. 15 (1904) 72;
/// Fisher's permutation test, as in any text. **Valid**: blades whose order in the trial means
/// nothing. Every order is looked at up to 11 blades, above that a million orders drawn with a
/// fixed seed, the observed one among them. None below 2 pairs, and when one of the measures never
/// varies: then there is nothing to order by. Both spans have one length.
std::optional<RankTest> rank_test(std::span<const double> xs, std::span<const double> ys);

/// The least p that n blades without ties can show: 2 / n!. With 4 blades 0.083: no order of 4 says
/// anything at the usual 0.05.
double least_p(std::size_t n);

}  // namespace tangmark::blade
