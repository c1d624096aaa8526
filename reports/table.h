// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "reports/paragraph.h"

namespace tangmark::reports {

enum class ColumnAlign { left, right, decimal, centre };

/// One column. Without a width it takes what its widest cell needs, and gives way where the table
/// would be too wide; columns that stretch share what is left.
struct Column {
  std::string head;
  ColumnAlign align = ColumnAlign::left;
  Points width = 0;
  bool stretches = false;
};

/// What stands in a cell; long text is wrapped. An empty cell of a column to be filled by hand may
/// get a line to write on.
struct Cell {
  std::vector<Span> spans;
};

struct Row {
  std::vector<Cell> cells;
  bool keep_with_next = false;
  Points rule_below = 0.5;  ///< 0 for none
  Grey rule = rule_grey;
  Points least_height = 0;  ///< room for a pencil
};

struct Table {
  std::vector<Column> columns;
  std::vector<Row> rows;
  Font head_font;
  Grey head_grey = second_ink;
  Points leading = 11;
  Points row_space = 5.5;  ///< added to the text of each row, half above and half below
  Points gap = 8;          ///< between columns
  bool boxed = false;      ///< upright grey lines between columns, for cells to be filled
};

/// The greatest width at which columns that want these widths fit the room when wider ones are cut
/// down to it.
Points width_cap(const std::vector<Points>& widths, Points room);

/// A cell of one plain span.
Cell cell(std::string text, const Font& font, Grey grey = ink);

/// Sets a table: a head (left out when no column has one) and one block for each row. Each row
/// carries the head, so that it is repeated where the table breaks over a page.
Flow table_flow(const FontBook& fonts, const Table& table, Points width);

}  // namespace tangmark::reports
