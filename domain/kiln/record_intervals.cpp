// SPDX-License-Identifier: MIT
#include "domain/kiln/record_intervals.h"

#include <algorithm>

namespace tangmark::kiln {

void RecordIntervals::add(std::int64_t from_ms, std::int64_t to_ms) {
  const std::int64_t length = to_ms - from_ms;
  if (length <= 0) return;
  if (length != last_length_) {
    last_length_ = length;
    last_count_ = &counts_[length];  // a map node does not move
  }
  ++*last_count_;
  ++total_;
  if (static_cast<double>(length) <= ordinary_ms_) return;
  long_ones_.push_back({from_ms, length});
  if (long_ones_.size() >= next_drop_) drop_ordinary();
}

double RecordIntervals::median_ms() const {
  if (total_ == 0) return 0;
  std::vector<std::pair<std::int64_t, std::int64_t>> sorted(counts_.begin(), counts_.end());
  std::sort(sorted.begin(), sorted.end());
  const auto at = [&](std::int64_t place) {
    for (const auto& [length, count] : sorted) {
      if (place < count) return static_cast<double>(length);
      place -= count;
    }
    return static_cast<double>(sorted.back().first);
  };
  return (at((total_ - 1) / 2) + at(total_ / 2)) / 2;
}

std::vector<RecordGap> RecordIntervals::gaps() const {
  const double limit = 3 * median_ms();
  std::vector<RecordGap> gaps;
  for (const Long& one : long_ones_) {
    if (static_cast<double>(one.length_ms) > limit) {
      gaps.push_back({one.at_ms, static_cast<double>(one.length_ms) / 60'000});
    }
  }
  return gaps;
}

// After so many samples the median has settled: what is ordinary now will stay so.
void RecordIntervals::drop_ordinary() {
  ordinary_ms_ = 3 * median_ms();
  std::erase_if(long_ones_, [&](const Long& one) {
    return static_cast<double>(one.length_ms) <= ordinary_ms_;
  });
  next_drop_ = 2 * std::max(next_drop_ / 2, long_ones_.size());
}

}  // namespace tangmark::kiln
