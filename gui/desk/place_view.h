// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>

#include "gui/desk/cut_drawing.h"
#include "gui/desk/family_tree.h"
#include "gui/desk/kiln_board.h"
#include "gui/desk/life_line.h"
#include "gui/desk/list.h"
#include "gui/desk/offer.h"
#include "gui/desk/quote_view.h"
#include "gui/desk/sheet.h"

namespace tangmark::reports {
struct Document;
}

namespace tangmark::desk {

/// A document on the screen, the very page that would be printed.
struct Paper {
  std::shared_ptr<const reports::Document> document;
  std::string name;  ///< "quote-118-2", for the name of the file it is printed into
};

/// What a place draws beside its words; nothing for places that need no picture.
using Picture =
    std::variant<std::monostate, KilnBoard, LifeLine, FamilyTree, QuoteView, Paper, CutDrawing>;

struct PlaceList {
  std::string title;
  std::string hint;  ///< what may be typed to find: "Find a blade, steel or buyer"
  List list;
};

/// All that a place shows for one selection.
struct PlaceView {
  NextLine next;
  Sheet sheet;
  Picture picture;
};

}  // namespace tangmark::desk
