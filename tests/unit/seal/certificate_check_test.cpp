// SPDX-License-Identifier: MIT
#include "gui/desk/paper/certificate_check.h"

#include <catch2/catch.hpp>

#include "db/digest.h"
#include "domain/certificate/certificate_record.h"
#include "gui/desk/paper/certificate_page.h"
#include "gui/desk/paper/certificate_printer.h"
#include "reports/pdf.h"
#include "reports/seal/pdf_content.h"
#include "reports/seal/sealed_pdf.h"
#include "sealed_samples.h"

using namespace tangmark;
using namespace tangmark::test;
using desk::check_certificate;

namespace {

// A page that its signer altered before signing: the signature is sound, the words are not.
std::string signed_after(const certificate::CertificateSheet& sheet,
                         const std::function<void(reports::Document&)>& alter) {
  const std::string& fingerprint = key().certificate().fingerprint;
  auto document =
      desk::certificate_page(sheet, {desk::PageState::issued, fingerprint, ""}, fonts());
  alter(*document);
  auto prepared = reports::SealedPdf::around(
      reports::pdf_bytes(*document, fonts()),
      {desk::certificate_words(sheet), key().certificate().owner, sheet.issued});
  return std::move(prepared).signed_with(key());
}

reports::TextRun& first_run(reports::Document& document, std::string_view words) {
  for (reports::Page& page : document.pages)
    for (reports::Element& element : page.elements)
      if (auto* run = std::get_if<reports::TextRun>(&element))
        if (run->text.find(words) != std::string::npos) return *run;
  throw std::logic_error("no such words on the page");
}

}  // namespace

TEST_CASE("a sealed certificate is valid, and the very same each time it is made") {
  for (const char* name : {"bar", "hamon", "pattern", "bought", "laminated", "wootz", "banded",
                           "smelted", "image", "stainless", "spring"}) {
    INFO(name);
    const std::string pdf = sealed(sheet_of(name));
    CHECK(sealed(sheet_of(name)) == pdf);
    const auto check = check_certificate(pdf, fonts());
    CHECK(check.problems == std::vector<std::string>{});
    CHECK(check.valid());
    CHECK(check.same_page);
    CHECK(*check.sheet == sheet_of(name));
    CHECK(check.signer->key == key().certificate());
  }
}

TEST_CASE("Greek and Cyrillic names, a letter sheet and degrees Fahrenheit are checked as well") {
  certificate::CertificateSheet sheet = sheet_with_photo("pattern");
  sheet.maker = "Ελένη Παπαδοπούλου";
  sheet.title = "Нож охотничий";
  sheet.paper = "letter";
  sheet.temperature = "F";
  const auto check = check_certificate(sealed(sheet, photo()), fonts());
  CHECK(check.problems == std::vector<std::string>{});
  CHECK(check.valid());
}

TEST_CASE("an unsigned certificate is not valid, though its record and words are right") {
  const auto pdf = desk::unsealed_certificate(sheet_of("bar"), "", "", fonts());
  REQUIRE(pdf);
  const auto check = check_certificate(*pdf, fonts());
  CHECK_FALSE(check.valid());
  CHECK_FALSE(check.signature);
  CHECK(check.record);
  CHECK(check.visible);
  CHECK(check.problems == std::vector<std::string>{"The paper carries no signature."});
}

TEST_CASE("words changed before signing are found, though the signature is sound") {
  const std::string pdf = signed_after(sheet_of("bar"), [](reports::Document& document) {
    reports::TextRun& run = first_run(document, "1095");
    run.text.replace(run.text.find("1095"), 4, "1059");
  });
  const auto check = check_certificate(pdf, fonts());
  CHECK(check.signature);
  CHECK(check.record);
  CHECK_FALSE(check.visible);
  CHECK_FALSE(check.valid());
}

TEST_CASE("words added, left out or moved about before signing are found") {
  const auto sheet = sheet_of("bar");
  CHECK_FALSE(check_certificate(signed_after(sheet, [](reports::Document& d) {
                                  reports::TextRun run = first_run(d, "1095");
                                  run.text = "hand-forged";
                                  run.baseline = {300, 800};
                                  d.pages[0].elements.push_back(run);
                                }),
                                fonts()).visible);
  CHECK_FALSE(check_certificate(signed_after(sheet, [](reports::Document& d) {
                                  first_run(d, "1095").text = " ";
                                }),
                                fonts()).visible);
}

TEST_CASE("a drawing that hides words before signing is found") {
  const auto hide = [](reports::Document& document) {
    document.pages[0].elements.push_back(reports::Rectangle{
        {20, 300, 500, 300}, {false, 0, reports::ink, true, reports::paper_white}});
  };
  const auto check = check_certificate(signed_after(sheet_of("bar"), hide), fonts());
  CHECK(check.signature);
  CHECK(check.record);
  CHECK_FALSE(check.visible);
  CHECK_FALSE(check.same_page);
  CHECK_FALSE(check.valid());
  CHECK(check.problems.front().find("drawn otherwise than its record gives it") !=
        std::string::npos);
  SECTION("with other fonts it cannot be compared, and that is said") {
    certificate::CertificateSheet elsewhere = sheet_of("bar");
    elsewhere.fonts = "00000000deadbeef";
    const auto untold = check_certificate(signed_after(elsewhere, hide), fonts());
    CHECK(untold.visible);
    CHECK_FALSE(untold.same_page);
    CHECK(untold.remarks.front().find("other fonts than this machine has") != std::string::npos);
  }
}

TEST_CASE("a picture put on the page before signing is found") {
  reports::Picture stamp;
  stamp.width_px = stamp.height_px = 4;
  stamp.rgb.assign(48, 0);
  const auto check = check_certificate(
      signed_after(
          sheet_of("bar"),
          [&](reports::Document& document) {
            document.pages[0].elements.push_back(reports::PlacedPicture{{100, 100, 50, 50}, stamp});
          }),
      fonts());
  CHECK(check.signature);
  CHECK_FALSE(check.visible);
}

TEST_CASE("a certificate whose record is of an earlier format says why it cannot be compared") {
  std::string earlier;
  const std::string pdf = signed_after(sheet_of("bar"), [&](reports::Document& document) {
    earlier = document.attachments[0].bytes;
    const std::string now = db::sha256_hex(earlier);
    earlier.replace(earlier.find("certificate 4") + 12, 1, "2");
    document.attachments[0].bytes = earlier;
    for (reports::Page& page : document.pages)
      for (reports::Element& element : page.elements)
        if (auto* run = std::get_if<reports::TextRun>(&element)) {
          const std::string digits = db::sha256_hex(earlier);
          // The digest stands in groups of eight.
          for (std::size_t i = 0; i < 64; i += 8)
            for (std::size_t at; (at = run->text.find(now.substr(i, 8))) != std::string::npos;)
              run->text.replace(at, 8, digits.substr(i, 8));
        }
  });
  const auto check = check_certificate(pdf, fonts());
  CHECK(check.signature);
  CHECK(check.record);
  CHECK_FALSE(check.visible);
  CHECK_FALSE(check.valid());
  REQUIRE(check.problems.size() == 1);
  CHECK(check.problems[0].find("of format 2, of an earlier version") != std::string::npos);
}

TEST_CASE("another record than the one that the page was set from is found") {
  const std::string pdf = signed_after(sheet_of("bar"), [](reports::Document& document) {
    certificate::CertificateSheet other = sheet_of("bar");
    other.hardness[0].tenths = 650;
    document.attachments[0].bytes = certificate::record_text(other);
  });
  const auto check = check_certificate(pdf, fonts());
  CHECK(check.signature);
  CHECK_FALSE(check.record);
  CHECK_FALSE(check.valid());
}

TEST_CASE("another photograph than the one of the record is refused and found") {
  CHECK_FALSE(desk::sealed_certificate(sheet_of("bar"), photo(), key(), fonts()));
  const auto content = reports::pdf_content(sealed(sheet_with_photo("bar"), photo()));
  REQUIRE(content);
  REQUIRE(content->photographs.size() == 1);
  CHECK(content->photographs[0] == photo());
}

TEST_CASE("strangers' bytes are answered with a sentence") {
  for (const std::string& bytes : {std::string(), std::string("%PDF-1.7"), std::string(5000, 'x'),
                                   sealed(sheet_of("bar")).substr(0, 30000)}) {
    const auto check = check_certificate(bytes, fonts());
    CHECK_FALSE(check.valid());
    CHECK_FALSE(check.problems.empty());
  }
}

TEST_CASE("a certificate is not sealed with a key that is out of its days") {
  certificate::CertificateSheet sheet = sheet_of("bar");
  sheet.issued -= std::chrono::hours(48);
  CHECK_FALSE(desk::sealed_certificate(sheet, "", key(), fonts()));
}
