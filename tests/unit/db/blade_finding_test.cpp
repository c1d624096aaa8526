// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <fstream>

#include "db/actions/attach_photo.h"
#include "db/store/attachment_store.h"
#include "db/store/finding_store.h"
#include "tests/scratch.h"
#include "tests/unit/db/blade_bench.h"

using namespace tangmark;
using tangmark::test::Bench;
using tangmark::test::content_of;
using tangmark::test::refusal;

TEST_CASE("17: a fault stops the blade until it is decided") {
  Bench bench;
  bench.a_blade("finish grind,etch");
  const std::string number = bench.did("log_finding", {{"blade", "11"},
                                                       {"kind", "delamination"},
                                                       {"words", "4 mm line at the heel"},
                                                       {"size", "4 mm"}});
  CHECK(number == "1");
  CHECK(refusal(bench.tries("finish_blade", {{"blade", "11"}})).find("Finding 1 (delamination)") !=
        std::string::npos);
  CHECK(refusal(
            bench.tries("settle_finding", {{"finding", "1"}, {"decision", "open"}, {"words", "x"}}))
            .starts_with("decision"));
  CHECK(refusal(
            bench.tries("settle_finding", {{"finding", "1"}, {"decision", "hide"}, {"words", "x"}}))
            .starts_with("decision"));
  bench.did(
      "settle_finding",
      {{"finding", "1"}, {"decision", "fix and disclose"}, {"words", "closed, told the buyer"}});
  CHECK(bench.tries("finish_blade", {{"blade", "11"}}));
  CHECK(db::find_finding(bench.shop, 1)->decision == blade::Decision::fix_and_disclose);
}

TEST_CASE("a pattern that came out stops nothing") {
  Bench bench;
  bench.a_blade("etch");
  bench.did("log_finding", {{"blade", "11"}, {"kind", "layers seen"}, {"words", "even"}});
  bench.did("log_finding", {{"blade", "11"}, {"kind", "hamon"}, {"words", "clear"}});
  CHECK(bench.record("11").findings.at(1).kind == "hamon seen");
  CHECK(bench.tries("finish_blade", {{"blade", "11"}}));
}

TEST_CASE("a kind of finding nobody knows is refused with the list") {
  Bench bench;
  bench.a_blade();
  const auto refused =
      bench.tries("log_finding", {{"blade", "11"}, {"kind", "wobble"}, {"words", "x"}});
  REQUIRE_FALSE(refused);
  CHECK(refused.problem().remedy.find("delamination") != std::string::npos);
}

TEST_CASE("hardness is kept reading by reading with its place and block") {
  Bench bench;
  bench.a_blade("harden,temper,temper");
  bench.heat_treated("11");
  bench.later(30);
  bench.did("log_hardness", {{"blade", "11"},
                             {"readings", "61.5,61,61.5"},
                             {"place", "heel,middle,tip"},
                             {"tester", "bench tester"},
                             {"block", "60.2"},
                             {"block_read", "60.0"}});
  const auto readings = bench.record("11").readings;
  REQUIRE(readings.size() == 3);
  CHECK(readings[1].place == "middle");
  CHECK(readings[1].tenths == 610);
  CHECK(readings[2].block_read_tenths == 600);
  CHECK(refusal(bench.tries("log_hardness",
                            {{"blade", "11"}, {"readings", "61,62"}, {"place", "a,b,c"}}))
            .starts_with("place"));
  CHECK(refusal(bench.tries("log_hardness", {{"blade", "11"}, {"readings", "hard"}}))
            .starts_with("readings"));
  CHECK(refusal(bench.tries("log_hardness", {{"blade", "11"}, {"readings", "61"}, {"block", "60"}}))
            .starts_with("block_read"));
}

TEST_CASE("14: a blade finished with no reading after its last heat is told so") {
  Bench bench;
  bench.a_blade("harden,temper,temper");
  bench.heat_treated("11");
  const auto finished = bench.tries("finish_blade", {{"blade", "11"}});
  REQUIRE(finished);
  CHECK(finished->warnings.at(0).find("not measured") != std::string::npos);
}

TEST_CASE("a photo is kept as its reader gives it, and what is no picture is refused") {
  Bench bench;
  bench.a_blade();
  const test::Scratch scratch;
  const auto path = (scratch.folder() / "heel.jpg").string();
  std::ofstream(path) << "these are no pixels";
  db::set_photo_reader([](std::string_view bytes, std::string_view field) -> Outcome<std::string> {
    if (bytes == "these are no pixels")
      return Problem{std::string(field), "The file is not a picture that can be read.",
                     "Choose a JPEG or PNG picture."};
    return "smaller " + std::string(bytes);
  });
  const std::string before = content_of(bench.shop);
  CHECK(refusal(bench.tries("attach_photo", {{"blade", "11"}, {"file", path}}))
            .starts_with("file: The file is not"));
  CHECK(refusal(bench.tries("attach_photo", {{"blade", "11"}, {"file", path + ".none"}}))
            .starts_with("file"));
  std::ofstream(path) << "pixels";
  CHECK(refusal(bench.tries("attach_photo", {{"file", path}})).starts_with("blade"));
  CHECK(content_of(bench.shop) == before);
  bench.did("attach_photo", {{"blade", "11"}, {"file", path}, {"caption", "the heel"}});
  const auto photos = db::photos_of_blade(bench.shop, bench.blade("11").id.row());
  REQUIRE(photos.size() == 1);
  CHECK(photos[0].caption == "the heel");
  CHECK(db::bytes_of(bench.shop, photos[0].id) == "smaller pixels");
  db::set_photo_reader({});
}
