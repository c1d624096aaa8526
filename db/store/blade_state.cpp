// SPDX-License-Identifier: MIT
#include "db/store/blade_state.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/finding_store.h"
#include "db/store/log_store.h"
#include "db/store/reading_store.h"
#include "db/store/route_store.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace blade;

std::optional<Instant> handle_on_item(const ShopFile& shop, const KeptBlade& blade) {
  if (!blade.item) return std::nullopt;
  Query query(shop, "SELECT handle_fitted_at FROM item WHERE id = ?");
  query.bind(*blade.item);
  if (!query.next()) return std::nullopt;
  return query.maybe_instant("handle_fitted_at");
}

BladeState state_from(const ShopFile& shop, const BladeOnRecord& record) {
  BladeState state = state_of(record.blade, record.log, record.route, record.findings);
  // Another blade may have been begun for the item after this one was scrapped.
  if (!state.scrapped && !state.handle_fitted_at)
    state.handle_fitted_at = handle_on_item(shop, record.blade);
  return state;
}

}  // namespace

BladeOnRecord load_record(const ShopFile& shop, const KeptBlade& blade) {
  BladeOnRecord record{blade,
                       route_of(shop, blade.id),
                       log_of(shop, blade.id),
                       readings_of(shop, blade.id),
                       findings_of(shop, blade.id),
                       {}};
  record.state = state_from(shop, record);
  return record;
}

std::optional<BladeOnRecord> load_record(const ShopFile& shop, BladeId id) {
  const auto blade = load_blade(shop, id);
  if (!blade) return std::nullopt;
  return load_record(shop, *blade);
}

BladeState load_state(const ShopFile& shop, const KeptBlade& blade) {
  return load_record(shop, blade).state;
}

Catches blocks(const ShopFile& shop, const KeptBlade& blade, Stage stage, Instant now) {
  return blade::blocks(load_state(shop, blade), stage, now);
}

TemperClock temper_clock(const commission::ShopSettings& settings) {
  return {settings.temper_remark, settings.temper_limit};
}

std::vector<WaitingBlade> blades_waiting_for_temper(const ShopFile& shop) {
  const TemperClock clock = temper_clock(load_settings(shop));
  std::vector<WaitingBlade> waiting;
  for (KeptBlade& blade : blades_in_work(shop)) {
    BladeState state = load_state(shop, blade);
    if (state.stage != HeatStage::quenched) continue;
    const auto due = temper_due_at(state, clock);
    waiting.push_back({std::move(blade), std::move(state), due});
  }
  std::sort(waiting.begin(), waiting.end(), [](const WaitingBlade& a, const WaitingBlade& b) {
    return *a.state.quenched_at < *b.state.quenched_at;
  });
  return waiting;
}

}  // namespace tangmark::db
