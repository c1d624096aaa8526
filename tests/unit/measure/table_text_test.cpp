// SPDX-License-Identifier: MIT
#include "domain/measure/table_text.h"

#include "tests/unit/measure/refusal.h"

using namespace tangmark;
using Cells = std::vector<std::string>;

namespace {

struct Refused {
  std::string text;
  const char* field;
  const char* word;
};

}  // namespace

TEST_CASE("a byte order mark, LF endings and empty last lines are read") {
  const auto rows = read_table("\xEF\xBB\xBFtime,temp\n07:51,802\n\n\n", "kiln record");
  REQUIRE(rows.ok());
  REQUIRE(rows->size() == 2);
  CHECK((*rows)[0] == TableRow{1, {"time", "temp"}});
  CHECK((*rows)[1] == TableRow{2, {"07:51", "802"}});
}

TEST_CASE("a quoted cell may hold line breaks, and later rows keep their true line") {
  const auto rows = read_table("a,b\r\n\"one\r\ntwo\",x\r\nthree,y", "notes");
  REQUIRE(rows.ok());
  CHECK((*rows)[1] == TableRow{2, {"one\r\ntwo", "x"}});
  CHECK((*rows)[2] == TableRow{4, {"three", "y"}});
}

TEST_CASE("another separator is read and written") {
  const auto rows = read_table("a;b\n1,5;2\n", "record", ';');
  REQUIRE(rows.ok());
  CHECK((*rows)[1].cells == Cells{"1,5", "2"});
  CHECK(to_table_line({"1,5", "a;b"}, ';') == "1,5;\"a;b\"\r\n");
}

TEST_CASE("a damaged table is refused and the line is named") {
  const auto row = GENERATE(values<Refused>({
      {"", "record, line 1", "empty"},
      {"\r\n\r\n", "record, line 1", "empty"},
      {"\xEF\xBB\xBF", "record, line 1", "empty"},
      {"a,b\n1\n", "record, line 2", "1 cell where the first has 2"},
      {"a,b\n1,2,3\n", "record, line 2", "3 cells where the first has 2"},
      {"a,b\n\n1,2\n", "record, line 2", "1 cell where"},
      {"a,b\n1,2\n\"x\n,3\n", "record, line 3", "none closes it"},
      {"a,b\n1,\"2\"x\n", "record, line 2", "behind the closing"},
      {"a,b\n1,2\"\n", "record, line 2", "inside a cell"},
      {"a,b\n1, \"2\"\n", "record, line 2", "inside a cell"},
      {"a,b\n1,2\rx\n", "record, line 2", "carriage return"},
      {"a,b\n1,H\xE4rte\n", "record, line 2", "not UTF-8"},
      {std::string("a,b\n1,2\n\0,3\n", 12), "record, line 3", "zero byte"},
      {"\xFF\xFE"
       "a",
       "record, line 1", "not UTF-8"},
  }));
  CAPTURE(row.text);
  check_refused(read_table(row.text, "record"), row.field, row.word);
}

TEST_CASE("a table is read record by record up to the fault") {
  TableReader reader("a,b\n1,2\n3\n", "record");
  TableRow row;
  CHECK(reader.next(row));
  CHECK(reader.next(row));
  CHECK(row.cells == Cells{"1", "2"});
  CHECK_FALSE(reader.next(row));
  CHECK(reader.refused());
  CHECK_FALSE(reader.next(row));
}

TEST_CASE("whatever is written is read back the same") {
  const std::vector<Cells> records = {
      {"plain", "with, comma", "with \"marks\""},
      {"", " space ", "two\nlines"},
      {"\r", "Härte 60 HRC", "=1+1"},
      {"\"", ",", "\"\"\r\n"},
  };
  const auto rows = read_table(to_table_text(records), "export");
  REQUIRE(rows.ok());
  REQUIRE(rows->size() == records.size());
  for (std::size_t i = 0; i < records.size(); ++i) CHECK((*rows)[i].cells == records[i]);
}

TEST_CASE("a table of one column keeps its empty cells") {
  const auto rows = read_table(to_table_text({{"note"}, {""}, {""}}), "export");
  REQUIRE(rows.ok());
  CHECK(rows->size() == 3);
}
