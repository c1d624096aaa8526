// SPDX-License-Identifier: MIT
#include "db/store/firing_report.h"

#include <fmt/format.h>

#include <cmath>

#include "db/row.h"
#include "db/store/kiln_store.h"
#include "domain/steel/figure_text.h"

namespace tangmark::db {
namespace {

constexpr double agrees_c = 0.5;
constexpr auto usual_above = TemperatureDifference::celsius(10);
constexpr auto usual_below = TemperatureDifference::celsius(-10);

using kiln::SoakWindow;
using steel::rounded_text;

SoakWindow window_of(const Query& row, Temperature set) {
  return {row.maybe_temperature("low_k1800").value_or(set + usual_below),
          row.maybe_temperature("high_k1800").value_or(set + usual_above)};
}

void judge_blade(const kiln::KilnRecord& record, ReportedBlade& blade) {
  if (!blade.in || !blade.out) {
    blade.why_not = "Its time in and out is not on record.";
    return;
  }
  const auto ms = [](Instant at) {
    return std::chrono::duration_cast<std::chrono::milliseconds>(at.time_since_epoch()).count();
  };
  auto soak = kiln::blade_soak(record, blade.window, ms(*blade.in), ms(*blade.out));
  if (soak)
    blade.soak = std::move(soak).value();
  else
    blade.why_not = soak.problem().sentence;
}

std::vector<ReportedBlade> blades_of(const ShopFile& shop, const kiln::KeptFiring& firing) {
  Query query(shop, R"(
SELECT b.number, f.time_in, f.time_out, s.operation, s.low_k1800, s.high_k1800
FROM firing_blade f JOIN blade b ON b.id = f.blade_id LEFT JOIN route_step s ON s.id = f.route_step_id
WHERE f.firing_id = ? ORDER BY f.position)");
  query.bind(firing.id);
  std::vector<ReportedBlade> blades;
  while (query.next())
    blades.push_back({query.integer("number"),
                      query.text("operation"),
                      window_of(query, firing.set),
                      query.maybe_instant("time_in"),
                      query.maybe_instant("time_out"),
                      {},
                      {}});
  return blades;
}

std::string kiln_name(const ShopFile& shop, kiln::KilnId id) {
  Query query(shop, "SELECT name FROM kiln WHERE id = ?");
  query.bind(id);
  return query.next() ? query.text("name") : "";
}

std::string degrees(double celsius, TemperatureUnit unit) {
  const bool fahrenheit = unit == TemperatureUnit::fahrenheit;
  return rounded_text(fahrenheit ? celsius * 1.8 : celsius, 1) + (fahrenheit ? " °F" : " °C");
}

std::string clock(std::int64_t ms, const Zone& zone) {
  return clock_text(
      Instant(std::chrono::floor<std::chrono::seconds>(std::chrono::milliseconds(ms))), zone);
}

std::string shown(Temperature t, TemperatureUnit unit) {
  const Temperature whole = unit == TemperatureUnit::celsius
                                ? Temperature::celsius(t.whole_celsius())
                                : Temperature::fahrenheit(std::llround(t.in_fahrenheit()));
  return to_text(whole, unit);
}

using Sentences = std::vector<std::string>;

// The correction of the judged sensor that stands in the controller's record.
double standing_c(const FiringReport& report) {
  for (const RecordCorrection& correction : report.records.front().corrections)
    if (correction.sensor == 0) return correction.by.kelvins();
  return 0;
}

void say_soak(const FiringReport& report, const Zone& zone, TemperatureUnit unit, Sentences& all) {
  const auto& judged = report.judgement;
  const std::string window =
      shown(report.window.low, unit) + " to " + shown(report.window.high, unit);
  if (judged.soak_start_ms)
    all.push_back(fmt::format("In the window ({}) from {} to {}, {} min in all; peak {} at {}.",
                              window, clock(*judged.soak_start_ms, zone),
                              clock(*judged.soak_end_ms, zone),
                              rounded_text(*judged.in_window_min, 1), shown(judged.peak, unit),
                              clock(judged.peak_ms, zone)));
  else
    all.push_back(fmt::format("Never in the window ({}); peak {} at {}.", window,
                              shown(judged.peak, unit), clock(judged.peak_ms, zone)));
  if (judged.overshoot_c.value_or(0) > 0)
    all.push_back("It went " + degrees(*judged.overshoot_c, unit) + " above the window.");
  if (judged.max_ramp_c_per_h)
    all.push_back("Steepest over 5 minutes: up " + degrees(*judged.max_ramp_c_per_h, unit) +
                  " an hour, down " + degrees(judged.max_cooling_c_per_h.value_or(0), unit) +
                  " an hour.");
  if (report.firing.kind != kiln::FiringKind::soak) return;
  all.push_back("The whole curve counts as " + rounded_text(judged.temper_minutes, 0) + " min at " +
                shown(judged.temper_at, unit) + " (temper parameter, c 20).");
}

void say_doors_and_gaps(const FiringReport& report, const Zone& zone, TemperatureUnit unit,
                        Sentences& all) {
  for (const kiln::DoorOpening& door : report.doors)
    all.push_back("At " + clock(door.at_ms, zone) + " it fell by " + degrees(door.fall_c, unit) +
                  ": a door opened or a charge gone in, by estimate.");
  for (const kiln::RecordGap& gap : report.judgement.gaps)
    all.push_back("No samples for " + rounded_text(gap.minutes, 1) + " min from " +
                  clock(gap.at_ms, zone) + ".");
}

void say_drift(const FiringReport& report, TemperatureUnit unit, Sentences& all) {
  const double by = report.drift->mean_c;
  const std::string samples = std::to_string(report.drift->samples) + " samples in the window";
  const auto suggested = suggested_correction(report);
  if (!suggested) {
    all.push_back("Controller and check thermocouple agree within " + degrees(agrees_c, unit) +
                  " (" + samples + ").");
    return;
  }
  all.push_back(fmt::format(
      "The controller{} {} {} the check thermocouple ({}). Its record agrees with the check "
      "thermocouple when it is set right by {}{}.",
      standing_c(report) != 0 ? " as corrected reads" : " read", degrees(std::abs(by), unit),
      by < 0 ? "below" : "above", samples, suggested->kelvins() < 0 ? "-" : "+",
      degrees(std::abs(suggested->kelvins()), unit)));
}

void say_sensors(const FiringReport& report, TemperatureUnit unit, Sentences& all) {
  const KeptRecord& record = report.records[report.judged];
  const auto& names = record.record.shape.sensors;
  for (std::size_t i = 1; i < report.judgement.sensors.size() && i < names.size(); ++i)
    all.push_back(names[i].name + " read " +
                  degrees(std::abs(report.judgement.sensors[i].mean_above_judged_c), unit) +
                  (report.judgement.sensors[i].mean_above_judged_c < 0 ? " below " : " above ") +
                  names[0].name + " on the mean.");
  if (names.size() > 1)
    all.push_back("Sensors lay up to " + degrees(report.judgement.widest_spread_c, unit) +
                  " apart in the window. That is no uniformity survey.");
  if (report.drift) say_drift(report, unit, all);
  for (const KeptRecord& kept : report.records)
    for (const RecordCorrection& correction : kept.corrections)
      all.push_back(kept.name + " is shown corrected by " +
                    (correction.by.kelvins() < 0 ? "-" : "+") +
                    degrees(std::abs(correction.by.kelvins()), unit) + ": " + correction.why + ".");
}

}  // namespace

Outcome<FiringReport> firing_report(const ShopFile& shop, std::string_view number,
                                    std::string_view field) {
  auto firing = find_firing(shop, number, field);
  if (!firing) return firing.problems();
  FiringReport report{*firing, kiln_name(shop, firing->kiln), {}, {}, 0, {}, {}, {}, {}};
  report.records = records_of_firing(shop, firing->id);
  if (report.records.empty())
    return Problem{std::string(field), "Firing " + std::string(number) + " has no record attached.",
                   "Attach it with attach_record."};
  report.blades = blades_of(shop, *firing);
  report.window = report.blades.empty()
                      ? SoakWindow{firing->set + usual_below, firing->set + usual_above}
                      : report.blades.front().window;
  // Controllers' records come first, so the last one is a check thermocouple where there is one.
  report.judged = report.records.size() - 1;
  const kiln::KilnRecord& record = report.records[report.judged].record;
  auto judged = kiln::judge(record, report.window);
  if (!judged) return judged.problems();
  report.judgement = std::move(judged).value();
  report.doors = kiln::door_openings(record);
  const bool both = !report.records.front().independent && report.records.back().independent;
  if (both) report.drift = kiln::drift_of(report.records.front().record, record, report.window);
  for (ReportedBlade& blade : report.blades) judge_blade(record, blade);
  return report;
}

// The drift is what is left after a correction that stands, so what is suggested takes both.
std::optional<TemperatureDifference> suggested_correction(const FiringReport& report) {
  if (!report.drift || std::abs(report.drift->mean_c) < agrees_c) return std::nullopt;
  const double tenths = std::round((standing_c(report) - report.drift->mean_c) * 10);
  return TemperatureDifference::counts(static_cast<std::int64_t>(tenths) * 180);
}

std::vector<std::string> report_sentences(const FiringReport& report, const Zone& zone,
                                          TemperatureUnit unit) {
  Sentences all;
  say_soak(report, zone, unit, all);
  say_doors_and_gaps(report, zone, unit, all);
  say_sensors(report, unit, all);
  return all;
}

std::vector<std::string> report_heads() {
  return {"Blade",  "Step",    "Window", "In", "Out", "In window, min", "At heat after, min",
          "Lowest", "Highest", "Remark"};
}

std::vector<std::vector<std::string>> report_rows(const FiringReport& report, const Zone& zone,
                                                  TemperatureUnit unit) {
  std::vector<std::vector<std::string>> rows;
  for (const ReportedBlade& blade : report.blades) {
    std::vector<std::string> row{
        std::to_string(blade.number), blade.operation,
        shown(blade.window.low, unit) + " to " + shown(blade.window.high, unit),
        blade.in ? clock_text(*blade.in, zone) : "", blade.out ? clock_text(*blade.out, zone) : ""};
    if (blade.soak) {
      row.push_back(rounded_text(blade.soak->in_window_min, 1));
      row.push_back(blade.soak->back_at_heat_min ? rounded_text(*blade.soak->back_at_heat_min, 1)
                                                 : "never");
      row.push_back(shown(blade.soak->lowest, unit));
      row.push_back(shown(blade.soak->highest, unit));
      row.push_back(blade.soak->covered() ? ""
                                          : "the record covers " +
                                                rounded_text(blade.soak->recorded_min, 1) + " min");
    } else {
      row.insert(row.end(), {"", "", "", "", blade.why_not});
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace tangmark::db
