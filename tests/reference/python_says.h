// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdio>
#include <string>

namespace tangmark {

/// What Debian's Python prints for a program; empty when it or a library is not installed.
inline std::string python_says(const std::string& program) {
  const std::string command = "/usr/bin/python3 -c '" + program + "' 2>/dev/null";
  FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) return {};
  std::string said;
  std::array<char, 4096> block{};
  while (std::size_t n = fread(block.data(), 1, block.size(), pipe)) said.append(block.data(), n);
  return pclose(pipe) == 0 ? said : std::string();
}

}  // namespace tangmark
