// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {
Melt& melt(Dossier& d) {
  return d.steel.melts[0];
}
}  // namespace

TEST_CASE("crucible steel is refused without each part of the melt record") {
  Dossier d = wootz_blade();
  REQUIRE(granted(d, Claim::crucible));
  const std::string text = statement(compose(d), Claim::crucible)->text;
  CHECK(text.find("Melted in a crucible by this shop") == 0);
  CHECK(text.find("an estimate from the charge, not measured") != std::string::npos);
  CHECK(told(d, "carbon of melt 3 is an estimate"));
  CHECK_FALSE(statement(compose(d), Claim::unidentified));
  SECTION("charge") {
    melt(d).charge.clear();
    CHECK(refused(d, Claim::crucible, "the charge of melt 3"));
    CHECK(refused(d, Claim::wootz, "the charge of melt 3"));
    CHECK(statement(compose(d), Claim::unidentified));
  }
  SECTION("a charge part without mass") {
    melt(d).charge[0].mass = Mass();
    CHECK(refused(d, Claim::crucible, "the charge of melt 3"));
  }
  SECTION("lining") {
    melt(d).lining.reset();
    CHECK(refused(d, Claim::crucible, "lining"));
  }
  SECTION("peak temperature") {
    melt(d).peak.reset();
    CHECK(refused(d, Claim::crucible, "the peak temperature"));
  }
  SECTION("time") {
    melt(d).time.reset();
    CHECK(refused(d, Claim::crucible, "the time at heat"));
  }
  SECTION("ingot mass") {
    melt(d).ingot_mass.reset();
    CHECK(refused(d, Claim::crucible, "the ingot mass"));
  }
}

TEST_CASE("crucible steel needs a trail to the ingot, and names who melted it") {
  Dossier d = wootz_blade();
  REQUIRE(granted(d, Claim::crucible));
  SECTION("trail to the ingot") {
    d.steel.pieces[0].identity = Identity::gap;
    CHECK(refused(d, Claim::crucible, "unbroken record"));
  }
  SECTION("a bar") {
    CHECK(refused(bar_blade(), Claim::crucible, "a melt record"));
  }
  SECTION("a smelt is no crucible") {
    CHECK_FALSE(granted(smelted_blade(), Claim::crucible));
  }
  SECTION("melted outside is named") {
    melt(d).hand = {Whose::outside, "Hollow Hearth"};
    CHECK(statement(compose(d), Claim::crucible)->text.find("Hollow Hearth, not by this shop") !=
          std::string::npos);
    CHECK(statement(compose(d), Claim::crucible)->level == Level::e);
  }
}

TEST_CASE("wootz needs one ingot and a carbide pattern seen after etching") {
  Dossier d = wootz_blade();
  REQUIRE(granted(d, Claim::wootz));
  SECTION("no pattern found") {
    d.findings.clear();
    CHECK(refused(d, Claim::wootz, "a carbide pattern found"));
    CHECK(granted(d, Claim::crucible));
  }
  SECTION("the pattern seen before any etch") {
    d.findings[0].after = SeenAfter::polish;
    CHECK(refused(d, Claim::wootz, "seen after an etch"));
  }
  SECTION("not noted with the finding: the log tells") {
    d.findings[0].after = SeenAfter::not_noted;
    CHECK(granted(d, Claim::wootz));
    drop(d, Operation::etch);
    CHECK_FALSE(granted(d, Claim::wootz));
  }
  SECTION("a second steel in the blade") {
    Billet billet;
    billet.tag = {"9"};
    WeldStage stack;
    stack.work = StageWork::stack;
    stack.welded = true;
    stack.parts = {{{"i3"}, 1, Role::layer}, {{"x"}, 1, Role::layer}};
    billet.stages = {stack};
    d.steel.billets = {billet};
    d.steel.lots = bar_blade().steel.lots;
    d.steel.pieces.push_back({{"x"}, LotTag{"5"}, Identity::kept, {}, {}});
    d.steel.pieces.push_back({{"b9"}, BilletTag{"9"}, Identity::kept, {}, {}});
    d.steel.blade_piece = PieceTag{"b9"};
    CHECK(refused(d, Claim::wootz, "one ingot"));
    CHECK(granted(d, Claim::crucible));
    CHECK(granted(d, Claim::pattern_welded));
  }
  SECTION("a banded bar is never wootz") {
    CHECK(refused(banded_blade(), Claim::wootz, "a melt record"));
  }
}

TEST_CASE("smelted needs a smelt with charge and mass won") {
  Dossier d = smelted_blade();
  REQUIRE(granted(d, Claim::smelted));
  SECTION("charge") {
    melt(d).charge.clear();
    CHECK(refused(d, Claim::smelted, "the charge"));
  }
  SECTION("mass won") {
    melt(d).ingot_mass.reset();
    CHECK(refused(d, Claim::smelted, "the mass won"));
  }
  SECTION("trail") {
    d.steel.pieces[0].identity = Identity::gap;
    CHECK(refused(d, Claim::smelted, "unbroken record"));
  }
  SECTION("a bar") {
    CHECK(refused(bar_blade(), Claim::smelted, "a smelt record"));
  }
}

TEST_CASE("carbide-banded bar steel needs bar, alloy, cycles, etch and the pattern") {
  Dossier d = banded_blade();
  REQUIRE(granted(d, Claim::carbide_banded));
  CHECK(statement(compose(d), Claim::carbide_banded)
            ->text.find("Not melted in a crucible by this shop, not pattern-welded.") !=
        std::string::npos);
  SECTION("no cycles") {
    drop(d, Operation::thermal_cycle);
    CHECK(refused(d, Claim::carbide_banded, "thermal cycles"));
  }
  SECTION("no etch") {
    drop(d, Operation::etch);
    CHECK(refused(d, Claim::carbide_banded, "an etch"));
  }
  SECTION("no pattern") {
    d.findings.clear();
    CHECK(refused(d, Claim::carbide_banded, "a pattern of carbide bands"));
  }
}

TEST_CASE("what bands is what the steel surely holds") {
  Dossier d = banded_blade();
  REQUIRE(granted(d, Claim::carbide_banded));
  SECTION("too little carbon and alloy") {
    d.steel.lots[0].facts->limits = {{"C", {Share::millionths(5000), Share::millionths(7600)}}};
    CHECK(refused(d, Claim::carbide_banded, "carbon above 0.76 %"));
  }
  SECTION("carbon of exactly 0.76 % is not above it; more is") {
    d.steel.lots[0].facts->limits.clear();
    d.steel.lots[0].analysis = Analysis{{"C", Share::millionths(7600)}};
    CHECK_FALSE(granted(d, Claim::carbide_banded));
    d.steel.lots[0].analysis = Analysis{{"C", Share::millionths(7700)}};
    CHECK(granted(d, Claim::carbide_banded));
  }
  SECTION("vanadium alone is enough") {
    d.steel.lots[0].facts->limits = {{"V", {Share::millionths(1500), std::nullopt}}};
    CHECK(granted(d, Claim::carbide_banded));
  }
  SECTION("an upper limit shows nothing") {
    d.steel.lots[0].facts->limits = {{"V", {std::nullopt, Share::millionths(3000)}}};
    CHECK_FALSE(granted(d, Claim::carbide_banded));
  }
  SECTION("a billet") {
    CHECK(refused(pattern_blade(), Claim::carbide_banded, "one bought bar"));
  }
}
