// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/certificate/catches.h"
#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

bool caught(const Dossier& d, int number) {
  for (const Caught& one : caught_at_certificate(d, compose(d)))
    if (one.number == number) return true;
  return false;
}

}  // namespace

TEST_CASE("a blade that is not tempered as planned gets no certificate") {
  Dossier d = bar_blade();
  REQUIRE(compose(d).may_issue());
  SECTION("quenched and not tempered") {
    drop(d, Operation::temper);
    CHECK(blocked(d, "quenched and not tempered"));
  }
  SECTION("tempered once of two") {
    line(d, Operation::temper, 1).superseded = true;
    CHECK(blocked(d, "tempered once of 2"));
  }
  SECTION("once is enough where the route plans one") {
    line(d, Operation::temper, 1).superseded = true;
    d.tempers_planned = 1;
    CHECK(compose(d).may_issue());
  }
  SECTION("a temper begun warm does not count") {
    line(d, Operation::temper, 1).temper->cooled_before = false;
    CHECK(blocked(d, "before the blade had cooled"));
  }
  SECTION("the same temper written twice counts once") {
    line(d, Operation::temper, 1).temper->number = 1;
    CHECK(blocked(d, "tempered once of 2"));
  }
  SECTION("hardened again after its tempers") {
    BenchEntry again = line(d, Operation::harden);
    again.from = clock(17);
    again.to = clock(17, 20);
    d.log.push_back(again);
    CHECK(blocked(d, "quenched and not tempered"));
  }
}

TEST_CASE("a blade with an open end gets no certificate") {
  Dossier d = bar_blade();
  REQUIRE(compose(d).may_issue());
  SECTION("a finding without decision") {
    Finding finding;
    finding.number = 1;
    finding.kind = FindingKind::crack;
    d.findings.push_back(finding);
    CHECK(blocked(d, "Finding 1 (crack) has no decision"));
    CHECK(caught(d, 17));
    d.findings[0].decision = Decision::scrapped;
    CHECK(blocked(d, "decided as scrap"));
    d.findings[0].decision = Decision::left_disclosed;
    CHECK(compose(d).may_issue());
    CHECK_FALSE(caught(d, 17));
  }
  SECTION("planned hardening that nobody logged") {
    drop(d, Operation::harden);
    drop(d, Operation::temper);
    d.route_still_open = {Operation::harden, Operation::temper};
    CHECK(blocked(d, "nobody logged: harden"));
  }
  SECTION("no number") {
    d.blade = 0;
    CHECK(blocked(d, "no number"));
  }
}

TEST_CASE("papers that contradict each other get no certificate") {
  Dossier d = stainless_blade();
  Lot& lot = d.steel.lots[0];
  REQUIRE(compose(d).may_issue());
  SECTION("a lot of one grade with an analysis of another") {
    lot.analysis->at("Cr") = Share::millionths(52'000);
    CHECK(blocked(d, "outside the limits of that grade: Cr 5.20 % is below 16.00 %"));
    CHECK_FALSE(granted(d, Claim::grade));
    CHECK_FALSE(granted(d, Claim::analysis));
  }
  SECTION("limits count their ends as inside") {
    lot.analysis->at("C") = Share::millionths(9500);
    CHECK(compose(d).may_issue());
    lot.analysis->at("C") = Share::millionths(9499);
    CHECK(blocked(d, "outside the limits"));
  }
  SECTION("a document of another grade") {
    lot.document_grade = "D2";
    CHECK(blocked(d, "its document says D2"));
  }
  SECTION("a document of another melt") {
    lot.document_melt_number = "S901";
    CHECK(blocked(d, "its document says S901"));
  }
  SECTION("a mark that is another number") {
    lot.mark = BarMark::differs;
    CHECK(blocked(d, "not the melt number of its document"));
    CHECK_FALSE(granted(d, Claim::grade));
  }
}

TEST_CASE("heats and times that contradict each other get no certificate") {
  Dossier d = stainless_blade();
  REQUIRE(compose(d).may_issue());
  SECTION("two different soaks") {
    BenchEntry other = line(d, Operation::harden);
    other.number = 91;
    other.heat->hold = std::chrono::minutes(18);
    d.log.insert(d.log.begin() + 3, other);
    CHECK(blocked(d, "two different soaks for one hardening"));
  }
  SECTION("two different tempers of one number") {
    BenchEntry other = line(d, Operation::temper);
    other.number = 92;
    other.heat->set = Temperature::celsius(230);
    d.log.push_back(other);
    CHECK(blocked(d, "two different soaks for one temper"));
  }
  SECTION("a temper before the quench") {
    line(d, Operation::temper).from = clock(8);
    line(d, Operation::temper).to = clock(10);
    CHECK(blocked(d, "stands before the quench"));
  }
  SECTION("a temper that is logged before the quench") {
    BenchEntry temper = line(d, Operation::temper);
    d.log.insert(d.log.begin(), temper);
    CHECK(blocked(d, "stands before the quench"));
  }
  SECTION("a step that ends before it begins") {
    line(d, Operation::profile).to = clock(5);
    CHECK(blocked(d, "ends before it begins"));
  }
  SECTION("a hold longer than the blade was in") {
    line(d, Operation::harden).heat->hold = std::chrono::hours(3);
    CHECK(blocked(d, "longer than the blade was in"));
  }
}

TEST_CASE("a heat after the handle, and a reading before its heat, get no certificate") {
  Dossier d = stainless_blade();
  REQUIRE(compose(d).may_issue());
  SECTION("a heat after the handle") {
    BenchEntry temper = line(d, Operation::temper, 1);
    temper.temper->number = 3;
    temper.from = clock(23);
    temper.to = clock(23, 30);
    temper.heat.reset();
    d.log.push_back(temper);
    CHECK(blocked(d, "after the handle was fitted"));
    add(d, Operation::handle, clock(23, 40), clock(23, 50));
    for (HardnessReading& reading : d.hardness) reading.taken = clock(23, 35);
    CHECK(compose(d).may_issue());
  }
  SECTION("a reading taken before the heat it is said to follow") {
    d.hardness[0].taken = clock(7);
    CHECK(blocked(d, "taken before"));
  }
}

TEST_CASE("a trail or a mass that cannot be gets no certificate") {
  Dossier d = stainless_blade();
  REQUIRE(compose(d).may_issue());
  SECTION("a trail that leads nowhere") {
    d.steel.blade_piece = PieceTag{"99"};
    CHECK(blocked(d, "names piece 99, which is not on record"));
  }
  SECTION("a piece that is its own parent") {
    d.steel.pieces[0].from = PieceTag{"30-1a"};
    CHECK(blocked(d, "leads back to itself"));
  }
  SECTION("more ingot than charge") {
    Dossier melted = wootz_blade();
    melted.steel.melts[0].ingot_mass = Mass::grams(1600);
    CHECK(blocked(melted, "More came out of melt 3"));
  }
  SECTION("a billet that grows in a twist") {
    Dossier welded = pattern_blade();
    welded.steel.billets[0].stages[1].mass_after = Mass::grams(1000);
    welded.steel.billets[0].stages[4].mass_after = Mass::grams(1001);
    CHECK(blocked(welded, "grew heavier"));
  }
  SECTION("a pattern and none") {
    Dossier seen = wootz_blade();
    Finding none = seen.findings[0];
    none.number = 2;
    none.kind = FindingKind::no_pattern;
    seen.findings.push_back(none);
    CHECK(blocked(seen, "another saw none"));
  }
}

TEST_CASE("hardness asked for with no reading that bears it is caught (14)") {
  Dossier d = bar_blade();
  d.hardness.clear();
  CHECK_FALSE(caught(d, 14));
  d.title = "Kitchen knife, 61 HRC";
  CHECK(caught(d, 14));
  CHECK_FALSE(compose(d).may_issue());
}

TEST_CASE("words without their step are caught (15)") {
  for (const char* title : {"Forged knife", "Knife of 300 layers", "Crucible steel knife",
                            "Knife with hamon", "Knife, sub-zero treated", "Folded steel knife"}) {
    INFO(title);
    Dossier d = bar_blade();
    CHECK_FALSE(caught(d, 15));
    d.title = title;
    CHECK(caught(d, 15));
    CHECK_FALSE(compose(d).may_issue());
  }
  Dossier d = bought_pattern_blade();
  d.free_texts.push_back({"notes", "Made entirely by me."});
  CHECK(caught(d, 15));
}

TEST_CASE("no statement stands above the weakest link of its chain (16)") {
  for (const char* name : {"bar", "hamon", "pattern", "bought", "laminated", "wootz", "banded",
                           "smelted", "image", "stainless", "spring"})
    for (const Statement& one : compose(blade_called(name)).statements) {
      CHECK(one.level == weakest(one.evidence));
      CHECK_FALSE(level_above_chain(one));
    }
  Statement raised = compose(bar_blade()).statements.front();
  raised.level = Level::a;
  REQUIRE(level_above_chain(raised));
  CHECK(level_above_chain(raised)->number == 16);
}

TEST_CASE("a fault that was decided is told, and a draft without it is caught (17)") {
  Dossier d = bar_blade();
  Finding weld_line;
  weld_line.number = 4;
  weld_line.kind = FindingKind::weld_line;
  weld_line.place = "left side of the ricasso, 11 mm from the edge";
  weld_line.size = Length::millimetres(4);
  weld_line.decision = Decision::closed;
  weld_line.how = "away from the edge";
  using namespace date::literals;
  weld_line.buyer_accepted = 2026_y / 11 / 15;
  weld_line.photo = 2;
  d.findings.push_back(weld_line);
  CHECK(told(d,
             "Weld line, 4 mm, left side of the ricasso, 11 mm from the edge; closed, still there: "
             "away from the edge. The buyer accepted it on"));
  CHECK_FALSE(caught(d, 17));
  CertificateDraft without = compose(d);
  std::erase_if(without.disclosures, [](const Disclosure& one) { return one.finding == 4; });
  CHECK(caught_at_certificate(d, without).front().number == 17);
}

TEST_CASE("a watched species that goes abroad is caught (18) and told") {
  Dossier d = bar_blade();
  d.handle[0].material = "rosewood";
  d.handle[0].species = "Dalbergia latifolia";
  d.handle[0].watch = TreatyWatch::appendix_2;
  d.home_country = "IE";
  CHECK(told(d, "Not to be carried abroad without checking"));
  CHECK_FALSE(caught(d, 18));
  d.destination_country = "IE";
  CHECK_FALSE(caught(d, 18));
  d.destination_country = "NZ";
  CHECK(caught(d, 18));
  CHECK(told(d, "appendix II; no papers on file. It goes to NZ"));
  CHECK(compose(d).may_issue());
}
