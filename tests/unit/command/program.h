// SPDX-License-Identifier: MIT
#pragma once

#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <string>

#include "tests/scratch.h"

namespace tangmark::test {

/// What the program printed and how it ended.
struct Ran {
  int exit = -1;
  std::string out;
  nlohmann::json json() const { return nlohmann::json::parse(out); }
};

inline constexpr const char* demo_now = "2026-11-25T07:45:00Z";

/// Runs the real program; standard error is kept only with `errors`.
inline Ran run(const std::string& words, bool errors = false) {
  const std::string line = std::string(TANGMARK_PROGRAM) + " " + words + " --now " + demo_now +
                           (errors ? " 2>&1" : " 2>/dev/null");
  Ran ran;
  FILE* pipe = ::popen(line.c_str(), "r");
  if (!pipe) return ran;
  std::array<char, 4096> buffer{};
  while (const std::size_t n = std::fread(buffer.data(), 1, buffer.size(), pipe))
    ran.out.append(buffer.data(), n);
  ran.exit = WEXITSTATUS(::pclose(pipe));
  return ran;
}

/// A demo shop of one test case.
struct DemoShop {
  Scratch scratch;
  std::string file = (scratch / "demo.tangmark").string();
  DemoShop() { run("demo " + file); }
};

}  // namespace tangmark::test
