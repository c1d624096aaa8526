// SPDX-License-Identifier: MIT
#include "tests/unit/db/maker.h"

namespace tangmark::test {

void check_refused(ShopOnTheBench& bench, std::string_view action, const db::Given& given,
                   std::string_view field) {
  const std::string before = content_of(bench.shop);
  const auto result = bench.tries(action, given);
  INFO(action);
  REQUIRE_FALSE(result);
  std::string told;
  bool names_it = false;
  for (const Problem& problem : result.problems()) {
    told += problem.field + ": " + problem.sentence + " " + problem.remedy + "\n";
    names_it = names_it || problem.field == field;
    CHECK(problem.sentence.ends_with("."));
  }
  INFO(told);
  CHECK(names_it);
  CHECK(content_of(bench.shop) == before);
}

}  // namespace tangmark::test
