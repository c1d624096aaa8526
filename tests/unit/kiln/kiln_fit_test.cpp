// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <cmath>

#include "domain/kiln/kiln_fit.h"

using namespace tangmark;
using namespace tangmark::kiln;

namespace {

/// A firing by the model itself, with a logger that is off by up to a degree either way.
FitRun a_firing(double heat_c_per_h, double tau_min, int soak_min, double heat_w,
                double hold_w_per_c) {
  FitRun run;
  double c = 20, watt_min = 0;
  int soaked = 0;
  bool off = false;
  double fell = 0;
  for (int m = 0; m < 600; ++m) {
    run.minutes.push_back(m);
    run.celsius.push_back(c + ((m * 7) % 5 - 2) * 0.5);
    if (off) {
      ++fell;
      c = 20 + 780 * std::exp(-fell / tau_min);
    } else if (c < 800 - 1e-9) {
      c = std::min(800.0, c + heat_c_per_h / 60);
      watt_min += heat_w;
    } else if (soaked++ < soak_min) {
      watt_min += hold_w_per_c * 780;
    } else {
      off = true;
    }
  }
  run.metered_watt_min = watt_min;
  return run;
}

}  // namespace

TEST_CASE("a fit finds the heating, cooling and power that the records were made with") {
  const auto fit =
      fit_kiln({a_firing(900, 120, 30, 2400, 1.0), a_firing(900, 120, 200, 2400, 1.0)});
  REQUIRE(fit);
  CHECK(fit->heat_c_per_h->value == Approx(900).epsilon(0.01));
  CHECK(fit->heat_c_per_h->error < 1.5);
  CHECK(fit->tau_min->value == Approx(120).epsilon(0.01));
  CHECK(fit->tau_min->error < 1.5);
  CHECK(fit->heat_w->value == Approx(2400).epsilon(0.05));
  CHECK(fit->hold_mw_per_c->value == Approx(1000).epsilon(0.10));
  CHECK_FALSE(fit->load_c_per_h);
}

TEST_CASE("the load slows the heating by what each blade takes") {
  FitRun empty = a_firing(900, 120, 30, 2400, 1.0);
  FitRun full = a_firing(840, 120, 30, 2400, 1.0);
  full.blades = 6;
  const auto fit = fit_kiln({empty, full});
  REQUIRE(fit);
  CHECK(*fit->load_c_per_h == Approx(10).margin(1.5));
}

TEST_CASE("a controlled cooling tells nothing of natural cooling") {
  FitRun anneal = a_firing(900, 120, 30, 2400, 1.0);
  anneal.cools_by_itself = false;
  const auto fit = fit_kiln({anneal});
  REQUIRE(fit);
  CHECK_FALSE(fit->tau_min);
  CHECK_FALSE(fit->heat_w);  // one metered firing does not tell heating from holding
}

TEST_CASE("a fit without a record, or of a flat one, is refused and says what is needed") {
  CHECK_FALSE(fit_kiln({}));
  FitRun flat;
  for (int m = 0; m < 60; ++m) {
    flat.minutes.push_back(m);
    flat.celsius.push_back(21);
  }
  const auto fit = fit_kiln({flat});
  REQUIRE_FALSE(fit);
  CHECK(fit.problem().sentence.find("100 C") != std::string::npos);
}

TEST_CASE("the fit becomes the kiln's own values only when it is taken") {
  Kiln kiln;
  kiln.heat_per_h = TemperatureDifference::celsius(1000);
  kiln.tau = std::chrono::minutes(90);
  const auto fit = fit_kiln({a_firing(900, 120, 30, 2400, 1.0)});
  REQUIRE(fit);
  CHECK(proposal(kiln, *fit, TemperatureUnit::celsius).front().find("(now 1000)") !=
        std::string::npos);
  CHECK(kiln.values_from == "plate");
  const Kiln fitted = with_fit(kiln, *fit);
  CHECK(fitted.values_from == "kiln records");
  CHECK(fitted.tau.count() / 60 == Approx(120).margin(2));
}

TEST_CASE("a loaded kiln asks for the share of its heating that the blades slow it by") {
  Kiln kiln;
  kiln.heat_per_h = TemperatureDifference::celsius(780);
  kiln.heat_w = 3000;
  const Temperature at = Temperature::celsius(800);
  CHECK(load_effect(kiln, at, 4).energy == Energy{});  // not known: none is claimed
  kiln.load_per_h = TemperatureDifference::celsius(39);
  // By hand: 2 blades slow it by 2 x 39 / 780 = a tenth; from 20 to 800 C is one hour at 780 C/h; a
  // tenth of it is 6 min, at 3000 W 0.3 kWh.
  CHECK(load_effect(kiln, at, 2).back_at_heat == std::chrono::minutes(6));
  CHECK(load_effect(kiln, at, 2).energy == Energy::watt_minutes(3000 * 6));
  CHECK(load_effect(kiln, at, 4).energy == Energy::watt_minutes(3000 * 12));
}

TEST_CASE("a load effect lost in the scatter of the records is taken as none") {
  KilnFit fit;
  fit.heat_c_per_h = FittedValue{900, 1, 2};
  fit.load_c_per_h = -0.4;
  CHECK(with_fit(Kiln{}, fit).load_per_h == TemperatureDifference{});
  CHECK(fit_in_words(fit, TemperatureUnit::fahrenheit).front().find("1620 \u00B0F/h") !=
        std::string::npos);
}
