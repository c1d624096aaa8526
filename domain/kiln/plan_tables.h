// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <limits>
#include <map>
#include <optional>
#include <vector>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_heat.h"

namespace tangmark::kiln {

inline constexpr int never = std::numeric_limits<int>::max() / 4;

/// An operation as the search sees it: numbers only, its neighbours in the chain by index.
struct OpFacts {
  int blade = 0;
  int index = 0;
  PlanKind kind = PlanKind::soak;
  int target_c = 0, lowest_c = 0, highest_c = 0;
  int shortest_soak = 0, longest_soak = 0;
  int quench = 0;
  bool attended = false;
  int cool_c_per_h = 0, cool_to_c = 0;
  int gap_min = 0, gap_max = never;
  int before = -1, after = -1;  ///< operations of the same blade, -1 for none
  int bath = -1;                ///< by its place in the case, -1 for none
  int warms_mk = 0;
};

struct BladeFacts {
  int first_op = 0, ops = 0;
  int release = 0, due = 0;
  std::int64_t late_mc = 0;
};

/// A kiln with its cooling curve tabulated by the minute.
struct KilnFacts {
  PlanKiln kiln;
  int circuit = -1;                     ///< index of its circuit, -1 for none
  std::optional<KilnLeft> left;         ///< from before the plan
  const std::vector<double>* coasting;  ///< exp(-minute / time constant)
};

/// A case turned into tables that answer the search's questions quickly. Holds no plan, but
/// remembers answers: one search, one thread.
class PlanTables {
 public:
  explicit PlanTables(const PlanCase& a_case);
  PlanTables(const PlanTables&) = delete;  // kilns point into the shared cooling curves
  PlanTables& operator=(const PlanTables&) = delete;

  const PlanCase& the_case() const { return case_; }
  const std::vector<OpFacts>& ops() const { return ops_; }
  const OpFacts& op(int i) const { return ops_[static_cast<std::size_t>(i)]; }
  const std::vector<BladeFacts>& blades() const { return blades_; }
  const BladeFacts& blade(int i) const { return blades_[static_cast<std::size_t>(i)]; }
  int kilns() const { return static_cast<int>(kilns_.size()); }
  const KilnFacts& kiln(int k) const { return kilns_[static_cast<std::size_t>(k)]; }
  int circuits() const { return circuits_; }
  int horizon() const { return case_.horizon_min; }
  int op_of(int blade, int index) const { return this->blade(blade).first_op + index; }

  /// Whether a kiln is long enough and reaches a temperature that serves the operation.
  bool serves(int kiln, int op) const {
    return serves_[static_cast<std::size_t>(op) * kilns_.size() + static_cast<std::size_t>(kiln)];
  }

  /// No firing of the operation alone costs less on that kiln: hands and holding, no heating.
  std::int64_t least_firing_mc(int kiln, int op) const {
    return least_firing_[static_cast<std::size_t>(op) * kilns_.size() +
                         static_cast<std::size_t>(kiln)];
  }
  /// No firing of the operation is shorter on that kiln.
  int least_length(int kiln, int op) const {
    return least_length_[static_cast<std::size_t>(op) * kilns_.size() +
                         static_cast<std::size_t>(kiln)];
  }
  /// Minutes at least from the end of the operation to that of its blade.
  int least_chain(int op) const { return least_after_[static_cast<std::size_t>(op)]; }
  /// What a blade costs at least that ends this operation at `end`: lateness and time in work.
  std::int64_t least_blade_mc(int op, int end) const;

  /// The latest end of a blade at which it costs no more than `most_mc`.
  int latest_end(int blade, std::int64_t most_mc) const;

  /// Earliest minute from `from` on at which [minute, minute + length) lies in one window.
  int in_window(int from, int length) const;
  /// The latest minute up to `until` at which [minute, minute + length) lies in one window; -1 for
  /// none.
  int latest_in_window(int until, int length) const;
  /// End of the window that holds `minute`.
  int window_end(int minute) const;

  /// Minutes of heating as heating_min in plan_heat.h, with the same figures; -1 for none.
  int heating(int kiln, const std::optional<KilnLeft>& left, int start, int temp_c) const;
  /// The earliest start at which the kiln can be at `temp_c`.
  int ready(int kiln, const std::optional<KilnLeft>& left, int temp_c) const;

 private:
  /// What was found out about going from one temperature to another on one kiln: minutes of heating
  /// by idle minutes, and the shortest gap when the kiln is emptied as it is switched off.
  struct Passage {
    std::vector<int> heating;
    /// After a long idling: the last idle minute at which one minute less of heating will do, and
    /// so on downwards; beyond the first of them the kiln is as good as cold.
    std::vector<int> colder_after;
    int cold = unknown;
    int ready = unknown;
  };
  static constexpr int unknown = -2;

  double coasted(const KilnFacts& k, const KilnLeft& left, int minutes) const;
  int found_heating(const KilnFacts& k, const KilnLeft& left, int idle, int temp_c) const;
  int long_idle_heating(const KilnFacts& k, Passage& known, const KilnLeft& left, int idle,
                        int temp_c) const;
  int found_ready(int kiln, const KilnLeft& left, int temp_c) const;
  Passage& passage(int kiln, int off_c, int temp_c) const;
  void number_temperatures();
  void add_blades();
  void add_kilns();
  void add_windows();
  void add_least_costs();

  const PlanCase& case_;
  std::vector<OpFacts> ops_;
  std::vector<BladeFacts> blades_;
  std::vector<KilnFacts> kilns_;
  std::map<int, std::vector<double>> coasting_;
  std::vector<char> serves_;
  std::vector<std::int64_t> least_firing_;
  std::vector<int> least_length_;
  std::vector<int> least_after_;  // minutes from the end of an operation to that of its blade
  std::vector<int> temperature_number_;  // by degrees above coldest_, -1 for those never used
  int coldest_ = 0, temperatures_ = 0;
  mutable std::vector<Passage> passages_;
  std::vector<int> window_at_;  // first window that ends after each 64th minute
  int circuits_ = 0;
};

}  // namespace tangmark::kiln
