// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_problems.h"

#include <fmt/format.h>

#include <set>

#include "domain/kiln/plan_check.h"

namespace tangmark::kiln {
namespace {

class Sifter {
 public:
  explicit Sifter(const PlanCase& a_case) : case_(a_case) {}

  Problems run() {
    judge_windows();
    for (std::size_t k = 0; k < case_.kilns.size(); ++k) judge_kiln(k);
    for (std::size_t i = 0; i < case_.baths.size(); ++i) judge_bath(i);
    for (std::size_t i = 0; i < case_.hands_taken.size(); ++i)
      if (case_.hands_taken[i].first >= case_.hands_taken[i].second)
        bad(fmt::format("hands_taken[{}]", i), "ends before it begins.", "Write [from, to].");
    for (std::size_t b = 0; b < case_.blades.size(); ++b) judge_blade(b);
    if (problems_.empty()) judge_locked();
    return std::move(problems_);
  }

 private:
  void bad(std::string field, std::string_view words, std::string remedy = "") {
    std::string sentence = fmt::format("{} {}", field, words);
    problems_.push_back({std::move(field), std::move(sentence), std::move(remedy)});
  }

  void judge_windows() {
    for (std::size_t i = 0; i < case_.windows.size(); ++i) {
      const auto& w = case_.windows[i];
      const std::string path = fmt::format("windows[{}]", i);
      if (w.first >= w.second) bad(path, "ends before it begins.", "Write [start, end].");
      if (i > 0 && w.first <= case_.windows[i - 1].second)
        bad(path, "begins before the one ahead of it has ended, or right at its end.",
            "Put the windows in order and join those that touch.");
    }
  }

  void judge_kiln(std::size_t k) {
    const PlanKiln& kiln = case_.kilns[k];
    const std::string path = fmt::format("kilns[{}]", k);
    if (kiln.id.empty()) bad(path + ".id", "is empty.", "Give the kiln a name.");
    else if (!kilns_.insert(kiln.id).second) bad(path + ".id", "is used twice.", "Rename one.");
    if (kiln.lowest_c > kiln.highest_c) bad(path + ".t_min", "is above t_max.");
    if (kiln.state && kiln.state->free_at_min < kiln.state->off_at_min)
      bad(path + ".kiln_state.free_at", "is before off_at.");
    if (kiln.state && kiln.state->off_c < case_.ambient_c)
      bad(path + ".kiln_state.off_temp", "is below the room.");
  }

  void judge_bath(std::size_t i) {
    const PlanBath& bath = case_.baths[i];
    const std::string path = fmt::format("baths[{}]", i);
    if (bath.id.empty()) bad(path + ".id", "is empty.", "Give the tank a name.");
    else if (!baths_.insert(bath.id).second) bad(path + ".id", "is used twice.", "Rename one.");
    if (bath.highest_c < bath.rest_c) bad(path + ".t_max", "is below rest_temp.");
    if (bath.now_c && *bath.now_c < bath.rest_c) bad(path + ".now_temp", "is below rest_temp.");
  }

  void judge_blade(std::size_t b) {
    const PlanBlade& blade = case_.blades[b];
    const std::string path = fmt::format("blades[{}]", b);
    if (blade.id.empty()) bad(path + ".id", "is empty.", "Give the blade its number.");
    else if (!blades_.insert(blade.id).second) bad(path + ".id", "is used twice.", "Rename one.");
    if (blade.operations.empty()) bad(path + ".ops", "is empty.", "Leave the blade out.");
    for (std::size_t i = 0; i < blade.operations.size(); ++i)
      judge_operation(blade.operations[i], fmt::format("{}.ops[{}]", path, i));
  }

  void judge_operation(const PlanOperation& op, const std::string& path) {
    if (op.target_c < op.lowest_c) bad(path + ".t_lo", "is above the target.");
    if (op.target_c > op.highest_c) bad(path + ".t_hi", "is below the target.");
    if (op.target_c < case_.ambient_c)
      bad(path + ".temp", "is below the room, no kiln cools to it.");
    if (op.shortest_soak_min > op.longest_soak_min) bad(path + ".soak_min", "is above soak_max.");
    if (op.longest_gap_min && op.shortest_gap_min > *op.longest_gap_min)
      bad(path + ".gap_min", "is above gap_max.");
    if (!op.bath.empty() && !baths_.contains(op.bath))
      bad(path + ".bath", fmt::format("names {}, which is no tank of the case.", op.bath),
          "Add it to baths, or leave the field away.");
    if (op.kind == PlanKind::anneal && op.cool_to_c < case_.ambient_c)
      bad(path + ".cool_to", "is below the room, no kiln cools to it.");
  }

  void judge_locked() {
    if (case_.locked.empty()) return;
    const PlanCheck check = check_plan(case_, {case_.name, case_.locked}, blades_);
    for (const PlanViolation& v : check.violations)
      bad("locked", fmt::format("firings break rule R{}: {}", v.rule, v.sentence),
          "Unlock one of them.");
  }

  const PlanCase& case_;
  std::set<std::string> kilns_;
  std::set<std::string> baths_;
  std::set<std::string> blades_;
  Problems problems_;
};

}  // namespace

Problems problems_of(const PlanCase& a_case) { return Sifter(a_case).run(); }

}  // namespace tangmark::kiln
