// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "reports/page_text.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

using Catch::Contains;

Document set(const BuildCertificate& cert, const Look& look = metric()) {
  const Outcome<Document> document = certificate_document(cert, look, fonts());
  REQUIRE(document.ok());
  return *document;
}

std::string refused(const BuildCertificate& cert) {
  const Outcome<Document> document = certificate_document(cert, metric(), fonts());
  REQUIRE(!document.ok());
  return document.problem().field;
}

bool has_code(const Document& document) {
  for (const Page& page : document.pages) {
    for (const Element& e : page.elements) {
      if (std::holds_alternative<PlacedQr>(e)) return true;
    }
  }
  return false;
}

}  // namespace

TEST_CASE("a certificate of an ordinary knife stands on one A4 page") {
  CHECK(set(certificate(Strain::ordinary)).pages.size() == 1);
}

TEST_CASE("statements that outrun the facts begin at the left and go on at the right") {
  BuildCertificate cert = certificate(Strain::ordinary);
  cert.told_openly.clear();
  cert.care = {"Dry it."};
  cert.cautions.clear();
  for (Statement& s : cert.statements) s.evidence += " " + s.evidence + " " + s.evidence;
  const Document document = set(cert);
  REQUIRE(document.pages.size() == 1);
  CHECK_THAT(words_of(document), !Contains("What we state, continued"));
  const auto place = [&](const std::string& words) {
    for (const Element& e : document.pages[0].elements) {
      const auto* run = std::get_if<TextRun>(&e);
      if (run && run->text.starts_with(words)) return run->baseline;
    }
    FAIL("not printed: " << words);
    return Place{};
  };
  const Place heading = place("What we state");
  const Place first = place("Steel.");
  CHECK(first.x == heading.x);
  CHECK(first.y > heading.y);
  const Place last = place("Authors.");
  CHECK(last.x > first.x);
  CHECK(place("Told openly").y > last.y);
}

TEST_CASE("more to tell than a page holds goes on at the head of the other column") {
  BuildCertificate cert = certificate(Strain::ordinary);
  cert.told_openly.assign(45,
                          "Pit in the left side near the spine, 1 mm, ground and etched again.");
  const Document document = set(cert);
  for (const Page& page : document.pages) CHECK(page.elements.size() > 40);
  CHECK(document.pages.size() <= 3);
}

TEST_CASE("forty heats stand in two halves beside each other, each under its head") {
  BuildCertificate cert = certificate(Strain::ordinary);
  const HeatLine cycle = cert.heat.front();
  cert.heat.assign(40, cycle);
  for (std::size_t i = 0; i < cert.heat.size(); ++i)
    cert.heat[i].step = "Cycle " + std::to_string(i + 1);
  const Document document = set(cert);
  CHECK(document.pages.size() == 2);
  std::size_t heads = 0;
  const TextRun* middle[2] = {};
  for (const Page& page : document.pages)
    for (const Element& e : page.elements) {
      const auto* run = std::get_if<TextRun>(&e);
      if (run && run->text == "Step") ++heads;
      if (run && run->text == "Cycle 1") middle[0] = run;
      if (run && run->text == "Cycle 21") middle[1] = run;
    }
  CHECK(heads == 2);
  REQUIRE(middle[0]);
  REQUIRE(middle[1]);
  CHECK(middle[0]->baseline.y == middle[1]->baseline.y);
  CHECK(middle[1]->baseline.x > middle[0]->baseline.x + 100);
}

TEST_CASE("each statement stands with its evidence and level") {
  const std::string said = words_of(set(certificate(Strain::ordinary)));
  CHECK_THAT(said, Contains("Steel. \nLayers of 1084 and 15N20.\n"));
  CHECK_THAT(said, Contains("Level B: mill document on file for both lots"));
  CHECK_THAT(said, Contains("Sub-zero. \nNot done.\n"));
  CHECK_THAT(said, Contains("A: measured or recorded on this blade."));
}

TEST_CASE("findings told openly are printed, and their absence is said") {
  BuildCertificate cert = certificate(Strain::ordinary);
  CHECK_THAT(words_of(set(cert)), Contains("Weld line, closed, 4 mm long"));
  cert.told_openly.clear();
  CHECK_THAT(words_of(set(cert)), Contains("no finding on this blade is on record"));
}

TEST_CASE("what was not measured or recorded is said") {
  BuildCertificate cert = certificate(Strain::ordinary);
  cert.hardness = {};
  cert.recorded.clear();
  cert.analyses.clear();
  cert.trail.clear();
  cert.heat.clear();
  const std::string said = words_of(set(cert));
  for (const char* each :
       {"Not measured.", "No temperature record is on file.", "No analysis on file.",
        "No trail of the steel is on record.", "Not recorded."}) {
    CHECK_THAT(said, Contains(each));
  }
}

TEST_CASE("an element outside the limits of its grade is called outside") {
  BuildCertificate cert = certificate(Strain::ordinary);
  cert.analyses[0].lines[0].wt_percent = 1.05;
  CHECK_THAT(words_of(set(cert)), Contains("outside 0.80–0.93"));
  CHECK_THAT(words_of(set(cert)), Contains("max 0.040"));
}

TEST_CASE("a draft carries DRAFT under every page and no code") {
  BuildCertificate cert = certificate(Strain::hard);
  cert.state = IssueState::draft;
  const Document document = set(cert);
  CHECK(document.pages.size() > 1);
  for (const Page& page : document.pages) {
    REQUIRE(page.underlay.size() == 1);
    CHECK(std::get<TextRun>(page.underlay[0]).text == "DRAFT");
  }
  CHECK(!has_code(document));
  CHECK(has_code(set(certificate(Strain::ordinary))));
}

TEST_CASE("a certificate of several pages has its seal on the last and says so") {
  const Document document = set(certificate(Strain::hard));
  Document first;
  first.pages.push_back(document.pages.front());
  CHECK_THAT(words_of(first), Contains("seal on the last") && !Contains("Seal\n"));
  Document last;
  last.pages.push_back(document.pages.back());
  CHECK_THAT(words_of(last), Contains("Seal\n") && Contains("Blade 10214"));
}

TEST_CASE("a second issue names the one it replaces") {
  BuildCertificate cert = certificate(Strain::ordinary);
  cert.issue = 2;
  cert.replaces = "Issue 1 of 3 November 2026: the length was mistyped.";
  CHECK_THAT(words_of(set(cert)), Contains("Issue 2, 24 Nov 2026") && Contains("Replaces: ") &&
                                      Contains("the length was mistyped."));
}

TEST_CASE("the heat table speaks the maker's degrees") {
  CHECK_THAT(words_of(set(certificate(Strain::ordinary), customary())),
             Contains("1598, 1562, 1517") && Contains("°F"));
}

TEST_CASE("a certificate that cannot be true on paper is refused, naming the field") {
  BuildCertificate cert = certificate(Strain::ordinary);
  SECTION("no statement") {
    cert.statements.clear();
    CHECK(refused(cert) == "statements");
  }
  SECTION("a level that does not exist") {
    cert.statements[0].level = 'F';
    CHECK(refused(cert) == "evidence level");
  }
  SECTION("a trail that runs backwards") {
    cert.trail[2].from = {4};
    CHECK(refused(cert) == "trail of the steel");
  }
  SECTION("a reading off the blade") {
    cert.hardness.readings[0].along = 1.2;
    CHECK(refused(cert) == "hardness");
  }
  SECTION("a photograph that is not whole") {
    cert.photo = Picture{100, 100, {1, 2, 3}, {}};
    CHECK(refused(cert) == "photograph");
  }
  SECTION("a code that readers would garble") {
    cert.seal.qr = "Клеймо";
    CHECK(refused(cert) == "code of the seal");
  }
}

}  // namespace tangmark::reports::samples
