// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_json.h"

#include <catch2/catch.hpp>

#include "domain/kiln/plan_problems.h"
#include "tests/unit/kiln/plan_cases.h"

using namespace tangmark;
using namespace tangmark::kiln;

namespace {

std::string with(std::string text, const std::string& old_words, const std::string& new_words) {
  const auto place = text.find(old_words);
  REQUIRE(place != std::string::npos);
  return text.replace(place, old_words.size(), new_words);
}

/// The fields that a text is refused for.
std::vector<std::string> fields(const std::string& text) {
  std::vector<std::string> found;
  for (const Problem& p : read_plan_case(text).problems()) {
    CHECK(p.sentence.ends_with("."));
    found.push_back(p.field);
  }
  return found;
}

const std::string text = write_plan_case(hand_worked_case());

}  // namespace

TEST_CASE("a case written and read again is the same case") {
  PlanCase c = hand_worked_case();
  c.kilns[0].circuit = "north";
  c.kilns[0].staggered = true;
  c.kilns[1].state = PlanKilnState{180, -20, 0};
  c.kilns[1].load_mw_min_per_c = 250;
  c.baths = {{"oil", 40, 70, 60, 55}, {"brine", 20, 60, 90, {}}};
  c.hands_taken = {{0, 12}};
  c.blades[0].operations[0].bath = "oil";
  c.blades[0].operations[0].warms_mk = 4'500;
  c.blades[0].previous_end_min = -30;
  c.locked.push_back(hand_worked_plan().firings[1]);
  CHECK(read_plan_case(write_plan_case(hand_worked_case())).value() == hand_worked_case());
  c.locked.clear();
  CHECK(read_plan_case(write_plan_case(c)).value() == c);
}

TEST_CASE("locked firings stand in the case and are judged among themselves") {
  PlanCase c = hand_worked_case();
  c.locked = hand_worked_plan().firings;
  CHECK(read_plan_case(write_plan_case(c)).value() == c);
  c.locked[0].start_min = 10;
  const auto refused = read_plan_case(write_plan_case(c));
  REQUIRE_FALSE(refused);
  CHECK(refused.problem().field == "locked");
}

TEST_CASE("a tank that no one entered and spans that end before they begin are named") {
  PlanCase c = hand_worked_case();
  c.blades[1].operations[0].bath = "oil";
  c.hands_taken = {{30, 20}};
  CHECK(fields(write_plan_case(c)) ==
        std::vector<std::string>{"hands_taken[0]", "blades[1].ops[0].bath"});
}

TEST_CASE("a plan written and read again is the same plan") {
  CHECK(read_firing_plan(write_firing_plan(hand_worked_plan())).value() == hand_worked_plan());
}

TEST_CASE("a field that is wrong is named by its path") {
  CHECK(fields(with(text, "\"horizon\": 1440", "\"horizon\": \"long\"")) ==
        std::vector<std::string>{"horizon"});
  CHECK(fields(with(text, "\"horizon\": 1440", "\"horizon\": 1440.5")) ==
        std::vector<std::string>{"horizon"});
  CHECK(fields(with(text, "\"horizon\": 1440", "\"horizon\": 99999999999999999999")) ==
        std::vector<std::string>{"horizon"});
  CHECK(fields(with(text, "\"slots\": 2", "\"slots\": 0")) ==
        std::vector<std::string>{"kilns[0].slots"});
  CHECK(fields(with(text, "\"t_lo\": 795", "\"t_lo\": 801")) ==
        std::vector<std::string>{"blades[0].ops[0].t_lo"});
  CHECK(fields(with(text, "\"id\": \"B\"", "\"id\": \"A\"")) ==
        std::vector<std::string>{"blades[1].id"});
  CHECK(fields(with(text, "\"kind\": \"harden\"", "\"kind\": \"boil\"")) ==
        std::vector<std::string>{"blades[0].ops[0].kind"});
  CHECK(fields(with(text, "\"quench_min\": 4", "\"quench\": 4")) ==
        std::vector<std::string>{"blades[0].ops[0].quench_min"});
}

TEST_CASE("windows out of order, upside down or touching are refused") {
  for (const char* windows : {"[[300, 600], [0, 100]]", "[[600, 0]]", "[[0, 90], [90, 600]]"}) {
    PlanCase c = hand_worked_case();
    c.windows.clear();
    const std::string none = write_plan_case(c);
    const auto found =
        fields(with(none, "\"windows\": []", std::string("\"windows\": ") + windows));
    REQUIRE_FALSE(found.empty());
    CHECK(found[0].starts_with("windows["));
  }
}

TEST_CASE("text that is no case is refused with a sentence") {
  for (const char* odd : {"", "{", "[]", "null", "7", "{\"format\": 3}", "\xff\xfe"})
    CHECK_FALSE(read_plan_case(odd));
  CHECK_FALSE(read_firing_plan("{\"instance\": \"x\"}"));
}

TEST_CASE("a case given as text comes back as a plan with its cost") {
  SearchLimits limits;
  limits.iterations = 300;
  const auto planned = plan_case_text(text, limits, 1);
  REQUIRE(planned);
  CHECK(planned->complete);
  CHECK(planned->json.find("\"objective\": 143472") != std::string::npos);
}
