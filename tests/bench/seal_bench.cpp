// SPDX-License-Identifier: MIT
#include <time.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <functional>
#include <iostream>
#include <string>

#include "gui/desk/paper/certificate_printer.h"
#include "tests/unit/seal/sealed_samples.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// Of this thread's own work: what else the machine does at the time counts for nothing.
double thread_seconds() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) / 1e9;
}

double seconds_of(const std::function<void()>& work) {
  const double start = thread_seconds();
  work();
  return thread_seconds() - start;
}

// What this process holds, from /proc.
long resident_kb() {
  std::ifstream status("/proc/self/status");
  std::string word;
  while (status >> word)
    if (word == "VmRSS:") {
      long kb = 0;
      status >> kb;
      return kb;
    }
  return 0;
}

}  // namespace

TEST_CASE("a certificate is sealed in under fifty milliseconds, a thousand in flat memory") {
  const auto sheet = sheet_with_photo("pattern");
  const std::string picture = photo();
  for (int i = 0; i < 20; ++i) sealed(sheet, picture);
  double best = 1e9, plain = 1e9;
  for (int i = 0; i < 10; ++i) {
    best = std::min(best, seconds_of([&] { sealed(sheet, picture); }));
    plain = std::min(plain, seconds_of([&] {
                       desk::unsealed_certificate(sheet, picture, "", fonts()).value();
                     }));
  }
  const long before = resident_kb();
  const double all = seconds_of([&] {
    for (int i = 0; i < 1000; ++i) sealed(sheet, picture);
  });
  const long after = resident_kb();
  std::cout << "certificate sealed: best " << 1000 * best << " ms, without seal " << 1000 * plain
            << " ms, ratio " << best / plain << "; 1,000 in " << all << " s, memory " << before
            << " kB before, " << after << " kB after\n";
  CHECK(best < 0.050);
  CHECK(after < before + 4096);
}
