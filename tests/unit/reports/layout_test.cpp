// SPDX-License-Identifier: MIT
#include "reports/layout.h"

#include <catch2/catch.hpp>

#include "reports/page_text.h"
#include "reports/paragraph.h"
#include "reports/qr.h"
#include "reports/table.h"
#include "reports/type.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

std::string text_of(const SetLine& line) {
  std::string text;
  for (const TextRun& run : line.runs) text += run.text;
  return text;
}

std::vector<std::string> lines_of(const std::string& text, Points width) {
  std::vector<std::string> lines;
  for (const SetLine& line : broken_lines(fonts(), {{text, serif(10), ink}}, width)) {
    CHECK(line.width <= width + 1e-6);
    lines.push_back(text_of(line));
  }
  return lines;
}

Points x_of(const Flow& flow, const std::string& text) {
  for (const Block& block : flow) {
    for (const Element& e : block.elements) {
      const auto* run = std::get_if<TextRun>(&e);
      if (run && run->text == text) return run->baseline.x;
    }
  }
  FAIL("no such text: " << text);
  return 0;
}

}  // namespace

TEST_CASE("a paragraph breaks at spaces and keeps every word") {
  const auto lines = lines_of("Hardened in fast oil, tempered twice, cold between.", 90);
  CHECK(lines.size() > 2);
  std::string all;
  for (const std::string& line : lines) all += (all.empty() ? "" : " ") + line;
  CHECK(all == "Hardened in fast oil, tempered twice, cold between.");
}

TEST_CASE("a word wider than the column is broken between characters, not lost") {
  const auto lines = lines_of("Κωνσταντινουπολίτισσα", 40);
  CHECK(lines.size() > 1);
  std::string all;
  for (const std::string& line : lines) all += line;
  CHECK(all == "Κωνσταντινουπολίτισσα");
}

TEST_CASE("a no-break space holds figure and unit together") {
  for (const std::string& line : lines_of("a long soak at 805\u00A0°C and then the oil", 75)) {
    CHECK((line.find("805") == std::string::npos) == (line.find("°C") == std::string::npos));
  }
}

TEST_CASE("a figure stays with its unit, hours with minutes, an element with its share") {
  for (const char* text : {"Held for 2 h 06 min. in the kiln", "Hardness 61.5 HRC at the edge",
                           "Analysis of C 0.85, Mn 0.71, and more", "Read 815 °C, as recorded"})
    for (Points width = 60; width < 160; width += 3)
      for (const std::string& line : lines_of(text, width))
        for (const char* lost : {"2", "2 h", "2 h 06", "61.5", "C", "Mn", "815"}) {
          INFO(text << " at " << width);
          CHECK_FALSE(line.ends_with(std::string(" ") + lost));
        }
}

TEST_CASE("a last line of one short word takes the word before along") {
  for (Points width = 80; width < 200; width += 3) {
    const auto lines = lines_of("Read off the display of the kiln, and noted in the log.", width);
    INFO(width);
    CHECK(lines.back() != "log.");
  }
  CHECK(lines_of("Unaffordable Konstantinopolitan", 110).back() == "Konstantinopolitan");
}

TEST_CASE("a line end in the text ends the line, and an empty text is one empty line") {
  CHECK(lines_of("one\ntwo", 200) == std::vector<std::string>{"one", "two"});
  CHECK(lines_of("one\n\ntwo", 200) == std::vector<std::string>{"one", "", "two"});
  CHECK(lines_of("", 200) == std::vector<std::string>{""});
}

TEST_CASE("figures of a decimal column stand with their points in line") {
  Table table;
  table.columns = {{"", ColumnAlign::decimal, 0, false}};
  for (const char* figure : {"0.85", "12.011", "7"})
    table.rows.push_back({{cell(figure, sans(8))}});
  const Flow flow = table_flow(fonts(), table, 100);
  const Points digit = fonts().width("0", sans(8));
  CHECK(x_of(flow, "0.85") == Approx(x_of(flow, "12.011") + digit));
  CHECK(x_of(flow, "7") == Approx(x_of(flow, "0.85")));
}

TEST_CASE("columns that want too much are cut from the widest until the table fits") {
  CHECK(width_cap({10, 50, 90}, 110) == Approx(50));
  CHECK(width_cap({10, 10}, 100) >= 10);
  Table table;
  table.columns = {{"a", ColumnAlign::left, 0, true}, {"b", ColumnAlign::left, 0, false}};
  table.rows.push_back({{cell(std::string(300, 'x'), sans(8)), cell("short", sans(8))}});
  for (const Block& block : table_flow(fonts(), table, 120)) {
    for (const Element& e : block.elements) CHECK(cover(e).right() <= 120 + 1e-6);
  }
}

TEST_CASE("a cell with more text than a page has room goes on over the next page") {
  Table table;
  table.columns = {{"Note", ColumnAlign::left, 60, false}};
  std::string words;
  for (int i = 0; i < 600; ++i) words += "word" + std::to_string(i) + " ";
  table.rows.push_back({{cell(words, sans(9))}});
  Document document;
  Pour pour(full_sheet(Paper::a4, 40, 40, 40), document, nullptr);
  pour.add(table_flow(fonts(), table, 60));
  CHECK(document.pages.size() > 3);
  const std::string said = words_of(document);
  CHECK_THAT(said, Catch::Contains("word0") && Catch::Contains("word599"));
}

TEST_CASE("a block higher than a page is cut between its lines and loses none") {
  Flow lines;
  for (int i = 0; i < 200; ++i) {
    append(lines, paragraph(fonts(), {{"line " + std::to_string(i), sans(9), ink}}, 200, 11));
  }
  Document document;
  Pour pour(full_sheet(Paper::a4, 40, 40, 40), document, nullptr);
  pour.add({glued(lines)});
  CHECK(document.pages.size() > 1);
  const std::string said = words_of(document);
  for (int i = 0; i < 200; ++i) {
    CHECK_THAT(said, Catch::Contains("line " + std::to_string(i) + "\n"));
  }
}

TEST_CASE("a heading never stands alone at the foot of a page") {
  Document document;
  Pour pour(full_sheet(Paper::a4, 40, 40, 40), document, nullptr);
  pour.space(0);
  pour.add({blank(pour.room() - 20)});
  Block heading = blank(15);
  heading.keep_with_next = true;
  pour.add({heading, blank(15)});
  CHECK(document.pages.size() == 2);
  CHECK(pour.y() == Approx(40 + 30));
}

TEST_CASE("columns side by side go on over their own column of the next page") {
  Flow longer;
  for (int i = 0; i < 100; ++i) longer.push_back(blank(11));
  Document document;
  Pour pour(full_sheet(Paper::a4, 40, 40, 40), document, nullptr);
  pour.add_side_by_side({{longer, 0, 100}, {{blank(30)}, 200, 100}});
  CHECK(document.pages.size() == 2);
  const double lines_on_second = 100 - std::floor((841.89 - 80) / 11);
  CHECK(pour.y() == Approx(40 + 11 * lines_on_second));
}

TEST_CASE("a QR code holds plain ASCII only") {
  CHECK(qr_modules("TANGMARK:214", "code").ok());
  CHECK(!qr_modules("", "code"));
  CHECK(!qr_modules("Клинок", "code"));
  CHECK(!qr_modules(std::string(4000, 'x'), "code"));
}

}  // namespace tangmark::reports::samples
