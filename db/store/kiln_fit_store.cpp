// SPDX-License-Identifier: MIT
#include "db/store/kiln_fit_store.h"

#include <algorithm>
#include <cmath>

#include "db/row.h"
#include "db/store/record_store.h"

namespace tangmark::db {
namespace {

// Elements and brick age: what a kiln did years ago says little of what it does now.
constexpr int newest = 24;

// Thousandths of a degree are finer than any logger writes.
std::int64_t as_counts(double kelvins) {
  return std::llround(kelvins * 1800);
}
double in_kelvins(std::int64_t counts) {
  return static_cast<double>(counts) / 1800;
}

std::optional<kiln::FittedValue> fitted(const Query& q, const char* value, double scale,
                                        const char* error, double error_scale, const char* runs) {
  if (q.is_null(value)) return std::nullopt;
  return kiln::FittedValue{static_cast<double>(q.integer(value)) / scale,
                           static_cast<double>(q.integer(error)) / error_scale,
                           static_cast<int>(q.integer(runs))};
}

}  // namespace

std::vector<kiln::FitRun> fit_runs(const ShopFile& shop, kiln::KilnId kiln) {
  struct Fired {
    kiln::FiringId firing;
    kiln::FitRun run;
  };
  std::vector<Fired> fired;
  {
    Query q(shop,
            "SELECT DISTINCT f.id, f.number, f.kind, f.metered_j, (SELECT count(*) FROM "
            "firing_blade b WHERE b.firing_id = f.id) AS blades FROM kiln_record r JOIN firing f "
            "ON f.id = r.firing_id WHERE r.kiln_id = ? ORDER BY f.number DESC LIMIT ?");
    q.bind(kiln).bind(newest);
    while (q.next()) {
      kiln::FitRun run;
      run.name = "firing " + std::to_string(q.integer("number"));
      run.blades = static_cast<int>(q.integer("blades"));
      run.cools_by_itself = q.text("kind") != "anneal";
      if (!q.is_null("metered_j"))
        run.metered_watt_min = static_cast<double>(q.integer("metered_j")) / 60;
      fired.push_back({q.id<kiln::FiringId>("id"), std::move(run)});
    }
  }
  std::reverse(fired.begin(), fired.end());
  std::vector<kiln::FitRun> runs;
  for (Fired& one : fired) {
    const std::vector<KeptRecord> records = records_of_firing(shop, one.firing);
    if (records.empty()) continue;
    kiln::FitRun curve = kiln::run_of(records.front().record);
    one.run.minutes = std::move(curve.minutes);
    one.run.celsius = std::move(curve.celsius);
    runs.push_back(std::move(one.run));
  }
  return runs;
}

void add_fit(const ShopFile& shop, kiln::KilnId kiln, const kiln::KilnFit& fit, Instant at) {
  Row row("kiln_fit");
  row.set("kiln_id", kiln).set("fitted_at", at);
  if (fit.heat_c_per_h)
    row.set("heat_k1800_per_h", as_counts(fit.heat_c_per_h->value))
        .set("heat_error_k1800", as_counts(fit.heat_c_per_h->error))
        .set("heat_records", fit.heat_c_per_h->runs);
  if (fit.load_c_per_h) row.set("load_k1800_per_h", as_counts(*fit.load_c_per_h));
  if (fit.tau_min)
    row.set("tau_s", static_cast<std::int64_t>(std::llround(fit.tau_min->value * 60)))
        .set("cool_error_k1800", as_counts(fit.tau_min->error))
        .set("cool_records", fit.tau_min->runs);
  if (fit.heat_w && fit.hold_mw_per_c)
    row.set("heat_w", static_cast<std::int64_t>(std::llround(fit.heat_w->value)))
        .set("hold_mw_per_c", static_cast<std::int64_t>(std::llround(fit.hold_mw_per_c->value)))
        .set("power_error_j", static_cast<std::int64_t>(std::llround(fit.heat_w->error * 3600)))
        .set("power_records", fit.heat_w->runs);
  row.insert(shop);
}

std::optional<TakenFit> last_fit(const ShopFile& shop, kiln::KilnId kiln) {
  Query q(shop, "SELECT * FROM kiln_fit WHERE kiln_id = ? ORDER BY id DESC LIMIT 1");
  q.bind(kiln);
  if (!q.next()) return std::nullopt;
  TakenFit taken{q.instant("fitted_at"), {}};
  kiln::KilnFit& fit = taken.fit;
  fit.heat_c_per_h = fitted(q, "heat_k1800_per_h", 1800, "heat_error_k1800", 1800, "heat_records");
  if (!q.is_null("load_k1800_per_h")) fit.load_c_per_h = in_kelvins(q.integer("load_k1800_per_h"));
  fit.tau_min = fitted(q, "tau_s", 60, "cool_error_k1800", 1800, "cool_records");
  fit.heat_w = fitted(q, "heat_w", 1, "power_error_j", 3600, "power_records");
  fit.hold_mw_per_c = fitted(q, "hold_mw_per_c", 1, "power_error_j", 3600, "power_records");
  return taken;
}

std::vector<FittedStretch> fitted_over(const ShopFile& shop, const kiln::KeptFiring& firing,
                                       TemperatureUnit unit) {
  const std::vector<kiln::FitRun> runs = fit_runs(shop, firing.kiln);
  const auto own = std::find_if(runs.begin(), runs.end(), [&](const kiln::FitRun& run) {
    return run.name == "firing " + std::to_string(firing.number);
  });
  const std::vector<KeptRecord> records = records_of_firing(shop, firing.id);
  const auto fit = kiln::fit_kiln(runs);
  if (!fit || own == runs.end() || records.empty()) return {};
  const std::vector<double>& curve = fit->curves[static_cast<std::size_t>(own - runs.begin())];
  const std::vector<std::string> words = kiln::fit_in_words(*fit, unit);
  const std::int64_t first_ms = records.front().record.ms.front();
  std::vector<FittedStretch> stretches;
  for (std::size_t i = 0; i < curve.size(); ++i) {
    if (std::isnan(curve[i])) continue;
    if (i == 0 || std::isnan(curve[i - 1])) stretches.emplace_back();
    const std::int64_t ms = first_ms + std::llround(own->minutes[i] * 60'000);
    stretches.back().points.emplace_back(
        Instant(std::chrono::floor<std::chrono::seconds>(std::chrono::milliseconds(ms))),
        Temperature::nearest_celsius(curve[i]));
  }
  for (FittedStretch& stretch : stretches) {
    const bool rises = stretch.points.back().second > stretch.points.front().second;
    for (const std::string& line : words)
      if (line.starts_with(rises ? "It heats by" : "Its time constant"))
        stretch.text = "as fitted: " + line.substr(0, line.size() - 1);
  }
  return stretches;
}

std::string values_in_words(const ShopFile& shop, const kiln::KeptKiln& kiln,
                            TemperatureUnit unit) {
  const auto taken = last_fit(shop, kiln.id);
  const std::string the_kiln = "The " + kiln.name;
  if (kiln.values_from == "plate")
    return the_kiln +
           " is planned by the values on its plate: none of its records has been fitted.";
  if (!taken) return the_kiln + " is planned by values that you entered as from its records.";
  std::string text = the_kiln + " is planned by its records:";
  for (const std::string& part : kiln::fit_in_words(taken->fit, unit)) text += " " + part;
  return text;
}

}  // namespace tangmark::db
