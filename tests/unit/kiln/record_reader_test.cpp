// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/kiln/record.h"
#include "domain/kiln/record_cell.h"

using namespace tangmark;
using namespace tangmark::kiln;

namespace {

KilnRecord read(const std::string& text, const Zone& zone = {}, const ShapeHints& hints = {}) {
  auto record = read_kiln_record(text, zone, hints);
  if (!record) FAIL(record.problem().field + ": " + record.problem().sentence);
  return *record;
}

Problem refusal(const std::string& text, const ShapeHints& hints = {}) {
  const auto record = read_kiln_record(text, Zone(), hints);
  if (record) FAIL("not refused: " + text);
  return record.problem();
}

double celsius(const KilnRecord& record, std::size_t row, std::size_t sensor = 0) {
  REQUIRE(record.readings[sensor][row]);
  return record.readings[sensor][row]->in_celsius();
}

Zone berlin() { return Zone::of("Europe/Berlin").value(); }

}  // namespace

TEST_CASE("a record of elapsed seconds and C is read") {
  const auto record = read("time_s,temp_c\n0,20\n10,25.5\n20,31\n");
  CHECK(record.rows() == 3);
  CHECK(record.ms == std::vector<std::int64_t>{0, 10'000, 20'000});
  CHECK(celsius(record, 1) == 25.5);
  CHECK(record.assumptions.empty());
  CHECK(record.shape.clock == RecordClock::elapsed);
}

TEST_CASE("columns, units and separators are recognised from the head") {
  struct Case {
    const char* text;
    std::int64_t second_ms;
    double second_c;
  };
  const Case cases[] = {
      {"Elapsed (min),Temp (F)\n0,70\n1.5,212\n", 90'000, 100},
      {"Minutes;Temp \xC2\xB0" "C\n0;20\n1,5;100,25\n", 90'000, 100.25},
      {"t [s]\tTC1 [\xB0" "F]\n0\t70\n5\t212\n", 5'000, 100},
      {"hours|temperature C\n0|20\n0.5|100\n", 1'800'000, 100},
      {"Time (ms),T\n0,20\n250,100\n", 250, 100},
      {"elapsed h:mm:ss,pv c\n0:00:00,20\n26:10:05,100\n", 94'205'000, 100},
      {"time (mm:ss),C\n00:00,20\n75:30,100\n", 0, 0},
      {"Index,Time s,Set point,Temp,Output %\n1,0,800,20,100\n2,10,800,100,99\n", 10'000, 100},
      {"\xEF\xBB\xBFtime_s,temp_k\r\n0,293.15\r\n10,373.15\r\n", 10'000, 100},
      {"# logger of the shop\n# time_s,temp_f\n0,70\n10,212\n", 10'000, 100},
      {"Kiln log\nSerial: 12\n\ntime_s,temp_c\n0,20\n# opened the door\n\n10,100\n", 10'000, 100},
      {"0,20\n10,100\n", 10'000, 100},
      {"\"time s\",\"temp, c\"\n\"0\",\"20\"\n\"10\",\"100\"\n", 10'000, 100},
      {"time_s,temp\n0,70 F\n10,212 F\n", 10'000, 100},
      {"time_s,value,unit\n0,70,F\n10,212,F\n", 10'000, 100},
  };
  for (const Case& c : cases) {
    CAPTURE(c.text);
    if (c.second_ms == 0) continue;
    const auto record = read(c.text);
    REQUIRE(record.rows() == 2);
    CHECK(record.ms[1] == c.second_ms);
    CHECK(celsius(record, 1) == Approx(c.second_c));
  }
}

TEST_CASE("minutes and seconds are told from hours and minutes by the head") {
  CHECK(read("time (mm:ss),temp c\n00:00,20\n05:30,100\n").ms[1] == 330'000);
  const auto record = read("elapsed,temp c\n0:00,20\n5:30,100\n");
  CHECK(record.ms[1] == 19'800'000);
  CHECK(record.assumptions.size() == 1);
}

TEST_CASE("a time of day carries over midnight") {
  const auto record = read("time,temp c\n23:59:30,800\n00:00:30,801\n00:01:30,802\n");
  CHECK(record.shape.clock == RecordClock::time_of_day);
  CHECK(record.ms[2] - record.ms[0] == 120'000);
  CHECK(record.remarks.clock_jumps.empty());
  CHECK(stamp_text(record.shape.clock, record.ms[1], Zone()) == "00:00:30");
}

TEST_CASE("dates are read as they are written") {
  const char* same_instant[] = {
      "time,c\n2026-11-25T07:51:00+01:00,20\n2026-11-25T07:52:00+01:00,21\n",
      "time,c\n2026-11-25T06:51:00Z,20\n2026-11-25T06:52:00Z,21\n",
      "time,c\n2026-11-25T02:51:00-0400,20\n2026-11-25T02:52:00-0400,21\n",
      "time,c\n2026-11-25 07:51,20\n2026-11-25 07:52,21\n",
      "time,c\n2026/11/25 07:51:00.000,20\n2026/11/25 07:52:00.000,21\n",
      "time;c\n25.11.2026 07:51;20\n25.11.2026 07:52;21\n",
      "time,c\n11/25/2026 7:51:00 AM,20\n11/25/2026 7:52:00 AM,21\n",
      "time,c\n25/11/2026 07:51,20\n25/11/2026 07:52,21\n",
      "date,time,c\n2026-11-25,07:51:00,20\n2026-11-25,07:52:00,21\n",
      "timestamp,c\n1795589460,20\n1795589520,21\n",
      "timestamp,c\n1795589460000,20\n1795589520000,21\n",
  };
  for (const char* text : same_instant) {
    CAPTURE(text);
    const auto record = read(text, berlin());
    REQUIRE(record.rows() == 2);
    CHECK(stamp_text(record.shape.clock, record.ms[0], berlin()) == "2026-11-25T07:51:00+01:00");
    CHECK(record.ms[1] - record.ms[0] == 60'000);
  }
}

TEST_CASE("a date that may mean two days is refused until the kiln says which") {
  const std::string text = "time,c\n03/04/2026 07:51,20\n03/04/2026 07:52,21\n";
  CHECK(refusal(text).field == "date");
  ShapeHints day_first;
  day_first.date_order = DateOrder::day_first;
  const auto record = read(text, Zone(), day_first);
  CHECK(stamp_text(record.shape.clock, record.ms[0], Zone()) == "2026-04-03T07:51:00+00:00");
}

TEST_CASE("the hour that happens twice lasts two hours, the one that does not exist lasts none") {
  const auto autumn = read(
      "time,c\n2026-10-25 01:30,800\n2026-10-25 02:30,800\n2026-10-25 02:00,800\n"
      "2026-10-25 02:30,800\n2026-10-25 03:30,800\n",
      berlin());
  CHECK(autumn.remarks.clock_jumps.empty());
  CHECK(autumn.ms.back() - autumn.ms.front() == 3 * 3'600'000);
  const auto spring = read("time,c\n2026-03-29 01:30,800\n2026-03-29 03:30,800\n", berlin());
  CHECK(spring.ms.back() - spring.ms.front() == 3'600'000);
}

TEST_CASE("a clock set back is flagged and the record goes on") {
  const auto record = read("time_s,c\n0,20\n10,21\n20,22\n5,23\n15,24\n");
  REQUIRE(record.remarks.clock_jumps.size() == 1);
  CHECK(record.remarks.clock_jumps[0] == ClockJump{5, 15'000});
  CHECK(record.ms == std::vector<std::int64_t>{0, 10'000, 20'000, 30'000, 40'000});
}

TEST_CASE("lost samples are missing, not nought") {
  const auto record = read("time_s,c\n0,20\n10,\n20,---\n30,NaN\n40,open\n50,25\n");
  CHECK(record.rows() == 6);
  CHECK(record.remarks.missing_readings == 4);
  CHECK_FALSE(record.readings[0][1]);
}

TEST_CASE("several sensors are kept apart") {
  const auto record = read("time_s,controller c,check tc f,set\n0,20,68,800\n10,100,212,800\n");
  REQUIRE(record.shape.sensors.size() == 2);
  CHECK(record.shape.sensors[1].name == "check tc f");
  CHECK(celsius(record, 1, 1) == Approx(100));
}

TEST_CASE("a malformed cell is refused with its line and column") {
  CHECK(refusal("time_s,temp c\n0,20\n10,8O0\n").field == "line 3, column temp c");
  CHECK(refusal("time_s,temp c\n0,20\nten,21\n").field == "line 3, column time");
  CHECK(refusal("time_s,temp c\n0,20\n10\n20,21\n").field == "line 3, column temp c");
  CHECK(refusal("time_s,temp c\n0,20\n10,99999\n").field == "line 3, column temp c");
  CHECK(refusal("time_s;temp c\n0;20\n10;1.475,5\n").field == "line 3, column temp c");
  CHECK(refusal("time_s,temp c\n0,20\n10,\"1,475\"\n").field == "line 3, column temp c");
}

TEST_CASE("what is no record is refused in words") {
  for (const std::string& text :
       {std::string(), std::string("\n\n"), std::string("hello\nworld\n"),
        std::string("a,b\nc,d\n"), std::string("time,temp\n"), std::string("PK\x03\x04\0\0", 6),
        std::string("1\n2\n3\n"), std::string("time,c\n2026-13-45 07:51,20\n")}) {
    CAPTURE(text);
    CHECK_FALSE(refusal(text).sentence.empty());
  }
  CHECK(refusal("time_s,c\n0,20\n1," + std::string(70'000, '1')).field == "line 3");
}

TEST_CASE("a last line that broke off is left out and said") {
  const auto record = read("time_s,c\n0,20\n10,21\n20");
  CHECK(record.rows() == 2);
  CHECK(record.remarks.cut_short);
  CHECK_FALSE(read("time_s,c\n0,20\n10,21\n20,22").remarks.cut_short);
}

TEST_CASE("a record fed in pieces is the record fed at once") {
  const std::string text = "time_s,c\n0,20\r\n10,21.5\r\n# note\r\n20,22\r\n";
  const auto whole = read(text);
  for (std::size_t size = 1; size < 12; ++size) {
    struct Count final : RecordSink {
      std::vector<std::int64_t> ms;
      void take(const RecordRow& row) override { ms.push_back(row.ms); }
    } count;
    RecordReader reader(whole.shape, 1, Zone(), count);
    for (std::size_t at = 0; at < text.size(); at += size) reader.feed(text.substr(at, size));
    REQUIRE(reader.finish().ok());
    CHECK(count.ms == whole.ms);
  }
}

TEST_CASE("the shape of a kiln's records is remembered in one line") {
  const auto record = read("date;time;controller c;check f\n25.11.2026;07:51;20,5;70\n", berlin());
  const auto again = shape_from_stored(shape_to_stored(record.shape), "shape");
  REQUIRE(again);
  CHECK(*again == record.shape);
  const auto later = read_kiln_record("some head\n26.11.2026;08:00;21,5;71\n", berlin(), *again);
  REQUIRE(later);
  CHECK(later->rows() == 1);
  for (const char* bad :
       {"", "cut=comma", "cut=x;sensors=1:C:a", "sensors=1:C", "sensors=-1:C:a"}) {
    CHECK_FALSE(shape_from_stored(bad, "shape").ok());
  }
}

TEST_CASE("a reading keeps its figure to the thousandth of F and the hundredth of C") {
  CHECK(read_reading("1475.125", TemperatureUnit::fahrenheit, '.').reading ==
        Temperature::milli_fahrenheit(1'475'125));
  CHECK(read_reading("801.55", TemperatureUnit::celsius, '.').reading ==
        Temperature::centi_celsius(80'155));
  CHECK(read_reading("-5,5", TemperatureUnit::celsius, ',').reading ==
        Temperature::centi_celsius(-550));
  CHECK(read_reading("1e3", TemperatureUnit::celsius, '.').kind == CellKind::malformed);
  CHECK(read_reading("12345678901234567890", TemperatureUnit::celsius, '.').kind ==
        CellKind::malformed);
}
