// SPDX-License-Identifier: MIT
// What is done with a fit: told in words, taken over into the kiln, and its load effect used.
#include <fmt/format.h>

#include <cmath>

#include "domain/kiln/kiln_fit.h"

namespace tangmark::kiln {
namespace {

constexpr double room_c = 20;

class Degrees {
 public:
  explicit Degrees(TemperatureUnit unit) : fahrenheit_(unit == TemperatureUnit::fahrenheit) {}
  /// A difference, or a rate an hour.
  double of(double kelvins) const { return fahrenheit_ ? kelvins * 1.8 : kelvins; }
  std::string unit() const { return fahrenheit_ ? "\u00B0F" : "\u00B0C"; }

 private:
  bool fahrenheit_;
};

std::string over(const FittedValue& fitted) {
  return fmt::format("{} {}", fitted.runs, fitted.runs == 1 ? "record" : "records");
}

/// "It heats by 862 C/h (now 900); error 3.1 C over 2 records." Without `now` only what it is.
struct Said {
  std::string what, unit;
  double value = 0, error = 0;
  std::string error_unit;
  const FittedValue* fitted = nullptr;

  std::string in_words(std::optional<double> now) const {
    return fmt::format("{} {:.0f} {}{}; error {:.1f} {} over {}.", what, value, unit,
                       now ? fmt::format(" (now {:.0f})", *now) : "", error, error_unit,
                       over(*fitted));
  }
};

std::vector<std::string> told(const KilnFit& fit, TemperatureUnit unit, const Kiln* now) {
  const Degrees degrees(unit);
  std::vector<std::string> all;
  const auto add = [&](Said said, std::optional<double> was) { all.push_back(said.in_words(was)); };
  if (fit.heat_c_per_h)
    add({"It heats by", degrees.unit() + "/h", degrees.of(fit.heat_c_per_h->value),
         degrees.of(fit.heat_c_per_h->error), degrees.unit(), &*fit.heat_c_per_h},
        now ? std::optional(degrees.of(now->heat_per_h.kelvins())) : std::nullopt);
  if (fit.load_c_per_h)
    all.push_back(fmt::format("Each blade inside slows that by {:.1f} {}/h.",
                              degrees.of(*fit.load_c_per_h), degrees.unit()));
  if (fit.tau_min)
    add({"Its time constant of cooling is", "min", fit.tau_min->value,
         degrees.of(fit.tau_min->error), degrees.unit(), &*fit.tau_min},
        now ? std::optional(std::chrono::duration<double, std::ratio<60>>(now->tau).count())
            : std::nullopt);
  if (fit.heat_w)
    add({"It heats with", "W", fit.heat_w->value, fit.heat_w->error, "Wh", &*fit.heat_w},
        now ? std::optional(static_cast<double>(now->heat_w)) : std::nullopt);
  if (fit.hold_mw_per_c)
    add({"It holds with", "mW per \u00B0C above the room", fit.hold_mw_per_c->value,
         fit.hold_mw_per_c->error, "Wh", &*fit.hold_mw_per_c},
        now ? std::optional(static_cast<double>(now->hold_mw_per_c)) : std::nullopt);
  if (!fit.heat_w)
    all.push_back("Power stays as on the plate: two metered firings that differ would tell it.");
  if (!fit.tau_min) all.push_back("Cooling stays as on the plate: no record follows it down.");
  if (!fit.heat_c_per_h) all.push_back("Heating stays as on the plate: no record shows it.");
  return all;
}

}  // namespace

Kiln with_fit(Kiln kiln, const KilnFit& fit) {
  if (fit.heat_c_per_h)
    kiln.heat_per_h = TemperatureDifference::celsius(std::llround(fit.heat_c_per_h->value));
  // Where it comes out below nothing the records do not tell it from their own scatter.
  if (fit.load_c_per_h)
    kiln.load_per_h = TemperatureDifference::counts(
        std::max<std::int64_t>(0, std::llround(*fit.load_c_per_h * 1800)));
  if (fit.tau_min) kiln.tau = std::chrono::minutes(std::llround(fit.tau_min->value));
  if (fit.heat_w) kiln.heat_w = std::llround(fit.heat_w->value);
  if (fit.hold_mw_per_c) kiln.hold_mw_per_c = std::llround(fit.hold_mw_per_c->value);
  kiln.values_from = "kiln records";
  return kiln;
}

std::vector<std::string> proposal(const Kiln& kiln, const KilnFit& fit, TemperatureUnit unit) {
  return told(fit, unit, &kiln);
}

std::vector<std::string> fit_in_words(const KilnFit& fit, TemperatureUnit unit) {
  return told(fit, unit, nullptr);
}

LoadEffect load_effect(const Kiln& kiln, Temperature at, std::int64_t blades) {
  LoadEffect effect;
  const double rate = kiln.heat_per_h.kelvins();
  if (!kiln.load_per_h || rate <= 0 || blades <= 0) return effect;
  const double share = kiln.load_per_h->kelvins() / rate * static_cast<double>(blades);
  const double hours = share * std::max(0.0, at.in_celsius() - room_c) / rate;
  effect.back_at_heat = Duration(std::llround(hours * 3600));
  effect.energy = Energy::joules(std::llround(hours * 3600 * static_cast<double>(kiln.heat_w)));
  return effect;
}

}  // namespace tangmark::kiln
