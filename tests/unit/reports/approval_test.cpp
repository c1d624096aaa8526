// SPDX-License-Identifier: MIT
// The pages of three papers as text, against texts that somebody read and approved. To approve a
// change: read the received file that the failure names, then copy it over the approved one.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "reports/page_text.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

std::string content_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void check_approved(const std::string& name, const Outcome<Document>& document) {
  REQUIRE(document.ok());
  const std::string received = page_text(*document);
  const std::filesystem::path approved =
      std::filesystem::path(TANGMARK_TESTS_DIR) / "unit/reports/approved" / (name + ".txt");
  if (received == content_of(approved)) {
    SUCCEED();
    return;
  }
  const std::filesystem::path beside =
      std::filesystem::temp_directory_path() / (name + ".received.txt");
  std::ofstream(beside, std::ios::binary) << received;
  FAIL("The page differs from " << approved << "; what was received is in " << beside << ".");
}

}  // namespace

TEST_CASE("quote, traveller and certificate look as approved") {
  check_approved("quote", quote_document(quote(Strain::ordinary), metric(), fonts()));
  check_approved("traveller", traveller_document(traveller(Strain::ordinary), metric(), fonts()));
  check_approved("certificate",
                 certificate_document(certificate(Strain::ordinary), metric(), fonts()));
}

}  // namespace tangmark::reports::samples
