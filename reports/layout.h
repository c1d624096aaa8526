// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "reports/block.h"
#include "reports/font_book.h"
#include "reports/page.h"

namespace tangmark::reports {

/// The outside of a page and what stays free around the text.
struct Sheet {
  Points width = 0;
  Points height = 0;
  Points left = 0;
  Points right = 0;
  Points top = 0;
  Points bottom = 0;
  Points text_width() const { return width - left - right; }
  Points floor() const { return height - bottom; }
};

/// A4 is 210 mm by 297 mm (ISO 216), Letter 8.5 in by 11 in (ANSI/ASME Y14.1).
Sheet full_sheet(Paper paper, Points side, Points top, Points bottom);
/// A5, or half a Letter.
Sheet half_sheet(Paper paper, Points side, Points top, Points bottom);

/// One column of several that stand side by side.
struct SideColumn {
  Flow flow;
  Points x = 0;  ///< from the left margin
  Points width = 0;
};

/// Pours flows onto pages, from top to bottom. A block that does not fit goes to the next page,
/// with the blocks it must stay with; a row of a table takes its head along. A block higher than a
/// whole page is cut between lines of its text.
class Pour {
 public:
  /// Draws what stands at the head of every page after the first and answers how much room it took.
  using Continued = std::function<Points(Page&, std::size_t index)>;

  Pour(const Sheet& sheet, Document& document, Continued continued);

  /// One column over the whole width.
  void add(const Flow& flow);
  /// Columns side by side, each going on over its own column of the next page; what follows starts
  /// below the lowest.
  void add_side_by_side(const std::vector<SideColumn>& columns);
  /// Leaves room, unless at the head of a page.
  void space(Points height);
  /// A line across.
  void rule(Points width, Grey grey);
  /// Makes sure that this much room is left on the page.
  void need(Points height);
  void new_page();

  Points y() const { return y_; }
  Points room() const { return sheet_.floor() - y_; }
  bool at_head() const { return at_head_; }
  Page& page() { return document_.pages[page_]; }
  std::size_t page_index() const { return page_; }
  const Sheet& sheet() const { return sheet_; }
  /// Puts a block at a place of the present page, outside the flow.
  void put_at(const Block& block, Points x, Points y);

 private:
  struct Spot {
    std::size_t page;
    Points y;
    bool at_head;
  };
  Spot spot() const { return {page_, y_, at_head_}; }
  void go_to(Spot spot);
  void pour(const Flow& flow, Points x);
  void put(const Block& block, Points x);
  Points together(const Flow& flow, std::size_t first) const;

  Sheet sheet_;
  Document& document_;
  Continued continued_;
  std::vector<Points> page_tops_;
  std::size_t page_ = 0;
  Points y_ = 0;
  bool at_head_ = true;
};

}  // namespace tangmark::reports
