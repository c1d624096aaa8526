// SPDX-License-Identifier: MIT
// Records whose columns a maker names by hand, and the look at their first rows.
#include <catch2/catch.hpp>

#include "domain/kiln/record.h"
#include "domain/kiln/record_preview.h"

using namespace tangmark;
using namespace tangmark::kiln;
using Catch::Matchers::Contains;

namespace {

const Zone berlin = Zone::of("Europe/Berlin").value();

// No heads, a counter in front, the set point before the charge.
const std::string bare_rows =
    "1,07:51:00,800,612,20\n"
    "2,07:52:00,800,640,20\n"
    "3,07:53:00,800,655,21\n";

TypedMapping typed(const std::string& time, const std::string& sensors) {
  TypedMapping mapping;
  mapping.time = time;
  mapping.sensors = sensors;
  return mapping;
}

KilnRecord read(const std::string& text, const TypedMapping& mapping) {
  const auto hints = read_hints(mapping);
  REQUIRE(hints);
  auto record = read_kiln_record(text, berlin, *hints);
  if (!record) FAIL(record.problem().field + ": " + record.problem().sentence);
  return std::move(record).value();
}

Temperature c(std::int64_t celsius) { return Temperature::celsius(celsius); }

}  // namespace

TEST_CASE("columns are named by number where a record has no heads") {
  const auto record = read(bare_rows, typed("2", "4,5"));
  CHECK(record.shape.time_column == 1);
  REQUIRE(record.shape.sensors.size() == 2);
  CHECK(*record.readings[0][0] == c(612));
  CHECK(*record.readings[1][2] == c(21));
}

TEST_CASE("a number that counts the rows is no temperature") {
  const auto shape = recognise_shape(bare_rows);
  REQUIRE(shape);
  CHECK(shape->shape.sensors.front().column == 2);
}

TEST_CASE("columns are named by head in whatever language it is") {
  const std::string text =
      "Nr;Takt;Sollwert;Kammer;Probe\n"
      "1;0;800;610,5;600\n"
      "2;30;800;640,0;631\n";
  TypedMapping mapping = typed("Takt", "Probe,kammer");
  mapping.counts = "seconds";
  const auto record = read(text, mapping);
  CHECK(record.shape.sensors[0].name == "Probe");
  CHECK(*record.readings[0][1] == c(631));
  CHECK(record.readings[1][0]->in_celsius() == Approx(610.5));
  CHECK(record.ms == std::vector<std::int64_t>{0, 30'000});
}

TEST_CASE("a name that no column has is refused with the names there are") {
  const auto refused = recognise_shape("time,kiln C\n07:51:00,20\n",
                                       read_hints(typed("", "probe")).value());
  REQUIRE_FALSE(refused);
  CHECK(refused.problem().field == "sensors");
  CHECK_THAT(refused.problem().remedy, Contains("time, kiln C"));
  CHECK_FALSE(recognise_shape(bare_rows, read_hints(typed("9", "4")).value()));
}

TEST_CASE("what the times count, the degrees, the decimals and the separator are said by word") {
  TypedMapping mapping;
  mapping.counts = "minutes";
  mapping.unit = "F";
  CHECK(read("0,70\n1,1475\n", mapping).ms.back() == 60'000);
  CHECK(*read("0,70\n1,1475\n", mapping).readings[0][1] == Temperature::fahrenheit(1475));
  mapping = {};
  mapping.decimals = "comma";
  mapping.separator = "bar";
  CHECK(read("0|70,5\n1|71,5\n", mapping).readings[0][0]->in_celsius() == Approx(70.5));
  for (const char* counted : {"seconds", "hours", "milliseconds", "time of day"}) {
    mapping = {};
    mapping.counts = counted;
    CHECK(read_hints(mapping).ok());
  }
  mapping = {};
  mapping.zone = "Nowhere/Town";
  mapping.dates = "sideways";
  const auto refused = read_hints(mapping);
  REQUIRE_FALSE(refused);
  CHECK(refused.problems().size() == 2);
}

TEST_CASE("the zone of the logger's clock is kept with the mapping and outranks the shop's") {
  TypedMapping mapping;
  mapping.zone = "America/New_York";
  const std::string text = "time,kiln C\n2026-11-25 07:00:00,20\n2026-11-25 07:01:00,25\n";
  const auto in_new_york = read(text, mapping);
  const auto in_berlin = read(text, {});
  CHECK(in_new_york.ms[0] - in_berlin.ms[0] == 6 * 3'600'000);
  const auto kept = shape_from_stored(shape_to_stored(in_new_york.shape), "shape");
  REQUIRE(kept);
  CHECK(*kept == in_new_york.shape);
}

TEST_CASE("columns parted by blanks, however many, are read") {
  const auto record = read(
      "# Date      Time       Temp\n"
      "2026-11-25  07:51:00    612.5\n"
      "2026-11-25  07:52:00   1002.0\n",
      {});
  CHECK(record.shape.separator == ' ');
  CHECK(record.readings[0][1]->in_celsius() == Approx(1002));
  CHECK(record.ms[1] - record.ms[0] == 60'000);
  const auto kept = shape_from_stored(shape_to_stored(record.shape), "shape");
  REQUIRE(kept);
  CHECK(*kept == record.shape);
}

TEST_CASE("decimal commas within quotation marks are read between separating commas") {
  const auto record =
      read("\"Time\",\"Temp C\"\n\"07:51:00\",\"612,5\"\n\"07:52:00\",\"640,25\"\n", {});
  CHECK(record.readings[0][0]->in_celsius() == Approx(612.5));
  CHECK(shape_from_stored(shape_to_stored(record.shape), "shape").ok());
  // "1,475" may be a thousand and more, so it is no decimal comma.
  CHECK_FALSE(recognise_shape("time,temp F\n07:51:00,\"1,475\"\n07:52:00,\"1,480\"\n"));
}

TEST_CASE("a year of two figures is one of this century") {
  const auto record = read("time,kiln C\n25.11.26 07:51:00,20\n25.11.26 07:52:00,21\n", {});
  const auto whole = read("time,kiln C\n25.11.2026 07:51:00,20\n25.11.2026 07:52:00,21\n", {});
  CHECK(record.ms == whole.ms);
}

TEST_CASE("the first rows are shown with what each column would be taken for") {
  const auto preview = preview_record(bare_rows, berlin, read_hints(typed("2", "4")).value(),
                                      TemperatureUnit::celsius);
  REQUIRE(preview.why_not.empty());
  REQUIRE(preview.columns.size() == 5);
  CHECK(preview.columns[0].head == "column 1");
  CHECK(preview.columns[0].use == "left aside");
  CHECK(preview.columns[1].use == "time");
  CHECK(preview.columns[3].use == "judged, °C");
  REQUIRE(preview.rows.size() == 3);
  CHECK(preview.rows[1][3] == "640");
  CHECK(preview.read_as[1] == "07:52:00: 640 °C");
}

TEST_CASE("a record that cannot be read is shown as it is cut, with why") {
  const auto preview =
      preview_record("one;two\nfoo;bar\nbaz;qux\n", berlin, ShapeHints{}, TemperatureUnit::celsius);
  CHECK_FALSE(preview.why_not.empty());
  REQUIRE(preview.columns.size() == 2);
  CHECK(preview.columns[0].use == "?");
  CHECK(preview.rows[1] == std::vector<std::string>{"foo", "bar"});
}

TEST_CASE("by a settled shape the look shows what later records would give") {
  const auto shape = read(bare_rows, typed("2", "5")).shape;
  const auto preview = preview_record(bare_rows, berlin, shape, TemperatureUnit::celsius);
  CHECK(preview.columns[4].use == "judged, °C");
  CHECK(preview.read_as.front() == "07:51:00: 20 °C");
}
