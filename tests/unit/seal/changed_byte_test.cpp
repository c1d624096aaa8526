// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "reports/seal/sealed_pdf.h"
#include "sealed_samples.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// A certificate with a trail and records, one with a photograph, one of another construction.
std::vector<std::string> three_certificates() {
  return {sealed(sheet_of("stainless")), sealed(sheet_with_photo("pattern"), photo()),
          sealed(sheet_of("wootz"))};
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
