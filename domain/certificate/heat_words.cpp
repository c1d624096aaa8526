// SPDX-License-Identifier: MIT
#include "domain/certificate/heat_words.h"

#include <cmath>

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

bool covers(const RecordCoverage& record, const BenchEntry& entry) {
  return entry.from && entry.to && record.from <= *entry.from && record.to >= *entry.to &&
         !record.gap_in_soak;
}

bool checked_in_time(const RecordCoverage& record, const Zone& zone) {
  if (!record.kiln_checked) return false;
  const date::sys_days fired{zone.date_of(record.from)};
  const date::sys_days checked{*record.kiln_checked};
  return checked <= fired && fired - checked <= date::days(kiln_check_days);
}

Temperature whole(Temperature read, TemperatureUnit unit, double (*towards)(double)) {
  if (unit == TemperatureUnit::fahrenheit)
    return Temperature::fahrenheit(static_cast<std::int64_t>(towards(read.in_fahrenheit())));
  return Temperature::celsius(static_cast<std::int64_t>(towards(read.in_celsius())));
}

double down(double degrees) {
  return std::floor(degrees + 1e-9);
}
double up(double degrees) {
  return std::ceil(degrees - 1e-9);
}

std::string range_text(const RecordCoverage& record, const Manner& manner) {
  const TemperatureUnit unit = manner.temperature;
  const std::vector<Temperature> read = read_in_soak(record, unit);
  if (read.empty()) return "no figure";
  if (read.size() == 2) return figure(read[0], unit) + " to " + to_text(read[1], unit);
  const bool soaked = record.soak_low || record.soak_high;
  return (soaked ? "" : "a peak of ") + to_text(read[0], unit);
}

// ", each reading corrected by -4 °C on Wed 25 Nov 2026 (check thermocouple of that day)".
std::string set_right_text(const RecordCoverage& record, const Manner& manner) {
  if (!record.set_right) return {};
  const SetRight& right = *record.set_right;
  std::string text = ", each reading corrected by " + step_text(right.by, manner.temperature) +
                     " on " + to_text(right.day);
  return right.why.empty() ? text : text + " (" + right.why + ")";
}

}  // namespace

bool read_by_instrument(EvidenceKind kind) {
  switch (kind) {
    case EvidenceKind::thermocouple_record:
    case EvidenceKind::thermocouple_record_unchecked:
    case EvidenceKind::thermocouple_record_set_right:
    case EvidenceKind::controller_record:
    case EvidenceKind::controller_record_set_right:
      return true;
    default:
      return false;
  }
}

// A difference is counted from zero of the unit, so that it is as exact as a temperature.
std::string step_text(TemperatureDifference by, TemperatureUnit unit) {
  const Temperature zero = unit == TemperatureUnit::fahrenheit ? Temperature::fahrenheit(0)
                                                               : Temperature::celsius(0);
  return (by.counts() > 0 ? "+" : "") + to_text(zero + by, unit);
}

std::vector<Temperature> read_in_soak(const RecordCoverage& record, TemperatureUnit unit) {
  const auto& low = record.soak_low ? record.soak_low : record.soak_high;
  const auto& high = record.soak_high ? record.soak_high : record.soak_low;
  if (!low) {
    if (!record.peak) return {};
    return {whole(*record.peak, unit, up)};
  }
  const Temperature from = whole(*low, unit, down);
  const Temperature to = whole(*high, unit, up);
  if (from == to) return {from};
  return {from, to};
}

EvidenceKind heat_kind(const BenchEntry& entry, const Zone& zone) {
  if (!entry.heat) return EvidenceKind::heat_not_recorded;
  const Heat& heat = *entry.heat;
  if (heat.record && covers(*heat.record, entry)) {
    const bool right = heat.record->set_right.has_value();
    if (heat.record->instrument == Instrument::kiln_controller)
      return right ? EvidenceKind::controller_record_set_right : EvidenceKind::controller_record;
    if (right) return EvidenceKind::thermocouple_record_set_right;
    return checked_in_time(*heat.record, zone) ? EvidenceKind::thermocouple_record
                                               : EvidenceKind::thermocouple_record_unchecked;
  }
  if (heat.read) return EvidenceKind::display_noted;
  if (heat.set) return EvidenceKind::set_point_only;
  return heat.eye == Eye::not_used ? EvidenceKind::heat_not_recorded : EvidenceKind::judged_by_eye;
}

std::string heat_text(const BenchEntry& entry, const Manner& manner) {
  switch (heat_kind(entry, manner.zone)) {
    case EvidenceKind::thermocouple_record:
    case EvidenceKind::thermocouple_record_unchecked:
    case EvidenceKind::thermocouple_record_set_right:
      return "thermocouple read " + range_text(*entry.heat->record, manner) + ", as recorded" +
             set_right_text(*entry.heat->record, manner);
    case EvidenceKind::controller_record:
    case EvidenceKind::controller_record_set_right:
      return "kiln's own record read " + range_text(*entry.heat->record, manner) +
             ", as recorded" + set_right_text(*entry.heat->record, manner);
    case EvidenceKind::display_noted:
      return "kiln display read " + to_text(*entry.heat->read, manner.temperature) + ", as noted";
    case EvidenceKind::set_point_only:
      return "kiln set to " + to_text(*entry.heat->set, manner.temperature) +
             ", as set, not recorded";
    case EvidenceKind::judged_by_eye:
      return entry.heat->eye == Eye::magnet ? "heat judged by magnet" : "heat judged by colour";
    default:
      return "heat not recorded";
  }
}

std::vector<Evidence> heat_evidence(const BenchEntry& entry, const Zone& zone) {
  std::vector<Evidence> evidence = {
      {heat_kind(entry, zone), operation_text(entry) + ", line " + std::to_string(entry.number)}};
  if (entry.logged == Logged::later) evidence.push_back(log_evidence(entry));
  return evidence;
}

}  // namespace tangmark::certificate
