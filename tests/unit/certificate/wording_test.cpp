// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/certificate/lexicon.h"
#include "domain/certificate/lexicon_data.h"
#include "domain/certificate/lexicon_text.h"
#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

TEST_CASE("a hit says where it stands, what it needs and what would be true") {
  const std::vector<WordHit> hits = wording(bar_blade(), "Schön: Wootz, 62 HRC");
  REQUIRE(hits.size() == 2);
  CHECK(hits[0].word == "Wootz");
  CHECK(hits[0].at == 8);
  CHECK(hits[0].needs == Claim::wootz);
  CHECK_FALSE(hits[0].proven);
  CHECK(hits[0].truthful == std::vector<std::string>{"one steel"});
  CHECK(hits[1].word == "62 HRC");
  CHECK(hits[1].needs == Claim::hardness);
  CHECK(hits[1].truthful == std::vector<std::string>{"60.5-61.5 HRC, measured"});
}

TEST_CASE("what would be true is said in the language of the word") {
  CHECK(wording(bar_blade(), "Tiegelstahl")[0].truthful[0] == "ein Stahl (Monostahl)");
  CHECK(wording(bar_blade(), "acier au creuset")[0].truthful[0] == "un seul acier");
  CHECK(wording(bar_blade(), "forgiato a mano")[0].truthful[0] == "tagliato e molato dalla barra");
  CHECK(wording(banded_blade(), "wootz")[0].truthful[0] == "carbide-banded bar steel");
  CHECK(wording(pattern_blade(), "300 layers")[0].truthful[0] == "132 layers by count of stacking");
}

TEST_CASE("a proven word is a hit too, and lacks nothing") {
  const std::vector<WordHit> hits = wording(wootz_blade(), "wootz");
  REQUIRE(hits.size() == 1);
  CHECK(hits[0].proven);
  CHECK(hits[0].lacking.empty());
  CHECK(hits[0].truthful.empty());
}

TEST_CASE("an unproven word in any printed text stops the certificate") {
  SECTION("title") {
    Dossier d = bar_blade();
    d.title = "Wootz knife";
    CHECK(missing(compose(d), Claim::wootz));
  }
  SECTION("care") {
    Dossier d = bar_blade();
    d.free_texts = {{"care", "This stainless blade needs no oil."}};
    CHECK(missing(compose(d), Claim::grade));
  }
  SECTION("the words of a finding") {
    Dossier d = bar_blade();
    Finding finding;
    finding.number = 1;
    finding.kind = FindingKind::crack;
    finding.decision = Decision::removed;
    finding.what = "crack beside the hamon";
    d.findings = {finding};
    CHECK(missing(compose(d), Claim::hamon));
  }
  SECTION("the name of a pattern") {
    Dossier d = pattern_blade();
    d.steel.billets[0].pattern_name = "wootz ladder";
    CHECK(missing(compose(d), Claim::wootz));
  }
  SECTION("the grade of a lot") {
    Dossier d = bar_blade();
    d.steel.lots[0].grade = "wootz";
    CHECK(missing(compose(d), Claim::wootz));
  }
  SECTION("what an own test of the bar came to, and what the bar was before") {
    Dossier d = spring_blade();
    REQUIRE(compose(d).may_issue());
    d.steel.lots[0].own_tests.push_back("etched, and found to be wootz");
    CHECK(missing(compose(d), Claim::wootz));
    d = spring_blade();
    d.steel.lots[0].recycled_from = "an old damascus blade";
    CHECK_FALSE(compose(d).may_issue());
  }
  SECTION("the own test of a bar that is not in the blade prints nowhere") {
    Dossier d = bar_blade();
    Lot other = d.steel.lots[0];
    other.tag = {"99"};
    other.own_tests = {"wootz"};
    d.steel.lots.push_back(other);
    CHECK(compose(d).may_issue());
  }
  SECTION("what a photo shows") {
    Dossier d = bar_blade();
    d.photos = {{1, "the hamon after polish", "00"}};
    CHECK(missing(compose(d), Claim::hamon));
  }
  SECTION("how a handle was treated") {
    Dossier d = bar_blade();
    d.handle = {{.part = "scales", .material = "oak", .treatments = {"battle ready oil"}}};
    CHECK(blocked(d, "in treatment of the scales"));
  }
  SECTION("a word that no record could show") {
    Dossier d = bar_blade();
    d.title = "Battle ready knife";
    CHECK(blocked(d, "\"Battle ready\" in title"));
  }
}

TEST_CASE("a denial of what the record shows is warned of and stops nothing") {
  Dossier d = pattern_blade();
  d.free_texts = {{"notes", "Not forged."}};
  const CertificateDraft draft = compose(d);
  REQUIRE(draft.warnings.size() == 1);
  CHECK(draft.warnings[0] == "\"forged\" is denied in notes, but the record shows it.");
  CHECK(draft.may_issue());
}

TEST_CASE("no cracks may be said only when none has to be told") {
  Dossier d = bar_blade();
  CHECK(wording(d, "No cracks, no flaws.")[0].proven);
  Finding finding;
  finding.number = 1;
  finding.kind = FindingKind::crack;
  finding.decision = Decision::removed;
  d.findings = {finding};
  for (const char* text : {"No cracks.", "flawless", "keine Risse", "sans fissures",
                           "senza difetti", "sin grietas", "free of cracks", "rissfrei"}) {
    INFO(text);
    const auto hits = wording(d, text);
    REQUIRE(hits.size() == 1);
    CHECK_FALSE(hits[0].proven);
  }
  CHECK(wording(d, "A crack at the tip was ground away.").empty());
}

TEST_CASE("an estimate may be quoted as an estimate") {
  Dossier d = bar_blade();
  d.hardness.clear();
  d.expected_hrc_low = 600;
  d.expected_hrc_high = 620;
  CHECK(wording(d, "expected 61 HRC, not measured")[0].proven);
  CHECK_FALSE(wording(d, "61 HRC")[0].proven);
  CHECK_FALSE(wording(d, "expected 64 HRC")[0].proven);
}

TEST_CASE("the lexicon that is compiled in can be read, and a bad line is named") {
  const auto read = read_lexicon(lexicon_csv);
  REQUIRE(read);
  CHECK(read->size() > 300);
  for (const LexiconEntry& entry : *read)
    for (const Form& form : entry.forms) CHECK_FALSE(form.empty());
  const std::string head = "language,forms,needs,proof,said,truthful\n";
  CHECK(read_lexicon(head + "en,x,no_claim,claim,asserted,\n").problem().field ==
        "lexicon, line 2");
  CHECK_FALSE(read_lexicon(head + "en,x,grade,guess,asserted,\n"));
  CHECK_FALSE(read_lexicon(head + "en,x,grade,claim,perhaps,\n"));
  CHECK_FALSE(read_lexicon(head + "en,,grade,claim,asserted,\n"));
  CHECK_FALSE(read_lexicon(head + "en,x\n"));
}

TEST_CASE("texts that are not text do no harm") {
  const Dossier d = bar_blade();
  for (const std::string& text :
       {std::string("\xff\xfe\x80"), std::string("dam\xc3"), std::string(), std::string("\0\0", 2),
        std::string(20'000, 'a'), std::string("##--**")})
    CHECK(wording(d, text).empty());
}

TEST_CASE("figures are read in the ways they are typed") {
  const auto value = [](const char* text) { return *words_of_text(text).at(0).value; };
  CHECK(value("62,5") == 62.5);
  CHECK(value("62.5") == 62.5);
  CHECK(value("1'000") == 1000);
  CHECK(value("1.000") == 1000);
  CHECK(value("1 000") == 1000);
  CHECK(value("dreihundert") == 300);
  CHECK(words_of_text("300lagig").size() == 2);
  CHECK(nearly("damascus", "damscus"));
  CHECK(nearly("wootz", "wotz"));
  CHECK_FALSE(nearly("wootz", "woods"));
  CHECK_FALSE(nearly("hamon", "lemon"));
}

TEST_CASE("the place of a finding and the note on a piece are read like any text") {
  Dossier d = bar_blade();
  Finding pit;
  pit.number = 1;
  pit.kind = FindingKind::pit;
  pit.decision = Decision::left_disclosed;
  pit.place = "left side, near the spine";
  d.findings.push_back(pit);
  d.steel.pieces[0].identity = Identity::gap_closed_by_test;
  d.steel.pieces[0].identity_note = "analysed again";
  REQUIRE(compose(d).may_issue());
  SECTION("a place") {
    d.findings[0].place = "in the damascus near the spine";
    CHECK_FALSE(compose(d).may_issue());
  }
  SECTION("a note") {
    d.steel.pieces[0].identity_note = "the old smith called it wootz";
    CHECK_FALSE(compose(d).may_issue());
  }
}
