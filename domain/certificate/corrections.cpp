// SPDX-License-Identifier: MIT
#include <algorithm>
#include <functional>

#include "domain/certificate/correction.h"
#include "domain/certificate/dossier.h"
#include "domain/certificate/heat_history.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

// One printed fact of a line of the log, as words; an empty text where there is none.
struct Fact {
  const char* name;
  std::string (*read)(const BenchEntry&, const Manner&);
};

template <class T>
std::string words(const std::optional<T>& value) {
  return value ? to_text(*value) : std::string();
}

std::string degrees(const std::optional<Temperature>& value, const Manner& manner) {
  return value ? to_text(*value, manner.temperature) : std::string();
}

std::string at(const std::optional<Instant>& when, const Manner& manner) {
  return when ? to_text(*when, manner.zone) : std::string();
}

std::string yes_no(bool value) {
  return value ? "yes" : "no";
}

const Fact facts[] = {
    {"what was done", [](const BenchEntry& e, const Manner&) { return operation_text(e); }},
    {"who did it", [](const BenchEntry& e, const Manner&) { return hand_name(e.hand); }},
    {"temperature set",
     [](const BenchEntry& e, const Manner& m) {
       return e.heat ? degrees(e.heat->set, m) : std::string();
     }},
    {"temperature read",
     [](const BenchEntry& e, const Manner& m) {
       return e.heat ? degrees(e.heat->read, m) : std::string();
     }},
    {"hold",
     [](const BenchEntry& e, const Manner&) {
       return e.heat ? words(e.heat->hold) : std::string();
     }},
    {"begin",
     [](const BenchEntry& e, const Manner& m) {
       return heats_blade(e.operation) ? at(e.from, m) : std::string();
     }},
    {"end",
     [](const BenchEntry& e, const Manner& m) {
       return heats_blade(e.operation) ? at(e.to, m) : std::string();
     }},
    {"quench medium",
     [](const BenchEntry& e, const Manner&) {
       return e.quench ? e.quench->medium : std::string();
     }},
    {"bath",
     [](const BenchEntry& e, const Manner& m) {
       return e.quench ? degrees(e.quench->bath, m) : std::string();
     }},
    {"clay",
     [](const BenchEntry& e, const Manner&) {
       return e.quench ? yes_no(e.quench->clay) : std::string();
     }},
    {"edge only",
     [](const BenchEntry& e, const Manner&) {
       return e.quench ? yes_no(e.quench->immersion == Immersion::edge) : std::string();
     }},
    {"number of the temper",
     [](const BenchEntry& e, const Manner&) {
       return e.temper ? std::to_string(e.temper->number) : std::string();
     }},
    {"cooled before it",
     [](const BenchEntry& e, const Manner&) {
       return e.temper && e.temper->cooled_before ? yes_no(*e.temper->cooled_before)
                                                  : std::string();
     }},
    {"cold temperature",
     [](const BenchEntry& e, const Manner& m) {
       return e.cold ? degrees(e.cold->temperature, m) : std::string();
     }},
    {"cold time",
     [](const BenchEntry& e, const Manner&) {
       return e.cold ? words(e.cold->time) : std::string();
     }},
};

std::string line_of(const BenchEntry& entry) {
  std::string text = operation_text(entry);
  if (entry.operation == Operation::temper && entry.temper)
    text += " " + std::to_string(entry.temper->number);
  return text;
}

const BenchEntry* in_place_of(const Dossier& dossier, const BenchEntry& superseded) {
  for (const BenchEntry& entry : dossier.log)
    if (entry.corrects == superseded.number) return &entry;
  return nullptr;
}

}  // namespace

std::vector<Correction> log_corrections(const Dossier& dossier) {
  std::vector<Correction> all;
  for (const BenchEntry& was : dossier.log) {
    if (!was.superseded || !was.superseded_on) continue;
    const BenchEntry* now = in_place_of(dossier, was);
    if (!now) {
      all.push_back({line_of(was), "", true, *was.superseded_on, was.superseded_why});
      continue;
    }
    for (const Fact& fact : facts) {
      const std::string before = fact.read(was, dossier.manner);
      if (before == fact.read(*now, dossier.manner)) continue;
      all.push_back({line_of(*now) + ", " + fact.name, before, false, *was.superseded_on,
                     was.superseded_why});
    }
  }
  return all;
}

std::string correction_text(const Correction& correction) {
  const std::string day = to_text(correction.day);
  const std::string first = correction.was.empty() ? ": first left out."
                                                   : ": first written as " + correction.was + ".";
  std::string text = correction.struck_out ? "Struck out on " + day + ": " + correction.of + "."
                                           : "Corrected on " + day + ", " + correction.of + first;
  if (!correction.why.empty()) text += " Reason: " + correction.why + ".";
  return text;
}

}  // namespace tangmark::certificate
