// SPDX-License-Identifier: MIT
#include "domain/kiln/kiln_fit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <limits>

namespace tangmark::kiln {
namespace {

constexpr double room_c = 20;
constexpr double over_min = 5;         // slopes are taken over so long, loggers being noisy
constexpr double least_rise_c = 100;   // a stretch of heating
constexpr double least_fall_c = 60;    // a stretch of free cooling
constexpr double near_room_c =
    40;  // below that above the room a curve tells the room, not the kiln

/// A stretch of samples, both ends included.
struct Stretch {
  std::size_t first = 0, last = 0;
};

/// Change per minute over the next minutes, NaN at the end of a record.
std::vector<double> slopes(const FitRun& run) {
  std::vector<double> all(run.minutes.size(), std::numeric_limits<double>::quiet_NaN());
  for (std::size_t i = 0, j = 0; i < all.size(); ++i) {
    while (j < all.size() && run.minutes[j] < run.minutes[i] + over_min) ++j;
    if (j == all.size()) break;
    all[i] = (run.celsius[j] - run.celsius[i]) / (run.minutes[j] - run.minutes[i]);
  }
  return all;
}

/// The longest stretch, by change of temperature, in which `belongs` holds for the slope.
template <class Belongs>
std::optional<Stretch> longest(const FitRun& run, const std::vector<double>& slope,
                               double least_c, Belongs belongs) {
  std::optional<Stretch> best;
  double most = least_c;
  for (std::size_t i = 0; i < slope.size();) {
    std::size_t j = i;
    while (j < slope.size() && belongs(slope[j], j)) ++j;
    if (j > i + 2) {
      const double change = std::abs(run.celsius[j - 1] - run.celsius[i]);
      if (change >= most) {
        most = change;
        best = Stretch{i, j - 1};
      }
    }
    i = std::max(j, i + 1);
  }
  return best;
}

/// At full power: the slope stays near the steepest that is held for long.
std::optional<Stretch> heating_of(const FitRun& run, const std::vector<double>& slope) {
  std::vector<double> rising;
  for (double s : slope)
    if (s > 0.5) rising.push_back(s);
  if (rising.empty()) return std::nullopt;
  const auto middle = rising.begin() + static_cast<std::ptrdiff_t>(rising.size() / 2);
  std::nth_element(rising.begin(), middle, rising.end());
  const double usual = *middle;
  return longest(run, slope, least_rise_c,
                 [usual](double s, std::size_t) { return s > 0.6 * usual; });
}

/// Switched off: falling, after the last of the heating, well above the room.
std::optional<Stretch> cooling_of(const FitRun& run, const std::vector<double>& slope) {
  if (!run.cools_by_itself) return std::nullopt;
  auto found = longest(run, slope, least_fall_c, [&run](double s, std::size_t i) {
    return s < -0.05 && run.celsius[i] > room_c + near_room_c;
  });
  // Slopes look ahead: the first of them still reach back into the soak.
  if (!found) return found;
  const double began = run.minutes[found->first];
  while (found->first + 2 < found->last &&
         run.minutes[found->first] < began + over_min)
    ++found->first;
  return found;
}

struct Line {
  Eigen::VectorXd solution;
  double error = 0;
};

Line least_squares(const Eigen::MatrixXd& a, const Eigen::VectorXd& b) {
  Line line;
  line.solution = a.colPivHouseholderQr().solve(b);
  line.error = std::sqrt((a * line.solution - b).squaredNorm() / static_cast<double>(b.size()));
  return line;
}

class Fitting {
 public:
  explicit Fitting(const std::vector<FitRun>& runs) : runs_(runs) {
    for (const FitRun& run : runs) {
      const auto slope = slopes(run);
      heating_.push_back(heating_of(run, slope));
      cooling_.push_back(cooling_of(run, slope));
      fit_.curves.emplace_back(run.minutes.size(), std::numeric_limits<double>::quiet_NaN());
    }
  }

  KilnFit run() {
    fit_heating();
    fit_cooling();
    fit_power();
    return std::move(fit_);
  }

 private:
  static Eigen::Index index(std::size_t i) { return static_cast<Eigen::Index>(i); }

  std::vector<std::size_t> with(const std::vector<std::optional<Stretch>>& stretches,
                                Eigen::Index& samples) const {
    std::vector<std::size_t> used;
    samples = 0;
    for (std::size_t r = 0; r < runs_.size(); ++r)
      if (stretches[r]) {
        used.push_back(r);
        samples += index(stretches[r]->last - stretches[r]->first + 1);
      }
    return used;
  }

  /// One slope for all, less what each blade takes, and a start of its own for each record.
  void fit_heating() {
    Eigen::Index samples = 0;
    const auto used = with(heating_, samples);
    if (used.empty()) return;
    bool varied = false;
    for (std::size_t r : used) varied = varied || runs_[r].blades != runs_[used.front()].blades;
    const Eigen::Index first_start = varied ? 2 : 1;
    Eigen::MatrixXd a = Eigen::MatrixXd::Zero(samples, first_start + index(used.size()));
    Eigen::VectorXd b(samples);
    Eigen::Index row = 0;
    for (std::size_t u = 0; u < used.size(); ++u) {
      const FitRun& run = runs_[used[u]];
      const Stretch& s = *heating_[used[u]];
      for (std::size_t i = s.first; i <= s.last; ++i, ++row) {
        const double passed = run.minutes[i] - run.minutes[s.first];
        a(row, 0) = passed;
        if (varied) a(row, 1) = -passed * run.blades;
        a(row, first_start + index(u)) = 1;
        b(row) = run.celsius[i];
      }
    }
    const Line line = least_squares(a, b);
    fit_.heat_c_per_h =
        FittedValue{line.solution(0) * 60, line.error, static_cast<int>(used.size())};
    if (varied) fit_.load_c_per_h = line.solution(1) * 60;
    draw(used, heating_, a * line.solution);
  }

  /// ln(T - room) falls along a straight line; weighed with T - room, so that what is least is, to
  /// first order, the square of the error in temperature and not that in its logarithm.
  void fit_cooling() {
    Eigen::Index samples = 0;
    const auto used = with(cooling_, samples);
    if (used.empty()) return;
    Eigen::MatrixXd a = Eigen::MatrixXd::Zero(samples, 1 + index(used.size()));
    Eigen::VectorXd b(samples), weight(samples), measured(samples);
    Eigen::Index row = 0;
    for (std::size_t u = 0; u < used.size(); ++u) {
      const FitRun& run = runs_[used[u]];
      const Stretch& s = *cooling_[used[u]];
      for (std::size_t i = s.first; i <= s.last; ++i, ++row) {
        weight(row) = run.celsius[i] - room_c;
        measured(row) = run.celsius[i];
        a(row, 0) = -(run.minutes[i] - run.minutes[s.first]) * weight(row);
        a(row, 1 + index(u)) = weight(row);
        b(row) = std::log(weight(row)) * weight(row);
      }
    }
    const Line line = least_squares(a, b);
    if (line.solution(0) <= 0) return;
    const Eigen::VectorXd logs = (a * line.solution).cwiseQuotient(weight);
    const Eigen::VectorXd curve = (logs.array().exp() + room_c).matrix();
    const double error = std::sqrt((curve - measured).squaredNorm() / static_cast<double>(samples));
    fit_.tau_min = FittedValue{1 / line.solution(0), error, static_cast<int>(used.size())};
    draw(used, cooling_, curve);
  }

  /// metered = heat_w x minutes of heating + hold x degree-minutes of holding.
  void fit_power() {
    std::vector<std::size_t> used;
    for (std::size_t r = 0; r < runs_.size(); ++r)
      if (runs_[r].metered_watt_min && heating_[r]) used.push_back(r);
    if (used.size() < 2) return;
    Eigen::MatrixXd a(index(used.size()), 2);
    Eigen::VectorXd b(index(used.size()));
    for (std::size_t u = 0; u < used.size(); ++u) {
      const FitRun& run = runs_[used[u]];
      const double hot_at = at_heat(used[u]);
      a(index(u), 0) = hot_at - run.minutes[heating_[used[u]]->first];
      a(index(u), 1) = degree_minutes(used[u], hot_at) / 1000;
      b(index(u)) = *run.metered_watt_min;
    }
    if (a.colPivHouseholderQr().rank() < 2)
      return;  // all firings alike: nothing tells the two apart
    const Line line = least_squares(a, b);
    if (line.solution(0) <= 0 || line.solution(1) <= 0) return;
    const auto runs = static_cast<int>(used.size());
    fit_.heat_w = FittedValue{line.solution(0), line.error / 60, runs};
    fit_.hold_mw_per_c = FittedValue{line.solution(1), line.error / 60, runs};
  }

  /// When the line of heating reaches the temperature that it ended at; the slopes end before.
  double at_heat(std::size_t r) const {
    const FitRun& run = runs_[r];
    const Stretch& s = *heating_[r];
    double top = run.celsius[s.last];
    for (std::size_t i = s.last; i < run.minutes.size(); ++i)
      if (run.minutes[i] <= run.minutes[s.last] + over_min) top = std::max(top, run.celsius[i]);
    const double rate = (run.celsius[s.last] - run.celsius[s.first]) /
                        (run.minutes[s.last] - run.minutes[s.first]);
    return run.minutes[s.first] + (top - run.celsius[s.first]) / rate;
  }

  /// Height above the room, summed from a moment to the free fall.
  double degree_minutes(std::size_t r, double from_min) const {
    const FitRun& run = runs_[r];
    const bool falls = cooling_[r] && cooling_[r]->first > heating_[r]->last;
    const std::size_t end = falls ? cooling_[r]->first : run.minutes.size() - 1;
    double sum = 0;
    for (std::size_t i = heating_[r]->last; i < end; ++i)
      if (run.minutes[i] >= from_min)
        sum += (run.minutes[i + 1] - run.minutes[i]) *
               ((run.celsius[i] + run.celsius[i + 1]) / 2 - room_c);
    return sum;
  }

  void draw(const std::vector<std::size_t>& used,
            const std::vector<std::optional<Stretch>>& stretches, const Eigen::VectorXd& curve) {
    Eigen::Index row = 0;
    for (std::size_t r : used)
      for (std::size_t i = stretches[r]->first; i <= stretches[r]->last; ++i)
        fit_.curves[r][i] = curve(row++);
  }

  const std::vector<FitRun>& runs_;
  std::vector<std::optional<Stretch>> heating_, cooling_;
  KilnFit fit_;
};

}  // namespace

FitRun run_of(const KilnRecord& record) {
  FitRun run;
  if (record.readings.empty() || record.ms.empty()) return run;
  for (std::size_t i = 0; i < record.rows(); ++i) {
    const Reading& reading = record.readings.front()[i];
    const double minute = static_cast<double>(record.ms[i] - record.ms.front()) / 60'000;
    if (!reading || (!run.minutes.empty() && minute <= run.minutes.back())) continue;
    run.minutes.push_back(minute);
    run.celsius.push_back(reading->in_celsius());
  }
  return run;
}

Outcome<KilnFit> fit_kiln(const std::vector<FitRun>& runs) {
  KilnFit fit = Fitting(runs).run();
  if (!fit.heat_c_per_h && !fit.tau_min)
    return Problem{"kiln",
                   runs.empty() ? "There is no record of this kiln."
                                : "No record shows a rise of 100 C or a free fall of 60 C.",
                   "Attach the record of a whole firing, from cold until it has cooled."};
  return fit;
}

}  // namespace tangmark::kiln
