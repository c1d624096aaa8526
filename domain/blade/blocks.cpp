// SPDX-License-Identifier: MIT
#include "domain/blade/blocks.h"

#include <fmt/format.h>

namespace tangmark::blade {
namespace {

Caught not_tempered(const BladeState& state, const std::string& until, Instant now) {
  return {8, Weight::stop, "blade",
          fmt::format("Blade {} was quenched {} ago and is not tempered: {}.", state.number,
                      to_text(now - *state.quenched_at), until),
          "Temper it and log it with log_temper."};
}

Caught temper_missing(const BladeState& state, const std::string& until) {
  std::string sentence = fmt::format("Blade {} has had {} of {} tempers: {}.", state.number,
                                     state.tempers_done, state.tempers_planned, until);
  if (state.tempers_not_cooled > 0)
    sentence += " A temper begun before the blade had cooled to room does not count.";
  return {
      9, Weight::stop, "blade", sentence,
      "Temper it again after it has cooled to room, or skip the step with skip_step and say why."};
}

Caught finding_open(const BladeState& state, const OpenFinding& finding, const std::string& until) {
  return {17, Weight::stop, "blade",
          fmt::format("Finding {} ({}) of blade {} has no decision: {}.", finding.number,
                      finding.kind, state.number, until),
          "Decide what becomes of it with settle_finding."};
}

}  // namespace

Catches blocks(const BladeState& state, Stage stage, Instant now) {
  const std::string until = fmt::format("no {} before that", word_of(stage));
  Catches found;
  if (state.scrapped)
    found.push_back({27, Weight::stop, "blade", fmt::format("Blade {} was scrapped.", state.number),
                     "Begin a new blade for its item."});
  else if (state.condemned_by)
    found.push_back({27, Weight::stop, "blade",
                     fmt::format("Finding {} of blade {} was decided as scrap.",
                                 *state.condemned_by, state.number),
                     "Scrap the blade with scrap_blade, or decide the finding anew."});
  if (state.hardening_open)
    found.push_back({9, Weight::stop, "blade",
                     fmt::format("The route of blade {} plans hardening and nobody logged it: {}.",
                                 state.number, until),
                     "Log it with log_quench, or skip the step with skip_step and say why."});
  if (state.stage == HeatStage::quenched) found.push_back(not_tempered(state, until, now));
  if (state.stage == HeatStage::tempered_in_part) found.push_back(temper_missing(state, until));
  for (const OpenFinding& finding : state.open_findings)
    found.push_back(finding_open(state, finding, until));
  return found;
}

}  // namespace tangmark::blade
