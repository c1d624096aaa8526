// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_json.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;

namespace {

const std::string good =
    R"({"kerf_mm": 2, "keep_mm": 150, "bars": [{"id": "A", "length_mm": 600, "price": 1200}],)"
    R"( "blanks": [{"id": "b1", "length_mm": 260}, {"id": "b2", "length_mm": 180}]})";

std::string field_of(std::string json) {
  return cutting_case_from(json).problem().field;
}

std::string with(const std::string& from, const std::string& to) {
  std::string text = good;
  text.replace(text.find(from), from.size(), to);
  return text;
}

}  // namespace

TEST_CASE("a case goes in and its answer comes out") {
  CHECK(
      *cut_case_text(good, nullptr) ==
      R"({"placed":2,"value_used":888.0,"bars_cut":1,"cuts":[{"bar":"A","blanks":["b1","b2"],)"
      R"("left_mm":156,"kept":true}],"unplaced":[],"proven_optimal":true,"value_at_least":888.0})");
}

TEST_CASE("a case is read as it is written") {
  const auto c = cutting_case_from(good);
  REQUIRE(c.ok());
  CHECK(*c == CuttingCase{2, 150, {{"A", 600, 1200}}, {{"b1", 260}, {"b2", 180}}});
}

TEST_CASE("what is wrong with a case is told by its path") {
  CHECK(field_of("") == "case");
  CHECK(field_of("[]") == "case");
  CHECK(field_of(good + "x") == "case");
  CHECK(field_of(with("\"kerf_mm\": 2, ", "")) == "kerf_mm");
  CHECK(field_of(with("\"kerf_mm\": 2", "\"kerf_mm\": 2.5")) == "kerf_mm");
  CHECK(field_of(with("\"kerf_mm\": 2", "\"kerf_mm\": \"2\"")) == "kerf_mm");
  CHECK(field_of(with("\"kerf_mm\": 2", "\"kerf_mm\": 99999999999999999999")) == "kerf_mm");
  CHECK(field_of(with("\"kerf_mm\": 2", "\"kerf\": 2, \"kerf_mm\": 2")) == "kerf");
  CHECK(field_of(with("\"kerf_mm\": 2", "\"kerf_mm\": 1, \"kerf_mm\": 2")) == "kerf_mm");
  CHECK(field_of(with("\"price\": 1200", "\"price\": null")) == "bars[0].price");
  CHECK(field_of(with("\"id\": \"A\"", "\"id\": \"\"")) == "bars[0].id");
  CHECK(field_of(with("\"id\": \"A\"", "\"id\": 7")) == "bars[0].id");
  CHECK(field_of(with("{\"id\": \"b2\", \"length_mm\": 180}", "7")) == "blanks[1]");
  CHECK(field_of(with("\"blanks\": [", "\"blanks\": {\"x\":[")) == "case");
  CHECK(field_of(R"({"kerf_mm":1,"keep_mm":1,"bars":{},"blanks":[]})") == "bars");
}

TEST_CASE("all faults of a case are told at once") {
  const auto refused = cutting_case_from(
      R"({"keep_mm": -1, "bars": [{"id": "A", "length_mm": "x"}], "blanks": [1]})");
  CHECK(refused.problems().size() == 4);
}

TEST_CASE("figures that cannot be are refused after reading") {
  CHECK(cut_case_text(with("\"length_mm\": 600", "\"length_mm\": -600"), nullptr).problem().field ==
        "bar A");
}

TEST_CASE("names that are not proper text do not stop the answer") {
  const auto answer = cut_case_text(with("\"A\"", "\"\\u00e4 \\\"7\\\"\""), nullptr);
  REQUIRE(answer.ok());
  CHECK(answer->find("\xc3\xa4 \\\"7\\\"") != std::string::npos);
  CHECK_FALSE(cut_case_text(with("\"A\"", "\"\xff\""), nullptr).ok());
}
