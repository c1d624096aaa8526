// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace tangmark {

/// What happens to the work when one of the trade's 27 slips is caught.
enum class Weight {
  stop,      ///< never goes through: the answer must come first
  ask,       ///< stops unless the maker sets it aside and says why; the reason is kept
  remark,    ///< goes through; the sentence is shown and returned as a warning
};

/// One slip caught at the moment it happens. Each is found by exactly one function in the room it
/// belongs to; the number is its place in the list of the 27 things to catch (DEVELOPERS.md).
struct Caught {
  int number;
  Weight weight;
  std::string field;     ///< the field that would cure it
  std::string sentence;  ///< what is wrong
  std::string remedy;    ///< what to do
  friend bool operator==(const Caught&, const Caught&) = default;
};

using Catch = std::optional<Caught>;
using Catches = std::vector<Caught>;

}  // namespace tangmark
