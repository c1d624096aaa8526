// SPDX-License-Identifier: MIT
// Any bytes as a composition, and as a computation of the desk: its name, then a key=value a line.
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "domain/steel/composition.h"
#include "domain/steel/desk_calc.h"

using namespace tangmark::steel;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(bytes), size);
  if (const auto read = parse_composition(text, "composition")) {
    const auto again = parse_composition(to_text(*read), "composition");
    if (!again || *again != *read) __builtin_trap();
  }
  std::vector<std::pair<std::string, std::string>> keys;
  std::size_t end = text.find('\n');
  const std::string name = text.substr(0, end);
  while (end != std::string::npos) {
    const std::size_t next = text.find('\n', end + 1);
    const std::string line =
        text.substr(end + 1, next == std::string::npos ? next : next - end - 1);
    const std::size_t mark = line.find('=');
    if (mark != std::string::npos) keys.emplace_back(line.substr(0, mark), line.substr(mark + 1));
    end = next;
  }
  (void)run_desk_calculation(name, keys, GradeBook::published());
  return 0;
}
