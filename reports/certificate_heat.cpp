// SPDX-License-Identifier: MIT
#include <algorithm>

#include "reports/certificate_parts.h"
#include "reports/curve_chart.h"
#include "reports/paragraph.h"
#include "reports/table.h"

namespace tangmark::reports {

namespace {}  // namespace

bool heats_across(const BuildCertificate& c) {
  constexpr std::size_t most_in_a_column = 12;
  return c.heat.size() > most_in_a_column;
}

Flow heat_part(const CertificateSetting& set, const BuildCertificate& c, Spread spread,
               Points width) {
  Flow flow = part_heading(set, "Heat treatment", width);
  append(flow, heat_table(set, c, {0, c.heat.size(), spread}, width));
  append(flow, heat_note_part(set, c, width));
  return flow;
}

Flow heat_table(const CertificateSetting& set, const BuildCertificate& c, const HeatLines& lines,
                Points width) {
  if (c.heat.empty()) return text_flow(set, {{"Not recorded.", set.type.text, ink}}, width);
  Table table;
  table.head_font = set.type.note;
  table.leading = set.type.leading;
  table.row_space = lines.spread == Spread::one_page ? 3.3 : set.type.half();
  const bool fahrenheit = set.look.temperature == TemperatureUnit::fahrenheit;
  table.columns = {{"Step", ColumnAlign::left, 0, true},
                   {fahrenheit ? "°F" : "°C", ColumnAlign::right, 0, false},
                   {"Time", ColumnAlign::right, 0, false},
                   {"Evidence", ColumnAlign::right, 0, false}};
  for (std::size_t i = lines.first; i < lines.end; ++i) {
    const HeatLine& line = c.heat[i];
    std::string degrees;
    for (const Temperature t : line.temperatures) {
      degrees += (degrees.empty() ? "" : line.range ? "–" : ", ") + figure(t, set.look.temperature);
    }
    table.rows.push_back(
        {{cell(line.step, set.type.table), cell(degrees, set.type.table),
          cell(line.time, set.type.table), cell(line.evidence, set.type.table_bold)},
         false,
         0.5,
         rule_grey,
         0});
  }
  return table_flow(set.fonts, table, width);
}

Flow heat_note_part(const CertificateSetting& set, const BuildCertificate& c, Points width) {
  std::string words = c.heat_note;
  if (c.recorded.empty())
    words += (words.empty() ? "" : " ") + std::string("No temperature record is on file.");
  if (words.empty()) return {};
  Flow note = text_flow(set, {{words, set.type.table, ink}}, width);
  note.front().space_before = 3;
  return note;
}

// Records beside each other, further ones below.
Flow records_part(const CertificateSetting& set, const BuildCertificate& c, Points width,
                  const ChartRows& rows) {
  std::string head = "As recorded";
  if (!c.recorded.empty() && !c.recorded.front().points.empty()) {
    const Instant first = c.recorded.front().points.front().at;
    head += ", " + to_text(set.look.zone.date_of(first)).substr(4);
  }
  Flow flow = part_heading(set, head, width);
  const Points gap = 10;
  const auto columns = static_cast<double>(rows.across);
  const Points each = (width - gap * (columns - 1)) / columns;
  for (std::size_t i = 0; i < c.recorded.size(); i += rows.across) {
    Block row = blank(0);
    for (std::size_t k = i; k < std::min(i + rows.across, c.recorded.size()); ++k) {
      const Block chart = curve_chart(set.fonts, c.recorded[k], CurveKind::recorded, set.look,
                                      {each, rows.height, 7});
      const Points x = static_cast<double>(k - i) * (each + gap);
      const std::string words = "Temperature record: " + c.recorded[k].title;
      put_into(row, marked(chart, Role::figure, words), x, 0);
      row.height = std::max(row.height, chart.height);
    }
    flow.push_back(std::move(row));
  }
  return flow;
}

}  // namespace tangmark::reports
