// SPDX-License-Identifier: MIT
#include "tests/reference/kiln/plan_exact_model.h"

#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <stdexcept>
#include <tuple>
#include <vector>

#include "tests/reference/kiln/plan_exact_firings.h"

namespace tangmark::kiln {
namespace {

using exact::Firing;
using exact::firings_of;
using exact::Op;

/// How a firing leaves its kiln, or how the plan finds it.
struct Left {
  int kiln, end, off, off_c;
  bool cold;
  auto key() const { return std::tuple(kiln, end, off, off_c, cold); }
};

struct Idling {
  std::size_t from, to;  ///< of the lists of ends and of starts
  int heating;
};

/// Rule R12 word by word: every number of minutes from none on.
std::optional<int> heating(const PlanCase& c, const Left& left, int start, int temp_c) {
  const PlanKiln& kiln = c.kilns[static_cast<std::size_t>(left.kiln)];
  if (left.cold) {
    const int need =
        static_cast<int>(std::ceil((temp_c - c.ambient_c) * 60.0 / kiln.heat_c_per_h - 1e-9));
    return need <= start ? std::optional(need) : std::nullopt;
  }
  const int idle = start - left.off;
  const auto coasts = [&](int minutes) {
    return c.ambient_c +
           (left.off_c - c.ambient_c) * std::exp(-1.0 * minutes / kiln.time_constant_min);
  };
  if (start < left.end || idle < 0 || coasts(idle) > temp_c + 1e-6) return std::nullopt;
  for (int h = 0; h <= idle; ++h)
    if (coasts(idle - h) + kiln.heat_c_per_h * h / 60.0 >= temp_c - 1e-6)
      return h <= start - left.end ? std::optional(h) : std::nullopt;
  return std::nullopt;
}

/// The model in the solver's own text.
class Model {
 public:
  explicit Model(const PlanCase& c) : case_(c), firings_(firings_of(c)) {
    for (int k = 0; k < static_cast<int>(c.kilns.size()); ++k) {
      const auto& state = c.kilns[static_cast<std::size_t>(k)].state;
      found_.push_back(
          state ? Left{k, std::max(0, state->free_at_min), state->off_at_min, state->off_c, false}
                : Left{k, 0, 0, 0, true});
    }
    ends_ = found_;
    std::map<std::tuple<int, int, int, int, bool>, std::size_t> known;
    std::map<std::tuple<int, int, int>, std::size_t> known_starts;
    for (const Firing& f : firings_) {
      const Left left{f.kiln, f.end, f.off, f.off_c, false};
      const auto [end, fresh] = known.emplace(left.key(), ends_.size());
      if (fresh) ends_.push_back(left);
      end_of_.push_back(end->second);
      const auto [start, new_start] =
          known_starts.emplace(std::tuple(f.kiln, f.start, f.temp_c), starts_.size());
      if (new_start) starts_.push_back(&f);
      start_of_.push_back(start->second);
    }
    for (std::size_t e = 0; e < ends_.size(); ++e)
      for (std::size_t s = 0; s < starts_.size(); ++s)
        if (starts_[s]->kiln == ends_[e].kiln)
          if (const auto h = heating(c, ends_[e], starts_[s]->start, starts_[s]->temp_c))
            idlings_.push_back({e, s, *h});
  }

  void write(std::ostream& out) {
    out << "Minimize\n cost:";
    for (std::size_t x = 0; x < firings_.size(); ++x)
      out << " + " << firings_[x].cost << " x" << x << "\n";
    for (std::size_t i = 0; i < idlings_.size(); ++i)
      out << " + "
          << case_.kilns[static_cast<std::size_t>(ends_[idlings_[i].from].kiln)].heat_w *
                 idlings_[i].heating
          << " i" << i << "\n";
    out << "Subject To\n";
    write_once(out);
    write_kilns(out);
    write_minutes(out);
    write_gaps(out);
    write_tanks(out);
    out << "Binary\n";
    for (std::size_t x = 0; x < firings_.size(); ++x) out << " x" << x << "\n";
    out << "End\n";
  }

 private:
  using Row = std::map<std::string, double>;

  static void put(std::ostream& out, const Row& row, const char* sign, double right) {
    bool any = false;
    for (const auto& [name, factor] : row) {
      if (factor == 0) continue;
      out << (factor < 0 ? " - " : " + ") << std::abs(factor) << " " << name << "\n";
      any = true;
    }
    if (any) out << " " << sign << " " << right << "\n";
    else if (right > 0 && sign[0] != '<') out << " x0 >= 2\n";  // it cannot be: there is no plan
  }

  static std::string x(std::size_t firing) { return "x" + std::to_string(firing); }
  static std::string i(std::size_t idling) { return "i" + std::to_string(idling); }

  void write_once(std::ostream& out) const {
    std::map<Op, Row> once;
    for (const PlanBlade& b : case_.blades)
      for (int op = 0; op < static_cast<int>(b.operations.size()); ++op) once[{&b, op}];
    for (std::size_t f = 0; f < firings_.size(); ++f)
      for (const Op& op : firings_[f].ops) once[op][x(f)] = 1;
    for (const auto& [op, row] : once) put(out, row, "=", 1);
  }

  /// What goes into a firing comes from where the kiln was left, and goes on only once.
  void write_kilns(std::ostream& out) const {
    std::vector<Row> starts(starts_.size()), ends(ends_.size());
    for (std::size_t n = 0; n < idlings_.size(); ++n) {
      starts[idlings_[n].to][i(n)] = 1;
      ends[idlings_[n].from][i(n)] = 1;
    }
    for (std::size_t f = 0; f < firings_.size(); ++f) {
      starts[start_of_[f]][x(f)] = -1;
      ends[end_of_[f]][x(f)] = -1;
    }
    for (const Row& row : starts) put(out, row, "=", 0);
    for (std::size_t e = 0; e < ends.size(); ++e)
      put(out, ends[e], "<=", e < found_.size() ? 1 : 0);
  }

  void write_minutes(std::ostream& out) const {
    std::map<int, Row> hands;
    std::map<std::pair<int, int>, Row> taken;
    std::map<std::pair<std::string, int>, Row> on;
    for (std::size_t f = 0; f < firings_.size(); ++f) {
      const Firing& firing = firings_[f];
      const auto& circuit = case_.kilns[static_cast<std::size_t>(firing.kiln)].circuit;
      for (int m = firing.start; m < firing.end; ++m) {
        taken[{firing.kiln, m}][x(f)] = 1;
        if (m < firing.loaded || m >= firing.tail) hands[m][x(f)] = 1;
        if (circuit && m < firing.off) on[{*circuit, m}][x(f)] = 1;
      }
    }
    for (std::size_t n = 0; n < idlings_.size(); ++n) {
      const Firing& next = *starts_[idlings_[n].to];
      const auto& circuit = case_.kilns[static_cast<std::size_t>(next.kiln)].circuit;
      for (int m = next.start - idlings_[n].heating; circuit && m < next.start; ++m)
        on[{*circuit, m}][i(n)] = 1;
    }
    for (const auto& [minute, row] : hands) put(out, row, "<=", 1);
    for (const auto& [minute, row] : taken) put(out, row, "<=", 1);
    for (const auto& [minute, row] : on) put(out, row, "<=", 1);
  }

  /// Begun by a minute only if the operation before had ended in time, and not long before.
  void write_gaps(std::ostream& out) const {
    for (const PlanBlade& b : case_.blades)
      for (int op = 1; op < static_cast<int>(b.operations.size()); ++op) {
        const PlanOperation& facts = b.operations[static_cast<std::size_t>(op)];
        for (int minute = 0; minute <= case_.horizon_min; ++minute) {
          Row soon, late;
          for (std::size_t f = 0; f < firings_.size(); ++f)
            for (std::size_t n = 0; n < firings_[f].ops.size(); ++n) {
              const Op& other = firings_[f].ops[n];
              if (other.blade != &b) continue;
              if (other.index == op && firings_[f].start <= minute) soon[x(f)] = 1;
              if (other.index == op && firings_[f].start >= minute) late[x(f)] = 1;
              if (other.index != op - 1) continue;
              if (firings_[f].ends[n] <= minute - facts.shortest_gap_min) soon[x(f)] = -1;
              if (facts.longest_gap_min && firings_[f].ends[n] >= minute - *facts.longest_gap_min)
                late[x(f)] = -1;
            }
          put(out, soon, "<=", 0);
          if (facts.longest_gap_min) put(out, late, "<=", 0);
        }
      }
  }

  /// Between quenches a tank only cools: below its limit at every minute is below it at each
  /// quench.
  void write_tanks(std::ostream& out) const {
    for (const PlanBath& bath : case_.baths)
      for (int minute = 0; minute <= case_.horizon_min; ++minute) {
        Row row;
        const auto fades = [&](int minutes) {
          return std::exp(-1.0 * minutes / bath.time_constant_min);
        };
        for (std::size_t f = 0; f < firings_.size(); ++f)
          for (std::size_t n = 0; n < firings_[f].ops.size(); ++n) {
            const PlanOperation& op = firings_[f].ops[n].facts();
            if (op.bath == bath.id && firings_[f].ends[n] <= minute)
              row[x(f)] += op.warms_mk / 1000.0 * fades(minute - firings_[f].ends[n]);
          }
        put(out, row, "<=",
            bath.highest_c - bath.rest_c -
                (bath.now_c.value_or(bath.rest_c) - bath.rest_c) * fades(minute));
      }
  }

  const PlanCase& case_;
  std::vector<Firing> firings_;
  std::vector<Left> found_, ends_;
  std::vector<const Firing*> starts_;
  std::vector<std::size_t> end_of_, start_of_;
  std::vector<Idling> idlings_;
};

Settled answer_in(const std::filesystem::path& file) {
  Settled settled;
  std::ifstream answer(file);
  for (std::string line; std::getline(answer, line);) {
    if (line.starts_with("Status:")) {
      const bool optimal = line.find("INTEGER OPTIMAL") != line.npos;
      settled.proven = optimal || line.find("INTEGER EMPTY") != line.npos;
      if (optimal) settled.optimum_mc = 0;
    }
    if (line.starts_with("Objective:") && settled.optimum_mc)
      settled.optimum_mc = std::llround(std::stod(line.substr(line.find('=') + 1)));
  }
  return settled;
}

}  // namespace

bool have_exact_solver() { return std::system("glpsol --version > /dev/null 2>&1") == 0; }

Settled settle_exactly(const PlanCase& c, int seconds) {
  if (c.prices.energy_cents_per_kwh != 60) throw std::logic_error("the energy would be rounded");
  const auto folder =
      std::filesystem::temp_directory_path() / ("tangmark_exact_" + std::to_string(::getpid()));
  std::filesystem::create_directories(folder);
  {
    std::ofstream model(folder / "model.lp");
    model.precision(12);
    Model(c).write(model);
  }
  const std::string call = "glpsol --lp '" + (folder / "model.lp").string() + "' --cuts --tmlim " +
                           std::to_string(seconds) + " -o '" + (folder / "answer").string() +
                           "' > /dev/null 2>&1";
  const Settled settled = std::system(call.c_str()) == 0 ? answer_in(folder / "answer") : Settled{};
  std::filesystem::remove_all(folder);
  return settled;
}

}  // namespace tangmark::kiln
