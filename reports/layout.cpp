// SPDX-License-Identifier: MIT
#include "reports/layout.h"

#include <algorithm>

namespace tangmark::reports {

namespace {

constexpr Points hair = 1e-6;

// Where a block that is higher than a page may be cut: the greatest height up to `most` at which no
// line of text is cut through. Only text of great length makes such blocks.
Points cut_height(const Block& block, Points from, Points most) {
  Points cut = from + most;
  for (bool moved_up = true; moved_up;) {
    moved_up = false;
    for (const Element& e : block.elements) {
      const Box box = cover(e);
      const bool through = box.y < cut - hair && box.bottom() > cut + hair;
      if (!through || !std::holds_alternative<TextRun>(e) || box.y <= from + hair) continue;
      cut = box.y;
      moved_up = true;
    }
  }
  return cut;
}

// The block cut into pieces of at most this height.
Flow sliced(const Block& block, Points most) {
  Flow pieces;
  for (Points from = 0; from < block.height - hair;) {
    const bool rest = block.height - from <= most;
    const Points to = rest ? block.height : cut_height(block, from, most);
    Block piece = blank(to - from);
    for (const Element& e : block.elements) {
      const Points top = cover(e).y;
      const bool first = from == 0 && top < to;
      if (first || (top >= from - hair && (rest || top < to - hair))) {
        piece.elements.push_back(moved(e, 0, -from));
      }
    }
    pieces.push_back(std::move(piece));
    from = to;
  }
  return pieces;
}

}  // namespace

Sheet full_sheet(Paper paper, Points side, Points top, Points bottom) {
  if (paper == Paper::letter) return {612, 792, side, side, top, bottom};
  return {595.28, 841.89, side, side, top, bottom};
}

Sheet half_sheet(Paper paper, Points side, Points top, Points bottom) {
  if (paper == Paper::letter) return {396, 612, side, side, top, bottom};
  return {419.53, 595.28, side, side, top, bottom};
}

Pour::Pour(const Sheet& sheet, Document& document, Continued continued)
    : sheet_(sheet), document_(document), continued_(std::move(continued)) {
  document_.pages.push_back({sheet_.width, sheet_.height, {}, {}});
  page_ = document_.pages.size() - 1;
  y_ = sheet_.top;
  page_tops_.assign(document_.pages.size(), sheet_.top);
}

void Pour::go_to(Spot spot) {
  page_ = spot.page;
  y_ = spot.y;
  at_head_ = spot.at_head;
}

void Pour::new_page() {
  if (page_ + 1 == document_.pages.size()) {
    document_.pages.push_back({sheet_.width, sheet_.height, {}, {}});
    const Points head = continued_ ? continued_(document_.pages.back(), page_ + 1) : 0;
    page_tops_.push_back(sheet_.top + head);
  }
  go_to({page_ + 1, page_tops_[page_ + 1], true});
}

void Pour::need(Points height) {
  if (!at_head_ && height > room() + hair) new_page();
}

void Pour::space(Points height) {
  if (!at_head_) y_ += height;
}

void Pour::rule(Points width, Grey grey) {
  page().elements.push_back(
      Line{{sheet_.left, y_}, {sheet_.left + sheet_.text_width(), y_}, width, grey, 0});
  at_head_ = false;
}

void Pour::put_at(const Block& block, Points x, Points y) {
  const std::size_t before = page().elements.size();
  for (const Element& e : block.elements) page().elements.push_back(moved(e, x, y));
  for (Mark mark : block.marks) {
    mark.first += before;
    page().marks.push_back(std::move(mark));
  }
  if (!block.outline.empty()) document_.outline.push_back({block.outline, page_, y});
}

void Pour::put(const Block& block, Points x) {
  put_at(block, x, y_);
  y_ += block.height;
  at_head_ = false;
}

// The height of a block with all blocks that must follow it on the same page.
Points Pour::together(const Flow& flow, std::size_t first) const {
  Points sum = flow[first].height;
  for (std::size_t i = first; flow[i].keep_with_next && i + 1 < flow.size(); ++i) {
    sum += flow[i + 1].space_before + flow[i + 1].height;
  }
  return sum;
}

void Pour::pour(const Flow& flow, Points x) {
  const Points whole_page = sheet_.floor() - page_tops_.back();
  for (std::size_t i = 0; i < flow.size(); ++i) {
    const Block& block = flow[i];
    if (!at_head_) {
      const Points kept = together(flow, i);
      const Points wanted = kept > whole_page / 2 ? block.height : kept;
      if (block.space_before + wanted > room() + hair) {
        new_page();
        if (block.repeated_head) put(marked(*block.repeated_head, Role::decoration), x);
      } else {
        y_ += block.space_before;
      }
    }
    if (block.height > whole_page) {
      pour(sliced(block, whole_page / 2), x);
    } else {
      put(block, x);
    }
  }
}

void Pour::add(const Flow& flow) {
  pour(flow, sheet_.left);
}

void Pour::add_side_by_side(const std::vector<SideColumn>& columns) {
  const Spot start = spot();
  Spot lowest = start;
  for (const SideColumn& column : columns) {
    go_to(start);
    pour(column.flow, sheet_.left + column.x);
    if (page_ > lowest.page || (page_ == lowest.page && y_ > lowest.y)) lowest = spot();
  }
  go_to(lowest);
}

}  // namespace tangmark::reports
