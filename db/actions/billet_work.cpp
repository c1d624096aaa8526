// SPDX-License-Identifier: MIT
#include "db/actions/billet_work.h"

#include "db/store/billet_store.h"
#include "db/store/step_advice_reader.h"
#include "domain/stock/mass_balance.h"

namespace tangmark::db {

using namespace stock;

void check_open(Form& form, const KeptBillet& billet, Instant at) {
  const std::string name = "Billet " + std::to_string(billet.number);
  if (billet.scrapped_at)
    form.add({"billet", name + " was scrapped.", "Start another."});
  else if (billet.finished_at)
    form.add({"billet", name + " is finished.", "Work on its pieces."});
  if (at < billet.started_at)
    form.add({"at", name + " was not begun by then.", "Give a later time."});
}

Outcome<ActionResult> log_stage(Work& work, const KeptBillet& billet, const StageWish& wish) {
  const Mass before = wish.mass_in.value_or(mass_of_billet(work.shop(), billet.id));
  const MassBalance balance{before, wish.mass_out, wish.crop, wish.scale, wish.swarf};
  const auto& settings = work.settings();
  if (!work.passes(
          mass_at_stage(wish.operation, balance, settings.mass_gap_allowed, settings.mass_unit)))
    return work.problems();
  const auto stages = stages_of_billet(work.shop(), billet.id);
  if (!stages.empty() && work.at() < stages.back().at)
    return Problem{"at",
                   "Stage " + std::to_string(stages.back().number) + " was logged at a later time.",
                   "Log the stages in the order they were done."};
  WeldStage stage{.billet = billet.id,
                  .number = static_cast<std::int64_t>(stages.size()) + 1,
                  .at = work.at(),
                  .entered_at = work.now(),
                  .operation = wish.operation,
                  .pieces = wish.pieces.value_or(1),
                  .mass_in = before,
                  .mass_out = wish.mass_out,
                  .crop = wish.crop,
                  .scale = wish.scale,
                  .swarf = wish.swarf,
                  .gap = balance.gap(),
                  .thickness = wish.thickness,
                  .temperature = wish.temperature,
                  .flux = wish.flux,
                  .who = wish.who,
                  .hands_on = wish.hands_on,
                  .note = wish.note};
  insert_weld_stage(work.shop(), stage);
  if (const auto layers = layers_by_stages(work.shop(), billet)) {
    store_billet_layers(work.shop(), billet.id, *layers);
    if (wish.operation == StageWork::fold || wish.operation == StageWork::cut)
      work.warn(std::to_string(*layers) + " layers by the stacking.");
  }
  if (const auto after = load_billet(work.shop(), billet.id))
    work.advise(advice_on(work.shop(), *after, stage, work.settings().temperature_unit));
  return work.done(std::to_string(stage.number));
}

}  // namespace tangmark::db
