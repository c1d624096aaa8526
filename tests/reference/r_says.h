// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdio>
#include <string>

namespace tangmark {

/// What R prints for a program; empty when R is not installed.
inline std::string r_says(const std::string& program) {
  const std::string command = "Rscript --vanilla -e '" + program + "' 2>/dev/null";
  FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return {};
  std::string said;
  std::array<char, 4096> block{};
  while (std::size_t n = fread(block.data(), 1, block.size(), pipe)) said.append(block.data(), n);
  return pclose(pipe) == 0 ? said : std::string();
}

}  // namespace tangmark
