// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "gui/desk/offer.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// One blank in a bar, at its place from the bar's end.
struct DrawnBlank {
  std::string label;   ///< "item 7"
  std::string length;  ///< "382 mm"
  std::int64_t from_mm = 0, length_mm = 0;
};

/// A bar to scale with what is cut from it.
struct DrawnBar {
  std::string tag, length;
  std::int64_t length_mm = 0;
  std::vector<DrawnBlank> blanks;
  std::int64_t left_mm = 0;
  std::string left;  ///< "180 mm kept", "35 mm scrap"; empty when nothing is left
  bool kept = false;
};

/// The cutting plan of a lot to scale: which blank comes from which bar.
struct CutDrawing {
  std::string title;
  std::vector<DrawnBar> bars;
  std::int64_t longest_mm = 0;
};

/// The plan for a lot that the queue wants blanks of, its drawing, and the one deed that cuts it.
struct CutProposal {
  CutDrawing drawing;
  Section section;  ///< why, and the offer to cut it so
};
std::string in_words(const CutDrawing& drawing);

}  // namespace tangmark::desk
