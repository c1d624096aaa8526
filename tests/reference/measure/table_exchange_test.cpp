// SPDX-License-Identifier: MIT
// Sources: the examples of RFC 4180, section 2, numbered as there; and Python's csv module in its
// strict mode as a second reader and writer.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <random>

#include "domain/measure/table_text.h"
#include "tests/reference/measure/outside_program.h"

using namespace tangmark;
using Records = std::vector<std::vector<std::string>>;

namespace {

Records read(const std::string& text) {
  const auto rows = read_table(text, "example");
  REQUIRE(rows.ok());
  Records records;
  for (const TableRow& row : *rows) records.push_back(row.cells);
  return records;
}

Records odd_records() {
  const std::vector<std::string> pieces = {"a", "\"", ",", "\r\n", "\n", " ", "ä", "", "1.5", "'"};
  std::mt19937 chance(4180);
  Records records;
  for (int r = 0; r < 200; ++r) {
    std::vector<std::string> record(4);
    for (std::string& cell : record) {
      for (auto n = chance() % 5; n > 0; --n) cell += pieces[chance() % pieces.size()];
    }
    records.push_back(record);
  }
  return records;
}

}  // namespace

TEST_CASE("the examples of RFC 4180 are read as it says and written back the same") {
  const Records two = {{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
  const std::string plain = "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n";
  CHECK(read(plain) == two);                         // 1
  CHECK(to_table_text(two) == plain);                // 1
  CHECK(read("aaa,bbb,ccc\r\nzzz,yyy,xxx") == two);  // 2
  const std::string headed = "field_name,field_name,field_name\r\n" + plain;
  CHECK(to_table_text(read(headed)) == headed);                            // 3
  CHECK(read(" aaa, bbb ,ccc\r\n") == Records{{" aaa", " bbb ", "ccc"}});  // 4: spaces are kept
  CHECK(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") == two);            // 5
  const std::string broken = "aaa,\"b\r\nbb\",ccc\r\nzzz,yyy,xxx\r\n";
  CHECK(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
        Records{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});                // 6
  CHECK(to_table_text(read(broken)) == broken);                                    // 6
  CHECK(read("\"aaa\",\"b\"\"bb\",\"ccc\"") == Records{{"aaa", "b\"bb", "ccc"}});  // 7
  const std::string marked = "aaa,\"b\"\"bb\",ccc\r\n";
  CHECK(to_table_text(read(marked)) == marked);  // 7
}

TEST_CASE("Python's csv module reads what is written, and what it writes is read") {
  if (!std::filesystem::exists("/usr/bin/python3")) {
    WARN("Python is not installed: the second opinion is not asked");
    return;
  }
  const auto folder = std::filesystem::temp_directory_path() /
                      ("tangmark_tables_" + std::to_string(std::random_device()()));
  std::filesystem::create_directory(folder);
  const Records records = odd_records();
  std::ofstream(folder / "ours.csv", std::ios::binary) << to_table_text(records);
  output_of(
      "/usr/bin/python3 -c \"import csv,sys;"
      "rows=list(csv.reader(open(sys.argv[1],newline='',encoding='utf-8'),strict=True));"
      "csv.writer(open(sys.argv[2],'w',newline='',encoding='utf-8')).writerows(rows)\" " +
      (folder / "ours.csv").string() + " " + (folder / "theirs.csv").string());
  const std::string theirs = content_of((folder / "theirs.csv").string());
  std::filesystem::remove_all(folder);
  CHECK(read(theirs) == records);
}
