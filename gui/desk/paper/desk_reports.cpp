// SPDX-License-Identifier: MIT
#include "db/store/firing_report.h"
#include "db/store/kiln_fit_store.h"
#include "db/store/settings_store.h"
#include "db/store/trial_report.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "gui/desk/paper/recorded_curve.h"
#include "reports/desk_report.h"

namespace tangmark::desk {
namespace {

constexpr std::size_t most_curves = 4;

// One curve for each sensor, the judged one first, with the blades' own times on it.
std::vector<reports::Curve> curves_of(const db::KeptRecord& kept, const db::FiringReport& report,
                                      bool with_blades) {
  std::vector<reports::Curve> curves;
  const kiln::KilnRecord& record = kept.record;
  for (std::size_t sensor = 0; sensor < record.readings.size() && sensor < most_curves; ++sensor) {
    reports::Curve curve;
    curve.title = kept.name + ": " + record.shape.sensors[sensor].name;
    curve.window = reports::Window{report.window.low, report.window.high};
    for (std::size_t i = 0; i < record.rows(); ++i) {
      if (!record.readings[sensor][i]) continue;
      const auto at =
          std::chrono::floor<std::chrono::seconds>(std::chrono::milliseconds(record.ms[i]));
      curve.points.push_back({Instant(at), *record.readings[sensor][i]});
    }
    if (sensor == 0 && with_blades) {
      for (const db::ReportedBlade& blade : report.blades) {
        if (blade.in) curve.marks.push_back({*blade.in, std::to_string(blade.number) + " in"});
        if (blade.out) curve.marks.push_back({*blade.out, std::to_string(blade.number) + " out"});
      }
    }
    curves.push_back(std::move(curve));
  }
  return curves;
}

reports::Scatter scatter_of(const std::vector<blade::TrialBlade>& blades,
                            blade::TrialVariable variable, blade::TrialOutcome outcome,
                            TemperatureUnit degrees) {
  reports::Scatter scatter{db::measure_title(word_of(variable), blade::unit_of(variable, degrees)),
                           db::measure_title(word_of(outcome), blade::unit_of(outcome)),
                           {}};
  for (const blade::TrialBlade& blade : blades) {
    const auto at = blade.variables.find(variable);
    if (at != blade.variables.end() && blade.outcome)
      scatter.points.push_back({at->second, *blade.outcome, std::to_string(blade.number)});
  }
  return scatter;
}

}  // namespace

std::vector<reports::FittedStretch> fitted_curve(const Press& press,
                                                 const kiln::KeptFiring& firing) {
  const auto settings = db::load_settings(press.shop);
  std::vector<reports::FittedStretch> fitted;
  for (const db::FittedStretch& stretch :
       db::fitted_over(press.shop, firing, settings.temperature_unit)) {
    fitted.push_back({stretch.text, {}});
    for (const auto& [at, temperature] : stretch.points)
      fitted.back().points.push_back({at, temperature});
  }
  return fitted;
}

std::optional<reports::Curve> recorded_curve(const Press& press, std::string_view firing) {
  const auto report = db::firing_report(press.shop, firing, "firing");
  if (!report) return std::nullopt;
  reports::Curve curve = curves_of(report->records.front(), *report, true).front();
  curve.title = "As recorded by " + report->records.front().name;
  curve.fitted = fitted_curve(press, report->firing);
  return curve;
}

Outcome<reports::Document> record_paper(const Press& press, std::string_view firing) {
  const auto report = db::firing_report(press.shop, firing, "firing");
  if (!report) return report.problems();
  const auto settings = db::load_settings(press.shop);
  reports::DeskReport paper;
  paper.shop = settings.shop_name;
  paper.title = "Record of firing " + std::to_string(report->firing.number);
  paper.under = std::string(word_of(report->firing.kind)) + " in the " + report->kiln +
                ", set to " + to_text(report->firing.set, settings.temperature_unit) +
                ". The grey band is the window; times by the clock on the wall.";
  paper.curves = curves_of(report->records[report->judged], *report, true);
  // The kiln's values are fitted to the controller's record, which stands first.
  if (report->judged == 0 && !paper.curves.empty())
    paper.curves.front().fitted = fitted_curve(press, report->firing);
  for (std::size_t i = 0; i < report->records.size(); ++i) {
    if (i == report->judged) continue;
    for (reports::Curve& curve : curves_of(report->records[i], *report, false))
      paper.curves.push_back(std::move(curve));
  }
  paper.sentences = db::report_sentences(*report, settings.zone, settings.temperature_unit);
  paper.heads = db::report_heads();
  paper.rows = db::report_rows(*report, settings.zone, settings.temperature_unit);
  paper.printed = press.now;
  return reports::desk_report_document(paper, look_of(settings), press.fonts);
}

Outcome<reports::Document> trial_paper(const Press& press, std::string_view number) {
  const auto trial = db::trial_named(press.shop, number, "trial");
  if (!trial) return trial.problems();
  const auto settings = db::load_settings(press.shop);
  const auto blades = db::blades_of_trial(press.shop, *trial);
  reports::DeskReport paper;
  paper.shop = settings.shop_name;
  paper.title = "Trial " + std::to_string(trial->number);
  paper.under = trial->question;
  // A variable that never varied has nothing to plot; its sentence says so.
  for (const auto& finding : findings_of(blades, trial->variables, trial->outcome))
    if (finding.test)
      paper.plots.push_back(
          scatter_of(blades, finding.variable, trial->outcome, settings.temperature_unit));
  paper.sentences = db::trial_sentences(*trial, blades, settings.temperature_unit);
  paper.heads = db::trial_heads(*trial, settings.temperature_unit);
  paper.rows = db::trial_rows(*trial, blades);
  paper.printed = press.now;
  return reports::desk_report_document(paper, look_of(settings), press.fonts);
}

}  // namespace tangmark::desk
