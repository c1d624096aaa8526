// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/kiln/record_shape.h"

namespace tangmark::kiln {

/// One column of a record and what it is taken for.
struct PreviewColumn {
  std::string head;  ///< as written, or "column 2"
  std::string use;   ///< "time", "date", "judged, °C", "sensor, °F", or "left aside"
};

/// The beginning of a record beside how it would be read, for the maker to agree to or to map anew.
struct RecordPreview {
  std::vector<PreviewColumn> columns;
  /// The first rows of samples as written, at most six.
  std::vector<std::vector<std::string>> rows;
  std::vector<std::string> read_as;  ///< each of them as read: its time and the judged temperature
  std::vector<std::string> assumptions;
  std::optional<RecordShape> shape;  ///< none when it cannot be read so
  Problems why_not;
};

/// Looks at the beginning of a record (its first 64 kB are plenty). Where the shape is not
/// recognised the lines are cut as they come, so that the maker sees which column is which.
RecordPreview preview_record(std::string_view beginning, const Zone& shop, const ShapeHints& hints,
                             TemperatureUnit unit);

/// The same by the shape that was settled for this logger before.
RecordPreview preview_record(std::string_view beginning, const Zone& shop,
                             const RecordShape& known, TemperatureUnit unit);

}  // namespace tangmark::kiln
