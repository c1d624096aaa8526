// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "reports/seal/pdf_content.h"
#include "reports/seal/sealed_pdf.h"
#include "sealed_samples.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// Twenty-four things told openly need a second page.
certificate::CertificateSheet long_sheet() {
  certificate::CertificateSheet sheet = sheet_with_photo("pattern");
  for (int i = 1; i <= 24; ++i)
    sheet.told_openly.push_back("Pit " + std::to_string(i) + ", left side, ground out.");
  return sheet;
}

// What a revoked and replaced certificate became: the first issue stays as it was, byte for byte.
certificate::CertificateSheet second_issue() {
  certificate::CertificateSheet sheet = sheet_of("wootz");
  sheet.issue = 2;
  sheet.replaces = "issue 1 of 7 Nov 2026: the length was mistyped";
  return sheet;
}

// One of two pages with a photograph, one that was revoked, and the issue that took its place.
std::vector<std::string> three_certificates() {
  return {sealed(long_sheet(), photo()), sealed(sheet_of("wootz")), sealed(second_issue())};
}

// Flips the lowest bit, and the one that tells capitals from small letters.
std::size_t unnoticed_at(std::string& pdf, std::size_t at) {
  std::size_t unnoticed = 0;
  for (const char bit : {'\x01', '\x20'}) {
    const char kept = pdf[at];
    pdf[at] = static_cast<char>(kept ^ bit);
    if (reports::check_seal(pdf)) ++unnoticed;
    pdf[at] = kept;
  }
  return unnoticed;
}

std::size_t unnoticed_in(std::string pdf, std::size_t from, std::size_t to, std::size_t stride) {
  std::size_t unnoticed = 0;
  for (std::size_t at = from; at < to; at += stride) unnoticed += unnoticed_at(pdf, at);
  return unnoticed;
}

}  // namespace

TEST_CASE(
    "the three certificates are one of two pages, a first issue and the one that replaced it") {
  const auto pdfs = three_certificates();
  const auto pages = [](const std::string& pdf) { return reports::pdf_content(pdf)->pages; };
  CHECK(pages(pdfs[0]).size() == 2);
  CHECK(pages(pdfs[2])[0].find("Replaces") != std::string::npos);
}

TEST_CASE("a changed byte of a sealed certificate is found") {
  for (const std::string& pdf : three_certificates()) {
    REQUIRE(reports::check_seal(pdf));
    CHECK(unnoticed_in(pdf, 0, pdf.size(), 401) == 0);
    CHECK(unnoticed_in(pdf, pdf.size() - 60, pdf.size(), 1) == 0);
  }
}

TEST_CASE("a changed byte in the signature or its padding is found") {
  const std::string pdf = sealed(sheet_of("bar"));
  const auto place = reports::signature_place(pdf);
  REQUIRE(place);
  // Every byte up to well behind the signature, and the padding in strides.
  CHECK(unnoticed_in(pdf, place->from - 40, place->from + 4600, 1) == 0);
  CHECK(unnoticed_in(pdf, place->from + 4600, place->to + 20, 13) == 0);
}

TEST_CASE("a byte put in, taken out or put behind is found") {
  const std::string pdf = sealed(sheet_of("bar"));
  CHECK_FALSE(reports::check_seal(pdf + "\n"));
  CHECK_FALSE(reports::check_seal(pdf.substr(0, pdf.size() - 1)));
  for (std::size_t at = 0; at < pdf.size(); at += 1999) {
    std::string longer = pdf;
    longer.insert(at, 1, ' ');
    CHECK_FALSE(reports::check_seal(longer));
    std::string shorter = pdf;
    shorter.erase(at, 1);
    CHECK_FALSE(reports::check_seal(shorter));
  }
}

// Run by hand: test_seal "[every]". It takes minutes.
TEST_CASE("every changed byte of three sealed certificates is found", "[.][every]") {
  std::size_t tried = 0;
  for (const std::string& pdf : three_certificates()) {
    tried += pdf.size();
    CHECK(unnoticed_in(pdf, 0, pdf.size(), 1) == 0);
  }
  WARN("bytes tried, two changes each: " << tried);
}
