// SPDX-License-Identifier: MIT
#include "domain/kiln/record_stream.h"

#include <cassert>

namespace tangmark::kiln {
namespace {

using steel::DeskValue;

constexpr std::size_t beginning_bytes = 64 * 1024;

DeskValue number_or_nothing(const std::optional<double>& number) {
  return number ? DeskValue(*number) : DeskValue();
}

DeskValue stamp(const JudgedRecord& record, const Zone& zone, std::optional<std::int64_t> ms) {
  if (!ms) return {};
  if (record.shape.clock == RecordClock::elapsed) return static_cast<double>(*ms) / 1000;
  return stamp_text(record.shape.clock, *ms, zone);
}

DeskValue gaps_of(const JudgedRecord& record, const Zone& zone) {
  DeskValue::List gaps;
  for (const RecordGap& gap : record.judgement.gaps) {
    gaps.push_back(
        DeskValue::Fields{{"at", stamp(record, zone, gap.at_ms)}, {"minutes", gap.minutes}});
  }
  return gaps;
}

DeskValue sensor_names(const RecordShape& shape) {
  std::vector<std::string> names;
  for (const SensorColumn& sensor : shape.sensors) names.push_back(sensor.name);
  return names;
}

DeskValue sensor_readings(const JudgedRecord& record) {
  DeskValue::List readings;
  for (std::size_t i = 0; i < record.judgement.sensors.size(); ++i) {
    const SensorComparison& sensor = record.judgement.sensors[i];
    readings.push_back(DeskValue::Fields{{"name", record.shape.sensors[i].name},
                                         {"samples", sensor.samples},
                                         {"peak_c", sensor.peak.in_celsius()},
                                         {"mean_above_first_c", sensor.mean_above_judged_c}});
  }
  return readings;
}

DeskValue jumps_of(const RecordRemarks& remarks) {
  DeskValue::List jumps;
  for (const ClockJump& jump : remarks.clock_jumps) {
    jumps.push_back(DeskValue::Fields{{"line", jump.line},
                                      {"back_min", static_cast<double>(jump.back_ms) / 60'000}});
  }
  return jumps;
}

}  // namespace

RecordStream::RecordStream(std::optional<SoakWindow> window, Zone zone, ShapeHints hints)
    : zone_(std::move(zone)), hints_(hints), judge_(window) {}

bool RecordStream::feed(std::string_view piece) {
  if (!refused_.empty()) return false;
  if (reader_) return reader_->feed(piece);
  beginning_ += piece;
  return beginning_.size() < beginning_bytes || begin();
}

bool RecordStream::begin() {
  auto shape = recognise_shape(std::string_view(beginning_).substr(0, beginning_bytes), hints_);
  if (!shape) {
    refused_ = shape.problems();
    return false;
  }
  recognised_ = *std::move(shape);
  zone_ = zone_of(recognised_->shape, zone_);
  reader_.emplace(recognised_->shape, recognised_->head_lines, zone_, judge_);
  const bool good = reader_->feed(beginning_);
  beginning_ = {};
  return good;
}

Outcome<JudgedRecord> RecordStream::finish() {
  if (refused_.empty() && !reader_) begin();
  if (!refused_.empty()) return refused_;
  assert(reader_ && "a shape that was recognised has its reader");
  auto remarks = reader_->finish();
  if (!remarks) return remarks.problems();
  auto judgement = judge_.finish();
  if (!judgement) return judgement.problems();
  return JudgedRecord{std::move(recognised_->shape), *std::move(judgement), *std::move(remarks),
                      std::move(recognised_->assumptions)};
}

DeskValue::Fields record_answer(const JudgedRecord& record, const Zone& zone) {
  const RecordJudgement& judged = record.judgement;
  return {{"samples", judged.samples},
          {"start", stamp(record, zone, judged.start_ms)},
          {"end", stamp(record, zone, judged.end_ms)},
          {"peak_c", judged.peak.in_celsius()},
          {"soak_start", stamp(record, zone, judged.soak_start_ms)},
          {"soak_end", stamp(record, zone, judged.soak_end_ms)},
          {"in_window_min", number_or_nothing(judged.in_window_min)},
          {"overshoot_c", number_or_nothing(judged.overshoot_c)},
          {"max_ramp_c_per_h", number_or_nothing(judged.max_ramp_c_per_h)},
          {"gaps", gaps_of(record, zone)},
          {"temper_parameter", judged.temper_minutes},
          {"sensors", sensor_names(record.shape)},
          {"temper_at_c", judged.temper_at.in_celsius()},
          {"temper_parameter_k", number_or_nothing(judged.temper_parameter_k)},
          {"max_cooling_c_per_h", number_or_nothing(judged.max_cooling_c_per_h)},
          {"median_interval_s", judged.median_interval_s},
          {"sensor_readings", sensor_readings(record)},
          {"widest_spread_c", judged.widest_spread_c},
          {"clock_jumps", jumps_of(record.remarks)},
          {"missing_readings", record.remarks.missing_readings},
          {"cut_short", record.remarks.cut_short},
          {"assumptions", record.assumptions}};
}

}  // namespace tangmark::kiln
