// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <span>
#include <string>

#include "domain/measure/length.h"
#include "domain/measure/outcome.h"

namespace tangmark::stock {

/// Where the labels stand on a sheet of label stock, as measured on the sheet with a rule: its
/// size, how many labels across and down, the free margins at left and top, the size of one label,
/// and the pitch from the edge of one label to the same edge of the next.
struct LabelStock {
  std::string name;  ///< "A4, 21 labels of 63.5 x 38.1 mm"
  Length sheet_width, sheet_height;
  std::size_t across = 1;
  std::size_t down = 1;
  Length left, top;
  Length width, height;
  Length pitch_across, pitch_down;
};

/// Sheets of sizes in common use; the first is the usual one on A4. **Source** common practice,
/// from memory: measure your own sheet.
std::span<const LabelStock> usual_label_stock();
/// The usual one on Letter: 30 labels of 2 5/8 in by 1 in.
const LabelStock& usual_letter_labels();

/// What is wrong with a sheet: no label, labels that overlap or reach over the edge, or ones
/// smaller than 38 mm by 19 mm, which cannot hold a number and its code.
Problems label_stock_problems(const LabelStock& stock);

}  // namespace tangmark::stock
