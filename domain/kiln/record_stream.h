// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/kiln/record_judgement.h"
#include "domain/steel/desk_value.h"

namespace tangmark::kiln {

/// A record that was read and judged without being kept.
struct JudgedRecord {
  RecordShape shape;
  RecordJudgement judgement;
  RecordRemarks remarks;
  std::vector<std::string> assumptions;
};

/// Recognises, reads and judges a record piece by piece: a file of any length in the memory of its
/// first 64 kB.
///
///     RecordStream stream(window, zone);
///     while (read some bytes) if (!stream.feed(bytes)) break;
///     auto judged = stream.finish();
class RecordStream {
 public:
  RecordStream(std::optional<SoakWindow> window, Zone zone, ShapeHints hints = {});
  /// False once the record is refused.
  bool feed(std::string_view piece);
  /// Refused as recognise_shape, RecordReader and RecordJudge refuse.
  Outcome<JudgedRecord> finish();

 private:
  bool begin();

  Zone zone_;
  ShapeHints hints_;
  RecordJudge judge_;
  std::string beginning_;
  std::optional<RecognisedShape> recognised_;
  std::optional<RecordReader> reader_;
  Problems refused_;
};

/// The outputs of the word kiln-record, in its order: samples, start, end, peak_c, soak_start,
/// soak_end, in_window_min, overshoot_c, max_ramp_c_per_h, gaps [{at, minutes}], temper_parameter
/// (as minutes at temper_at_c), sensors (their names), then what was met on the way. Times are
/// seconds for an elapsed record, else text as stamp_text gives it.
steel::DeskValue::Fields record_answer(const JudgedRecord& record, const Zone& zone);

}  // namespace tangmark::kiln
