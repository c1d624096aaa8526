// SPDX-License-Identifier: MIT
#include "reports/unicode_map.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace tangmark::reports {

std::string unicode_map(const std::set<char32_t>& characters) {
  constexpr std::size_t most_at_once = 100;  // by the specification
  std::vector<char32_t> used(characters.begin(), characters.end());
  std::erase_if(used, [](char32_t c) { return c > 0xFFFF; });
  std::string map =
      "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
      "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
      "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
      "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
  for (std::size_t at = 0; at < used.size(); at += most_at_once) {
    const std::size_t n = std::min(most_at_once, used.size() - at);
    map += fmt::format("{} beginbfchar\n", n);
    for (std::size_t i = at; i < at + n; ++i) {
      map += fmt::format("<{0:04X}> <{0:04X}>\n", static_cast<unsigned>(used[i]));
    }
    map += "endbfchar\n";
  }
  return map + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
}

}  // namespace tangmark::reports
