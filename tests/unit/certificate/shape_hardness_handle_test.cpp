// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

TEST_CASE("forged needs a forge step on this blade, stock removal none") {
  Dossier forged = pattern_blade();
  REQUIRE(granted(forged, Claim::forged));
  CHECK(refused(forged, Claim::stock_removal, "a blade with no forge step"));
  Dossier ground = bar_blade();
  REQUIRE(granted(ground, Claim::stock_removal));
  CHECK(refused(ground, Claim::forged, "a forge step"));
  SECTION("a superseded forge step counts for nothing") {
    line(forged, Operation::forge).superseded = true;
    CHECK_FALSE(granted(forged, Claim::forged));
    CHECK(granted(forged, Claim::stock_removal));
  }
  SECTION("no grinding on record") {
    for (Operation operation :
         {Operation::profile, Operation::rough_grind, Operation::finish_grind})
      drop(ground, operation);
    CHECK(refused(ground, Claim::stock_removal, "profile or grind"));
  }
  SECTION("forged outside is named") {
    line(forged, Operation::forge).hand = {Whose::outside, "Fen Forge"};
    CHECK(statement(compose(forged), Claim::forged)->text ==
          "Forged to shape by Fen Forge, not by this shop.");
    CHECK(statement(compose(forged), Claim::forged)->level == Level::e);
  }
  SECTION("entered later is level C") {
    line(forged, Operation::forge).logged = Logged::later;
    CHECK(statement(compose(forged), Claim::forged)->level == Level::c);
  }
}

TEST_CASE("sole author needs every step by the maker") {
  Dossier d = bar_blade();
  REQUIRE(granted(d, Claim::sole_author));
  SECTION("no name") {
    d.maker.clear();
    CHECK(refused(d, Claim::sole_author, "the maker's name"));
  }
  SECTION("no shaping") {
    for (Operation operation :
         {Operation::profile, Operation::rough_grind, Operation::finish_grind})
      drop(d, operation);
    CHECK(refused(d, Claim::sole_author, "forge, profile or grind"));
  }
  SECTION("no hardening") {
    drop(d, Operation::harden);
    CHECK(refused(d, Claim::sole_author, "hardening and temper"));
  }
  SECTION("no handle work") {
    drop(d, Operation::handle);
    CHECK(refused(d, Claim::sole_author, "handle work"));
  }
}

TEST_CASE("sole author is nobody where other hands are on record") {
  Dossier d = bar_blade();
  REQUIRE(granted(d, Claim::sole_author));
  SECTION("a step by another hand of the shop") {
    line(d, Operation::rough_grind).hand = {Whose::shop_hand, "J. Reed"};
    CHECK(refused(d, Claim::sole_author, "rough grind by J. Reed"));
  }
  SECTION("outside work") {
    OutsideWork work;
    work.kind = OutsideKind::sheath;
    work.what = "sheath";
    work.by = "an outside saddler";
    d.outside.push_back(work);
    CHECK(refused(d, Claim::sole_author, "sheath by an outside saddler"));
    CHECK(granted(d, Claim::outside_work));
    CHECK(told(d, "Work by others: sheath, by an outside saddler."));
  }
  SECTION("a bought billet") {
    CHECK(refused(bought_pattern_blade(), Claim::sole_author, "bought ready welded"));
  }
  SECTION("a billet stage outside") {
    Dossier welded = pattern_blade();
    REQUIRE(granted(welded, Claim::sole_author));
    welded.steel.billets[0].stages[1].hand = {Whose::outside, "Fen Forge"};
    CHECK(refused(welded, Claim::sole_author, "billet 31 by Fen Forge"));
  }
}

TEST_CASE("outside work is named with who did it, and stops the issue until it is back") {
  using namespace date::literals;
  Dossier d = bar_blade();
  CHECK(refused(d, Claim::outside_work, "none is on record"));
  OutsideWork work;
  work.kind = OutsideKind::engraving;
  work.what = "engraving";
  work.by = "M. Stone";
  work.sent = 2026_y / 11 / 10;
  d.outside.push_back(work);
  CHECK(blocked(d, "Outside work is not back: engraving by M. Stone"));
  d.outside[0].back = 2026_y / 11 / 20;
  CHECK(compose(d).may_issue());
  CHECK(statement(compose(d), Claim::outside_work)->text == "Engraving by M. Stone.");
  d.outside[0].by.clear();
  CHECK(refused(d, Claim::outside_work, "who did the engraving"));
}

TEST_CASE("hardness is stated from readings on this blade after its last heat") {
  Dossier d = bar_blade();
  const CertificateDraft draft = compose(d);
  CHECK(statement(draft, Claim::hardness)->level == Level::a);
  CHECK(statement(draft, Claim::hardness)
            ->text.find("60.5 to 61.5 HRC on this blade, after its last "
                        "heat") == 0);
  SECTION("no readings: not measured, and no claim") {
    d.hardness.clear();
    CHECK(refused(d, Claim::hardness, "a hardness reading"));
    CHECK(statement(compose(d), Claim::hardness)->text == "Not measured.");
    CHECK(statement(compose(d), Claim::hardness)->level == Level::e);
    SECTION("an estimate follows, labelled") {
      d.expected_hrc_low = 600;
      d.expected_hrc_high = 620;
      d.expected_hrc_source = "the supplier's data sheet";
      CHECK(statement(compose(d), Claim::hardness)->text ==
            "Not measured. Estimate, not a measurement: 60 to 62 HRC expected from the supplier's "
            "data "
            "sheet.");
      CHECK(told(d, "an estimate, not a measurement"));
      CHECK_FALSE(granted(d, Claim::hardness));
    }
  }
}

TEST_CASE("hardness needs place, tester and a time after the last heat") {
  Dossier d = bar_blade();
  SECTION("no place") {
    for (HardnessReading& reading : d.hardness) reading.place.clear();
    CHECK(refused(d, Claim::hardness, "the place"));
  }
  SECTION("no tester") {
    for (HardnessReading& reading : d.hardness) reading.tester.clear();
    CHECK(refused(d, Claim::hardness, "the tester"));
  }
  SECTION("taken before the last heat") {
    for (HardnessReading& reading : d.hardness) reading.after = AfterHeat::earlier_one;
    CHECK(refused(d, Claim::hardness, "after the last heat"));
  }
  SECTION("not noted when: the times tell") {
    for (HardnessReading& reading : d.hardness) reading.after = AfterHeat::not_noted;
    CHECK(granted(d, Claim::hardness));
    for (HardnessReading& reading : d.hardness) reading.taken = clock(9);
    CHECK_FALSE(granted(d, Claim::hardness));
  }
  SECTION("a blade heated again carries no old hardness") {
    add(d, Operation::temper, clock(22), clock(23));
    drop(d, Operation::handle);
    for (HardnessReading& reading : d.hardness) reading.after = AfterHeat::not_noted;
    CHECK_FALSE(granted(d, Claim::hardness));
  }
}

TEST_CASE("the level of a hardness is that of its readings") {
  Dossier d = bar_blade();
  SECTION(
      "a single reading, an unread block, a block of another day, a tester off by more: level B") {
    using namespace date::literals;
    SECTION("single") {
      d.hardness.pop_back();
    }
    SECTION("no block") {
      d.hardness[0].block.reset();
    }
    SECTION("another day") {
      d.hardness[0].block->day = 2026_y / 11 / 6;
    }
    SECTION("off") {
      d.hardness[0].block->read_tenths = 601;
    }
    CHECK(statement(compose(d), Claim::hardness)->level == Level::b);
  }
  SECTION("a coupon is level C and called one") {
    for (HardnessReading& reading : d.hardness) reading.on = MeasuredOn::coupon;
    CHECK(statement(compose(d), Claim::hardness)->level == Level::c);
    CHECK(statement(compose(d), Claim::hardness)
              ->text.find("on a coupon, not on this blade") != std::string::npos);
  }
}

TEST_CASE("testers, blocks and files are named, and superseded readings are none") {
  Dossier d = bar_blade();
  SECTION("every tester and every check of a block is named") {
    d.hardness[1].tester = "portable tester";
    d.hardness[1].block->read_tenths = 590;
    const std::string text = statement(compose(d), Claim::hardness)->text;
    CHECK(text.find("testers: bench tester and portable tester") != std::string::npos);
    CHECK(text.find("read 59 on Sat 7 Nov 2026, out by more than its margin") != std::string::npos);
    d.hardness[1].block.reset();
    CHECK(statement(compose(d), Claim::hardness)->text.find("Not every reading had such a check") !=
          std::string::npos);
  }
  SECTION("files are level D") {
    d.hardness.resize(1);
    d.hardness[0].scale = HardnessScale::file_set;
    d.hardness[0].tenths = 600;
    d.hardness[0].up_to_tenths = 650;
    CHECK(statement(compose(d), Claim::hardness)->level == Level::d);
  }
  SECTION("superseded readings count for nothing") {
    for (HardnessReading& reading : d.hardness) reading.superseded = true;
    CHECK_FALSE(granted(d, Claim::hardness));
  }
}

TEST_CASE("a natural handle material owes its species, its source and somebody who answers") {
  Dossier d = bar_blade();
  REQUIRE(granted(d, Claim::handle_species));
  CHECK(statement(compose(d), Claim::handle_species)->level == Level::c);
  SECTION("species") {
    d.handle[0].species.reset();
    CHECK(refused(d, Claim::handle_species, "the species of the bog oak"));
    CHECK(told(d, "species not on record"));
  }
  SECTION("source") {
    d.handle[0].source.reset();
    CHECK(refused(d, Claim::handle_species, "the source"));
  }
  SECTION("nobody answers") {
    d.handle[0].evidence = SpeciesEvidence::not_known;
    CHECK(refused(d, Claim::handle_species, "somebody who answers"));
  }
  SECTION("no handle") {
    d.handle.clear();
    CHECK(refused(d, Claim::handle_species, "the materials"));
  }
  SECTION("the supplier's word is level E, papers are level B") {
    d.handle[0].evidence = SpeciesEvidence::suppliers_word;
    CHECK(statement(compose(d), Claim::handle_species)->level == Level::e);
    d.handle[0].evidence = SpeciesEvidence::document;
    CHECK(statement(compose(d), Claim::handle_species)->level == Level::b);
  }
  SECTION("canvas owes no species") {
    d.handle[0] = HandleMaterial{};
    d.handle[0].material = "canvas laminate";
    CHECK(granted(d, Claim::handle_species));
  }
}
