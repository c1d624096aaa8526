// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

const Statement& heat(const CertificateDraft& draft) {
  const Statement* found = statement(draft, Claim::heat_treatment);
  REQUIRE(found);
  return *found;
}

void set_only(BenchEntry& entry) {
  entry.heat->record.reset();
}

}  // namespace

TEST_CASE("a recorded heat treatment reads as recorded, a set one as set") {
  Dossier d = bar_blade();
  CertificateDraft draft = compose(d);
  CHECK(heat(draft).level == Level::a);
  CHECK(heat(draft).text.find("thermocouple read 803 to 808 \u00b0C, as recorded") !=
        std::string::npos);
  CHECK(heat(draft).text.find("quenched in fast oil at 52 \u00b0C") != std::string::npos);
  CHECK(heat(draft).text.find("Temper 2:") != std::string::npos);
  SECTION("set points only are level C") {
    for (BenchEntry& entry : d.log)
      if (entry.heat) set_only(entry);
    draft = compose(d);
    CHECK(heat(draft).level == Level::c);
    CHECK(heat(draft).text.find("kiln set to 803 \u00b0C, as set, not recorded") !=
          std::string::npos);
    CHECK(heat(draft).text.find("as recorded") == std::string::npos);
  }
  SECTION("one set temper pulls the whole down") {
    set_only(line(d, Operation::temper, 1));
    CHECK(heat(compose(d)).level == Level::c);
  }
  SECTION("a record that does not cover the soak is no record") {
    line(d, Operation::harden).heat->record->to = clock(8, 40);
    CHECK(heat(compose(d)).level == Level::c);
  }
  SECTION("a record with a gap in the soak is no record") {
    line(d, Operation::harden).heat->record->gap_in_soak = true;
    CHECK(heat(compose(d)).level == Level::c);
  }
  SECTION("without times of the blade a record shows nothing") {
    line(d, Operation::harden).from.reset();
    CHECK(heat(compose(d)).level == Level::c);
  }
}

TEST_CASE("a heat treatment is as good as the weakest way its heats are known") {
  Dossier d = bar_blade();
  SECTION("the kiln's own record is level B") {
    line(d, Operation::harden).heat->record->instrument = Instrument::kiln_controller;
    CHECK(heat(compose(d)).level == Level::b);
  }
  SECTION("a kiln not checked for over a year is level B") {
    using namespace date::literals;
    line(d, Operation::harden).heat->record->kiln_checked = 2025_y / 11 / 6;
    CHECK(heat(compose(d)).level == Level::b);
    line(d, Operation::harden).heat->record->kiln_checked = 2025_y / 11 / 7;
    CHECK(heat(compose(d)).level == Level::a);
    line(d, Operation::harden).heat->record->kiln_checked.reset();
    CHECK(heat(compose(d)).level == Level::b);
  }
  SECTION("a display noted is level B, by eye D, nothing E") {
    line(d, Operation::harden).heat = Heat{};
    CHECK(heat(compose(d)).level == Level::e);
    line(d, Operation::harden).heat->eye = Eye::magnet;
    CHECK(heat(compose(d)).level == Level::d);
    CHECK(heat(compose(d)).text.find("judged by magnet") != std::string::npos);
    line(d, Operation::harden).heat->read = Temperature::celsius(810);
    CHECK(heat(compose(d)).level == Level::b);
  }
}

TEST_CASE("a heat in two lines, or entered later, is told as what it is") {
  Dossier d = bar_blade();
  SECTION("entered later is level C at best") {
    line(d, Operation::harden).logged = Logged::later;
    CHECK(heat(compose(d)).level == Level::c);
    CHECK(told(d, "Entered later, with estimated times: harden"));
  }
  SECTION("soak and quench in two lines are one hardening") {
    BenchEntry& harden = line(d, Operation::harden);
    BenchEntry quench = harden;
    harden.quench.reset();
    quench.heat.reset();
    quench.number = 70;
    d.log.insert(d.log.begin() + 3, quench);
    CHECK(compose(d).may_issue());
    CHECK(heat(compose(d)).text.find("quenched in fast oil") != std::string::npos);
    CHECK_FALSE(told(d, "Hardened twice"));
  }
}

TEST_CASE("no heat treatment on record is said, and cannot be claimed") {
  Dossier d = bar_blade();
  drop(d, Operation::harden);
  drop(d, Operation::temper);
  CHECK(refused(d, Claim::heat_treatment, "a hardening in the bench log"));
  const CertificateDraft draft = compose(d);
  CHECK_FALSE(statement(draft, Claim::heat_treatment));
  REQUIRE_FALSE(draft.absences.empty());
  CHECK(draft.absences[0] == Absence{Claim::heat_treatment, "Not recorded."});
  SECTION("an outside heat treatment is named") {
    OutsideWork work;
    work.kind = OutsideKind::heat_treatment;
    work.what = "hardened and tempered";
    work.by = "Weir Heat Treating";
    work.slip_on_file = true;
    work.their_words = "1080 C, 59 HRC";
    d.outside.push_back(work);
    const CertificateDraft outside = compose(d);
    CHECK(heat(outside).text ==
          "Heat treated by an outside service, Weir Heat Treating, in the words of their slip: "
          "\"1080 "
          "C, 59 HRC\". Not by this shop.");
    CHECK(heat(outside).level == Level::c);
    d.outside[0].slip_on_file = false;
    CHECK(heat(compose(d)).level == Level::e);
    d.outside[0].by.clear();
    CHECK(refused(d, Claim::heat_treatment, "who did the heat treatment"));
  }
}

TEST_CASE("a cold step is stated with its real temperature and time") {
  Dossier d = stainless_blade();
  REQUIRE(granted(d, Claim::sub_zero));
  CHECK(statement(compose(d), Claim::sub_zero)->text.find("liquid nitrogen") != std::string::npos);
  SECTION("no temperature") {
    line(d, Operation::sub_zero).cold->temperature.reset();
    CHECK(refused(d, Claim::sub_zero, "its real temperature"));
  }
  SECTION("no time") {
    line(d, Operation::sub_zero).cold->time.reset();
    CHECK(refused(d, Claim::sub_zero, "its time"));
  }
  SECTION("not below zero") {
    line(d, Operation::sub_zero).cold->temperature = Temperature::celsius(4);
    CHECK(refused(d, Claim::sub_zero, "below 0"));
  }
  SECTION("a freezer is no cryogenic treatment") {
    line(d, Operation::sub_zero).cold->temperature = Temperature::celsius(-18);
    d.title = "Cryo treated knife";
    const CertificateDraft draft = compose(d);
    CHECK(missing(draft, Claim::sub_zero));
    CHECK_FALSE(draft.may_issue());
  }
  SECTION("no step: said to be not done, and no claim") {
    drop(d, Operation::sub_zero);
    CHECK(refused(d, Claim::sub_zero, "a cold step"));
    const CertificateDraft draft = compose(d);
    CHECK_FALSE(statement(draft, Claim::sub_zero));
    CHECK(draft.absences.back() == Absence{Claim::sub_zero, "Not done."});
  }
}

TEST_CASE("a hamon needs its quench, a steel that allows it, and to have been seen") {
  Dossier d = hamon_blade();
  REQUIRE(granted(d, Claim::hamon));
  REQUIRE(granted(d, Claim::differential));
  SECTION("no clay and no edge quench") {
    line(d, Operation::harden).quench->clay = false;
    CHECK(refused(d, Claim::hamon, "clay or an edge quench"));
    CHECK(refused(d, Claim::differential, "clay or an edge quench"));
    SECTION("clay in a line of its own") {
      BenchEntry clay;
      clay.operation = Operation::clay;
      clay.number = 80;
      d.log.insert(d.log.begin(), clay);
      CHECK(granted(d, Claim::hamon));
    }
    SECTION("edge quench") {
      line(d, Operation::harden).quench->immersion = Immersion::edge;
      CHECK(granted(d, Claim::hamon));
    }
  }
  SECTION("no quench log") {
    line(d, Operation::harden).quench.reset();
    CHECK(refused(d, Claim::hamon, "a quench log"));
  }
  SECTION("not seen") {
    d.findings.clear();
    CHECK(refused(d, Claim::hamon, "a hamon found"));
    CHECK(refused(d, Claim::differential, "a hamon seen"));
  }
  SECTION("seen before polish") {
    d.findings[0].after = SeenAfter::other;
    CHECK(refused(d, Claim::hamon, "seen after etch or polish"));
  }
}

TEST_CASE("a hamon is of the last hardening, in a steel that can show one") {
  Dossier d = hamon_blade();
  SECTION("hardness at edge and spine shows differential hardening without a hamon") {
    d.findings.clear();
    d.hardness[0].place = "spine";
    d.hardness[0].tenths = 420;
    CHECK(granted(d, Claim::differential));
    d.hardness[0].tenths = 570;
    CHECK_FALSE(granted(d, Claim::differential));
  }
  SECTION("a later hardening without clay takes it away") {
    BenchEntry again = line(d, Operation::harden);
    again.quench->clay = false;
    again.number = 81;
    again.from = clock(17);
    again.to = clock(17, 20);
    d.log.push_back(again);
    CHECK_FALSE(granted(d, Claim::hamon));
  }
  SECTION("in an air-hardening steel the record contradicts itself") {
    d.steel.lots[0].facts->hardens_in = HardensIn::air;
    CHECK(blocked(d, "hardens in air"));
    CHECK_FALSE(granted(d, Claim::hamon));
    d.steel.lots[0].facts->hardens_in.reset();
    d.steel.lots[0].analysis = Analysis{{"Cr", Share::millionths(52'000)}};
    CHECK(blocked(d, "hardens in air"));
  }
}

TEST_CASE("a heat whose recorded readings the maker corrected says by how much, when and why") {
  using namespace date::literals;
  Dossier d = bar_blade();
  RecordCoverage& record = *line(d, Operation::harden).heat->record;
  const SetRight right{TemperatureDifference::celsius(-4), 2026_y / 11 / 5, "check of 4 November"};
  record.set_right = right;
  SECTION("an independent thermocouple is then level B") {
    CHECK(heat(compose(d)).text.find(
              "thermocouple read 803 to 808 \u00b0C, as recorded, each reading corrected by -4 "
              "\u00b0C on Thu 5 Nov 2026 (check of 4 November)") != std::string::npos);
    CHECK(heat(compose(d)).level == Level::b);
    CHECK(level_line(heat(compose(d)).evidence).find("its readings corrected by the maker") !=
          std::string::npos);
  }
  SECTION("the kiln's own record says so too") {
    record.instrument = Instrument::kiln_controller;
    CHECK(heat(compose(d)).text.find("kiln's own record read 803 to 808 \u00b0C, as recorded, each "
                                     "reading corrected by -4") != std::string::npos);
    CHECK(heat(compose(d)).level == Level::b);
  }
  SECTION("in the maker's degrees") {
    record.set_right->by = TemperatureDifference::fahrenheit(9);
    d.manner.temperature = TemperatureUnit::fahrenheit;
    CHECK(heat(compose(d)).text.find("each reading corrected by +9 \u00b0F") != std::string::npos);
  }
  SECTION("its reason is read like any text of the maker's") {
    record.set_right->why = "wootz wants it hotter";
    CHECK_FALSE(compose(d).may_issue());
  }
  SECTION("a record that does not cover the soak bears no heat, corrected or not") {
    record.gap_in_soak = true;
    CHECK(heat(compose(d)).text.find("each reading corrected") == std::string::npos);
    CHECK(heat(compose(d)).level == Level::c);
  }
}
