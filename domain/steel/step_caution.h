// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tangmark::steel {

/// A place where a step can hurt the maker, with who says so. Local codes and the product's own
/// safety sheet come before it.
struct Caution {
  std::string sentence;
  std::string source;
};

/// Cautions for a step by the trade's name of its operation ("harden", "etch", "forge", "sub-zero",
/// "finish grind") and, for a quench, its bath ("oil", "water", "brine", "salt"). Empty where none
/// is usual.
std::vector<Caution> cautions_for(std::string_view operation, std::string_view bath);

}  // namespace tangmark::steel
