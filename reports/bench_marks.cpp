// SPDX-License-Identifier: MIT
#include "reports/bench_marks.h"

#include <algorithm>

#include "reports/paragraph.h"
#include "reports/table.h"

namespace tangmark::reports {

std::vector<Element> tick_box(Place corner, Points side, Tick tick) {
  std::vector<Element> elements{
      Rectangle{{corner.x, corner.y, side, side}, {true, 0.9, ink, false, paper_white}}};
  if (tick == Tick::done) {
    elements.push_back(Polyline{{{corner.x + side * 0.2, corner.y + side * 0.55},
                                 {corner.x + side * 0.42, corner.y + side * 0.78},
                                 {corner.x + side * 0.82, corner.y + side * 0.2}},
                                1.4,
                                ink,
                                0});
  }
  return elements;
}

Block pencil_fields(const FontBook& fonts, const std::vector<PencilField>& fields, Points width,
                    const Font& font) {
  constexpr Points row = 20;
  constexpr Points gap = 9;
  Block block = blank(fields.empty() ? 0 : row);
  Points x = 0;
  for (const PencilField& field : fields) {
    TextRun name = fitted_run(fonts, {0, 0}, field.name, font, width - field.line - 3, 5);
    name.grey = second_ink;
    const Points taken = name.width + 3 + field.line;
    if (x > 0 && x + taken > width) {
      x = 0;
      block.height += row;
    }
    const Points y = block.height - 5;
    block.elements.push_back(moved(name, x, y));
    const Points start = x + name.width + 3;
    block.elements.push_back(Line{{start, y + 1.5}, {start + field.line, y + 1.5}, 0.6, ink, 0});
    x += taken + gap;
  }
  return block;
}

Flow caution_flow(const FontBook& fonts, const TypeScale& type,
                  const std::vector<std::string>& cautions, Points width) {
  constexpr Points bar = 3;
  constexpr Points indent = 10;
  Flow flow;
  for (const std::string& caution : cautions) {
    for (Block& line :
         paragraph(fonts, {{caution, type.text, ink}}, width - indent, type.leading)) {
      for (Element& e : line.elements) e = moved(e, indent, 0);
      line.elements.push_back(Rectangle{{0, 0, bar, line.height}, {false, 0, ink, true, ink}});
      flow.push_back(std::move(line));
    }
  }
  return flow;
}

Flow fact_flow(const FontBook& fonts, const TypeScale& type,
               const std::vector<std::pair<std::string, std::string>>& facts, Points width,
               int columns) {
  Table table;
  table.leading = type.leading;
  table.row_space = 0;
  table.gap = 8;
  for (int c = 0; c < columns; ++c) {
    table.columns.push_back({"", ColumnAlign::left, 0, false});
    table.columns.push_back({"", ColumnAlign::left, 0, true});
  }
  Row row;
  for (const auto& [name, says] : facts) {
    row.cells.push_back(cell(name, type.note, second_ink));
    row.cells.push_back(cell(says, type.table_bold));
    if (row.cells.size() == table.columns.size()) {
      table.rows.push_back(std::move(row));
      row = {};
    }
  }
  if (!row.cells.empty()) table.rows.push_back(std::move(row));
  for (Row& each : table.rows) each.rule_below = 0;
  return table_flow(fonts, table, width);
}

std::string window_text(const Temperature& low, const Temperature& high, TemperatureUnit unit) {
  return figure(low, unit) + "–" + to_text(high, unit);
}

}  // namespace tangmark::reports
