// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/certificate/layer_count.h"
#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

Billet& billet(Dossier& d) {
  return d.steel.billets[0];
}
std::vector<WeldStage>& stages(Dossier& d) {
  return d.steel.billets[0].stages;
}

void drop_welds(Dossier& d) {
  std::erase_if(stages(d), [](const WeldStage& s) { return s.work == StageWork::weld; });
}

}  // namespace

TEST_CASE("pattern-welded by this shop needs two steels, logged welds and a trail to the billet") {
  Dossier d = pattern_blade();
  REQUIRE(granted(d, Claim::pattern_welded));
  const CertificateDraft draft = compose(d);
  CHECK(statement(draft, Claim::pattern_welded)->level == Level::a);
  CHECK(statement(draft, Claim::pattern_welded)->text ==
        "Pattern-welded by this shop of 1084 (lot 17) and 15N20 (lot 22), forge-welded as billet "
        "31.");
  SECTION("one steel only") {
    stages(d)[0].parts.pop_back();
    CHECK(refused(d, Claim::pattern_welded, "at least two steels"));
  }
  SECTION("no welds logged") {
    drop_welds(d);
    CHECK(refused(d, Claim::pattern_welded, "a forge-weld entry"));
    SECTION("unless the stages say that they were welded") {
      for (WeldStage& stage : stages(d)) stage.welded = true;
      CHECK(granted(d, Claim::pattern_welded));
    }
    SECTION("or the bench log does") {
      add(d, Operation::forge_weld, clock(1), clock(2));
      CHECK(granted(d, Claim::pattern_welded));
    }
  }
  SECTION("the last restack not welded") {
    stages(d).pop_back();
    CHECK(refused(d, Claim::pattern_welded, "a forge-weld entry"));
  }
}

TEST_CASE("pattern-welded is said only of a billet of this shop's own hand and trail") {
  Dossier d = pattern_blade();
  REQUIRE(granted(d, Claim::pattern_welded));
  SECTION("a stage done outside is not by this shop") {
    stages(d)[3].hand = {Whose::outside, "Fen Forge"};
    CHECK(refused(d, Claim::pattern_welded, "Fen Forge"));
    CHECK(granted(d, Claim::pattern_welded_bought));
    CHECK(told(d, "billet 31, by Fen Forge"));
  }
  SECTION("a piece of the billet lost its tag") {
    d.steel.pieces[2].identity = Identity::gap;
    CHECK(refused(d, Claim::pattern_welded, "an unbroken record of the pieces from billet 31"));
  }
  SECTION("a bar") {
    CHECK(refused(bar_blade(), Claim::pattern_welded, "a billet of this shop"));
  }
  SECTION("stages entered later are level C") {
    stages(d)[1].logged = Logged::later;
    CHECK(statement(compose(d), Claim::pattern_welded)->level == Level::c);
  }
}

TEST_CASE("bought pattern-welded steel is stated as the supplier states it") {
  Dossier d = bought_pattern_blade();
  REQUIRE(granted(d, Claim::pattern_welded_bought));
  const CertificateDraft draft = compose(d);
  const std::string text = statement(draft, Claim::pattern_welded_bought)->text;
  CHECK(text.find("bought as such from Northbank Steel (lot 25), not welded by this shop") !=
        std::string::npos);
  CHECK(text.find("As stated by the supplier: 300 layers, of 1080 and 15N20, welded by an outside "
                  "smith.") != std::string::npos);
  CHECK(statement(draft, Claim::pattern_welded_bought)->level == Level::c);
  CHECK_FALSE(statement(draft, Claim::pattern_welded));
  CHECK_FALSE(statement(draft, Claim::layers));
  CHECK_FALSE(statement(draft, Claim::sole_author));
  CHECK(told(d, "bought ready welded from Northbank Steel"));
  SECTION("not bought as such") {
    d.steel.lots[0].sold_as = SoldAs::one_steel;
    CHECK(refused(d, Claim::pattern_welded_bought, "bought as pattern-welded"));
  }
  SECTION("nobody sold it") {
    d.steel.lots[0].supplier.clear();
    CHECK(refused(d, Claim::pattern_welded_bought, "who sold"));
  }
  SECTION("a piece lost its tag") {
    d.steel.pieces[1].identity = Identity::gap;
    CHECK(refused(d, Claim::pattern_welded_bought, "unbroken record"));
  }
  SECTION("an inspection document does not inspect the stacking") {
    d.steel.lots[0].document = SupplyDocument::type_3_1;
    CHECK(statement(compose(d), Claim::pattern_welded_bought)->level == Level::c);
  }
}

TEST_CASE("layers are counted from the logged stages, and only from them") {
  Dossier d = pattern_blade();
  REQUIRE(granted(d, Claim::layers));
  CHECK(
      statement(compose(d), Claim::layers)->text ==
      "132 layers by count of stacking: a stack of 11, cut in 3 and stacked, twisted, cut in 4 and "
      "stacked. Layers were not counted on the blade.");
  SECTION("a fold doubles") {
    stages(d).push_back(stages(d)[1]);
    stages(d).back().work = StageWork::fold;
    stages(d).back().welded = true;
    CHECK(layer_count(d.steel, billet(d))->layers == 264);
  }
  SECTION("no stack logged") {
    stages(d).erase(stages(d).begin());
    CHECK(refused(d, Claim::layers, "does not begin with a stack"));
  }
  SECTION("a cut that names no pieces") {
    stages(d)[2].pieces = 0;
    CHECK(refused(d, Claim::layers, "fewer than two pieces"));
  }
  SECTION("no welds") {
    drop_welds(d);
    CHECK(refused(d, Claim::layers, "a forge-weld entry"));
  }
  SECTION("a supplier's count is no count") {
    CHECK(refused(bought_pattern_blade(), Claim::layers, "may be quoted as stated"));
  }
}

TEST_CASE("layers of a billet in a billet are counted, and a count that cannot be is refused") {
  Dossier d = pattern_blade();
  SECTION("a billet made of itself is refused in words") {
    d.steel.pieces[0].from = BilletTag{"31"};
    CHECK_FALSE(layer_count(d.steel, billet(d)));
    CHECK(blocked(d, "leads back to itself"));
  }
  SECTION("a billet in a stack brings its own layers") {
    Billet outer;
    outer.tag = {"32"};
    WeldStage stack;
    stack.welded = true;
    stack.work = StageWork::stack;
    stack.parts = {{{"b31"}, 2, Role::layer}, {{"17-2"}, 1, Role::layer}};
    outer.stages = {stack};
    d.steel.billets.push_back(outer);
    CHECK(layer_count(d.steel, outer)->layers == 265);
  }
  SECTION("absurd counts are refused") {
    for (int i = 0; i < 40; ++i) stages(d).push_back(stages(d)[5]);
    CHECK_FALSE(layer_count(d.steel, billet(d)));
  }
}

TEST_CASE("laminated needs core, cladding and their weld") {
  Dossier d = laminated_blade();
  REQUIRE(granted(d, Claim::laminated));
  CHECK(statement(compose(d), Claim::laminated)->text ==
        "Laminated: a core of 52100 (lot 9) between outer layers of soft iron (lot 12), welded by "
        "this shop. The core is laid to be the edge; where it comes out was not looked at.");
  CHECK_FALSE(granted(d, Claim::pattern_welded));
  SECTION("where the core comes out is said when somebody looked") {
    Finding seen;
    seen.number = 5;
    seen.kind = FindingKind::pattern_layers;
    seen.after = SeenAfter::etch;
    d.findings.push_back(seen);
    CHECK(statement(compose(d), Claim::laminated)
              ->text.find("seen after etch or polish (finding 5)") != std::string::npos);
  }
  SECTION("a hardness of it says whether the core was met") {
    CHECK(statement(compose(d), Claim::hardness)
              ->text.find("core or outer layer was met is not noted") != std::string::npos);
    for (HardnessReading& reading : d.hardness) reading.place = "core, near the edge";
    CHECK(statement(compose(d), Claim::hardness)->text.find("is not noted") == std::string::npos);
  }
}

TEST_CASE("laminated is refused without core, cladding or weld, unless the bar was bought so") {
  Dossier d = laminated_blade();
  REQUIRE(granted(d, Claim::laminated));
  SECTION("no core") {
    stages(d)[0].parts.erase(stages(d)[0].parts.begin());
    CHECK(refused(d, Claim::laminated, "core and cladding"));
  }
  SECTION("no cladding") {
    stages(d)[0].parts.pop_back();
    CHECK(refused(d, Claim::laminated, "core and cladding"));
  }
  SECTION("no weld") {
    drop_welds(d);
    CHECK(refused(d, Claim::laminated, "a forge-weld entry"));
  }
  SECTION("bought") {
    d = bar_blade();
    CHECK_FALSE(granted(d, Claim::laminated));
    d.steel.lots[0].sold_as = SoldAs::laminated;
    CHECK(granted(d, Claim::laminated));
    CHECK(statement(compose(d), Claim::laminated)->text.find("not welded by this shop") !=
          std::string::npos);
    CHECK_FALSE(granted(d, Claim::sole_author));
  }
}

TEST_CASE("an etched image needs a resist and one steel") {
  Dossier d = image_blade();
  REQUIRE(granted(d, Claim::etched_image));
  SECTION("no resist") {
    line(d, Operation::etch).etch->resist.reset();
    CHECK(refused(d, Claim::etched_image, "stencil or resist"));
  }
  SECTION("a maker's mark is no pattern") {
    line(d, Operation::etch).etch->purpose = EtchPurpose::makers_mark;
    CHECK(refused(d, Claim::etched_image, "an etch of an image"));
  }
  SECTION("layers") {
    Dossier layered = pattern_blade();
    line(layered, Operation::etch).etch = Etch{EtchPurpose::image, "acid", "a stencil"};
    CHECK(refused(layered, Claim::etched_image, "one steel"));
  }
  SECTION("superseded") {
    line(d, Operation::etch).superseded = true;
    CHECK_FALSE(granted(d, Claim::etched_image));
  }
}
