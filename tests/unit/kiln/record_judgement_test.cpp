// SPDX-License-Identifier: MIT
#include "domain/kiln/record_judgement.h"

#include <catch2/catch.hpp>
#include <random>

#include "domain/kiln/record_soak.h"
#include "domain/kiln/record_stream.h"

using namespace tangmark;
using namespace tangmark::kiln;

namespace {

KilnRecord read(const std::string& text, const Zone& zone = {}) {
  auto record = read_kiln_record(text, zone);
  if (!record) FAIL(record.problem().field + ": " + record.problem().sentence);
  return *record;
}

RecordJudgement judged(const std::string& text, std::optional<SoakWindow> window = {}) {
  return judge(read(text), window).value();
}

const SoakWindow hardening{Temperature::celsius(790), Temperature::celsius(815)};

// Heats at 10 C a minute from 20 C to 800 C, then holds for half an hour.
std::string usual_firing() {
  std::string text = "minutes,temp c\n";
  for (int minute = 0; minute <= 108; ++minute) {
    text += std::to_string(minute) + ',' + std::to_string(std::min(20 + 10 * minute, 800)) + '\n';
  }
  return text;
}

}  // namespace

TEST_CASE("a usual firing is judged as a maker would by hand") {
  const auto result = judged(usual_firing(), hardening);
  CHECK(result.samples == 109);
  CHECK(result.start_ms == 0);
  CHECK(result.end_ms == 108 * 60'000);
  CHECK(result.peak == Temperature::celsius(800));
  CHECK(result.soak_start_ms == 77 * 60'000);
  CHECK(result.soak_end_ms == 108 * 60'000);
  CHECK(result.in_window_min.value() == Approx(31));
  CHECK(result.overshoot_c.value() == 0);
  CHECK(result.max_ramp_c_per_h.value() == Approx(600));
  CHECK(result.max_cooling_c_per_h.value() == 0);
  CHECK(result.gaps.empty());
  CHECK(result.median_interval_s == 60);
}

TEST_CASE("time in the window is linear between samples, a pass through it counts too") {
  CHECK(judged("minutes,c\n0,700\n10,800\n20,700\n", hardening).in_window_min.value() == Approx(2));
  CHECK(judged("minutes,c\n0,700\n10,900\n", hardening).in_window_min.value() == Approx(1.25));
  const auto through = judged("minutes,c\n0,700\n10,900\n", hardening);
  CHECK_FALSE(through.soak_start_ms);
  CHECK(through.overshoot_c.value() == Approx(85));
  CHECK(judged("minutes,c\n0,790\n10,815\n", hardening).in_window_min.value() == Approx(10));
  CHECK(judged("minutes,c\n0,800\n10,800\n").in_window_min == std::nullopt);
}

TEST_CASE("the steepest ramp is that of any 5 minutes, not of one sample") {
  // One jump of 50 C within 10 minutes of rest: over the 5 minutes around it, 600 C/h.
  CHECK(judged("minutes,c\n0,100\n1,100\n2,150\n3,150\n8,150\n").max_ramp_c_per_h.value() ==
        Approx(600));
  CHECK_FALSE(judged("minutes,c\n0,100\n4,200\n").max_ramp_c_per_h);
  CHECK(judged("minutes,c\n0,100\n5,200\n").max_ramp_c_per_h.value() == Approx(1200));
  CHECK(judged("minutes,c\n0,100\n20,500\n").max_ramp_c_per_h.value() == Approx(1200));
  CHECK(judged("minutes,c\n0,500\n10,400\n").max_cooling_c_per_h.value() == Approx(600));
}

TEST_CASE("the steepest ramp agrees with a slow look at every second") {
  std::mt19937 chance(7);
  for (int round = 0; round < 30; ++round) {
    std::string text = "s,temp c\n";
    std::vector<std::pair<int, int>> points;
    int s = 0;
    for (int i = 0; i < 60; ++i) {
      points.emplace_back(s, 100 + static_cast<int>(chance() % 400));
      text += std::to_string(s) + ',' + std::to_string(points.back().second) + '\n';
      s += 1 + static_cast<int>(chance() % 120);
    }
    const auto at = [&](int t) {
      std::size_t i = 1;
      while (points[i].first < t) ++i;
      const auto [t0, c0] = points[i - 1];
      const auto [t1, c1] = points[i];
      return c0 + (c1 - c0) * static_cast<double>(t - t0) / (t1 - t0);
    };
    double steepest = 0;
    for (int t = 0; t + 300 <= points.back().first; ++t) {
      steepest = std::max(steepest, (at(t + 300) - at(t)) * 12);
    }
    CHECK(judged(text).max_ramp_c_per_h.value() == Approx(steepest));
  }
}

TEST_CASE("a gap is over three times the median interval") {
  const auto result = judged("minutes,c\n0,800\n1,800\n2,800\n3,800\n6,800\n7,800\n10.5,800\n");
  REQUIRE(result.gaps.size() == 1);
  CHECK(result.gaps[0].at_ms == 7 * 60'000);
  CHECK(result.gaps[0].minutes == Approx(3.5));
  // A sensor that lost its readings has a gap although the logger went on.
  const auto lost = judged("minutes,c\n0,800\n1,800\n2,\n3,\n4,\n5,\n6,800\n7,800\n8,800\n9,800\n");
  REQUIRE(lost.gaps.size() == 1);
  CHECK(lost.gaps[0].minutes == Approx(5));
  // Slow at first, quick later: the first intervals are gaps by the median of all.
  std::string quick = "s,c\n0,800\n60,800\n120,800\n";
  for (int s = 121; s < 200; ++s) quick += std::to_string(s) + ",800\n";
  CHECK(judged(quick).gaps.size() == 2);
}

TEST_CASE("the heat of a hold is its own length, and slicing it changes nothing") {
  const auto whole = judged("minutes,c\n0,204\n120,204\n");
  CHECK(whole.temper_minutes == Approx(120));
  std::string sliced = "minutes,c\n";
  for (int minute = 0; minute <= 120; ++minute) sliced += std::to_string(minute) + ",204\n";
  CHECK(judged(sliced).temper_minutes == Approx(120));
  const SoakWindow window{Temperature::celsius(200), Temperature::celsius(208)};
  const auto at_top = judged(sliced, window);
  CHECK(at_top.temper_at == Temperature::celsius(208));
  const double hours = steel::hours_at(481.15, steel::temper_parameter(477.15, 2));
  CHECK(at_top.temper_minutes == Approx(60 * hours));
}

TEST_CASE("sensors are compared inside the window") {
  const auto result =
      judged("minutes,c1,c2\n0,20,40\n1,800,803\n2,800,805\n3,800,801\n", hardening);
  REQUIRE(result.sensors.size() == 2);
  CHECK(result.sensors[1].mean_above_judged_c == Approx(3));
  CHECK(result.sensors[1].peak == Temperature::celsius(805));
  CHECK(result.widest_spread_c == Approx(5));
}

TEST_CASE("a record whose sensor never read is refused") {
  CHECK_FALSE(judge(KilnRecord{{}, {0, 1}, {{{}, {}}}, {}, {}}, {}).ok());
}

TEST_CASE("each blade has the soak between its own time in and out") {
  const auto record = read(usual_firing());
  const auto soak = blade_soak(record, hardening, 80 * 60'000, 90 * 60'000).value();
  CHECK(soak.in_window_min == Approx(10));
  CHECK(soak.covered());
  CHECK(soak.back_at_heat_min.value() == 0);
  CHECK(soak.mean_c == Approx(800));

  // Cut between samples; in the kiln before it was hot.
  const auto early = blade_soak(record, hardening, 76 * 60'000 + 30'000, 78 * 60'000).value();
  CHECK(early.in_window_min == Approx(1));
  CHECK(early.back_at_heat_min.value() == Approx(0.5));
  CHECK(early.lowest == Temperature::celsius(785));

  const auto late = blade_soak(record, hardening, 100 * 60'000, 120 * 60'000).value();
  CHECK_FALSE(late.covered());
  CHECK(late.recorded_min == Approx(8));
  CHECK_FALSE(blade_soak(record, hardening, 10, 10).ok());
  CHECK_FALSE(blade_soak(record, hardening, 200 * 60'000, 210 * 60'000).ok());
  CHECK_FALSE(blade_soak(record, hardening, Instant{}, Instant{std::chrono::hours(1)}).ok());
}

TEST_CASE("a blade of a dated record is found by the clock") {
  const auto record = read("time,c\n2026-11-25T09:00:00Z,800\n2026-11-25T10:00:00Z,800\n");
  const Instant nine = date::sys_days(date::year(2026) / 11 / 25) + std::chrono::hours(9);
  const auto soak = blade_soak(record, hardening, nine + std::chrono::minutes(5),
                               nine + std::chrono::minutes(17));
  CHECK(soak.value().in_window_min == Approx(12));
}

TEST_CASE("an opened door is seen by its sudden fall, the end of a firing is not") {
  const auto record = read(
      "s,c\n0,800\n30,800\n60,800\n90,790\n120,786\n180,795\n240,799\n300,800\n360,600\n420,400\n");
  const auto openings = door_openings(record);
  REQUIRE(openings.size() == 1);
  CHECK(openings[0].at_ms == 60'000);
  CHECK(openings[0].fall_c == Approx(14));
}

TEST_CASE("a sensor is set right by a check thermocouple and says so") {
  const auto record = read("minutes,c1,c2\n0,800,806\n1,800,806\n");
  const auto right = corrected(record, 0, TemperatureDifference::celsius(6));
  CHECK(right.readings[0][0] == Temperature::celsius(806));
  CHECK(right.readings[1] == record.readings[1]);
  CHECK(right.shape.sensors[0].name == "c1 (corrected)");
}

TEST_CASE("a streamed record answers as the word kiln-record prints it") {
  std::string text = "time,temp c,check c\n";
  for (int minute = 0; minute < 3000; ++minute) {
    const int hour = minute / 60 % 24;
    const int day = 1 + minute / 1440;
    text += "2026-03-0" + std::to_string(day) + (hour < 10 ? " 0" : " ") + std::to_string(hour) +
            (minute % 60 < 10 ? ":0" : ":") + std::to_string(minute % 60) + ",800,802\n";
  }
  const Zone berlin = Zone::of("Europe/Berlin").value();
  RecordStream stream(hardening, berlin);
  for (std::size_t at = 0; at < text.size(); at += 1000) CHECK(stream.feed(text.substr(at, 1000)));
  const auto judged = stream.finish();
  REQUIRE(judged);
  const steel::DeskValue answer(record_answer(*judged, berlin));
  CHECK(answer.find("samples")->number() == 3000);
  CHECK(answer.find("start")->words() == "2026-03-01T00:00:00+01:00");
  CHECK(answer.find("end")->words() == "2026-03-03T01:59:00+01:00");
  CHECK(answer.find("in_window_min")->number() == Approx(2999));
  CHECK(answer.find("gaps")->list().empty());
  CHECK(answer.find("sensors")->list().size() == 2);
  CHECK(answer.find("sensors")->list()[1].words() == "check c");

  RecordStream without(std::nullopt, berlin);
  without.feed("s,c\n0,20\n60,30\n");
  const steel::DeskValue plain(record_answer(without.finish().value(), berlin));
  CHECK(plain.find("in_window_min")->is_nothing());
  CHECK(plain.find("soak_start")->is_nothing());
  CHECK(plain.find("end")->number() == 60);
  CHECK(plain.find("max_ramp_c_per_h")->is_nothing());

  RecordStream broken(std::nullopt, berlin);
  broken.feed("hello\n");
  CHECK_FALSE(broken.finish().ok());
  RecordStream empty(std::nullopt, berlin);
  CHECK_FALSE(empty.finish().ok());
}
