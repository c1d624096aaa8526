// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "domain/kiln/record_reader.h"

namespace tangmark::kiln {

/// A kiln record as a value: what the sensors read and when.
struct KilnRecord {
  RecordShape shape;
  std::vector<std::int64_t> ms;                 ///< never falling; see RecordTimes
  std::vector<std::vector<Reading>> readings;   ///< for each sensor of the shape, one per time
  RecordRemarks remarks;
  std::vector<std::string> assumptions;

  std::size_t rows() const { return ms.size(); }
};

/// Reads a whole record, recognising its shape. Refused as recognise_shape and RecordReader refuse.
Outcome<KilnRecord> read_kiln_record(std::string_view text, const Zone& zone,
                                     const ShapeHints& hints = {});
/// Reads a record of a kiln whose shape is known. Lines before the first one that reads as a row of
/// this shape are its head.
Outcome<KilnRecord> read_kiln_record(std::string_view text, const Zone& zone,
                                     const RecordShape& known);
/// The lines before the first row of samples of a known shape.
std::int64_t head_lines_of(std::string_view beginning, const RecordShape& shape);
/// Hands the rows of a record on, as the reader would.
void replay(const KilnRecord& record, RecordSink& sink);

}  // namespace tangmark::kiln
