// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <functional>

#include "sample_blades.h"

namespace tangmark::certificate::sample {

/// The blades whose records are changed, by the names that blade_called knows.
inline constexpr std::array bases = {"bar",       "hamon",     "pattern", "bought",
                                     "laminated", "wootz",     "banded",  "smelted",
                                     "image",     "stainless", "spring"};

/// Changes of a record. Each answers whether the record had what it takes away.
inline bool drop_if(Dossier& d, Operation operation) {
  const std::size_t before = d.log.size();
  drop(d, operation);
  return d.log.size() < before;
}

inline bool drop_finding(Dossier& d, FindingKind kind) {
  return std::erase_if(d.findings, [&](const Finding& f) { return f.kind == kind; }) > 0;
}

inline bool supersede_finding(Dossier& d, FindingKind kind) {
  bool any = false;
  for (Finding& f : d.findings)
    if (f.kind == kind) any = f.superseded = true;
  return any;
}

inline bool supersede(Dossier& d, Operation operation) {
  bool any = false;
  for (BenchEntry& entry : d.log)
    if (entry.operation == operation) any = entry.superseded = true;
  return any;
}

template <class Change>
std::function<bool(Dossier&)> each_reading(Change change) {
  return [change](Dossier& d) {
    for (HardnessReading& reading : d.hardness) change(reading);
    return !d.hardness.empty();
  };
}

template <class Change>
std::function<bool(Dossier&)> each_lot(Change change) {
  return [change](Dossier& d) {
    bool any = false;
    for (Lot& lot : d.steel.lots) any = change(lot) || any;
    return any;
  };
}

template <class Change>
std::function<bool(Dossier&)> of_crucible(Change change) {
  return [change](Dossier& d) {
    if (d.steel.melts.empty() || d.steel.melts[0].kind != MeltKind::crucible) return false;
    change(d.steel.melts[0]);
    return true;
  };
}

}  // namespace tangmark::certificate::sample
