// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_reasons.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <functional>
#include <optional>
#include <set>

#include "domain/kiln/plan_annealing.h"
#include "domain/kiln/plan_check.h"

namespace tangmark::kiln {
namespace {

constexpr std::array<int, 7> steps_min{15, 30, 60, 120, 240, 480, 1440};
constexpr std::size_t most_windows_tried = 40;
constexpr std::size_t most_firings_tried = 40;

class Reasoning {
 public:
  Reasoning(const PlanCase& a_case, const FiringPlan& plan, const std::string& blade,
            const std::function<bool()>& in_time, const PlanWords& words)
      : case_(a_case), plan_(plan), in_time_(in_time), words_(words),
        blade_(*std::find_if(a_case.blades.begin(), a_case.blades.end(),
                             [&](const PlanBlade& b) { return b.id == blade; })) {}

  Unplaced run() const {
    if (auto told = by_itself()) return *told;
    const PlanCase alone = just_this(case_.locked);
    const bool fits_alone = fits(alone);
    if (auto told = by_easing(just_this(plan_.firings), fits_alone)) return *told;
    if (!fits_alone)
      if (auto told = by_easing(alone, fits_alone)) {
        told->change += " Blades already planned have to give way, too.";
        return *told;
      }
    if (!in_time_())
      return told(0, 9, "There was no time left to find out what stops it.",
                  "Plan again and allow more time.");
    if (fits_alone)
      return told(0, 12, "The kilns are taken whenever the blade could go in.",
                  "Take another blade out of the plan, or plan for longer.");
    return told(0, 9, "No order of its firings keeps every rule, even with the kilns free.",
                "Ease several of its limits at once: gaps, hours and the end of the plan.");
  }

 private:
  std::string clock(int minute) const {
    if (words_.minute) return words_.minute(minute);
    return fmt::format("minute {} (day {}, {:02}:{:02} from the plan's start)", minute,
                       minute / 1440 + 1, minute % 1440 / 60, minute % 60);
  }

  std::string degrees(int celsius) const {
    return words_.degrees ? words_.degrees(celsius) : fmt::format("{} C", celsius);
  }

  Unplaced told(std::size_t op, int rule, std::string why, std::string change) const {
    return {blade_.id, static_cast<int>(op), rule, std::move(why), std::move(change)};
  }

  /// What no plan can cure.
  std::optional<Unplaced> by_itself() const {
    for (std::size_t i = 0; i < blade_.operations.size(); ++i) {
      const PlanOperation& op = blade_.operations[i];
      std::vector<const PlanKiln*> long_enough, serve;
      for (const PlanKiln& k : case_.kilns) {
        if (blade_.length_mm <= k.max_length_mm) long_enough.push_back(&k);
        if (blade_.length_mm <= k.max_length_mm && k.lowest_c <= op.target_c &&
            op.target_c <= k.highest_c)
          serve.push_back(&k);
      }
      if (long_enough.empty()) return too_long(i);
      if (serve.empty()) return out_of_reach(i, long_enough);
      if (auto hours = short_hours(i, serve)) return hours;
      if (auto hot = bath_too_small(i)) return hot;
    }
    if (blade_.release_min >= case_.horizon_min)
      return told(0, 10, fmt::format("It is released at {}, after the end of the plan.",
                                     clock(blade_.release_min)),
                  fmt::format("Plan beyond {}, or release it earlier.", clock(blade_.release_min)));
    return std::nullopt;
  }

  Unplaced too_long(std::size_t i) const {
    const auto longest = std::max_element(
        case_.kilns.begin(), case_.kilns.end(),
        [](const PlanKiln& a, const PlanKiln& b) { return a.max_length_mm < b.max_length_mm; });
    if (longest == case_.kilns.end())
      return told(i, 2, "There is no kiln.", "Enter a kiln.");
    return told(i, 2,
                fmt::format("The blade is {} mm long and the longest kiln, {}, takes {} mm.",
                            blade_.length_mm, longest->id, longest->max_length_mm),
                fmt::format("Use a kiln that takes {} mm.", blade_.length_mm));
  }

  Unplaced out_of_reach(std::size_t i, const std::vector<const PlanKiln*>& kilns) const {
    const PlanOperation& op = blade_.operations[i];
    auto distance = [&](const PlanKiln* k) {
      return std::max(k->lowest_c - op.target_c, op.target_c - k->highest_c);
    };
    const PlanKiln* nearest = *std::min_element(
        kilns.begin(), kilns.end(),
        [&](const PlanKiln* a, const PlanKiln* b) { return distance(a) < distance(b); });
    return told(i, 3,
                fmt::format("It needs {} and no kiln long enough for {} mm can be set to that.",
                            degrees(op.target_c), blade_.length_mm),
                fmt::format("Let {} (now {} to {}) go to {}, or use another kiln.", nearest->id,
                            degrees(nearest->lowest_c), degrees(nearest->highest_c),
                            degrees(op.target_c)));
  }

  std::optional<Unplaced> bath_too_small(std::size_t i) const {
    const PlanOperation& op = blade_.operations[i];
    for (const PlanBath& bath : case_.baths) {
      const int warmed_c = bath.rest_c + (op.warms_mk + 999) / 1000;
      if (bath.id != op.bath || bath.rest_c * 1000 + op.warms_mk <= bath.highest_c * 1000) continue;
      return told(i, 16,
                  fmt::format("Its quench alone takes the {} to {}; the limit is {}.", bath.id,
                              degrees(warmed_c), degrees(bath.highest_c)),
                  fmt::format("Use a larger bath, or let the {} go to {}.", bath.id,
                              degrees(warmed_c)));
    }
    return std::nullopt;
  }

  std::optional<Unplaced> short_hours(std::size_t i,
                                      const std::vector<const PlanKiln*>& kilns) const {
    const PlanOperation& op = blade_.operations[i];
    const bool attended = op.kind == PlanKind::harden || !op.unattended;
    int need = case_.horizon_min + 1;
    for (const PlanKiln* k : kilns) {
      int time = std::max(k->load_min, op.kind == PlanKind::harden ? op.quench_min : k->unload_min);
      if (attended) {
        time = k->load_min + op.shortest_soak_min +
               (op.kind == PlanKind::harden ? op.quench_min : k->unload_min);
        if (op.kind == PlanKind::anneal)
          time += std::max(0, op.target_c - op.cool_to_c) * 60 / op.cool_c_per_h;
      }
      need = std::min(need, time);
    }
    const std::pair<int, int>* longest = nullptr;
    for (const auto& w : case_.windows)
      if (!longest || w.second - w.first > longest->second - longest->first) longest = &w;
    if (longest && longest->second - longest->first >= need) return std::nullopt;
    if (!longest)
      return told(i, attended ? 7 : 6, "The maker is never in the shop.", "Enter attended hours.");
    return told(i, attended ? 7 : 6,
                fmt::format("It takes {} min with the maker in the shop; the longest stretch of "
                            "hours is {} min.",
                            need, longest->second - longest->first),
                fmt::format("Extend the hours that begin at {} to {}.", clock(longest->first),
                            clock(enough_hours(longest - case_.windows.data(), need))));
  }

  /// Until when a window of `need` minutes has to go on for the whole chain to find its place.
  int enough_hours(std::ptrdiff_t window, int need) const {
    PlanCase eased = just_this(case_.locked);
    auto& w = eased.windows[static_cast<std::size_t>(window)];
    const int least = w.first + need;
    const int most = window + 1 < std::ssize(case_.windows) ? (&w)[1].first - 1 : case_.horizon_min;
    for (int step : {0, 15, 30, 60, 120, 240, 480}) {
      w.second = least + step;
      if (w.second <= most && fits(eased)) return w.second;
    }
    return least;
  }

  /// A case of this blade and those in `kept`, which stand.
  PlanCase just_this(const std::vector<PlanFiring>& kept) const {
    PlanCase c = case_;
    c.locked = kept;
    std::set<std::string> needed{blade_.id};
    for (const PlanFiring& f : kept)
      for (const PlanMember& m : f.members) needed.insert(m.blade);
    std::erase_if(c.blades, [&](const PlanBlade& b) { return !needed.contains(b.id); });
    return c;
  }

  /// False also when the time is over: then nothing is known.
  bool fits(const PlanCase& c) const {
    if (!in_time_()) return false;
    const PlanTables tables(c);
    PlanAnnealing trial(tables, 1);
    trial.start();
    for (int b : trial.unplaced())
      if (c.blades[static_cast<std::size_t>(b)].id == blade_.id) return false;
    return true;
  }

  static PlanBlade& blade_in(PlanCase& c, const std::string& id) {
    return *std::find_if(c.blades.begin(), c.blades.end(),
                         [&](const PlanBlade& b) { return b.id == id; });
  }

  std::optional<Unplaced> by_easing(const PlanCase& c, bool fits_alone) const {
    const std::string beside = fits_alone ? " beside the blades already planned" : "";
    if (auto change = other_kiln(c, beside)) return change;
    for (int step : steps_min) {
      if (auto change = longer_hours(c, step))
        return told(0, 6, "The shop's hours leave no room for its firings" + beside + ".", *change);
      if (auto change = longer_gap(c, step, beside)) return change;
    }
    for (int step : steps_min) {
      PlanCase eased = c;
      eased.horizon_min += step;
      const int more = eased.windows.empty() ? 0 : eased.horizon_min;
      if (fits(eased))
        return told(0, 8, "Its firings do not end before the end of the plan" + beside + ".",
                    fmt::format("Plan until {} instead of {}.", clock(more),
                                clock(case_.horizon_min)));
    }
    if (auto change = hotter_bath(c, beside)) return change;
    if (auto change = longer_plan(c, beside)) return change;
    return std::nullopt;
  }

  std::optional<Unplaced> hotter_bath(const PlanCase& c, const std::string& beside) const {
    for (std::size_t i = 0; i < blade_.operations.size(); ++i)
      for (std::size_t k = 0; k < c.baths.size(); ++k) {
        if (c.baths[k].id != blade_.operations[i].bath) continue;
        for (int more : {5, 10, 20, 40}) {
          PlanCase eased = c;
          eased.baths[k].highest_c += more;
          if (!fits(eased)) continue;
          return told(i, 16, fmt::format("The {} would get too hot{}.", c.baths[k].id, beside),
                      fmt::format("Use another bath, or let the {} go to {}.", c.baths[k].id,
                                  degrees(eased.baths[k].highest_c)));
        }
      }
    return std::nullopt;
  }

  /// What is planned in one kiln goes into another; or this blade into one whose end of the scale
  /// would serve; or two kilns need not wait for each other.
  std::optional<Unplaced> other_kiln(const PlanCase& c, const std::string& beside) const {
    if (auto change = moved_over(c, beside)) return change;
    if (auto change = set_within_reach(c, beside)) return change;
    for (std::size_t k = 0; k < c.kilns.size(); ++k) {
      if (!c.kilns[k].circuit) continue;
      PlanCase eased = c;
      eased.kilns[k].circuit.reset();
      if (fits(eased))
        return told(0, 14, fmt::format("Circuit {} is taken whenever it could go in{}.",
                                       *c.kilns[k].circuit, beside),
                    fmt::format("Put {} on a circuit of its own.", c.kilns[k].id));
    }
    return std::nullopt;
  }

  static bool holds(const PlanCase& c, const PlanKiln& kiln, const PlanFiring& firing) {
    return kiln.id != firing.kiln && static_cast<int>(firing.members.size()) <= kiln.slots &&
           kiln.lowest_c <= firing.temp_c && firing.temp_c <= kiln.highest_c &&
           std::none_of(firing.members.begin(), firing.members.end(), [&](const PlanMember& m) {
             return std::any_of(c.blades.begin(), c.blades.end(), [&](const PlanBlade& b) {
               return b.id == m.blade && b.length_mm > kiln.max_length_mm;
             });
           });
  }

  std::optional<Unplaced> moved_over(const PlanCase& c, const std::string& beside) const {
    std::set<std::string> all;
    for (const PlanBlade& b : c.blades) all.insert(b.id);
    for (std::size_t f = 0; f < c.locked.size() && f < most_firings_tried; ++f)
      for (const PlanKiln& kiln : c.kilns) {
        const PlanFiring& firing = c.locked[f];
        if (!holds(c, kiln, firing)) continue;
        PlanCase eased = c;
        eased.locked[f].kiln = kiln.id;
        if (!check_plan(eased, {c.name, eased.locked}, all).feasible() || !fits(eased)) continue;
        return told(0, 12, fmt::format("{} is taken when it could go in{}.", firing.kiln, beside),
                    fmt::format("Use {} instead of {} for the firing at {}.", kiln.id, firing.kiln,
                                clock(firing.start_min)));
      }
    return std::nullopt;
  }

  std::optional<Unplaced> set_within_reach(const PlanCase& c, const std::string& beside) const {
    for (std::size_t i = 0; i < blade_.operations.size(); ++i) {
      const PlanOperation& op = blade_.operations[i];
      for (const PlanKiln& kiln : c.kilns) {
        const int set_c =
            std::clamp(op.target_c, kiln.lowest_c, std::max(kiln.lowest_c, kiln.highest_c));
        if (blade_.length_mm > kiln.max_length_mm || set_c == op.target_c || set_c < op.lowest_c ||
            set_c > op.highest_c)
          continue;
        PlanCase eased = c;
        blade_in(eased, blade_.id).operations[i].target_c = set_c;
        if (fits(eased))
          return told(i, 3, fmt::format("No kiln that goes to {} has room for it{}.",
                                        degrees(op.target_c), beside),
                      fmt::format("Use {} for it, set to {}.", kiln.id, degrees(set_c)));
      }
    }
    return std::nullopt;
  }

  std::optional<std::string> longer_hours(const PlanCase& c, int step) const {
    const std::size_t count = std::min(c.windows.size(), most_windows_tried);
    for (std::size_t w = 0; w < count; ++w) {
      PlanCase eased = c;
      const int limit = w + 1 < c.windows.size() ? c.windows[w + 1].first - 1 : c.horizon_min;
      int& end = eased.windows[w].second;
      if (end + step > limit || end <= blade_.release_min) continue;
      end += step;
      if (fits(eased))
        return fmt::format("Extend the hours that end at {} to {}.", clock(end - step), clock(end));
    }
    return std::nullopt;
  }

  std::optional<Unplaced> longer_gap(const PlanCase& c, int step, const std::string& beside) const {
    for (std::size_t i = 0; i < blade_.operations.size(); ++i) {
      const PlanOperation& op = blade_.operations[i];
      if (!op.longest_gap_min) continue;
      PlanCase eased = c;
      *blade_in(eased, blade_.id).operations[i].longest_gap_min += step;
      if (fits(eased))
        return told(i, 11,
                    fmt::format("It cannot go in within {} min of its previous operation{}.",
                                *op.longest_gap_min, beside),
                    fmt::format("Allow {} min.", *op.longest_gap_min + step));
    }
    return std::nullopt;
  }

  /// The shop's week once more after the end of the plan.
  std::optional<Unplaced> longer_plan(const PlanCase& c, const std::string& beside) const {
    PlanCase eased = c;
    const int days = (c.horizon_min + 1439) / 1440;
    for (const auto& w : c.windows)
      if (w.first + days * 1440 > eased.windows.back().second)
        eased.windows.emplace_back(w.first + days * 1440, w.second + days * 1440);
    eased.horizon_min = c.horizon_min + days * 1440;
    if (c.windows.empty() || !fits(eased)) return std::nullopt;
    return told(0, 8, "There is not enough time before the end of the plan" + beside + ".",
                fmt::format("Plan beyond {}.", clock(case_.horizon_min)));
  }

  const PlanCase& case_;
  const FiringPlan& plan_;
  const std::function<bool()>& in_time_;
  const PlanWords& words_;
  const PlanBlade& blade_;
};

}  // namespace

Unplaced reason_unplaced(const PlanCase& a_case, const FiringPlan& plan, const std::string& blade,
                         const std::function<bool()>& in_time, const PlanWords& words) {
  return Reasoning(a_case, plan, blade, in_time, words).run();
}

}  // namespace tangmark::kiln
