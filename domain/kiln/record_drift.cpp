// SPDX-License-Identifier: MIT
#include "domain/kiln/record_drift.h"

#include <algorithm>

namespace tangmark::kiln {
namespace {

// The check thermocouple's line at a moment; none before, behind, or where a reading is missing.
class CheckLine {
 public:
  explicit CheckLine(const KilnRecord& record) : record_(record) {}

  std::optional<double> kelvin_at(std::int64_t ms) {
    while (next_ < record_.rows() && record_.ms[next_] < ms) ++next_;
    if (next_ >= record_.rows()) return std::nullopt;
    const auto& readings = record_.readings.front();
    if (record_.ms[next_] == ms) return kelvin(readings[next_]);
    if (next_ == 0) return std::nullopt;
    const auto before = kelvin(readings[next_ - 1]), after = kelvin(readings[next_]);
    if (!before || !after) return std::nullopt;
    const double part = static_cast<double>(ms - record_.ms[next_ - 1]) /
                        static_cast<double>(record_.ms[next_] - record_.ms[next_ - 1]);
    return *before + part * (*after - *before);
  }

 private:
  static std::optional<double> kelvin(const Reading& reading) {
    if (!reading) return std::nullopt;
    return reading->in_kelvin();
  }
  const KilnRecord& record_;
  std::size_t next_ = 0;
};

}  // namespace

std::optional<RecordDrift> drift_of(const KilnRecord& controller, const KilnRecord& check,
                                    const SoakWindow& window) {
  if (controller.readings.empty() || check.readings.empty()) return std::nullopt;
  CheckLine line(check);
  RecordDrift drift;
  double sum = 0;
  for (std::size_t i = 0; i < controller.rows(); ++i) {
    const Reading& reading = controller.readings.front()[i];
    const auto right = line.kelvin_at(controller.ms[i]);
    if (!reading || !right) continue;
    if (*right < window.low.in_kelvin() || *right > window.high.in_kelvin()) continue;
    const double above = reading->in_kelvin() - *right;
    drift.least_c = drift.samples == 0 ? above : std::min(drift.least_c, above);
    drift.most_c = drift.samples == 0 ? above : std::max(drift.most_c, above);
    sum += above;
    ++drift.samples;
  }
  if (drift.samples < fewest_drift_samples) return std::nullopt;
  drift.mean_c = sum / static_cast<double>(drift.samples);
  return drift;
}

}  // namespace tangmark::kiln
