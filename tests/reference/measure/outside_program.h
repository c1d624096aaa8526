// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

namespace tangmark {

/// Whether a program that a check asks for its opinion is on this machine.
inline bool installed(const std::string& program) {
  return std::system(("command -v " + program + " > /dev/null 2>&1").c_str()) == 0;
}

/// What a shell command prints on standard output.
inline std::string output_of(const std::string& command) {
  std::FILE* pipe = ::popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string text;
  std::array<char, 4096> part{};
  for (std::size_t n = 1; n > 0;) {
    n = std::fread(part.data(), 1, part.size(), pipe);
    text.append(part.data(), n);
  }
  REQUIRE(::pclose(pipe) == 0);
  return text;
}

inline std::string content_of(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  REQUIRE(in.good());
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

}  // namespace tangmark
