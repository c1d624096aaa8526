// SPDX-License-Identifier: MIT
// Sources: the ISO 4217 codes as published in Debian's iso-codes package; minor digits as given by
// java.util.Currency.getDefaultFractionDigits() of OpenJDK 17.0.15, which follows ISO 4217
// (iso_4217_minor_digits.csv; empty where ISO 4217 says that there is no minor unit).
#include <catch2/catch.hpp>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <set>

#include "domain/measure/money.h"
#include "domain/measure/table_text.h"
#include "tests/reference/measure/outside_program.h"

using namespace tangmark;

TEST_CASE("every currency has the minor digits of ISO 4217") {
  const std::string path =
      std::string(TANGMARK_TESTS_DIR) + "/reference/measure/iso_4217_minor_digits.csv";
  const std::string text = content_of(path);
  const auto rows = read_table(text, "minor digits");
  REQUIRE(rows.ok());
  REQUIRE(rows->size() > 175);
  for (std::size_t i = 1; i < rows->size(); ++i) {
    const auto& cells = (*rows)[i].cells;
    CAPTURE(cells[0]);
    const auto currency = Currency::of(cells[0]);
    CHECK(currency.ok() == !cells[1].empty());
    if (currency) CHECK(std::to_string(currency->minor_digits()) == cells[1]);
  }
}

TEST_CASE("the codes without two minor digits are those of ISO 4217 list one") {
  // ISO 4217:2015 list one, column "minor unit", from memory.
  for (const char* code : {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF",
                           "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"}) {
    CHECK(Currency::of(code)->minor_digits() == 0);
  }
  for (const char* code : {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"}) {
    CHECK(Currency::of(code)->minor_digits() == 3);
  }
  for (const char* code : {"CLF", "UYW"}) CHECK(Currency::of(code)->minor_digits() == 4);
}

TEST_CASE("every ISO 4217 code with a minor unit is known, and no other three letters") {
  const std::string path = "/usr/share/iso-codes/json/iso_4217.json";
  if (!std::filesystem::exists(path)) {
    WARN("the iso-codes package is not installed: the list of codes is not checked");
    return;
  }
  const std::set<std::string> no_minor_unit = {"XAG", "XAU", "XBA", "XBB", "XBC", "XBD", "XDR",
                                               "XPD", "XPT", "XSU", "XTS", "XUA", "XXX"};
  const std::set<std::string> later_amendments = {"XCG", "ZWG"};
  std::set<std::string> listed;
  const auto list = nlohmann::json::parse(content_of(path));
  for (const auto& entry : list.at("4217")) {
    listed.insert(entry.at("alpha_3").get<std::string>());
  }
  REQUIRE(listed.size() > 170);
  for (char a = 'A'; a <= 'Z'; ++a) {
    for (char b = 'A'; b <= 'Z'; ++b) {
      for (char c = 'A'; c <= 'Z'; ++c) {
        const std::string code = {a, b, c};
        const bool known = Currency::of(code).ok();
        const bool expected = listed.contains(code) && !no_minor_unit.contains(code);
        if (known == expected || later_amendments.contains(code)) continue;
        FAIL_CHECK(code << (known ? " is not in ISO 4217" : " is missing"));
      }
    }
  }
}
