// SPDX-License-Identifier: MIT
#include "db/store/dossier_log.h"

#include <algorithm>
#include <map>

#include "db/row.h"
#include "db/store/record_store.h"
#include "db/store/settings_store.h"
#include "db/store/trail_reader.h"
#include "domain/blade/log_entry.h"
#include "domain/certificate/dossier_words.h"
#include "domain/kiln/record.h"
#include "domain/kiln/record_soak.h"

namespace tangmark::db {
namespace {

namespace cert = certificate;

cert::Operation operation_of(const std::string& word, std::string& own) {
  if (const auto known = of_word<cert::Operation>(word, "operation")) return *known;
  own = word;
  return cert::Operation::other;
}

bool is_heat(cert::Operation operation) {
  using enum cert::Operation;
  switch (operation) {
    case anneal:
    case stress_relief:
    case normalize:
    case thermal_cycle:
    case harden:
    case snap_temper:
    case temper:
      return true;
    default:
      return false;
  }
}

// Lowest and highest of each stretch of time, so that a page shows every peak in few points.
cert::RecordedCurve thinned(const kiln::KilnRecord& record) {
  constexpr std::size_t stretches = 70;
  cert::RecordedCurve curve;
  if (record.readings.empty() || record.rows() == 0) return curve;
  const auto& values = record.readings.front();
  const auto take = [&](std::size_t row) {
    curve.at_s.push_back(static_cast<int>((record.ms[row] - record.ms.front()) / 1000));
    curve.read.push_back(*values[row]);
  };
  const std::size_t each = std::max<std::size_t>(1, record.rows() / stretches);
  for (std::size_t from = 0; from < record.rows(); from += each) {
    std::optional<std::size_t> low, high;
    for (std::size_t row = from; row < std::min(from + each, record.rows()); ++row) {
      if (!values[row]) continue;
      if (!low || *values[row] < *values[*low]) low = row;
      if (!high || *values[row] > *values[*high]) high = row;
    }
    if (!low) continue;
    take(std::min(*low, *high));
    if (*low != *high) take(std::max(*low, *high));
  }
  return curve;
}

// What the route set for this blade in this firing.
void add_window(const ShopFile& shop, const Query& entry, cert::RecordedCurve& curve) {
  Query q(shop,
          "SELECT s.low_k1800, s.high_k1800 FROM firing_blade b JOIN route_step s ON s.id = "
          "b.route_step_id "
          "WHERE b.firing_id = ? AND b.blade_id = ?");
  q.bind(entry.integer("firing_id")).bind(entry.integer("blade_id"));
  if (!q.next()) return;
  curve.window_low = q.maybe_temperature("low_k1800");
  curve.window_high = q.maybe_temperature("high_k1800");
}

// The record of a firing that says most: a thermocouple's own before the controller's, the one
// attached last. It is read again from the file that was attached, so that nothing stands between
// paper and statement but the corrections on record, which the paper tells.
std::optional<KeptRecord> telling_record(const ShopFile& shop, kiln::FiringId firing) {
  auto records = records_of_firing(shop, firing);
  if (records.empty()) return std::nullopt;
  return std::move(records.back());
}

std::int64_t ms_of(Instant at) {
  return std::chrono::duration_cast<std::chrono::milliseconds>(at.time_since_epoch()).count();
}

void add_soak(const Query& entry, const kiln::KilnRecord& record, cert::RecordCoverage& covered) {
  const Temperature set = entry.maybe_temperature("set_k1800").value_or(covered.peak.value());
  const kiln::SoakWindow window{set + TemperatureDifference::celsius(-15),
                                set + TemperatureDifference::celsius(15)};
  const auto soak = kiln::blade_soak(record, window, ms_of(entry.instant("time_in")),
                                     ms_of(entry.instant("time_out")));
  if (!soak) return;
  covered.soak_low = soak->lowest;
  covered.soak_high = soak->highest;
  covered.gap_in_soak = !soak->covered();
}

// What the kiln record of a firing shows between a blade's time in and out.
std::optional<cert::RecordCoverage> coverage(const ShopFile& shop, const Query& entry,
                                             const Zone& zone) {
  if (entry.is_null("firing_id") || entry.is_null("time_in") || entry.is_null("time_out"))
    return std::nullopt;
  Query q(shop,
          "SELECT r.id, r.starts_at, r.ends_at, r.independent, r.peak_k1800, k.checked_on "
          "FROM kiln_record r JOIN kiln k ON k.id = r.kiln_id "
          "WHERE r.firing_id = ? ORDER BY r.independent DESC, r.id DESC LIMIT 1");
  q.bind(entry.integer("firing_id"));
  if (!q.next()) return std::nullopt;
  cert::RecordCoverage covered;
  covered.instrument = q.yes("independent") ? cert::Instrument::independent_thermocouple
                                            : cert::Instrument::kiln_controller;
  covered.from = q.instant("starts_at");
  covered.to = q.instant("ends_at");
  covered.peak = q.temperature("peak_k1800");
  covered.kiln_checked = q.maybe_date("checked_on");
  const auto kept = telling_record(shop, entry.id<kiln::FiringId>("firing_id"));
  if (!kept || kept->id != q.integer("id")) return covered;
  for (const RecordCorrection& correction : kept->corrections) {
    if (correction.sensor != 0) continue;
    covered.peak = *covered.peak + correction.by;
    covered.set_right = cert::SetRight{correction.by, zone.date_of(correction.at), correction.why};
  }
  covered.curve = thinned(kept->record);
  covered.curve.blade_out = entry.instant("time_out");
  add_window(shop, entry, covered.curve);
  add_soak(entry, kept->record, covered);
  return covered;
}

cert::Quench quench_of(const Query& q) {
  cert::Quench quench;
  quench.medium = q.text("medium");
  quench.still_air = quench.medium.find("air") != std::string::npos ||
                     quench.medium.find("plate") != std::string::npos;
  quench.bath = q.maybe_temperature("bath_k1800");
  if (const auto ms = q.maybe_integer("seconds_to_bath_ms")) quench.to_bath = Duration(*ms / 1000);
  quench.immersion = q.yes("edge_only") ? cert::Immersion::edge : cert::Immersion::whole;
  quench.clay = q.yes("clay");
  return quench;
}

cert::EtchPurpose purpose_of(const Query& q) {
  const auto stated = q.maybe_word<blade::EtchFor>("etch_for");
  // Entries of before there was the field say it by their resist and their note.
  if (!stated && !q.yes("resist")) return cert::EtchPurpose::show_steel;
  if (!stated)
    return q.text("note").find("mark") != std::string::npos ? cert::EtchPurpose::makers_mark
                                                            : cert::EtchPurpose::image;
  switch (*stated) {
    case blade::EtchFor::pattern:
      return cert::EtchPurpose::show_steel;
    case blade::EtchFor::makers_mark:
      return cert::EtchPurpose::makers_mark;
    case blade::EtchFor::image:
      break;
  }
  return cert::EtchPurpose::image;
}

cert::BenchEntry read_entry(const ShopFile& shop, const Query& q, const Zone& zone, int number) {
  cert::BenchEntry entry;
  entry.number = number;
  entry.operation = operation_of(q.text("operation"), entry.own_word);
  entry.from = q.instant("started_at");
  entry.to = q.maybe_instant("ended_at");
  entry.logged = q.text("how_timed") == "live" ? cert::Logged::at_the_time : cert::Logged::later;
  entry.hand = hand_of(q.maybe_text("who"));
  entry.superseded = q.yes("superseded");
  if (const auto at = q.maybe_instant("superseded_at")) entry.superseded_on = zone.date_of(*at);
  entry.superseded_why = q.text("superseded_why");
  entry.note = q.text("note");
  if (is_heat(entry.operation)) {
    cert::Heat heat;
    heat.set = q.maybe_temperature("set_k1800");
    heat.read = q.maybe_temperature("read_k1800");
    heat.hold = q.maybe_duration("hold_s");
    if (!heat.set && !heat.read && q.text("result").find("magnet") != std::string::npos)
      heat.eye = cert::Eye::magnet;
    heat.record = coverage(shop, q, zone);
    if (heat.stated()) entry.heat = heat;
  }
  if (entry.operation == cert::Operation::harden) entry.quench = quench_of(q);
  if (entry.operation == cert::Operation::temper)
    entry.temper =
        cert::TemperFacts{static_cast<int>(std::max<std::int64_t>(1, q.integer("temper_number"))),
                          q.maybe_yes("cooled_to_room")};
  if (entry.operation == cert::Operation::sub_zero)
    entry.cold =
        cert::Cold{q.maybe_temperature("read_k1800"), q.maybe_duration("hold_s"), q.text("medium")};
  if (entry.operation == cert::Operation::etch) {
    cert::Etch etch;
    etch.etchant = q.text("etchant");
    etch.purpose = purpose_of(q);
    if (q.yes("resist")) etch.resist = "stencil or resist";
    entry.etch = etch;
  }
  return entry;
}

cert::Decision decision_of(const Query& q) {
  const std::string word = q.text("decision");
  if (word == "open") return cert::Decision::open;
  if (word == "no fault") return cert::Decision::no_fault;
  if (word == "scrap") return cert::Decision::scrapped;
  if (word == "fix and disclose")
    return q.text("decided_words").find("ground") != std::string::npos ? cert::Decision::removed
                                                                       : cert::Decision::closed;
  return cert::Decision::left_disclosed;
}

cert::FindingKind kind_of(const std::string& word) {
  const auto known = of_word<cert::FindingKind>(word, "kind");
  return known ? *known : cert::FindingKind::other;
}

std::optional<Instant> last_heat(const std::vector<cert::BenchEntry>& log) {
  std::optional<Instant> last;
  for (const cert::BenchEntry& entry : log)
    if (!entry.superseded && is_heat(entry.operation))
      last = std::max(last, entry.to ? entry.to : entry.from);
  return last;
}

cert::HardnessReading read_reading(const Query& q, const std::optional<Instant>& heat,
                                   const Zone& zone, Length blade_length,
                                   std::optional<Length> height) {
  cert::HardnessReading reading;
  const auto scale =
      of_word<cert::HardnessScale>(q.text("scale") == "file" ? "files" : q.text("scale"), "scale");
  reading.scale = scale ? *scale : cert::HardnessScale::hrc;
  reading.tenths = static_cast<int>(q.integer("tenths"));
  if (const auto to = q.maybe_integer("tenths_to")) reading.up_to_tenths = static_cast<int>(*to);
  reading.place = q.text("place");
  if (const auto along = q.maybe_share("along_ppm"))
    reading.from_heel =
        Length::nanometres(blade_length.nanometres() / 1'000'000 * along->millionths());
  if (const auto up = q.maybe_share("up_ppm"); up && height)
    reading.from_edge = Length::nanometres(height->nanometres() / 1'000'000 * up->millionths());
  reading.tester = q.text("tester");
  reading.taken = q.instant("at");
  if (!q.is_null("block_nominal_tenths") && !q.is_null("block_read_tenths"))
    reading.block = cert::BlockCheck{static_cast<int>(q.integer("block_nominal_tenths")),
                                     static_cast<int>(q.integer("block_read_tenths")),
                                     zone.date_of(*reading.taken)};
  reading.on = q.yes("on_coupon") ? cert::MeasuredOn::coupon : cert::MeasuredOn::this_blade;
  reading.after =
      !heat || *reading.taken >= *heat ? cert::AfterHeat::last : cert::AfterHeat::earlier_one;
  reading.superseded = !q.is_null("void_why");
  return reading;
}

}  // namespace

std::vector<cert::BenchEntry> dossier_log(const ShopFile& shop, blade::BladeId blade) {
  const Zone zone = load_settings(shop).zone;
  Query q(shop,
          "SELECT e.*, s.id IS NOT NULL AS superseded, s.entered_at AS superseded_at, s.why AS "
          "superseded_why "
          "FROM log_entry e LEFT JOIN log_entry s ON s.supersedes_id = e.id "
          "WHERE e.blade_id = ? AND e.operation <> 'struck out' ORDER BY e.started_at, e.id");
  q.bind(blade);
  std::vector<cert::BenchEntry> log;
  std::map<std::int64_t, int> number_of;
  std::vector<std::optional<std::int64_t>> took_place_of;
  while (q.next()) {
    log.push_back(read_entry(shop, q, zone, static_cast<int>(log.size()) + 1));
    number_of[q.integer("id")] = log.back().number;
    took_place_of.push_back(q.maybe_integer("supersedes_id"));
  }
  for (std::size_t i = 0; i < log.size(); ++i)
    if (took_place_of[i] && number_of.contains(*took_place_of[i]))
      log[i].corrects = number_of.at(*took_place_of[i]);
  return log;
}

std::vector<cert::HardnessReading> dossier_hardness(const ShopFile& shop, blade::BladeId blade) {
  const Zone zone = load_settings(shop).zone;
  const auto heat = last_heat(dossier_log(shop, blade));
  Query size(shop, "SELECT length_nm, width_nm FROM blade WHERE id = ?");
  size.bind(blade);
  if (!size.next()) return {};
  Query q(shop, "SELECT * FROM hardness_reading WHERE blade_id = ? ORDER BY at, id");
  q.bind(blade);
  std::vector<cert::HardnessReading> readings;
  while (q.next())
    readings.push_back(
        read_reading(q, heat, zone, size.length("length_nm"), size.maybe_length("width_nm")));
  return readings;
}

std::vector<cert::Finding> dossier_findings(const ShopFile& shop, blade::BladeId blade) {
  const Zone zone = load_settings(shop).zone;
  Query q(shop, "SELECT * FROM finding WHERE blade_id = ? ORDER BY number");
  q.bind(blade);
  std::vector<cert::Finding> findings;
  while (q.next()) {
    cert::Finding finding;
    finding.number = static_cast<int>(q.integer("number"));
    finding.kind = kind_of(q.text("kind"));
    finding.what = q.text("words");
    finding.place = q.text("place");
    if (!q.is_null("side"))
      finding.place =
          q.text("side") + (finding.place.empty() ? " side" : " side, ") + finding.place;
    finding.size = q.maybe_length("size_nm");
    finding.seen = q.instant("at");
    finding.affects_blade = q.yes("affects");
    finding.reaches_edge = q.yes("reaches_edge");
    finding.decision = decision_of(q);
    finding.how = q.text("decided_words");
    if (q.text("decision") == "buyer accepts" && !q.is_null("decided_at"))
      finding.buyer_accepted = zone.date_of(q.instant("decided_at"));
    const auto photos = photo_numbers(shop, "finding", q.integer("id"));
    if (!photos.empty()) finding.photo = photos.front();
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace tangmark::db
