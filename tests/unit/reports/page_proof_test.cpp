// SPDX-License-Identifier: MIT
#include "page_proof.h"

#include <catch2/catch.hpp>

#include "reports/page_text.h"
#include "reports/pdf.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

std::string joined(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += line + "\n";
  return all;
}

// A page with these elements, alone in its document.
Document page_of(std::vector<Element> elements) {
  Document document;
  document.pages.push_back({400, 400, {}, std::move(elements)});
  return document;
}

TextRun run(Points x, Points y, const std::string& text) {
  const Font font{Face::sans, Weight::regular, Slant::upright, 10};
  return {{x, y}, text, font, ink, fonts().width(text, font), 0};
}

}  // namespace

TEST_CASE("the proof reader sees text over text, strokes through text and text off the page") {
  CHECK(faults_of(page_of({run(20, 20, "quench"), run(20, 40, "temper")}), fonts()).empty());
  CHECK(faults_of(page_of({run(20, 20, "quench"), run(25, 24, "temper")}), fonts()).size() == 1);
  CHECK(faults_of(page_of({run(380, 20, "quench")}), fonts()).size() == 1);
  CHECK(faults_of(page_of({run(20, 20, "quench"), Line{{10, 17}, {90, 17}, 1, ink, 0}}), fonts())
            .size() == 1);
  CHECK(faults_of(page_of({run(20, 20, "quench"),
                           Rectangle{{10, 10, 80, 30}, {false, 0, ink, true, ink}}}),
                  fonts())
            .size() == 1);
}

TEST_CASE("every paper of the shop reads clean on A4 and on Letter") {
  const Look look = GENERATE(metric(), customary());
  for (const Named& paper : every_document(Strain::ordinary, look)) {
    INFO(paper.name);
    REQUIRE(paper.document.ok());
    CHECK(joined(faults_of(*paper.document, fonts())) == "");
  }
}

TEST_CASE("long names, forty steps, Greek and Cyrillic leave every paper clean") {
  const Look look = GENERATE(metric(), customary());
  for (const Named& paper : every_document(Strain::hard, look)) {
    INFO(paper.name);
    REQUIRE(paper.document.ok());
    CHECK(joined(faults_of(*paper.document, fonts())) == "");
  }
}

TEST_CASE("papers are A4 or Letter, travellers half of it") {
  const auto sizes = [](const Look& look) {
    const Document quote = *quote_document(samples::quote(Strain::ordinary), look, fonts());
    const Document card = *traveller_document(traveller(Strain::ordinary), look, fonts());
    return std::vector<Points>{quote.pages[0].width, quote.pages[0].height, card.pages[0].width,
                               card.pages[0].height};
  };
  CHECK(sizes(metric()) == std::vector<Points>{595.28, 841.89, 419.53, 595.28});
  CHECK(sizes(customary()) == std::vector<Points>{612, 792, 396, 612});
}

TEST_CASE("the same paper gives the same bytes") {
  const Document paper = *certificate_document(certificate(Strain::ordinary), metric(), fonts());
  CHECK(pdf_bytes(paper, fonts()) == pdf_bytes(paper, fonts()));
}

TEST_CASE("a paper that cannot be written leaves a sentence and no file") {
  const std::filesystem::path nowhere = "/nonexistent folder/quote.pdf";
  CHECK_THROWS_WITH(write_whole("x", nowhere), Catch::Contains("/nonexistent folder/quote.pdf"));
  CHECK(!std::filesystem::exists(nowhere));
}

TEST_CASE("a character that no font here has is named with its field") {
  const auto problem = fonts().unprintable("a knife for 田中", "name of the buyer");
  REQUIRE(problem);
  CHECK(problem->field == "name of the buyer");
  CHECK_THAT(problem->sentence, Catch::Contains("田") && Catch::Contains("U+7530"));
  CHECK(fonts().unprintable("שלום", "name"));
  CHECK(fonts().unprintable("\xC3", "name"));
  CHECK(fonts().unprintable("🔪", "name"));
  CHECK(!fonts().unprintable("Łódź Ωμέγα Щит ≤ 2 mm × 3 – 15° ½ “œuvre” ☐", "name"));
}

}  // namespace tangmark::reports::samples
