// SPDX-License-Identifier: MIT
#include "reports/desk_report.h"

#include "reports/curve_chart.h"
#include "reports/layout.h"
#include "reports/letter.h"
#include "reports/paragraph.h"
#include "reports/table.h"
#include "reports/text_check.h"

namespace tangmark::reports {
namespace {

constexpr Points chart_height = 210;
constexpr Points small_chart_height = 130;

Problems problems_of(const DeskReport& report, const FontBook& fonts) {
  TextCheck check(fonts);
  check.text(report.shop, "name of the shop");
  check.needed(report.title, "title");
  check.text(report.under, "what it is about");
  check.texts(report.sentences, "sentence");
  check.texts(report.heads, "head of a column");
  for (const auto& row : report.rows) check.texts(row, "cell");
  for (const Curve& curve : report.curves) check.text(curve.title, "name of a curve");
  return check.problems();
}

Flow figures(const DeskReport& report, const FontBook& fonts, Points width) {
  constexpr TypeScale type = certificate_type();
  Table table;
  table.head_font = type.table_bold;
  for (const std::string& head : report.heads) table.columns.push_back({head});
  table.columns.back().stretches = true;
  for (const auto& row : report.rows) {
    Row cells;
    for (const std::string& text : row) cells.cells.push_back(cell(text, type.table));
    table.rows.push_back(std::move(cells));
  }
  return table_flow(fonts, table, width);
}

}  // namespace

Outcome<Document> desk_report_document(const DeskReport& report, const Look& look,
                                       const FontBook& fonts) {
  Problems problems = problems_of(report, fonts);
  if (!problems.empty()) return problems;
  constexpr TypeScale type = letter_type();
  Document document{look.paper,     report.title, report.shop, report.under,
                    report.printed, {},           {},          {}};
  Pour pour(full_sheet(look.paper, 45, 40, 52), document, nullptr);
  const Points width = pour.sheet().text_width();
  pour.add(paragraph(fonts, {{report.title, type.title, ink}}, width, 28));
  pour.add(paragraph(fonts, {{report.under, type.text, second_ink}}, width, type.leading));
  pour.space(type.half());
  pour.rule(1.2, ink);
  pour.space(type.half());
  for (std::size_t i = 0; i < report.curves.size(); ++i) {
    pour.add({curve_chart(fonts, report.curves[i], CurveKind::recorded, look,
                          {width, i == 0 ? chart_height : small_chart_height, 8})});
    pour.space(type.half());
  }
  for (const Scatter& plot : report.plots) {
    pour.add({scatter_chart(fonts, plot, {width, chart_height, 8})});
    pour.space(type.half());
  }
  for (const std::string& sentence : report.sentences) {
    pour.add(paragraph(fonts, {{sentence, type.text, ink}}, width, type.leading));
    pour.space(type.half() / 2);
  }
  pour.space(type.half());
  if (!report.heads.empty() && !report.rows.empty()) pour.add(figures(report, fonts, width));
  add_feet(document, fonts, pour.sheet(), type.note,
           (report.shop.empty() ? "" : report.shop + ". ") + report.title + ". Printed " +
               to_text(report.printed, look.zone) + ".");
  return document;
}

}  // namespace tangmark::reports
