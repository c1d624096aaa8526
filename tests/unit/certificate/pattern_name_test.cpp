// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/certificate/dossier_words.h"
#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

TEST_CASE("the plainest true name of what was made is composed from the record") {
  const auto name = [](const char* blade) { return compose(blade_called(blade)).name; };
  CHECK(name("bar") == "one steel");
  CHECK(name("hamon") == "one steel with a hamon");
  CHECK(name("pattern") == "pattern-welded steel");
  CHECK(name("bought") == "pattern-welded steel, bought as a bar");
  CHECK(name("laminated") == "laminated steel (san mai)");
  CHECK(name("wootz") == "wootz, crucible steel with a pattern of carbides");
  CHECK(name("banded") == "carbide-banded bar steel");
  CHECK(name("smelted") == "steel smelted from ore");
  CHECK(name("image") == "one steel with an etched image");
}

TEST_CASE("the maker chooses among true names and not beyond them") {
  Dossier d = pattern_blade();
  d.steel.billets[0].pattern_name = "ladder";
  d.chosen_name = "pattern-welded steel, 132 layers, ladder pattern";
  CHECK(compose(d).name == *d.chosen_name);
  CHECK(compose(d).may_issue());
  d.chosen_name = "Damascus steel of 1000 layers";
  CHECK(blocked(d, "says more than the record"));
}

TEST_CASE("every offered name passes the lexicon of its own blade") {
  for (const char* blade : {"bar", "hamon", "pattern", "bought", "laminated", "wootz", "banded",
                            "smelted", "image", "stainless", "spring"}) {
    const Dossier d = blade_called(blade);
    for (const TruthfulName& name : compose(d).names)
      for (const std::string& text : {name.name, name.explanation})
        for (const WordHit& hit : wording(d, text)) {
          INFO(blade << ": " << text << " / " << hit.word);
          CHECK(hit.proven);
        }
  }
}

TEST_CASE("a sentence keeps pattern-welded, crucible and banded steel apart") {
  CHECK(compose(pattern_blade())
            .explanations.front()
            .find("it is not crucible steel and not wootz") != std::string::npos);
  CHECK(compose(banded_blade()).explanations.front().find("neither pattern-welded nor crucible") !=
        std::string::npos);
  CHECK(compose(bar_blade()).explanations.empty());
}

TEST_CASE("every claim and every word of a dossier has its stored word") {
  for (Claim claim : all_claims) CHECK(claim_of(claim_id(claim)) == claim);
  CHECK_FALSE(claim_of("damascus"));
  CHECK(word_of(Operation::other) == "other");
  CHECK(word_of(StageWork::crop) == "crop");
  CHECK(word_of(FindingKind::other) == "other");
  CHECK(of_word<Operation>("sub-zero", "operation").value() == Operation::sub_zero);
}
