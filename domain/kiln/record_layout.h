// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "domain/kiln/record_shape.h"

namespace tangmark::kiln {

/// How lines are cut into cells and figures into decimals.
struct RecordCut {
  char separator = ',';
  char point = '.';
  std::size_t rows = 0;      ///< of the first lines that are rows of samples when cut so
  std::size_t readings = 0;  ///< cells of those rows that read as temperatures
  std::size_t width = 0;     ///< cells of the widest of them
};

/// Where the samples begin, the heads above them, and a few rows to look at.
struct RecordLayout {
  std::int64_t head_lines = 0;
  std::vector<std::string_view> heads;  ///< empty when no line above the samples is wide enough
  std::vector<std::vector<std::string_view>> rows;
};

/// Columns that were named, from 0.
struct NamedColumns {
  std::optional<std::size_t> time, date;
  std::vector<std::size_t> sensors;
};

/// The first lines of a record, without a byte order mark and carriage returns.
std::vector<std::string_view> first_lines(std::string_view text);
/// The cut under which most lines are rows of samples, and of those most cells are readings, within
/// what the hints say; of equals the first of ; with point, ; with comma, tab, |, comma, blanks.
/// None when no line is.
std::optional<RecordCut> best_cut(const std::vector<std::string_view>& lines,
                                  const ShapeHints& hints);
/// The columns that the hints name. Refuses a name that no line has as a cell, listing those of the
/// widest line.
Outcome<NamedColumns> named_columns(const std::vector<std::string_view>& lines, char separator,
                                    const ShapeHints& hints);
RecordLayout layout_of(const std::vector<std::string_view>& lines, const RecordCut& cut,
                       const NamedColumns& named);

}  // namespace tangmark::kiln
