// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_json.h"

using namespace tangmark::kiln;

// Cases and figures stand in cases/, with where they come from in cases/best_known.csv.

namespace {

PlanCase reference_case(const std::string& name) {
  std::ifstream file(TANGMARK_TESTS_DIR "/reference/kiln/cases/" + name + ".json");
  std::stringstream text;
  text << file.rdbuf();
  return read_plan_case(text.str()).value();
}

PlanAnswer planned(const PlanCase& c, std::int64_t iterations) {
  SearchLimits limits;
  limits.iterations = iterations;
  return plan_firings(c, limits, 1);
}

}  // namespace

TEST_CASE("cases that an exact solver has settled are planned at their optimum") {
  struct Settled {
    const char* name;
    std::int64_t optimum_mc;
  };
  for (const Settled& s : {Settled{"01-tiny3", 431875}, Settled{"02-tiny3", 442605},
                           Settled{"03-tiny4", 437185}}) {
    const PlanAnswer answer = planned(reference_case(s.name), 20000);
    INFO(s.name);
    CHECK(answer.cost.total_mc() == s.optimum_mc);
    CHECK(answer.bound_mc <= s.optimum_mc);
  }
}

TEST_CASE("small cases are planned at least as cheaply as the best known plans") {
  CHECK(planned(reference_case("04-small5"), 60000).cost.total_mc() <= 676673);
  CHECK(planned(reference_case("05-small4"), 60000).cost.total_mc() <= 810621);
  CHECK(planned(reference_case("06-small6"), 60000).cost.total_mc() <= 1074199);
}

TEST_CASE("cases of every size are planned within the rules") {
  for (const char* name : {"07-week8", "08-week10", "09-week14", "10-fortnight20", "11-large60",
                           "12-large200"}) {
    const PlanCase c = reference_case(name);
    const PlanAnswer answer = planned(c, 500);
    INFO(name);
    CHECK(answer.unplaced.empty());
    CHECK(check_plan(c, answer.plan).feasible());
  }
}
