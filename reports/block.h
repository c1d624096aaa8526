// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "reports/page.h"

namespace tangmark::reports {

/// Something measured once that can be put anywhere on a page but not be broken: a line of a
/// paragraph, a row of a table, a chart. Elements are placed from the block's own top left corner.
struct Block {
  Points height = 0;
  std::vector<Element> elements;
  std::vector<Mark> marks;      ///< roles of its elements; see Mark
  bool keep_with_next = false;  ///< a heading, the first line of a paragraph
  Points space_before = 0;      ///< left out where the block opens a page or column
  std::string outline;          ///< an entry for the outline; mostly empty
  /// The head of the table this row belongs to, set again when the row opens a page. Shared because
  /// all rows of a table have the one head.
  std::shared_ptr<const Block> repeated_head;
};

/// Blocks in reading order.
using Flow = std::vector<Block>;

/// The element moved by this much.
Element moved(Element element, Points right, Points down);
/// Appends one flow to another.
void append(Flow& flow, Flow more);
/// Puts the elements of one block, with their roles, into another.
void put_into(Block& block, const Block& other, Points right, Points down);
/// The block with one role for all its elements.
Block marked(Block block, Role role, std::string words = {});
/// An empty block of this height, for filling with elements.
Block blank(Points height);
/// Height of the whole flow when nothing breaks it.
Points height_of(const Flow& flow);
/// The flow as one block that cannot be broken.
Block glued(const Flow& flow);

/// What an element covers. Text covers from its accents to its descenders, where its letters have
/// such; a turned run is not asked.
Box cover(const Element& element);

}  // namespace tangmark::reports
