// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/actions/asked.h"
#include "db/actions/bench_fields.h"
#include "db/actions/bench_log.h"
#include "db/actions/blade_action_list.h"
#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/named.h"
#include "domain/blade/reading_rules.h"

namespace tangmark::db {
namespace {

using namespace blade;

Outcome<ActionResult> finish(Work& work, Form& form) {
  auto blade = asked_blade(work, form);
  if (form.refused()) return form.problems();
  if (!blade->in_work())
    return Problem{"blade", fmt::format("Blade {} is not in work any more.", blade->number),
                   "Choose a blade in work."};
  const BladeOnRecord record = load_record(work.shop(), *blade);
  if (!work.passes(blade::blocks(record.state, Stage::delivery, work.now())))
    return work.problems();
  if (record.state.hardenings > 0)
    work.passes(no_reading_after_heat(blade->number, record.readings, record.state.last_heat_at));
  for (const KeptRouteStep& step : record.route)
    if (step.open())
      work.warn(
          fmt::format("Step {} ({}) of its route was not logged.", step.position, step.operation));
  blade->finished_at = work.at();
  store_blade(work.shop(), *blade);
  return work.done(std::to_string(blade->number));
}

// The handle lot it was made from; the item keeps it for the certificate.
void store_on_item(Work& work, const KeptBlade& blade, const std::optional<stock::KeptLot>& lot,
                   Instant fitted_at) {
  if (!blade.item) return;
  Row row("item");
  row.set("handle_fitted_at", fitted_at);
  if (lot) row.set("handle_lot_id", lot->id);
  row.update(work.shop(), blade.item->row());
}

Outcome<ActionResult> fit(Work& work, Form& form) {
  const auto blade = asked_blade(work, form);
  const auto lot = asked(work, form, "lot", lot_named);
  LogEntry entry = read_entry(work, form, blade ? blade->id : BladeId{0}, "handle");
  if (form.refused()) return form.problems();
  if (lot && lot->kind != stock::LotKind::handle)
    return Problem{"lot", fmt::format("Lot {} is no handle material.", lot->number),
                   "Give a lot of handle material."};
  const Instant fitted_at = entry.ended_at.value_or(entry.started_at);
  const auto id = write_log(work, *blade, std::move(entry));
  if (!id) return work.problems();
  store_on_item(work, *blade, lot, fitted_at);
  return work.done(std::to_string(id->row()));
}

}  // namespace

const Action finish_blade{
    "finish_blade", "Say that all work on a blade is done.", {blade_field()}, finish};

const Action fit_handle{
    "fit_handle", "Log that the handle is fitted; no firing may follow.",
    joined({{blade_field(),
             {"lot", "Handle lot", FieldKind::lot, false, "number of the lot it is made from"}},
            time_fields()}),
    fit};

}  // namespace tangmark::db
