// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/dossier_words.h"
#include "domain/certificate/heat_words.h"
#include "domain/certificate/phrasing.h"
#include "domain/certificate/sheet_parts.h"
#include "domain/measure/utf8.h"

namespace tangmark::certificate {
namespace {

bool in_heat_table(Operation operation) {
  switch (operation) {
    case Operation::anneal:
    case Operation::stress_relief:
    case Operation::normalize:
    case Operation::thermal_cycle:
    case Operation::harden:
    case Operation::snap_temper:
    case Operation::temper:
      return true;
    default:
      return false;
  }
}

std::string short_words(EvidenceKind kind) {
  switch (kind) {
    case EvidenceKind::thermocouple_record:
    case EvidenceKind::thermocouple_record_unchecked:
      return "recorded";
    case EvidenceKind::thermocouple_record_set_right:
      return "recorded, corrected";
    case EvidenceKind::controller_record:
      return "kiln's own record";
    case EvidenceKind::controller_record_set_right:
      return "kiln's own record, corrected";
    case EvidenceKind::display_noted:
      return "display noted";
    case EvidenceKind::set_point_only:
      return "as set only";
    case EvidenceKind::judged_by_eye:
      return "by eye";
    default:
      return "not recorded";
  }
}

std::string evidence_words(const BenchEntry& entry, const Zone& zone) {
  const Level level = weakest(heat_evidence(entry, zone));
  return std::string(1, letter(level)) + ", " + short_words(heat_kind(entry, zone)) +
         (entry.logged == Logged::later ? ", entered later" : "");
}

std::vector<Temperature> temperatures_of(const BenchEntry& entry, const Manner& manner) {
  if (!entry.heat) return {};
  const Heat& heat = *entry.heat;
  const EvidenceKind kind = heat_kind(entry, manner.zone);
  if (read_by_instrument(kind)) return read_in_soak(*heat.record, manner.temperature);
  if (kind == EvidenceKind::display_noted) return {*heat.read};
  if (kind == EvidenceKind::set_point_only) return {*heat.set};
  return {};
}

// "Temper 2".
std::string step_words(const BenchEntry& entry) {
  std::string words = capital(operation_text(entry));
  if (entry.operation == Operation::temper && entry.temper)
    words += " " + std::to_string(entry.temper->number);
  return words;
}

HeatRow heat_row(const BenchEntry& entry, const Manner& manner) {
  HeatRow row{step_words(entry), temperatures_of(entry, manner), Figures::each, "",
              evidence_words(entry, manner.zone)};
  if (row.temperatures.size() == 2 && read_by_instrument(heat_kind(entry, manner.zone)))
    row.figures = Figures::lowest_to_highest;
  if (entry.heat && entry.heat->hold) row.time = to_text(*entry.heat->hold);
  return row;
}

HeatRow quench_row(const BenchEntry& entry, const Zone& zone) {
  HeatRow row{"Quench, " + entry.quench->medium, {}, Figures::each, "", ""};
  if (entry.quench->bath) row.temperatures.push_back(*entry.quench->bath);
  if (entry.to) row.time = clock_text(*entry.to, zone);
  const Evidence logged = log_evidence(entry);
  row.evidence = std::string(1, letter(logged.level())) + ", " +
                 (entry.logged == Logged::later ? "entered later" : "logged at the time");
  return row;
}

HeatRow cold_row(const BenchEntry& entry) {
  HeatRow row{"Cold step", {}, Figures::each, "",
              std::string(1, letter(log_evidence(entry).level())) + ", logged"};
  if (entry.cold && entry.cold->temperature) row.temperatures.push_back(*entry.cold->temperature);
  if (entry.cold && entry.cold->time) row.time = to_text(*entry.cold->time);
  return row;
}

}  // namespace

std::vector<HeatRow> heat_rows(const BladeCase& blade) {
  const Zone& zone = blade.dossier.manner.zone;
  std::vector<HeatRow> rows;
  const BenchEntry* before = nullptr;
  int repeats = 1;
  for (const BenchEntry* entry : blade.heats.live()) {
    if (entry->operation == Operation::sub_zero) rows.push_back(cold_row(*entry));
    if (!in_heat_table(entry->operation)) continue;
    HeatRow row = heat_row(*entry, blade.dossier.manner);
    // Cycles of one kind in a row share a line, as makers write them: "Normalize x3".
    const bool cycle =
        entry->operation == Operation::normalize || entry->operation == Operation::thermal_cycle;
    const bool alike = cycle && before && before->operation == entry->operation &&
                       rows.back().evidence == row.evidence && rows.back().time == row.time &&
                       rows.back().figures == Figures::each && row.figures == Figures::each;
    if (alike) {
      HeatRow& shared = rows.back();
      shared.step = row.step + " \u00d7" + std::to_string(++repeats);
      shared.temperatures.insert(shared.temperatures.end(), row.temperatures.begin(),
                                 row.temperatures.end());
    } else {
      const bool quench_alone = entry->quench && !(entry->heat && entry->heat->stated());
      if (!quench_alone) rows.push_back(row);
      repeats = 1;
    }
    if (entry->quench) rows.push_back(quench_row(*entry, zone));
    before = entry;
  }
  return rows;
}

std::vector<RecordRow> record_rows(const BladeCase& blade) {
  std::vector<RecordRow> rows;
  for (const BenchEntry* entry : blade.heats.live())
    if (entry->heat && entry->heat->record)
      rows.push_back({step_words(*entry), entry->heat->record->from, entry->heat->record->to,
                      entry->heat->record->curve});
  return rows;
}

std::string heat_note(const BladeCase& blade) {
  std::string note;
  bool window = false;
  for (const BenchEntry* entry : blade.heats.live()) {
    if (!entry->heat || !entry->heat->record) continue;
    const RecordCoverage& record = *entry->heat->record;
    window = window || (record.curve.window_low && record.curve.window_high);
    if (record.set_right)
      note += " " + step_words(*entry) + ": each recorded reading corrected by " +
              step_text(record.set_right->by, blade.dossier.manner.temperature) + ".";
  }
  if (window) return "Grey band on a record: the window set for this heat." + note;
  return note.empty() ? note : note.substr(1);
}

std::vector<HardnessRow> hardness_rows(const BladeCase& blade) {
  std::vector<HardnessRow> rows;
  for (const HardnessReading* reading : readings_that_count(blade))
    rows.push_back({std::string(word_of(reading->scale)), reading->tenths, reading->place,
                    reading->from_heel, reading->from_edge});
  return rows;
}

std::string hardness_note(const BladeCase& blade) {
  const auto readings = readings_that_count(blade);
  if (readings.empty()) return hardness_not_measured(blade).text;
  std::string note = std::string(word_of(readings[0]->scale)) + ", " +
                     counted(static_cast<long long>(readings.size()), "reading", "readings");
  if (readings[0]->taken)
    note += ", " + to_text(blade.dossier.manner.zone.date_of(*readings[0]->taken));
  note += ", after the last heat.";
  if (readings[0]->block)
    note += " Block " + tenths_text(readings[0]->block->block_tenths) + " read " +
            tenths_text(readings[0]->block->read_tenths) + ".";
  const bool measured = blade.dossier.size.edge_length &&
                        std::all_of(readings.begin(), readings.end(),
                                    [](const auto* reading) { return reading->from_heel; });
  if (!measured) note += " The places on the drawing are not measured.";
  return note;
}

std::string knife_sentence(const Dossier& dossier) {
  const LengthUnit unit = dossier.manner.length;
  std::vector<std::string> sizes;
  const BladeSize& size = dossier.size;
  if (size.edge_length) sizes.push_back("edge " + to_text(*size.edge_length, unit));
  if (size.height) sizes.push_back(to_text(*size.height, unit) + " high");
  if (size.thickness) sizes.push_back(to_text(*size.thickness, unit) + " thick");
  if (size.behind_edge) sizes.push_back(to_text(*size.behind_edge, unit) + " behind the edge");
  std::string text;
  if (folded(dossier.item) != folded(dossier.title)) text = capital(dossier.item);
  if (!text.empty()) text += ".";
  std::string list;
  for (const std::string& one : sizes) list += (list.empty() ? "" : ", ") + one;
  if (!list.empty()) text += (text.empty() ? "" : " ") + capital(list) + ".";
  if (size.knife_mass) text += " Knife " + to_text(*size.knife_mass, dossier.manner.mass) + ".";
  return text;
}

}  // namespace tangmark::certificate
