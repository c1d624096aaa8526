// SPDX-License-Identifier: MIT
#include "gui/desk/paper/certificate_heat.h"

#include "db/row.h"
#include "db/store/record_store.h"
#include "domain/certificate/dossier_words.h"
#include "domain/certificate/heat_words.h"
#include "domain/kiln/record.h"

namespace tangmark::desk {
namespace {

namespace cert = certificate;

std::string step_words(const cert::BenchEntry& entry) {
  std::string words = entry.operation == cert::Operation::other ? entry.own_word : std::string(word_of(entry.operation));
  if (entry.temper) words += " " + std::to_string(entry.temper->number);
  words[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(words[0])));
  return words;
}

std::string short_evidence(const cert::BenchEntry& entry, const Zone& zone) {
  const auto kind = cert::heat_kind(entry, zone);
  std::string words(1, static_cast<char>(std::toupper(cert::letter(cert::level_of(kind)))));
  switch (kind) {
    case cert::EvidenceKind::thermocouple_record:
    case cert::EvidenceKind::thermocouple_record_unchecked:
    case cert::EvidenceKind::controller_record: return words + ", recorded";
    case cert::EvidenceKind::display_noted: return words + ", display noted";
    case cert::EvidenceKind::set_point_only: return words + ", as set only";
    case cert::EvidenceKind::judged_by_eye: return words + ", by eye";
    default: return words + ", not recorded";
  }
}

}  // namespace

std::vector<reports::HeatLine> heat_lines(const cert::Dossier& dossier) {
  std::vector<reports::HeatLine> lines;
  for (const cert::BenchEntry& entry : dossier.log) {
    if (entry.superseded) continue;
    if (entry.heat) {
      reports::HeatLine line{step_words(entry), {}, "", short_evidence(entry, dossier.manner.zone)};
      if (entry.heat->read) line.temperatures.push_back(*entry.heat->read);
      else if (entry.heat->set) line.temperatures.push_back(*entry.heat->set);
      if (entry.heat->hold) line.time = to_text(*entry.heat->hold);
      lines.push_back(std::move(line));
    }
    if (entry.quench && !entry.quench->medium.empty()) {
      reports::HeatLine line{"Quench, " + entry.quench->medium, {}, "", entry.logged == cert::Logged::later ? "entered later" : "logged"};
      if (entry.quench->bath) line.temperatures.push_back(*entry.quench->bath);
      if (entry.quench->to_bath) line.time = std::to_string(entry.quench->to_bath->count()) + " s to bath";
      lines.push_back(std::move(line));
    }
    if (entry.cold) {
      reports::HeatLine line{"Sub-zero", {}, "", entry.logged == cert::Logged::later ? "entered later" : "logged"};
      if (entry.cold->temperature) line.temperatures.push_back(*entry.cold->temperature);
      if (entry.cold->time) line.time = to_text(*entry.cold->time);
      lines.push_back(std::move(line));
    }
  }
  return lines;
}

std::vector<reports::Curve> recorded_curves(const db::ShopFile& shop, const blade::KeptBlade& blade, const cert::Dossier& dossier) {
  db::Query q(shop,
              "SELECT f.kind, f.set_k1800, b.time_in, b.time_out, a.bytes, r.settings, "
              "r.starts_at, s.low_k1800, s.high_k1800 FROM firing_blade b "
              "JOIN firing f ON f.id = b.firing_id JOIN kiln_record r ON r.firing_id = f.id "
              "JOIN attachment a ON a.id = r.attachment_id LEFT JOIN route_step s ON s.id = "
              "b.route_step_id "
              "WHERE b.blade_id = ? AND f.state = 'done' ORDER BY f.actual_start");
  q.bind(blade.id);
  std::vector<reports::Curve> curves;
  int tempers = 0;
  while (q.next()) {
    const bool hardening = q.text("kind") == "harden";
    const auto record =
        db::read_kept_record(q.text("bytes"), q.text("settings"), dossier.manner.zone);
    if (!record || curves.size() >= 3) continue;
    reports::Curve curve;
    curve.title = hardening ? "Hardening" : q.text("kind") == "anneal" ? "Anneal" : "Temper " + std::to_string(++tempers);
    for (std::size_t i = 0; i < record->rows(); ++i)
      if (!record->readings.empty() && record->readings[0][i])
        curve.points.push_back({q.instant("starts_at") + std::chrono::duration_cast<std::chrono::seconds>(
                                                             std::chrono::milliseconds(record->ms[i] - record->ms.front())),
                                *record->readings[0][i]});
    const Temperature set = q.temperature("set_k1800");
    curve.window = reports::Window{q.maybe_temperature("low_k1800").value_or(set + TemperatureDifference::celsius(-10)),
                                   q.maybe_temperature("high_k1800").value_or(set + TemperatureDifference::celsius(10))};
    if (hardening && !q.is_null("time_out")) curve.marks.push_back({q.instant("time_out"), std::to_string(blade.number) + " out"});
    curves.push_back(std::move(curve));
  }
  return curves;
}

}  // namespace tangmark::desk
