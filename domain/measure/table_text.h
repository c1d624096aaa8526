// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"

namespace tangmark {

/// One record of a comma separated table, with the line its first cell stands on (from 1; a quoted
/// cell may hold line breaks, so records and lines do not count alike).
struct TableRow {
  std::size_t line = 0;
  std::vector<std::string> cells;
  friend bool operator==(const TableRow&, const TableRow&) = default;
};

/// Reads a comma separated table record by record, so that a kiln record of a million samples needs
/// no second copy of itself. Source: RFC 4180, section 2. Beyond it, lines may end in LF as well as
/// CRLF, a byte order mark is passed over, empty lines at the very end are passed over, and the
/// separator may be another character.
///
/// Refuses, naming the line: text that is not UTF-8, a NUL byte, a quotation mark inside an
/// unquoted cell or words behind a closing one, a quotation that never ends, a record with more or
/// fewer cells than the first, and a text without any record.
///
///     TableReader reader(text, "kiln record");
///     TableRow row;
///     while (reader.next(row)) use(row);
///     if (reader.refused()) return reader.problem();
class TableReader {
 public:
  /// `what` names the table in problems ("kiln record, line 14"). text must outlive the reader.
  TableReader(std::string_view text, std::string_view what, char separator = ',');
  /// The next record into row, whose cells are reused. False at the end and after a problem.
  bool next(TableRow& row);
  bool refused() const { return refused_; }
  /// The reason for a refusal. Asking for it without one is a mistake in the program.
  const Problem& problem() const;

 private:
  bool refuse(std::size_t line, std::string sentence, std::string remedy);
  bool read_cell(std::string& cell);
  bool read_quoted(std::string& cell);
  void read_plain(std::string& cell);
  bool check_cell_end();
  bool at_line_end() const;
  void take_line_end();
  bool only_line_ends_follow() const;

  std::string_view text_;
  std::string what_;
  char separator_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
  std::size_t columns_ = 0;  // 0 until the first record
  bool refused_ = false;
  Problem problem_;
};

/// All records of a table, the head first. Refusals as for TableReader.
Outcome<std::vector<TableRow>> read_table(std::string_view text, std::string_view what,
                                          char separator = ',');

/// A record as text with its CRLF. A cell is quoted when it holds the separator, a quotation mark,
/// a line break, or a space at an end; a record of one empty cell is quoted so that it is no empty
/// line. Source: RFC 4180, section 2.
std::string to_table_line(const std::vector<std::string>& cells, char separator = ',');
/// Whole table, without a byte order mark.
std::string to_table_text(const std::vector<std::vector<std::string>>& records,
                          char separator = ',');

}  // namespace tangmark
