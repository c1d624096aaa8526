// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "domain/kiln/plan_tables.h"

namespace tangmark::kiln {

/// A firing inside the search.
struct Batch {
  int kiln = -1;
  PlanKind kind = PlanKind::soak;
  int temp_c = 0;
  std::vector<int> members;  ///< operations; in hardening in the order of the quench
  int not_before = 0;        ///< the search holds it back until here
  bool locked = false;       ///< stays at `start` whatever happens

  // What follows from the members.
  int soak_lo = 0, soak_hi = 0;
  int lowest_c = 0, highest_c = 0;
  int quench = 0, cooling = 0, off_c = 0;
  int loading = 0;  ///< the hands are at the door so long from the start
  bool attended = false;
  bool warms_bath = false;  ///< a member is quenched in a tank that has a limit

  // What follows from the place in the order.
  int before = -1, after = -1;  ///< neighbours on the same kiln
  int pushed = 0;               ///< held back so that a member's next firing can follow in time
  int wanted = 0;               ///< could begin here if nothing else were going on
  bool blocked = false;         ///< begins or ends later than wanted: hands, windows or circuit
  bool placed = false;
  bool reshaped = true;      ///< members, kiln or temperature changed since it was last placed
  int load_end = 0, tail_at = 0;  ///< loading ends; quench or unloading begins
  int start = 0, soak = 0, rest = 0, off = 0, end = 0, heating = 0;
  std::int64_t cost_mc = 0;     ///< energy and hands
};

/// A plan in the making: firings in the order of their starts, each begun as early as its kiln, its
/// blades, the maker's hands and the circuits let it. A change re-times only the firings that it
/// touches, and can be taken back.
///
///     table.begin();
///     table.leave(op); table.join(batch, op);
///     if (table.settle() && table.cost_mc() < before) table.keep(); else table.undo();
///
/// Between `begin` and `settle` times are those of before the change.
class Timetable {
 public:
  explicit Timetable(const PlanTables& tables);

  const PlanTables& tables() const { return tables_; }
  const std::vector<int>& order() const { return order_; }
  const Batch& batch(int b) const { return batches_[static_cast<std::size_t>(b)]; }
  int position(int b) const { return position_[static_cast<std::size_t>(b)]; }
  int batch_of(int op) const { return op_batch_[static_cast<std::size_t>(op)]; }
  int end_of(int op) const { return op_end_[static_cast<std::size_t>(op)]; }
  int last_on(int kiln) const { return last_[static_cast<std::size_t>(kiln)]; }
  int first_on(int kiln) const { return first_[static_cast<std::size_t>(kiln)]; }
  /// Of everything that is in the plan.
  std::int64_t cost_mc() const { return cost_; }
  /// First position whose firing starts at `minute` or later.
  int position_at(int minute) const;

  void begin();
  void keep();
  void undo();

  /// A new, still empty firing at a place in the order. It must be joined before `settle`.
  /// `around` is where it is expected to begin, for finding places by time until it is settled.
  int open(int kiln, PlanKind kind, int position, int around);
  /// Whether the operation suits the firing: kind, temperature, soak, slots, length, one per blade.
  bool suits(int batch, int op) const;
  /// Puts an operation into a firing that it suits; false when it does not, nothing is changed
  /// then.
  bool join(int batch, int op);
  /// Takes an operation out; a firing left empty is dropped.
  void leave(int op);
  /// Moves a firing to a place in the order, maybe on another kiln. False when that kiln cannot
  /// serve.
  bool move(int batch, int kiln, int position);
  void hold(int batch, int not_before);
  bool set_temp(int batch, int temp_c);
  bool swap_quench(int batch, int first, int second);
  /// Fills a firing just opened with its members and fixes it as it was planned.
  void lock(int batch, const PlanFiring& as_planned, const std::vector<int>& members);

  /// Where a new firing of one operation would begin on a kiln after the firing `after` (-1: as the
  /// first), everything else staying. False when it finds no room before `until`.
  struct Probe {
    int start = 0, end = 0, pushes = 0;  ///< pushes: minutes by which the kiln's next must give way
    std::int64_t cost_mc = 0;            ///< energy and hands, with what the kiln's next one saves
  };
  bool probe(int op, int kiln, int after, int from, int until, Probe& found) const;

  /// The plan as the maker reads it.
  FiringPlan plan() const;

  /// Re-times what the change touched. False when a rule cannot be kept, or when the change spreads
  /// far and has already made the plan cost more than `most_mc`: then only `undo` is left.
  bool settle(std::int64_t most_mc, int retries);

 private:
  static constexpr int nobody = -1;
  struct Span {
    int start, end, batch;  ///< nobody's: the hands are at what ran before the plan
  };
  struct Times {
    int start = 0, soak = 0, rest = 0, off = 0, end = 0, heating = 0;
    bool blocked = false;
  };
  struct SavedOp {
    int op, batch, end;
    std::int64_t cost_mc;
  };

  Batch& touch(int b);
  void touch_op(int op);
  void touch_order();
  void insert_in_order(int b, int position);
  void erase_from_order(int b);
  void link(int b);
  void unlink(int b);
  void list_circuits();
  void renumber(int from, int to);
  bool refit(Batch& b);
  bool settle_soak(Batch& b) const;
  bool settle_temp(Batch& b) const;
  void settle_cooling(Batch& b) const;
  void settle_loading(Batch& b) const;
  void mark(int b);
  void drop_spans(int b);
  void add_spans(int b);
  void erase_span(int start, int end, int b);
  void insert_span(Span span);
  void mark_collisions(int start, int end, int position);
  void unmark_all();
  void sort_order();

  std::optional<KilnLeft> left_before(const Batch& b) const;
  int earliest(const Batch& b) const;
  int latest(const Batch& b) const;
  bool find_times(const Batch& b, int position, const std::optional<KilnLeft>& left, int from,
                  int latest, Times& t) const;
  bool fit_tail(const Batch& b, int position, int latest, int& start, Times& t) const;
  bool find_locked_times(int b, Times& t) const;
  int minutes() const { return static_cast<int>(hands_at_.size()); }
  bool hands_free(int from, int length, int but = 0) const;
  int free_from(int from, int length, int position) const;
  int tail_from(int from, int length, int position) const;
  int circuit_free_from(int kiln, int position, int from, int on_at, int off) const;
  void mark_quenches_behind(int position);
  int baths_cool_from(const Batch& b, int position, int start, int quench_at) const;
  bool place(int b);
  bool apply(int b, const Times& t);
  bool apply_members(int b, int position, bool reshaped);
  void free_up(const Batch& b);
  bool chase(int b, int& back);
  std::int64_t cost_of(const Batch& b) const;
  std::int64_t blade_cost(int op, int end) const;

  const PlanTables& tables_;
  bool shape_probed(int op, int kiln) const;

  mutable Batch probed_;
  std::vector<Batch> batches_;
  std::vector<int> free_batches_;
  std::vector<int> order_;
  std::vector<int> position_;
  std::vector<int> first_, last_;  // firings of each kiln
  std::vector<int> op_batch_;
  std::vector<int> op_end_;
  std::vector<std::int64_t> op_cost_;  // of a blade, at its last operation
  std::vector<Span> hands_;  // sorted by start
  std::vector<std::uint16_t> hands_at_;  // how many spans cover each minute: most often none or one
  std::vector<std::vector<int>> on_circuit_;
  std::int64_t cost_ = 0;
  int longest_span_ = 1;
  bool any_locked_ = false;

  // The change under way.
  std::uint64_t change_ = 0;
  std::vector<std::pair<int, Batch>> saved_;
  std::size_t saved_count_ = 0;
  std::vector<std::uint64_t> saved_at_;
  std::vector<SavedOp> saved_ops_;
  std::vector<std::uint64_t> op_saved_at_;
  std::vector<int> saved_order_;
  bool order_touched_ = false;
  bool circuits_touched_ = false;
  std::vector<int> saved_first_, saved_last_;
  std::int64_t saved_cost_ = 0;
  std::vector<int> opened_, dropped_;
  std::vector<char> dirty_;
  std::vector<int> marked_;
  std::vector<std::uint64_t> released_at_;
  int first_dirty_ = 0;
  int freed_from_ = never, freed_to_ = -1;
};

}  // namespace tangmark::kiln
