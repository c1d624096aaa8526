// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <sstream>

#include "domain/certificate/wording.h"
#include "domain/measure/table_text.h"
#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;

namespace {

std::vector<TableRow> phrases() {
  std::ifstream file(TANGMARK_TESTS_DIR "/unit/certificate/phrases.csv");
  std::stringstream text;
  text << file.rdbuf();
  const std::string whole = text.str();
  const auto table = read_table(whole, "phrases");
  REQUIRE(table);
  return {table->begin() + 1, table->end()};
}

}  // namespace

// Each line: the sample blade, the language, the phrase, whether it may stand, and for a refused
// one the claim that lacks ("none" when no record could show it).
TEST_CASE("every phrase of the list is allowed or refused as the record of its blade bears") {
  std::map<std::string, Dossier> blades;
  std::size_t allowed = 0;
  std::size_t refused = 0;
  for (const TableRow& row : phrases()) {
    const std::string& name = row.cells[0];
    if (!blades.contains(name)) blades.emplace(name, sample::blade_called(name));
    INFO("line " << row.line << ", blade " << name << ": " << row.cells[2]);
    std::vector<WordHit> unproven;
    for (const WordHit& hit : wording(blades.at(name), row.cells[2]))
      if (!hit.proven) unproven.push_back(hit);
    if (row.cells[3] == "allowed") {
      ++allowed;
      for (const WordHit& hit : unproven) FAIL_CHECK("refused for \"" << hit.word << "\"");
      continue;
    }
    REQUIRE(row.cells[3] == "refused");
    ++refused;
    bool found = false;
    std::string needed;
    for (const WordHit& hit : unproven) {
      const std::string needs = hit.needs ? std::string(claim_id(*hit.needs)) : "none";
      needed += needs + " ";
      found = found || needs == row.cells[4];
      CHECK_FALSE(hit.lacking.empty());
      CHECK(row.cells[2].substr(hit.at, hit.word.size()) == hit.word);
    }
    if (!found) FAIL_CHECK("not refused for " << row.cells[4] << "; needed: " << needed);
  }
  CHECK(allowed + refused >= 300);
  CHECK(allowed >= 100);
  CHECK(refused >= 100);
}
