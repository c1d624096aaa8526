// SPDX-License-Identifier: MIT
// The kiln record from a terminal.
#include <cmath>

#include "domain/kiln/record_judgement.h"
#include "domain/kiln/record_reader.h"
#include "domain/kiln/record_shape.h"
#include "domain/kiln/record_time.h"
#include "gui/command/json_text.h"
#include "gui/command/record_word.h"
#include "gui/command/shop_of.h"

namespace tangmark::command {
namespace {

constexpr std::size_t beginning_bytes = 64 * 1024;

// "790C..815C"
Outcome<std::optional<kiln::SoakWindow>> window_of(const Call& call) {
  const auto text = call.option("window");
  if (!text) return std::optional<kiln::SoakWindow>();
  const auto dots = text->find("..");
  const Problem refused{"--window", "\"" + *text + "\" is not a window of temperatures.", "Write, for example: --window 790C..815C."};
  if (dots == std::string::npos) return refused;
  const auto low = parse_temperature(text->substr(0, dots), TemperatureUnit::celsius, "--window");
  const auto high = parse_temperature(text->substr(dots + 2), TemperatureUnit::celsius, "--window");
  if (!low || !high || *high < *low) return refused;
  return std::optional(kiln::SoakWindow{*low, *high});
}

// Outputs are for people and programs alike: no more digits than a kiln can know.
double tidy(double value) { return std::round(value * 1000) / 1000; }

Json tidy(const std::optional<double>& value) { return value ? Json(tidy(*value)) : Json(nullptr); }

struct Read {
  kiln::RecordShape shape;
  kiln::RecordJudgement judged;
  kiln::RecordRemarks remarks;
  std::vector<std::string> assumptions;
};

Outcome<Read> judge_file(const std::string& text, const Zone& zone, const std::optional<kiln::SoakWindow>& window) {
  auto recognised = kiln::recognise_shape(std::string_view(text).substr(0, beginning_bytes));
  if (!recognised) return recognised.problems();
  kiln::RecordJudge judge(window);
  kiln::RecordReader reader(recognised->shape, recognised->head_lines, zone, judge);
  reader.feed(text);
  auto remarks = reader.finish();
  if (!remarks) return remarks.problems();
  auto judged = judge.finish();
  if (!judged) return judged.problems();
  return Read{recognised->shape, *judged, *remarks, recognised->assumptions};
}

Json json_of(const Read& read, const Zone& zone) {
  const auto& j = read.judged;
  const auto stamp = [&](std::int64_t ms) { return kiln::stamp_text(read.shape.clock, ms, zone); };
  const auto maybe_stamp = [&](const std::optional<std::int64_t>& ms) { return ms ? Json(stamp(*ms)) : Json(nullptr); };
  Json gaps = Json::array();
  for (const auto& gap : j.gaps) gaps.push_back({{"at", stamp(gap.at_ms)}, {"minutes", tidy(gap.minutes)}});
  Json sensors = Json::array();
  for (std::size_t i = 0; i < read.shape.sensors.size(); ++i) {
    Json sensor{{"name", read.shape.sensors[i].name}};
    if (i < j.sensors.size()) {
      sensor["samples"] = j.sensors[i].samples;
      sensor["peak_c"] = tidy(j.sensors[i].peak.in_celsius());
      sensor["mean_above_first_c"] = tidy(j.sensors[i].mean_above_judged_c);
    }
    sensors.push_back(std::move(sensor));
  }
  Json jumps = Json::array();
  for (const auto& jump : read.remarks.clock_jumps) jumps.push_back({{"line", jump.line}, {"back_s", static_cast<double>(jump.back_ms) / 1000}});
  return {{"samples", j.samples},
          {"start", stamp(j.start_ms)},
          {"end", stamp(j.end_ms)},
          {"peak_c", tidy(j.peak.in_celsius())},
          {"soak_start", maybe_stamp(j.soak_start_ms)},
          {"soak_end", maybe_stamp(j.soak_end_ms)},
          {"in_window_min", tidy(j.in_window_min)},
          {"overshoot_c", tidy(j.overshoot_c)},
          {"max_ramp_c_per_h", tidy(j.max_ramp_c_per_h)},
          {"gaps", gaps},
          {"temper_parameter", tidy(j.temper_parameter_k)},
          {"temper_minutes", tidy(j.temper_minutes)},
          {"sensors", sensors},
          {"clock_jumps", jumps},
          {"missing_readings", read.remarks.missing_readings},
          {"assumptions", read.assumptions}};
}

}  // namespace

Exit kiln_record(const Call& call) {
  const auto window = window_of(call);
  const auto zone = Zone::of(call.option("zone").value_or("Etc/UTC"), "--zone");
  if (!window) return refused(call, window.problems());
  if (!zone) return refused(call, zone.problems());
  const auto text = read_whole(call.words[0]);
  if (!text) return refused(call, text.problems());
  const auto read = judge_file(*text, *zone, *window);
  if (!read) return refused(call, read.problems());
  const Json json = json_of(*read, *zone);
  if (call.has("json")) {
    say_json(json);
    return Exit::done;
  }
  for (const auto& [name, value] : json.items())
    if (!value.is_null() && !(value.is_array() && value.empty()))
      say(name + " = " + (value.is_string() ? value.get<std::string>() : value.dump()));
  return Exit::done;
}

}  // namespace tangmark::command
