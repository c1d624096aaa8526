// SPDX-License-Identifier: MIT
#include "gui/desk/sheet.h"

namespace tangmark::desk {
namespace {

void add_line(std::string& text, const std::string& line) {
  if (line.empty()) return;
  text += line;
  text += '\n';
}

std::string joined(const std::vector<std::string>& cells) {
  std::string line;
  for (const std::string& cell : cells) {
    if (!line.empty() && !cell.empty()) line += "  ";
    line += cell;
  }
  return line;
}

}  // namespace

std::string as_text(const Sheet& sheet) {
  std::string text;
  add_line(text, sheet.title);
  add_line(text, sheet.under);
  for (const Section& section : sheet.sections) {
    add_line(text, section.title);
    for (const std::string& paragraph : section.paragraphs) add_line(text, paragraph);
    for (const Fact& fact : section.facts) {
      add_line(text, joined({fact.label, fact.value, fact.unit, fact.note}));
    }
    for (const TableRow& row : section.table.rows) add_line(text, joined(row.cells));
    for (const Offer& offer : section.offers) {
      if (!offer.why_not.empty()) add_line(text, offer.label + ": " + offer.why_not);
    }
  }
  return text;
}

}  // namespace tangmark::desk
