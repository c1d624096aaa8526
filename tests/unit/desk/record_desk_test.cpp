// SPDX-License-Identifier: MIT
// Looking at a kiln record before it is attached, over the demo shop.
#include <catch2/catch.hpp>

#include "gui/desk/desk.h"
#include "tests/unit/command/program.h"

using namespace tangmark;
using namespace tangmark::desk;
using Catch::Matchers::Contains;

namespace {

Instant demo_time() {
  return date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(7) +
         std::chrono::minutes(45);
}

struct Opened {
  test::DemoShop demo;
  Outcome<Desk> desk = Desk::open(demo.file, [] { return demo_time(); });
  std::string firing;  // one that is done

  Opened() {
    REQUIRE(desk);
    const PlaceList list = desk->list(Place::kiln);
    for (std::size_t i = 0; i < list.list.size(); ++i)
      if (list.list.row(i).line.starts_with("Done")) firing = list.list.row(i).id;
    REQUIRE_FALSE(firing.empty());
  }
  std::string written(const std::string& name, const std::string& text) {
    test::write_file(demo.scratch / name, text);
    return (demo.scratch / name).string();
  }
  std::string shown() const { return as_text(desk->view(Place::kiln, firing).sheet); }
};

const std::string bare_rows = "1,07:51:00,800,612\n2,07:52:00,800,640\n3,07:53:00,800,655\n";

}  // namespace

TEST_CASE("the first rows of a record stand beside what its columns are taken for") {
  Opened open;
  const auto said = open.desk->act(
      "desk.record", {{"firing", open.firing}, {"file", open.written("a.csv", bare_rows)}});
  REQUIRE(said);
  CHECK(said->go->place == Place::kiln);
  CHECK(said->go->id == open.firing);
  CHECK_THAT(open.shown(), Contains("How this record would be read") && Contains("left aside") &&
                               Contains("judged, °C"));
  // Named by hand the judged column is another.
  REQUIRE(open.desk->act("desk.record", {{"firing", open.firing},
                                         {"file", open.written("a.csv", bare_rows)},
                                         {"time", "2"},
                                         {"sensors", "4"}}));
  CHECK_THAT(open.shown(), Contains("07:51:00: 612 °C"));
}

TEST_CASE("a record that cannot be read is shown with why, and is not offered to be attached") {
  Opened open;
  REQUIRE(open.desk->act("desk.record", {{"firing", open.firing},
                                         {"file", open.written("b.csv", "a;b\nfoo;bar\n")}}));
  CHECK_THAT(open.shown(), Contains("This record cannot be read so") && Contains("foo"));
  const auto view = open.desk->view(Place::kiln, open.firing);
  for (const Offer& offer : view.sheet.sections.front().offers)
    CHECK(offer.label != "Attach it so");
}

TEST_CASE("what cannot be looked at is refused at its field") {
  Opened open;
  const auto no_file =
      open.desk->act("desk.record", {{"firing", open.firing}, {"file", "/nowhere/x.csv"}});
  REQUIRE_FALSE(no_file);
  CHECK(no_file.problem().field == "file");
  const auto no_zone = open.desk->act("desk.record", {{"firing", open.firing},
                                                      {"file", open.written("a.csv", bare_rows)},
                                                      {"zone", "Nowhere"}});
  REQUIRE_FALSE(no_zone);
  CHECK(no_zone.problem().field == "zone");
}

TEST_CASE("the form asks for the file first and keeps the mapping behind more fields") {
  Opened open;
  const Form form = open.desk->form("desk.record", {{"firing", open.firing}});
  CHECK(form.submit == "Show it");
  bool file_seen = false, zone_hidden = false;
  for (const FormField& field : form.fields) {
    if (field.name == "file") file_seen = !field.hidden && field.entry == Entry::file;
    if (field.name == "zone") zone_hidden = field.hidden;
  }
  CHECK(file_seen);
  CHECK(zone_hidden);
}
