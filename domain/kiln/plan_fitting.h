// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/kiln/plan_chance.h"
#include "domain/kiln/plan_timetable.h"

namespace tangmark::kiln {

/// Finds places for a stretch of a blade's chain in a timetable whose other firings stay where they
/// are: for each operation the firings that it could join and the gaps where one of its own fits,
/// the cheapest way through all of them. What it finds is an estimate; settling the timetable
/// decides.
class ChainFitting {
 public:
  ChainFitting(Timetable& table, PlanChance& chance) : table_(table), chance_(chance) {}

  /// How many in a thousand of the possibilities are overlooked, for variety.
  void overlook(int per_mille) { overlook_ = per_mille; }

  /// The operation does not go back into that firing.
  void avoid(int op, int batch) { avoided_op_ = op, avoided_batch_ = batch; }

  /// Whether a new firing may stand where the kiln's next one has to give way.
  enum class Crowding { never, sometimes };
  void crowd(Crowding crowding) { crowding_ = crowding; }
  /// The chain is not begun before this minute.
  void not_before(int minute) { not_before_ = minute; }

  /// What is reckoned for each minute by which a firing has to give way.
  void price_of_pushing(std::int64_t mc_per_min) { push_mc_per_min_ = mc_per_min; }

  /// Puts the operations first..last (of one blade, in no firing now, the rest of the chain placed)
  /// into the timetable. Call between `begin` and `settle`. False when no way was found; the
  /// timetable is then half changed and must be undone. Ways that cost more than `most_mc` (new
  /// firings, lateness) are not looked at.
  bool fit(int first, int last, std::int64_t most_mc);
  /// What the last fit is estimated to cost.
  std::int64_t cost_mc() const { return cost_mc_; }

 private:
  struct Way {
    int end;             ///< of the blade's own operation
    std::int64_t cost;
    int batch;           ///< joined, or -1 for a new firing
    int kiln, start;     ///< of the new firing
    int from;            ///< way of the operation before
    bool loose;          ///< a new firing, which can wait for the next operation's
    bool held;           ///< a new firing, put off until just before its kiln's next
  };

  void list_joinable(int first, int last);
  void try_join(int op, const Way& before, int index, int from, int until);
  void try_open(int op, const Way& before, int index, int from, int until);
  void try_gap(int op, int kiln, int after, const Way& before, int index, int from, int until);
  void try_late(int op, int kiln, int after, const Way& before, int index, int from, int until,
                const Timetable::Probe& early);
  bool affordable(int op, std::int64_t cost, int end) const;
  void add(Way way);
  bool overlooked() { return overlook_ > 0 && chance_.below(1000) < overlook_; }
  std::pair<int, int> span_after(int op, const Way& way) const;
  void find_ways(int op);
  bool choose(int last);
  std::optional<std::int64_t> closing_cost(int op, const Way& way) const;
  bool put(int first, int last, const std::vector<int>& chosen);

  Timetable& table_;
  PlanChance& chance_;
  int overlook_ = 0;
  int avoided_op_ = -1, avoided_batch_ = -1;
  std::int64_t push_mc_per_min_ = 300;
  int not_before_ = 0;
  Crowding crowding_ = Crowding::sometimes;
  int first_ = 0;
  bool may_push_ = false, to_the_end_ = false, late_too_ = false;
  std::int64_t most_mc_ = 0, cost_mc_ = 0;
  struct Probed {
    int kiln, after, from, until;
    bool found;
    Timetable::Probe probe;
  };
  std::vector<Probed> probed_;
  std::vector<std::vector<Way>> ways_;
  std::vector<Way>* adding_ = nullptr;
  std::vector<std::vector<int>> joinable_;
  std::vector<int> chosen_;
};

}  // namespace tangmark::kiln
