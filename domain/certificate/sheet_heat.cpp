// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/dossier_words.h"
#include "domain/certificate/heat_words.h"
#include "domain/certificate/phrasing.h"
#include "domain/certificate/sheet_parts.h"

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
    case EvidenceKind::controller_record:
      return "kiln's own record";
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
  switch (heat_kind(entry, manner.zone)) {
    case EvidenceKind::thermocouple_record:
    case EvidenceKind::thermocouple_record_unchecked:
    case EvidenceKind::controller_record:
      return read_in_soak(*heat.record, manner.temperature);
    case EvidenceKind::display_noted:
      return {*heat.read};
    case EvidenceKind::set_point_only:
      return {*heat.set};
    default:
      return {};
  }
}

bool read_by_instrument(EvidenceKind kind) {
  return kind == EvidenceKind::thermocouple_record ||
         kind == EvidenceKind::thermocouple_record_unchecked ||
         kind == EvidenceKind::controller_record;
}

HeatRow heat_row(const BenchEntry& entry, const Manner& manner) {
  HeatRow row{capital(operation_text(entry)), temperatures_of(entry, manner), Figures::each, "",
              evidence_words(entry, manner.zone)};
  if (row.temperatures.size() == 2 && read_by_instrument(heat_kind(entry, manner.zone)))
    row.figures = Figures::lowest_to_highest;
  if (entry.operation == Operation::temper && entry.temper)
    row.step += " " + std::to_string(entry.temper->number);
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
    if (entry->heat && entry->heat->record) {
      RecordRow row{capital(operation_text(*entry)), entry->heat->record->from,
                    entry->heat->record->to, entry->heat->record->curve};
      if (entry->operation == Operation::temper && entry->temper)
        row.step += " " + std::to_string(entry->temper->number);
      rows.push_back(std::move(row));
    }
  return rows;
}

std::string heat_note(const BladeCase& blade) {
  const std::vector<RecordRow> rows = record_rows(blade);
  if (rows.empty()) return {};
  const bool window = std::any_of(rows.begin(), rows.end(), [](const RecordRow& row) {
    return row.curve.window_low && row.curve.window_high;
  });
  return window ? "Grey band on a record: the window set for this heat." : "";
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
  std::string text = dossier.item == dossier.title ? std::string() : capital(dossier.item);
  if (!text.empty()) text += ".";
  std::string list;
  for (const std::string& one : sizes) list += (list.empty() ? "" : ", ") + one;
  if (!list.empty()) text += (text.empty() ? "" : " ") + capital(list) + ".";
  if (size.knife_mass) text += " Knife " + to_text(*size.knife_mass, dossier.manner.mass) + ".";
  return text;
}

}  // namespace tangmark::certificate
