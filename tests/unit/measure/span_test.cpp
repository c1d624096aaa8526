// SPDX-License-Identifier: MIT
#include "domain/measure/when.h"
#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

struct Read {
  const char* text;
  std::int64_t seconds;
};

struct Refused {
  const char* text;
  const char* word;
};

}  // namespace

TEST_CASE("a span of time is read as makers write it") {
  const auto row = GENERATE(values<Read>({
      {"2h", 7200},
      {"90", 5400},
      {"90 min", 5400},
      {"1:30", 5400},
      {"0:45", 2700},
      {"1:30:15", 5415},
      {"1 h 20 min", 4800},
      {"1h20m", 4800},
      {"45 s", 45},
      {"2.5 h", 9000},
      {"1/2 h", 1800},
      {"3 d", 259'200},
      {"3 d 2 h", 266'400},
      {"2 weeks", 1'209'600},
      {"0", 0},
  }));
  CAPTURE(row.text);
  const auto span = parse_duration(row.text, "soak");
  REQUIRE(span.ok());
  CHECK(span->count() == row.seconds);
}

TEST_CASE("a span that is not one is refused") {
  const auto row = GENERATE(values<Refused>({
      {"", "no time"},
      {"long", "not a span"},
      {"-5 min", "below zero"},
      {"1,5 h", "comma"},
      {"1:60", "not a span"},
      {"1:5", "not a span"},
      {"1:300", "not a span"},
      {":30", "not a span"},
      {"-1:30", "not a span"},
      {"1:30 h", "not a span"},
      {"20 min 1 h", "not a span"},
      {"1 h 20", "not a span"},
      {"3 mm", "not a unit of time"},
      {"11 years", "not a unit of time"},
      {"4000 d", "more than ten years"},
      {"999999999:00", "more than ten years"},
      {"999999999999999999 d", "more than ten years"},
  }));
  CAPTURE(row.text);
  check_refused(parse_duration(row.text, "soak"), "soak", row.word);
}

TEST_CASE("a span is shown in the two units that matter") {
  using std::chrono::hours;
  using std::chrono::minutes;
  using std::chrono::seconds;
  CHECK(to_text(seconds{45}) == "45 s");
  CHECK(to_text(Duration{minutes{12}}) == "12 min");
  CHECK(to_text(minutes{12} + seconds{30}) == "12 min 30 s");
  CHECK(to_text(Duration{hours{2} + minutes{5}}) == "2 h 05 min");
  CHECK(to_text(Duration{hours{2}}) == "2 h");
  CHECK(to_text(hours{1} + seconds{59 * 60 + 45}) == "2 h");
  CHECK(to_text(Duration{hours{26} + minutes{30}}) == "26 h 30 min");
  CHECK(to_text(Duration{hours{74}}) == "3 d 2 h");
  CHECK(to_text(Duration{hours{47} + minutes{59} + seconds{40}}) == "2 d");
  CHECK(to_text(Duration{-minutes{90}}) == "-1 h 30 min");
  CHECK(to_text(Duration{0}) == "0 s");
}

TEST_CASE("hours are shown to one decimal, half to even") {
  CHECK(hours_text(std::chrono::minutes{126}) == "2.1");
  CHECK(hours_text(std::chrono::minutes{3}) == "0.0");
  CHECK(hours_text(std::chrono::minutes{9}) == "0.2");
  CHECK(hours_text(std::chrono::minutes{-90}) == "-1.5");
}
