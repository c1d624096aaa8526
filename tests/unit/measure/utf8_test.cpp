// SPDX-License-Identifier: MIT
#include "domain/measure/utf8.h"

#include <catch2/catch.hpp>

using namespace tangmark;

TEST_CASE("text that is UTF-8 is told from text that is not") {
  for (const char* good : {"", "tang", "Härte", "Ω 790 °C", "Булат", "刃物", "\xF0\x9F\x94\xA5"}) {
    CAPTURE(good);
    CHECK(is_valid_utf8(good));
  }
  for (const char* bad : {"\x80", "\xC0\xAF", "\xE0\x80\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                          "\xF8\x88\x80\x80\x80", "H\xE4rte", "\xC3", "\xE2\x82", "\xFF"}) {
    CAPTURE(bad);
    CHECK_FALSE(is_valid_utf8(bad));
  }
  CHECK(first_broken_byte("H\xE4rte") == 1);
}

TEST_CASE("code points are walked, counted and written back") {
  const std::string text = "aä€\xF0\x9F\x94\xA5";
  std::string_view rest = text;
  std::string back;
  std::u32string points;
  while (!rest.empty()) {
    points.push_back(take_code_point(rest));
    append_code_point(back, points.back());
  }
  CHECK(points == U"aä€\U0001F525");
  CHECK(back == text);
  CHECK(count_code_points(text) == 4);
}

TEST_CASE("walking over broken bytes ends and shows the replacement sign") {
  CHECK(count_code_points("\xFF\xC3") == 2);
  std::string_view rest = "\xC3";
  CHECK(take_code_point(rest) == 0xFFFD);
  std::string out;
  append_code_point(out, 0xD800);
  append_code_point(out, 0x110000);
  CHECK(out == "\xEF\xBF\xBD\xEF\xBF\xBD");
}

TEST_CASE("a text is cut between code points") {
  CHECK(first_code_points("Härte", 2) == "Hä");
  CHECK(first_code_points("Härte", 9) == "Härte");
  CHECK(first_code_points("Härte", 0).empty());
}

TEST_CASE("capitals become small letters and marks stay") {
  CHECK(lower_case("ÄÖÜ ẞ ŁÓDŹ ΩΜΈΓΑ БУЛАТ Ё 刃") == "äöü ß łódź ωμέγα булат ё 刃");
  CHECK(lower_case("İ") == "i");
}

TEST_CASE("a find is insensitive to case and marks") {
  CHECK(folded("Ä") == "a");
  CHECK(folded("HÄRTE") == folded("harte"));
  CHECK(folded("Śruba Łódź") == "sruba lodz");
  CHECK(folded("Straße ÆØÅ Þing œuvre") == "strasse aeoa thing oeuvre");
  CHECK(folded("Ωμέγα Σπαθίς") == "ωμεγα σπαθισ");
  CHECK(folded("Ёлка Й") == "елка и");
  CHECK(folded("Hứa") == "hua");
  CHECK(folded("a\xCC\x88") == "a");
  CHECK(folded("1\xE2\x80\xAF"
               "290\xC2\xA0"
               "EUR") == "1 290 eur");
  CHECK(folded("刃物 65HRC") == "刃物 65hrc");
}

TEST_CASE("a find in folded text points at the original") {
  const std::string text = "Größe Damaszener";
  const FoldedText found = folded_with_origin(text);
  CHECK(found.text == "grosse damaszener");
  REQUIRE(found.origin.size() == found.text.size() + 1);
  CHECK(found.origin[found.text.find("damas")] == text.find("Damas"));
  CHECK(found.origin[found.text.find("osse")] == text.find("ö"));
  CHECK(found.origin.back() == text.size());
}
