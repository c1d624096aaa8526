// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

Lot& lot(Dossier& d, std::size_t i = 0) {
  return d.steel.lots[i];
}
Level grade_level(const Dossier& d) {
  return statement(compose(d), Claim::grade)->level;
}
std::string grade_text(const Dossier& d) {
  return statement(compose(d), Claim::grade)->text;
}

}  // namespace

TEST_CASE("a complete record of a plain knife may be issued") {
  for (const char* name : {"bar", "hamon", "pattern", "bought", "laminated", "wootz", "banded",
                           "smelted", "image", "stainless", "spring"}) {
    INFO(name);
    const CertificateDraft draft = compose(blade_called(name));
    for (const Refusal& block : draft.blocks) FAIL_CHECK(block.sentence);
    for (const Missing& lack : draft.missing) FAIL_CHECK(needs_text(lack));
    CHECK(draft.may_issue());
  }
}

TEST_CASE("the wording and level of a grade follow the document on file") {
  Dossier d = stainless_blade();
  CHECK(grade_level(d) == Level::a);
  CHECK(
      grade_text(d).find(
          "analysis of melt S900 on file: inspection certificate (EN 10204 3.1), validated by the "
          "manufacturer's own inspector; the number found on the bar") != std::string::npos);
  SECTION("3.2 is an inspection certificate too, with an inspector from outside") {
    lot(d).document = SupplyDocument::type_3_2;
    CHECK(grade_level(d) == Level::a);
    CHECK(
        grade_text(d).find("(EN 10204 3.2), validated by the manufacturer's inspector and one from "
                           "outside") != std::string::npos);
  }
  SECTION("a number that is not on the bar is level B") {
    lot(d).mark = BarMark::none_on_bar;
    CHECK(grade_level(d) == Level::b);
    CHECK(grade_text(d).find("not found on the bar") != std::string::npos);
  }
  SECTION("an analysis that is compared with nothing is level B") {
    lot(d).facts.reset();
    CHECK(grade_level(d) == Level::b);
    CHECK(grade_text(d).find("not compared") != std::string::npos);
  }
  SECTION("an inspection certificate without melt number is level C") {
    lot(d).melt_number.reset();
    CHECK(grade_level(d) == Level::c);
  }
  SECTION("an inspection certificate whose analysis is not entered is level C") {
    lot(d).analysis.reset();
    CHECK(grade_level(d) == Level::c);
  }
}

TEST_CASE("a grade by lesser papers, or over a gap, is told as what it is") {
  Dossier d = stainless_blade();
  SECTION("a test report, a declaration and a label are level C, each in its words") {
    lot(d).analysis.reset();
    lot(d).document = SupplyDocument::type_2_2;
    CHECK(grade_level(d) == Level::c);
    CHECK(grade_text(d).find("test report (EN 10204 2.2)") != std::string::npos);
    lot(d).document = SupplyDocument::type_2_1;
    CHECK(grade_level(d) == Level::c);
    CHECK(
        grade_text(d).find("declaration of compliance with the order (EN 10204 2.1), no results") !=
        std::string::npos);
    lot(d).document = SupplyDocument::label;
    CHECK(grade_level(d) == Level::c);
    CHECK(grade_text(d).find("by the label or invoice of Northbank Steel") != std::string::npos);
  }
  SECTION("the supplier's word alone is level E and is called that") {
    lot(d).document = SupplyDocument::suppliers_word;
    lot(d).analysis.reset();
    CHECK(grade_level(d) == Level::e);
    CHECK(grade_text(d).find("by word of Northbank Steel") != std::string::npos);
  }
  SECTION("one gap closed by a test is level B, two are level C") {
    d.steel.pieces[0].identity = Identity::gap_closed_by_test;
    CHECK(grade_level(d) == Level::b);
    d.steel.pieces[1].identity = Identity::gap_closed_by_test;
    CHECK(grade_level(d) == Level::c);
  }
}

TEST_CASE("a grade is refused without each piece of its evidence") {
  Dossier d = bar_blade();
  REQUIRE(granted(d, Claim::grade));
  SECTION("no piece") {
    d.steel.blade_piece.reset();
    CHECK(refused(d, Claim::grade, "the piece this blade was cut from"));
  }
  SECTION("no grade") {
    lot(d).grade.reset();
    CHECK(refused(d, Claim::grade, "the grade of lot 5"));
  }
  SECTION("nobody answers for it") {
    lot(d).document = SupplyDocument::none;
    CHECK(refused(d, Claim::grade, "somebody who answers"));
    const CertificateDraft draft = compose(d);
    REQUIRE(statement(draft, Claim::unidentified));
    CHECK(
        statement(draft, Claim::unidentified)->text.find("a guess of the shop, not a fact: 1095") !=
        std::string::npos);
    CHECK_FALSE(statement(draft, Claim::grade));
  }
  SECTION("a piece lost its mark") {
    d.steel.pieces[1].identity = Identity::gap;
    CHECK(refused(d, Claim::grade, "an unbroken record of the pieces"));
    CHECK(statement(compose(d), Claim::unidentified));
    CHECK(told(d, "without mark or tag"));
  }
  SECTION("found steel with a guessed grade") {
    d = spring_blade();
    lot(d).grade = "5160";
    lot(d).document = SupplyDocument::label;
    CHECK(refused(d, Claim::grade, "somebody who answers"));
    CHECK(statement(compose(d), Claim::unidentified)->level == Level::e);
  }
  SECTION("an ingot has no grade") {
    CHECK(refused(wootz_blade(), Claim::grade, "melt 3 has none"));
  }
}

TEST_CASE("the weakest lot of a billet gives the level of its steels") {
  Dossier d = pattern_blade();
  CHECK(grade_level(d) == Level::b);
  lot(d, 1).document = SupplyDocument::label;
  CHECK(grade_level(d) == Level::c);
  lot(d, 1).document = SupplyDocument::none;
  const CertificateDraft draft = compose(d);
  CHECK(statement(draft, Claim::grade)->text.find("1084") != std::string::npos);
  CHECK(statement(draft, Claim::unidentified)->text.find("lot 22") != std::string::npos);
  CHECK(statement(draft, Claim::pattern_welded)->text.find("not identified (lot 22)") !=
        std::string::npos);
}

TEST_CASE("a laboratory's analysis inside the limits bears a grade that no paper bears") {
  Dossier d = bar_blade();
  lot(d).document = SupplyDocument::none;
  lot(d).analysis = Analysis{{"C", Share::millionths(9500)}, {"Mn", Share::millionths(4000)}};
  lot(d).analysis_source = AnalysisSource::laboratory;
  CHECK(granted(d, Claim::grade));
  CHECK(granted(d, Claim::analysis));
  lot(d).analysis->erase("C");
  CHECK_FALSE(granted(d, Claim::grade));
}

TEST_CASE("an analysis is stated only from a paper that carries results, or a laboratory") {
  Dossier d = stainless_blade();
  REQUIRE(granted(d, Claim::analysis));
  CHECK(statement(compose(d), Claim::analysis)->text.find("C 1.02, Cr 17.10, Mo 0.60") !=
        std::string::npos);
  SECTION("no analysis") {
    lot(d).analysis.reset();
    CHECK(refused(d, Claim::analysis, "an analysis of lot 30"));
  }
  SECTION("a declaration carries no results") {
    lot(d).document = SupplyDocument::type_2_1;
    CHECK(refused(d, Claim::analysis, "a document of lot 30 that carries results"));
  }
  SECTION("a label carries no results") {
    lot(d).document = SupplyDocument::label;
    CHECK(refused(d, Claim::analysis, "carries results"));
  }
  SECTION("a gap in the pieces") {
    d.steel.pieces[0].identity = Identity::gap;
    CHECK(refused(d, Claim::analysis, "unbroken record"));
  }
  SECTION("a hand-held X-ray instrument is level D and gives no carbon") {
    lot(d).analysis_source = AnalysisSource::handheld_xray;
    const CertificateDraft draft = compose(d);
    CHECK(statement(draft, Claim::analysis)->level == Level::d);
    CHECK(statement(draft, Claim::analysis)->text.find("carbon not measured") != std::string::npos);
  }
}

TEST_CASE("steel that nobody answers for is called not identified, with what was tried") {
  const CertificateDraft draft = compose(spring_blade());
  REQUIRE(statement(draft, Claim::unidentified));
  CHECK(statement(draft, Claim::unidentified)->text ==
        "Made from a coil spring from the buyer's tractor; grade unknown. Tried: a coupon hardened "
        "in "
        "oil resisted a file.");
  CHECK(statement(draft, Claim::unidentified)->level == Level::e);
  CHECK(refused(bar_blade(), Claim::unidentified, "nobody answers for"));
  CHECK(statement(compose(Dossier{}), Claim::unidentified));
}
