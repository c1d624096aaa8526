// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "gui/desk/offer.h"

namespace tangmark::desk {

/// One fact: what, how much, its unit in grey, and a note. All already formatted.
struct Fact {
  std::string label;
  std::string value;
  std::string unit;
  std::string note;
};

enum class Align { left, right };

struct Column {
  std::string title;
  Align align = Align::left;
};

/// One row of a table. A row that leads somewhere carries the deed.
struct TableRow {
  std::vector<std::string> cells;
  bool strong = false;
  std::vector<Offer> offers;
};

struct Table {
  std::vector<Column> columns;
  std::vector<TableRow> rows;
};

/// A part of a sheet under one heading. Empty parts are not shown.
struct Section {
  std::string title;
  std::vector<std::string> paragraphs;
  std::vector<Fact> facts;
  Table table;
  std::vector<Offer> offers;
  bool proposed = false;  ///< a proposal, framed in the accent
};

/// What is known of the thing selected, beside the list.
struct Sheet {
  std::string title;
  std::string under;
  std::vector<Section> sections;
};

/// The whole sheet as plain text, for readers of the screen and for tests.
std::string as_text(const Sheet& sheet);

}  // namespace tangmark::desk
