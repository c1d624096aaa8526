// SPDX-License-Identifier: MIT
#include "domain/certificate/certificate_record.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "domain/certificate/record_json.h"
#include "sample_blades.h"

using namespace tangmark;
using namespace tangmark::certificate;
using namespace tangmark::certificate::sample;

namespace {

CertificateSheet sheet_of(const Dossier& d) {
  IssueFacts issue;
  issue.number = "C-42";
  issue.issued = clock(23);
  return certificate_sheet(d, compose(d), issue);
}

const StatementRow* row(const CertificateSheet& sheet, const std::string& claim) {
  for (const StatementRow& one : sheet.statements)
    if (one.claim == claim) return &one;
  return nullptr;
}

}  // namespace

TEST_CASE("a record is read back to the very sheet, and written again to the very bytes") {
  for (const char* name : {"bar", "hamon", "pattern", "bought", "laminated", "wootz", "banded",
                           "smelted", "image", "stainless", "spring"}) {
    INFO(name);
    Dossier d = blade_called(name);
    d.title = "\u0391\u03bb\u03ad\u03be\u03b7\u03c2 \"\\ \n knife \u0429";
    d.size.edge_length = Length::nanometres(240'500'000);
    d.photos = {{1, "left side", std::string(64, 'a')}};
    const CertificateSheet sheet = sheet_of(d);
    const std::string text = record_text(sheet);
    const auto read = read_record(text);
    REQUIRE(read);
    CHECK(*read == sheet);
    CHECK(record_text(*read) == text);
    CHECK(record_text(sheet_of(d)) == text);
  }
}

TEST_CASE("a record of an empty dossier is read back too") {
  const CertificateSheet sheet = sheet_of(Dossier{});
  const auto read = read_record(record_text(sheet));
  REQUIRE(read);
  CHECK(*read == sheet);
}

TEST_CASE("every changed byte of a record changes the sheet or is refused") {
  const std::string text = record_text(sheet_of(pattern_blade()));
  const CertificateSheet sheet = read_record(text).value();
  for (std::size_t i = 0; i < text.size(); i += 7) {
    std::string changed = text;
    changed[i] = static_cast<char>(changed[i] ^ 1);
    const auto read = read_record(changed);
    if (read) CHECK_FALSE(*read == sheet);
  }
  CHECK_FALSE(read_record(text + " "));
  CHECK_FALSE(read_record(text.substr(0, text.size() - 1)));
  CHECK_FALSE(read_record(""));
  CHECK_FALSE(read_record("{}"));
  CHECK_FALSE(read_record("{\"format\": \"another\"}"));
}

TEST_CASE("a record holds no fraction and keeps the order of its members") {
  const std::string text = record_text(sheet_of(pattern_blade()));
  CHECK(text.find("{\n  \"format\": \"tangmark build certificate 4\",\n  \"number\": \"C-42\"") ==
        0);
  CHECK(text.find("\"amount_ppm\": 8500") != std::string::npos);
  CHECK(text.find("\"issued\": \"2026-11-07T23:00:00Z\"") != std::string::npos);
  for (const char* bad : {"1.5", "true", "{\"a\": 1, \"a\": 2}", "[1,]", "\"\\ud800\"", "01", "-0",
                          "99999999999999999999", "\"\x01\"", "[1] 2", "\xff"})
    CHECK_FALSE(read_record_json(bad));
  CHECK_FALSE(read_record_json(std::string(100, '[')));
  CHECK(read_record_json(" [1, \"\\u0041\\n\", null, {\"a\": -3}] "));
}

TEST_CASE("a record of an earlier format is refused in a sentence that says why") {
  std::string text = record_text(sheet_of(bar_blade()));
  const std::size_t at = text.find("certificate 4");
  for (const char* earlier : {"1", "2", "3"}) {
    text.replace(at + 12, 1, earlier);
    const auto read = read_record(text);
    REQUIRE_FALSE(read);
    CHECK(read.problem().field == "format");
    CHECK(read.problem().sentence.find("of an earlier version of the program") !=
          std::string::npos);
  }
  text.replace(at + 12, 1, "9");
  CHECK(read_record(text).problem().sentence.find("no record") != std::string::npos);
}

TEST_CASE("the trail is a family tree in which each box stands after what it was made of") {
  const CertificateSheet sheet = sheet_of(pattern_blade());
  REQUIRE(sheet.trail.size() == 6);
  for (std::size_t i = 0; i < sheet.trail.size(); ++i)
    for (int from : sheet.trail[i].from) CHECK(from < static_cast<int>(i));
  CHECK(sheet.trail[0].title == "Lot 17, 1084");
  CHECK(sheet.trail[0].lines ==
        std::vector<std::string>{"Northbank Steel", "EN 10204 3.1, no. 4711", "melt number Q4471",
                                 "mark on bar matched"});
  CHECK(sheet.trail[4].title == "Billet 31");
  CHECK(sheet.trail[4].lines.back() == "132 layers");
  CHECK(sheet.trail.back().title == "Blade 42");
  Dossier broken = pattern_blade();
  broken.steel.pieces[0].from = BilletTag{"31"};
  CHECK(sheet_of(broken).trail.empty());
}

TEST_CASE("the tables of a sheet give the figures of the record with their evidence") {
  const CertificateSheet sheet = sheet_of(stainless_blade());
  REQUIRE(sheet.heat.size() == 5);
  CHECK(sheet.heat[0].step == "Harden");
  CHECK(sheet.heat[0].evidence == "A, recorded");
  CHECK(sheet.heat[0].temperatures ==
        std::vector<Temperature>{Temperature::celsius(803), Temperature::celsius(808)});
  CHECK(sheet.heat[0].figures == Figures::lowest_to_highest);
  CHECK(sheet.heat[1].figures == Figures::each);
  CHECK(sheet.heat[1].step == "Quench, plates");
  CHECK(sheet.heat[2].step == "Cold step");
  CHECK(sheet.heat[4].step == "Temper 2");
  CHECK(sheet.analyses.at(0).rows.at(1).element == "Cr");
  CHECK(sheet.analyses.at(0).rows.at(1).most == Share::percent(18));
  CHECK(sheet.analysis_note == "All inside the limits.");
  CHECK(sheet.hardness.size() == 2);
  CHECK(sheet_of(banded_blade()).heat[0].step == "Thermal cycle \u00d73");
  Dossier set = bar_blade();
  line(set, Operation::temper).heat->record.reset();
  CHECK(sheet_of(set).heat[2].evidence == "C, as set only");
}

TEST_CASE("the heat table tells a corrected record from an untouched one") {
  using namespace date::literals;
  Dossier d = stainless_blade();
  line(d, Operation::harden).heat->record->set_right =
      SetRight{TemperatureDifference::celsius(2), 2026_y / 11 / 5, "check thermocouple"};
  const CertificateSheet sheet = sheet_of(d);
  CHECK(sheet.heat[0].evidence == "B, recorded, corrected");
  CHECK(sheet.heat[0].figures == Figures::lowest_to_highest);
  CHECK(sheet.heat[3].evidence == "A, recorded");
  CHECK(sheet.heat_note == "Harden: each recorded reading corrected by +2 \u00b0C.");
}

TEST_CASE("an absence stands among the statements, without a level") {
  const CertificateSheet sheet = sheet_of(bar_blade());
  REQUIRE(row(sheet, "sub_zero"));
  CHECK(row(sheet, "sub_zero")->text == "Not done.");
  CHECK(row(sheet, "sub_zero")->level.empty());
  CHECK(row(sheet, "grade")->level == "C");
  CHECK(sheet.legend.size() == 2);
}

TEST_CASE("every level that stands on the page is explained, and no other") {
  for (const char* name : {"bar", "hamon", "pattern", "wootz", "spring", "stainless"}) {
    INFO(name);
    const CertificateSheet sheet = sheet_of(blade_called(name));
    for (char level = 'A'; level <= 'E'; ++level) {
      INFO(level);
      const auto starts = [&](const std::string& text) { return text.starts_with(level); };
      const bool stated = std::any_of(sheet.statements.begin(), sheet.statements.end(),
                                      [&](const StatementRow& one) { return starts(one.level); }) ||
                          std::any_of(sheet.heat.begin(), sheet.heat.end(),
                                      [&](const HeatRow& one) { return starts(one.evidence); });
      CHECK(std::any_of(sheet.legend.begin(), sheet.legend.end(), starts) == stated);
    }
  }
  Dossier set = bar_blade();
  set.steel.lots[0].document = SupplyDocument::type_3_1;
  line(set, Operation::temper).heat->record.reset();
  const std::vector<std::string> legend = sheet_of(set).legend;
  CHECK(std::count(legend.begin(), legend.end(),
                   "C: supplier's paper only, as set only, or entered later") == 1);
}
