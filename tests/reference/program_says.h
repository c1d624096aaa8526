// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdio>
#include <string>

namespace tangmark {

/// What a command prints on standard output; empty when it or a library of it is not installed.
inline std::string program_says(const std::string& command) {
  FILE* pipe = popen((command + " 2>/dev/null").c_str(), "r");
  if (pipe == nullptr) return {};
  std::string said;
  std::array<char, 4096> block{};
  while (std::size_t n = fread(block.data(), 1, block.size(), pipe)) said.append(block.data(), n);
  return pclose(pipe) == 0 ? said : std::string();
}

/// What Debian's Python prints for a program without single quotes.
inline std::string python_says(const std::string& program) {
  return program_says("/usr/bin/python3 -c '" + program + "'");
}

/// What R prints for a program without single quotes.
inline std::string r_says(const std::string& program) {
  return program_says("Rscript --vanilla -e '" + program + "'");
}

}  // namespace tangmark
