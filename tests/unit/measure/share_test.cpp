// SPDX-License-Identifier: MIT
#include "domain/measure/share.h"

#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

struct Read {
  const char* text;
  std::int64_t millionths;
};

struct Refused {
  const char* text;
  const char* word;
};

}  // namespace

TEST_CASE("a share is read as a percentage or as a fraction up to one") {
  const auto row = GENERATE(values<Read>({
      {"40 %", 400'000},
      {"40%", 400'000},
      {"40 percent", 400'000},
      {"0.4", 400'000},
      {"1/4", 250'000},
      {"1", 1'000'000},
      {"0", 0},
      {"12.5 %", 125'000},
      {"8.0625 %", 80'625},
      {"150 %", 1'500'000},
  }));
  CAPTURE(row.text);
  const auto share = parse_share(row.text, "margin");
  REQUIRE(share.ok());
  CHECK(share->millionths() == row.millionths);
}

TEST_CASE("a share that could mean two things or none is refused") {
  const auto row = GENERATE(values<Refused>({
      {"", "no share"},
      {"half", "not a share"},
      {"40", "could be a percentage"},
      {"1.5", "could be a percentage"},
      {"-5 %", "below zero"},
      {"12,5 %", "comma"},
      {"40 % 2", "not a share"},
      {"40 mm", "not a unit of share"},
      {"100001 %", "more than 100000 %"},
  }));
  CAPTURE(row.text);
  check_refused(parse_share(row.text, "margin"), "margin", row.word);
}

TEST_CASE("a share is shown in percent with the decimals it has") {
  CHECK(to_text(Share::percent(40)) == "40 %");
  CHECK(to_text(Share::millionths(125'000)) == "12.5 %");
  CHECK(to_text(Share::millionths(-50'000)) == "-5 %");
  CHECK(to_text(Share()) == "0 %");
}
