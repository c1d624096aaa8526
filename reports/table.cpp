// SPDX-License-Identifier: MIT
#include "reports/table.h"

#include <algorithm>
#include <memory>
#include <numeric>

namespace tangmark::reports {

Points width_cap(const std::vector<Points>& widths, Points room) {
  Points low = 0;
  Points high = std::max(room, 0.0);
  for (int i = 0; i < 40; ++i) {
    const Points cap = (low + high) / 2;
    Points sum = 0;
    for (const Points width : widths) sum += std::min(width, cap);
    (sum <= room ? low : high) = cap;
  }
  return low;
}

namespace {

// A cell with more lines goes on in a further block, so that any text fits on some page.
constexpr std::size_t most_lines = 16;

// Where each column stands, and how far its decimal figures reach right of the point.
struct Measured {
  Points x = 0;
  Points width = 0;
  Points after_point = 0;
};

std::string plain(const Cell& cell) {
  std::string text;
  for (const Span& span : cell.spans) text += span.text;
  return text;
}

std::size_t point_of(const std::string& text) {
  return std::min(text.find('.'), text.size());
}

class TableSetter {
 public:
  TableSetter(const FontBook& fonts, const Table& table, Points width)
      : fonts_(fonts), table_(table), width_(width) {
    measure();
  }

  Flow set() const {
    Flow flow;
    const auto head = head_block();
    if (head) {
      flow.push_back(*head);
      flow.back().keep_with_next = true;
      for (Mark& mark : flow.back().marks) mark.role = Role::head_cell;
    }
    for (const Row& row : table_.rows) {
      for (Block& block : row_blocks(row)) {
        block.repeated_head = head;
        flow.push_back(std::move(block));
      }
    }
    if (!flow.empty() && !flow.front().marks.empty()) flow.front().marks.front().opens_table = true;
    return flow;
  }

 private:
  Points natural(const Cell& cell) const {
    Points widest = 0;
    for (const SetLine& line : broken_lines(fonts_, cell.spans, 1e6)) {
      widest = std::max(widest, line.width);
    }
    return widest;
  }

  Points head_width(const Column& column) const {
    return fonts_.width(column.head, table_.head_font);
  }

  // A decimal cell needs room for the longest whole part and the longest fraction.
  Points decimal_width(std::size_t c, Points& after) const {
    Points before = 0;
    for (const Row& row : table_.rows) {
      if (c >= row.cells.size() || row.cells[c].spans.empty()) continue;
      const std::string text = plain(row.cells[c]);
      const Font& font = row.cells[c].spans.front().font;
      before = std::max(before, fonts_.width(text.substr(0, point_of(text)), font));
      after = std::max(after, fonts_.width(text.substr(point_of(text)), font));
    }
    return before + after;
  }

  void measure() {
    Points taken = table_.gap * static_cast<double>(table_.columns.size() - 1);
    std::size_t stretching = 0;
    for (std::size_t c = 0; c < table_.columns.size(); ++c) {
      columns_.push_back(measure(c));
      taken += columns_.back().width;
      if (table_.columns[c].stretches) ++stretching;
    }
    spread(width_ - taken, stretching);
    Points x = 0;
    for (Measured& m : columns_) {
      m.x = x;
      x += m.width + table_.gap;
    }
  }

  Measured measure(std::size_t c) const {
    const Column& column = table_.columns[c];
    Measured m;
    if (column.width > 0) {
      m.width = column.width;
      if (column.align == ColumnAlign::decimal) decimal_width(c, m.after_point);
      return m;
    }
    m.width = head_width(column);
    if (column.align == ColumnAlign::decimal) {
      m.width = std::max(m.width, decimal_width(c, m.after_point));
      return m;
    }
    for (const Row& row : table_.rows) {
      if (c < row.cells.size()) m.width = std::max(m.width, natural(row.cells[c]));
    }
    return m;
  }

  // What is left goes to the columns that stretch. Where there is too little, the widest columns
  // without a set width give way until all fit.
  void spread(Points spare, std::size_t stretching) {
    if (spare >= 0) {
      for (std::size_t c = 0; c < columns_.size() && stretching > 0; ++c) {
        if (table_.columns[c].stretches)
          columns_[c].width += spare / static_cast<double>(stretching);
      }
      return;
    }
    std::vector<Points> elastic;
    for (std::size_t c = 0; c < columns_.size(); ++c) {
      if (table_.columns[c].width <= 0) elastic.push_back(columns_[c].width);
    }
    const Points wanted = std::accumulate(elastic.begin(), elastic.end(), 0.0);
    const Points cap = width_cap(elastic, wanted + spare);
    for (std::size_t c = 0; c < columns_.size(); ++c) {
      if (table_.columns[c].width <= 0) columns_[c].width = std::min(columns_[c].width, cap);
    }
  }

  std::shared_ptr<const Block> head_block() const {
    const bool none = std::all_of(table_.columns.begin(), table_.columns.end(),
                                  [](const Column& c) { return c.head.empty(); });
    if (none) return nullptr;
    Row row;
    for (const Column& column : table_.columns) {
      row.cells.push_back(cell(column.head, table_.head_font, table_.head_grey));
    }
    row.rule = ink;
    return std::make_shared<const Block>(row_blocks(row).front());
  }

  // One block, or several when a cell holds so much text that the row may be higher than a page.
  Flow row_blocks(const Row& row) const {
    std::vector<std::vector<SetLine>> cells;
    std::size_t most = 1;
    for (std::size_t c = 0; c < row.cells.size(); ++c) {
      cells.push_back(broken_lines(fonts_, row.cells[c].spans, columns_[c].width));
      most = std::max(most, cells.back().size());
    }
    Flow flow;
    for (std::size_t first = 0; first < most; first += most_lines) {
      const bool last = first + most_lines >= most;
      flow.push_back(row_block(row, cells, first, std::min(first + most_lines, most), last));
      flow.back().keep_with_next = last && row.keep_with_next;
    }
    return flow;
  }

  Block row_block(const Row& row, const std::vector<std::vector<SetLine>>& cells, std::size_t first,
                  std::size_t end, bool last) const {
    const Points text = static_cast<double>(end - first) * table_.leading;
    Block block = blank(std::max(text + table_.row_space, row.least_height));
    for (std::size_t c = 0; c < cells.size(); ++c) {
      Mark mark{Role::cell, block.elements.size(), 0};
      for (std::size_t l = first; l < std::min(end, cells[c].size()); ++l) {
        put_cell_line(block, row, c, cells[c], l, l - first);
      }
      mark.count = block.elements.size() - mark.first;
      mark.opens_row = c == 0;
      block.marks.push_back(std::move(mark));
    }
    if (row.rule_below > 0 && last) {
      block.elements.push_back(
          Line{{0, block.height}, {width_, block.height}, row.rule_below, row.rule, 0});
    }
    if (table_.boxed) put_uprights(block);
    return block;
  }

  void put_cell_line(Block& block, const Row& row, std::size_t c, const std::vector<SetLine>& lines,
                     std::size_t l, std::size_t place) const {
    const Points y = table_.row_space / 2 + static_cast<double>(place) * table_.leading +
                     baseline_in(table_.leading);
    const Measured& m = columns_[c];
    const ColumnAlign align = table_.columns[c].align;
    if (align == ColumnAlign::decimal && lines.size() == 1) {
      const std::string text = plain(row.cells[c]);
      const Font font = row.cells[c].spans.empty() ? Font{} : row.cells[c].spans.front().font;
      const Points after = fonts_.width(text.substr(point_of(text)), font);
      const Points edge = m.x + m.width - m.after_point + after;
      put_line(block, lines[l], edge - lines[l].width, y, lines[l].width, Align::left);
      return;
    }
    const bool right = align == ColumnAlign::right || align == ColumnAlign::decimal;
    const Align how = right                          ? Align::right
                      : align == ColumnAlign::centre ? Align::centre
                                                     : Align::left;
    put_line(block, lines[l], m.x, y, m.width, how);
  }

  void put_uprights(Block& block) const {
    for (std::size_t c = 1; c < columns_.size(); ++c) {
      const Points x = columns_[c].x - table_.gap / 2;
      block.elements.push_back(Line{{x, 0}, {x, block.height}, 0.5, rule_grey, 0});
    }
  }

  const FontBook& fonts_;
  const Table& table_;
  Points width_;
  std::vector<Measured> columns_;
};

}  // namespace

Cell cell(std::string text, const Font& font, Grey grey) {
  return {{{std::move(text), font, grey}}};
}

Flow table_flow(const FontBook& fonts, const Table& table, Points width) {
  return TableSetter(fonts, table, width).set();
}

}  // namespace tangmark::reports
