// SPDX-License-Identifier: MIT
#include "domain/steel/quench_severity.h"

#include <cmath>
#include <numbers>

#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"
#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

constexpr double full_martensite_margin = 1.3;
constexpr double infinite_biot = 1e9;
// At the half-temperature time the Fourier number is above 0.19, so that the tenth term has died to
// exp(-150) of itself; halvings go to the last bits of what is asked.
constexpr int series_terms = 10;
constexpr int halvings = 52;

// Fourier's series for the centre of a body cooled by convection: sum of a_n exp(-z_n^2 tau).
struct CentreSeries {
  std::vector<double> root;
  std::vector<double> weight;

  double left(double tau) const {
    double sum = 0;
    for (std::size_t i = 0; i < root.size(); ++i)
      sum += weight[i] * std::exp(-root[i] * root[i] * tau);
    return sum;
  }
  // The Fourier number at which half the temperature difference is left.
  double half_time() const {
    double high = 1e-3;
    while (left(high) > 0.5) high *= 2;
    double low = 0;
    for (int i = 0; i < halvings; ++i) {
      const double middle = (low + high) / 2;
      (left(middle) > 0.5 ? low : high) = middle;
    }
    return (low + high) / 2;
  }
};

template <class F>
double root_between(double low, double high, F&& f) {
  const bool rises = f(low) < 0;
  for (int i = 0; i < halvings; ++i) {
    const double middle = (low + high) / 2;
    ((f(middle) < 0) == rises ? low : high) = middle;
  }
  return (low + high) / 2;
}

// Zeros of J0 and J1 interlace; McMahon's leading terms are near enough to bracket between them.
double zero_of_bessel(double order, int n) {
  const double guess = (n + order / 2 - 0.25) * std::numbers::pi;
  return root_between(guess - 0.5, guess + 0.5,
                      [&](double x) { return std::cyl_bessel_j(order, x); });
}

// z J1(z) = Bi J0(z); one root lies between each zero of J1 (or nought) and the next zero of J0.
CentreSeries cylinder(double biot) {
  CentreSeries series;
  for (int n = 1; n <= series_terms; ++n) {
    const double low = n == 1 ? 1e-9 : zero_of_bessel(1, n - 1);
    const double z = root_between(low, zero_of_bessel(0, n), [&](double x) {
      return x * std::cyl_bessel_j(1.0, x) - biot * std::cyl_bessel_j(0.0, x);
    });
    const double j0 = std::cyl_bessel_j(0.0, z);
    const double j1 = std::cyl_bessel_j(1.0, z);
    series.root.push_back(z);
    series.weight.push_back(2 * j1 / (z * (j0 * j0 + j1 * j1)));
  }
  return series;
}

// z sin(z) = Bi cos(z); one root in each [(n-1) pi, (n-1/2) pi].
CentreSeries plate(double biot) {
  CentreSeries series;
  for (int n = 0; n < series_terms; ++n) {
    const double z = root_between(n * std::numbers::pi + 1e-9, (n + 0.5) * std::numbers::pi,
                                  [&](double x) { return x * std::sin(x) - biot * std::cos(x); });
    series.root.push_back(z);
    series.weight.push_back(4 * std::sin(z) / (2 * z + std::sin(2 * z)));
  }
  return series;
}

double ideal_half_time() {
  static const double tau = cylinder(infinite_biot).half_time();
  return tau;
}

}  // namespace

const std::vector<QuenchSeverity>& quench_severities() {
  static const std::vector<QuenchSeverity> read = [] {
    const DataTable table(built_in::quench_severity);
    std::vector<QuenchSeverity> list;
    for (std::size_t i = 0; i < table.size(); ++i) {
      list.push_back({std::string(table.text(i, "bath")), std::string(table.text(i, "agitation")),
                      table.number(i, "h_low_per_in"), table.number(i, "h_high_per_in"),
                      std::string(table.text(i, "source"))});
    }
    return list;
  }();
  return read;
}

Outcome<QuenchSeverity> quench_severity(std::string_view bath, std::string_view agitation) {
  std::string known;
  for (const QuenchSeverity& severity : quench_severities()) {
    if (severity.bath == lower(trimmed(bath)) && severity.agitation == lower(trimmed(agitation))) {
      return severity;
    }
    known += (known.empty() ? "" : ", ") + severity.bath + ' ' + severity.agitation;
  }
  return Problem{"bath", "No severity is tabled for that bath and agitation.",
                 "Choose one of: " + known + "."};
}

double ideal_diameter_needed_in(double round_in, double severity_per_in) {
  const double tau = cylinder(severity_per_in * round_in).half_time();
  return round_in * std::sqrt(tau / ideal_half_time());
}

double ideal_diameter_needed_for_plate_in(double plate_in, double severity_per_in) {
  const double tau = plate(severity_per_in * plate_in).half_time();
  return plate_in * std::sqrt(tau / ideal_half_time());
}

double plate_hardened_through_in(double di_in, double severity_per_in) {
  double low = 0;
  double high = di_in;  // a plate needs more than its own thickness in any bath
  for (int i = 0; i < halvings; ++i) {
    const double middle = (low + high) / 2;
    const bool hardens = ideal_diameter_needed_for_plate_in(middle, severity_per_in) <= di_in;
    (hardens ? low : high) = middle;
  }
  return (low + high) / 2;
}

ThroughHardening through_hardening(double di_in, Length thickness, const QuenchSeverity& bath) {
  const double plate_in = thickness.in_inches();
  const double at_worst = ideal_diameter_needed_for_plate_in(plate_in, bath.low_per_in);
  const double at_best = ideal_diameter_needed_for_plate_in(plate_in, bath.high_per_in);
  if (di_in >= full_martensite_margin * at_worst) return ThroughHardening::through;
  return di_in < at_best ? ThroughHardening::not_through : ThroughHardening::doubtful;
}

}  // namespace tangmark::steel
