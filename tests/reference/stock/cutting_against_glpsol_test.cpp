// SPDX-License-Identifier: MIT
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <optional>
#include <random>
#include <sstream>

#include "domain/stock/cutting_plan.h"

using namespace tangmark::stock;

namespace {

std::string number(const char* name, std::size_t a, std::size_t b) {
  return name + std::to_string(a) + "_" + std::to_string(b);
}

/// The rules of a case as a mixed-integer programme, in the CPLEX LP format. x: blank on bar, y:
/// bar cut, z: rest kept, r: length kept.
std::string programme(const CuttingCase& c, std::optional<std::size_t> placed) {
  std::ostringstream lp, all;
  for (std::size_t i = 0; i < c.blanks.size(); ++i)
    for (std::size_t b = 0; b < c.bars.size(); ++b) all << " + " << number("x", i, b);
  lp.precision(15);
  lp << (placed ? "Minimize\n obj:" : "Maximize\n obj:");
  if (!placed) lp << all.str();
  for (std::size_t b = 0; b < c.bars.size() && placed; ++b)
    lp << " + " << c.bars[b].price_minor << " y" << b << " - "
       << double(c.bars[b].price_minor) / double(c.bars[b].length_mm) << " r" << b;
  lp << "\nSubject To\n";
  if (placed) lp << " count:" << all.str() << " = " << *placed << "\n";
  for (std::size_t i = 0; i < c.blanks.size(); ++i) {
    lp << " once" << i << ":";
    for (std::size_t b = 0; b < c.bars.size(); ++b) lp << " + " << number("x", i, b);
    lp << " <= 1\n";
  }
  for (std::size_t b = 0; b < c.bars.size(); ++b) {
    std::ostringstream fill;
    for (std::size_t i = 0; i < c.blanks.size(); ++i)
      fill << " + " << c.blanks[i].length_mm + c.kerf_mm << " " << number("x", i, b);
    const std::int64_t length = c.bars[b].length_mm;
    lp << " fit" << b << ":" << fill.str() << " - " << length + c.kerf_mm << " y" << b << " <= 0\n";
    lp << " rest" << b << ":" << fill.str() << " + r" << b << " + " << c.kerf_mm << " z" << b
       << " <= " << length + c.kerf_mm << "\n";
    lp << " kept" << b << ": r" << b << " - " << length << " z" << b << " <= 0\n";
    lp << " long" << b << ": r" << b << " - " << c.keep_mm << " z" << b << " >= 0\n";
    lp << " cut" << b << ": r" << b << " - " << length << " y" << b << " <= 0\n";
  }
  lp << "Binary\n";
  for (std::size_t b = 0; b < c.bars.size(); ++b) {
    lp << " y" << b << " z" << b << "\n";
    for (std::size_t i = 0; i < c.blanks.size(); ++i) lp << " " << number("x", i, b) << "\n";
  }
  lp << "End\n";
  return lp.str();
}

/// The optimum that glpsol finds; none when it is not installed.
std::optional<double> glpsol_says(const std::string& programme) {
  const auto path = std::filesystem::temp_directory_path() /
                    ("tangmark_cutting_" + std::to_string(getpid()) + ".lp");
  std::ofstream(path) << programme;
  const std::string command = "glpsol --lp " + path.string() + " -o /dev/stdout 2>/dev/null";
  FILE* pipe = popen(command.c_str(), "r");
  std::string said;
  std::array<char, 4096> block{};
  while (pipe != nullptr) {
    const std::size_t n = fread(block.data(), 1, block.size(), pipe);
    if (n == 0) break;
    said.append(block.data(), n);
  }
  if (pipe != nullptr) pclose(pipe);
  std::filesystem::remove(path);
  const auto at = said.find("Objective:  obj = ");
  if (at == std::string::npos || said.find("INTEGER OPTIMAL") == std::string::npos)
    return std::nullopt;
  return std::stod(said.substr(at + 18));
}

}  // namespace

TEST_CASE("cutting plans agree with a mixed-integer solver") {
  // Source: GLPK's glpsol (package glpk-utils) on the rules written as a mixed-integer programme.
  std::mt19937 chance(29);
  const auto between = [&](int a, int b) {
    return a + static_cast<int>(chance() % static_cast<unsigned>(b - a + 1));
  };
  for (int round = 0; round < 12; ++round) {
    CuttingCase c{between(1, 3), between(60, 150), {}, {}};
    const int bars = between(2, 4), blanks = between(5, 9);
    for (int b = 0; b < bars; ++b)
      c.bars.push_back({"S" + std::to_string(b), between(200, 900), between(300, 2500)});
    for (int i = 0; i < blanks; ++i)
      c.blanks.push_back({"K" + std::to_string(i), between(60, 320)});
    const auto plan = cutting_plan(c, nullptr);
    REQUIRE(plan.ok());
    const std::size_t placed = c.blanks.size() - plan->unplaced.size();
    const std::optional<double> most = glpsol_says(programme(c, std::nullopt));
    if (!most) {
      WARN("glpsol is not installed: not compared");
      return;
    }
    INFO("round " << round);
    CHECK(static_cast<double>(placed) == Approx(*most));
    const std::optional<double> least = glpsol_says(programme(c, placed));
    REQUIRE(least.has_value());
    CHECK(plan->value_used == Approx(*least).epsilon(1e-6));
    CHECK(plan->proven);
  }
}
