// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;

/// One blank in a bar, from so far to so far of the bar's end, kerfs between.
struct BlankInBar {
  std::string name;    ///< "item 7"
  std::string length;  ///< "382 mm"
  Length from, size;
};

/// A bar as it is to be cut.
struct BarToCut {
  std::string tag, length;
  Length size;
  std::vector<BlankInBar> blanks;
  std::string left;  ///< "180 mm kept", "35 mm scrap"; empty when nothing is left
  Length left_from, left_size;
  bool kept = false;
};

/// The paper by the saw: every bar to one scale, with its blanks and a box to tick for each.
struct CuttingSheet {
  std::string title;   ///< "Lot 17: 1084 flat"
  std::string under;   ///< what it comes to, and whether a better plan exists
  std::string kerf;    ///< "2 mm"
  std::vector<BarToCut> bars;
  std::vector<std::string> notes;  ///< blanks that no bar holds
  Instant printed{};
};

/// Sets the sheet; a bar is never parted between pages. Refuses a sheet without bars and characters
/// that cannot be printed.
Outcome<Document> cutting_sheet_document(const CuttingSheet& sheet, const Look& look,
                                         const FontBook& fonts);

}  // namespace tangmark::reports
