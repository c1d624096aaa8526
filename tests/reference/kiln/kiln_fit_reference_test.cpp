// SPDX-License-Identifier: MIT
// The thermal fit against a general-purpose least-squares solver: SciPy's curve_fit (Levenberg and
// Marquardt by MINPACK), which knows nothing of this program. Skipped where it is not installed.
#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <sstream>

#include "domain/kiln/kiln_fit.h"
#include "tests/reference/program_says.h"

using namespace tangmark;
using namespace tangmark::kiln;

namespace {

/// A logged firing with scatter: the same arithmetic noise for both programs.
FitRun logged(double heat_c_per_h, double tau_min, int blades) {
  FitRun run;
  run.blades = blades;
  double c = 24, fell = 0;
  bool off = false;
  int held = 0;
  for (int m = 0; m < 500; ++m) {
    run.minutes.push_back(m);
    run.celsius.push_back(c + std::sin(m * 1.7) * 1.5 + ((m * 13) % 7 - 3) * 0.4);
    if (off) c = 20 + 785 * std::exp(-++fell / tau_min);
    else if (c < 805 - 1e-9) c = std::min(805.0, c + heat_c_per_h / 60);
    else if (++held > 30) off = true;
  }
  return run;
}

/// The samples that went into a stretch of the fit, as Python lists; rising or falling ones.
std::string stretch(const FitRun& run, const std::vector<double>& curve, bool rising) {
  std::string minutes, celsius;
  for (std::size_t i = 0; i < curve.size(); ++i) {
    if (std::isnan(curve[i])) continue;
    const std::size_t peer = i + 1 < curve.size() && !std::isnan(curve[i + 1]) ? i + 1 : i - 1;
    const bool rises =
        (curve[peer] - curve[i]) * (static_cast<double>(peer) - static_cast<double>(i)) > 0;
    if (rises != rising) continue;
    minutes += fmt::format("{:.10g},", run.minutes[i]);
    celsius += fmt::format("{:.10g},", run.celsius[i]);
  }
  return "[" + minutes + "],[" + celsius + "]";
}

std::vector<double> numbers(const std::string& text) {
  std::istringstream in(text);
  std::vector<double> all;
  for (double one = 0; in >> one;) all.push_back(one);
  return all;
}

}  // namespace

TEST_CASE("heating rate and its error agree with a general least-squares solver") {
  const FitRun run = logged(880, 130, 0);
  const auto fit = fit_kiln({run});
  REQUIRE(fit);
  const auto said = numbers(python_says(
      "import numpy as np\nfrom scipy.optimize import curve_fit\nx,y=map(np.array,(" +
      stretch(run, fit->curves.front(), true) +
      "))\np,_=curve_fit(lambda m,r,b:r*m/60+b,x,y,p0=[500,0])\n"
      "print(p[0],np.sqrt(np.mean((p[0]*x/60+p[1]-y)**2)))"));
  if (said.size() != 2) {
    WARN("skipped: SciPy is not installed");
    return;
  }
  CHECK(fit->heat_c_per_h->value == Approx(said[0]).epsilon(1e-6));
  CHECK(fit->heat_c_per_h->error == Approx(said[1]).epsilon(1e-5));
}

TEST_CASE("the time constant of cooling agrees with a general least-squares solver") {
  const FitRun run = logged(880, 130, 0);
  const auto fit = fit_kiln({run});
  REQUIRE(fit);
  const auto said = numbers(python_says(
      "import numpy as np\nfrom scipy.optimize import curve_fit\nx,y=map(np.array,(" +
      stretch(run, fit->curves.front(), false) +
      "))\nx=x-x[0]\np,_=curve_fit(lambda m,a,t:20+a*np.exp(-m/t),x,y,p0=[700,100])\n"
      "print(p[1],np.sqrt(np.mean((20+p[0]*np.exp(-x/p[1])-y)**2)))"));
  if (said.size() != 2) {
    WARN("skipped: SciPy is not installed");
    return;
  }
  // The fit weighs logarithms so that it is least in temperature to first order only.
  CHECK(fit->tau_min->value == Approx(said[0]).epsilon(2e-3));
  CHECK(fit->tau_min->error == Approx(said[1]).epsilon(2e-2));
}

TEST_CASE("the load effect agrees with a general least-squares solver") {
  const std::vector<FitRun> runs{logged(900, 130, 0), logged(860, 130, 4), logged(845, 130, 6)};
  const auto fit = fit_kiln(runs);
  REQUIRE(fit);
  std::string program = "import numpy as np\nfrom scipy.optimize import least_squares\nruns=[";
  for (std::size_t i = 0; i < runs.size(); ++i)
    program += fmt::format("({},{}),", stretch(runs[i], fit->curves[i], true), runs[i].blades);
  program +=
      "]\ndef off(p):\n return "
      "np.concatenate([(p[0]-p[1]*n)*(np.array(x)-x[0])/60+p[2+i]-np.array(y) "
      "for i,(x,y,n) in enumerate(runs)])\n"
      "s=least_squares(off,[500,0,0,0,0],method=\"lm\",xtol=1e-12,ftol=1e-12)\n"
      "print(s.x[0],s.x[1],np.sqrt(np.mean(off(s.x)**2)))";
  const auto said = numbers(python_says(program));
  if (said.size() != 3) {
    WARN("skipped: SciPy is not installed");
    return;
  }
  CHECK(fit->heat_c_per_h->value == Approx(said[0]).epsilon(1e-6));
  CHECK(*fit->load_c_per_h == Approx(said[1]).epsilon(1e-5));
  CHECK(fit->heat_c_per_h->error == Approx(said[2]).epsilon(1e-5));
}
