// SPDX-License-Identifier: MIT
#include "domain/blade/log_rules.h"

#include <catch2/catch.hpp>

#include "tests/unit/blade/a_blade.h"

using namespace tangmark;
using namespace tangmark::blade;
using tangmark::blade::test::ABlade;
using tangmark::blade::test::at;

namespace {

LogEntry an_entry(const std::string& operation, Instant when) {
  LogEntry entry{.blade = BladeId{1}};
  entry.operation = operation;
  entry.started_at = when;
  return entry;
}

}  // namespace

TEST_CASE("13: any firing after the handle was fitted is asked about") {
  const tangmark::Catch caught = fired_with_handle(23, "temper", true, at(0));
  REQUIRE(caught);
  CHECK(caught->number == 13);
  CHECK(caught->weight == Weight::ask);
  CHECK_FALSE(fired_with_handle(23, "sharpen", false, at(0)));
  CHECK_FALSE(fired_with_handle(23, "temper", true, std::nullopt));
}

TEST_CASE("23: times out of order within an entry are stopped") {
  auto entry = an_entry("temper", at(3));
  entry.ended_at = at(2);
  CHECK(times_out_of_order(entry).at(0).number == 23);
  entry.ended_at = at(4);
  CHECK(times_out_of_order(entry).empty());
  entry.time_in = at(4);
  entry.time_out = at(3);
  CHECK(times_out_of_order(entry).size() == 1);
}

TEST_CASE("23: an entry before the blade was begun or before its quench is stopped") {
  const auto log = ABlade().logs("harden", at(5)).log;
  CHECK(out_of_order_with_log(an_entry("profile", at(-1)), log, at(0), Zone()).at(0).weight ==
        Weight::stop);
  CHECK(out_of_order_with_log(an_entry("temper", at(4)), log, at(0), Zone()).at(0).weight ==
        Weight::stop);
  CHECK(out_of_order_with_log(an_entry("temper", at(6)), log, at(0), Zone()).empty());
}

TEST_CASE("23: a second temper that begins within the first is asked about") {
  const auto log = ABlade().logs("harden", at(0)).logs("temper", at(1)).until(at(3)).log;
  const Catches caught = out_of_order_with_log(an_entry("temper", at(2)), log, at(0), Zone());
  REQUIRE(caught.size() == 1);
  CHECK(caught[0].weight == Weight::ask);
}

TEST_CASE("23: a clock that went backwards is asked about") {
  CHECK_FALSE(clock_went_backwards(at(1), at(1), Zone()));
  CHECK_FALSE(clock_went_backwards(at(1), std::nullopt, Zone()));
  REQUIRE(clock_went_backwards(at(0), at(1), Zone()));
  CHECK(clock_went_backwards(at(0), at(1), Zone())->number == 23);
}

TEST_CASE("23: a time the clock shows twice that day is said") {
  const Zone berlin = *Zone::of("Europe/Berlin");
  // The clocks go back from 03:00 to 02:00 on 25 October 2026.
  const Instant twice = date::sys_days{date::year{2026} / 10 / 25} + std::chrono::minutes(30);
  CHECK(shown_twice(twice, berlin));
  CHECK_FALSE(shown_twice(at(0), berlin));
}

TEST_CASE("24: a done step without hours is said, kiln time is none") {
  CHECK(no_hours(an_entry("finish grind", at(0)))->number == 24);
  CHECK_FALSE(no_hours(an_entry("temper", at(0))));
  auto entry = an_entry("finish grind", at(0));
  entry.hands_on = std::chrono::minutes(40);
  CHECK_FALSE(no_hours(entry));
}

TEST_CASE("24: a timer longer than the limit is asked about") {
  auto entry = an_entry("hand sand", at(0));
  entry.hands_on = std::chrono::hours(13);
  REQUIRE(span_too_long(entry, std::chrono::hours(12)));
  CHECK(span_too_long(entry, std::chrono::hours(12))->weight == Weight::ask);
  entry.hands_on = std::chrono::hours(12);
  CHECK_FALSE(span_too_long(entry, std::chrono::hours(12)));
  entry.ended_at = at(13);
  CHECK(span_too_long(entry, std::chrono::hours(12)));
  auto anneal = an_entry("anneal", at(0));
  anneal.ended_at = at(14);
  CHECK_FALSE(span_too_long(anneal, std::chrono::hours(12)));
}
