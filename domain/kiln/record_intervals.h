// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <unordered_map>
#include <vector>

namespace tangmark::kiln {

/// A stretch without samples, from the last one before it.
struct RecordGap {
  std::int64_t at_ms = 0;
  double minutes = 0;
  friend bool operator==(const RecordGap&, const RecordGap&) = default;
};

/// The intervals between samples: their median, and the gaps over three times of it. Samples at one
/// time make no interval. Holds a count per distinct interval and the intervals that may still turn
/// out to be gaps: the first 100,000, and from then on those that were gaps by the median so far.
class RecordIntervals {
 public:
  void add(std::int64_t from_ms, std::int64_t to_ms);
  /// Of all intervals; the mean of the middle two when their number is even. Nought without any.
  double median_ms() const;
  std::vector<RecordGap> gaps() const;

 private:
  struct Long {
    std::int64_t at_ms;
    std::int64_t length_ms;
  };
  void drop_ordinary();

  std::unordered_map<std::int64_t, std::int64_t> counts_;
  std::int64_t* last_count_ = nullptr;  // of last_length_, since most intervals repeat
  std::int64_t last_length_ = 0;
  std::int64_t total_ = 0;
  std::vector<Long> long_ones_;
  double ordinary_ms_ = 0;  // what is no longer kept
  std::size_t next_drop_ = 100'000;
};

}  // namespace tangmark::kiln
