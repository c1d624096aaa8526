// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>
#include <vector>

#include "domain/certificate/dossier.h"

namespace tangmark::certificate {

/// One hardening of the blade. Soak and quench may stand in one line of the log or in two.
struct Hardening {
  const BenchEntry* soak = nullptr;    ///< the line that carries the heat; may be null
  const BenchEntry* quench = nullptr;  ///< the line that carries the quench; may be null
  const BenchEntry* last = nullptr;    ///< the later of its lines; never null
  bool clay = false;                   ///< clay was laid on before it, or noted at the quench
  bool edge = false;
  int tempers = 0;             ///< that count: each after the blade had cooled to room
  int tempers_not_cooled = 0;  ///< begun before the blade had cooled: do not count
  std::vector<const BenchEntry*> temper_entries;
  std::set<int> temper_numbers;
  const BenchEntry* subzero = nullptr;
  int straightened = 0;  ///< after this quench
};

/// The heats of one blade, read from the lines of its log that still count. A view: the log must
/// outlive it.
class HeatHistory {
 public:
  explicit HeatHistory(const std::vector<BenchEntry>& log);

  const std::vector<const BenchEntry*>& live() const { return live_; }
  const std::vector<Hardening>& hardenings() const { return hardenings_; }
  /// The hardening that the blade carries now; nullptr when none is logged.
  const Hardening* current() const { return hardenings_.empty() ? nullptr : &hardenings_.back(); }
  /// The last line that heated the blade enough to change it; nullptr for none.
  const BenchEntry* last_heat() const { return last_heat_; }
  /// Lines that say two different things about one soak or one temper, in words.
  const std::vector<std::string>& two_soaks() const { return two_soaks_; }
  int count(Operation operation) const;
  bool logged(Operation operation) const { return count(operation) > 0; }

 private:
  void take_harden(const BenchEntry& entry, bool clay_waiting);
  void take_temper(const BenchEntry& entry);

  std::vector<const BenchEntry*> live_;
  std::vector<Hardening> hardenings_;
  std::vector<std::string> two_soaks_;
  const BenchEntry* last_heat_ = nullptr;
  bool gathering_ = false;  // the next harden line may still belong to the current hardening
};

/// Whether an operation heats the blade enough to change its hardness.
bool heats_blade(Operation operation);
/// The trade's word: "thermal cycle"; the maker's own word for Operation::other.
std::string operation_text(const BenchEntry& entry);

}  // namespace tangmark::certificate
