// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "db/shop_file.h"
#include "db/store/blade_state.h"
#include "domain/kiln/firing.h"
#include "domain/steel/step_advice.h"
#include "domain/stock/billet.h"

namespace tangmark::db {

/// The steels of a blade that are in the shop's book of grades: one for a blade of one steel,
/// several for a billet. The analysis is that of the one lot of this grade it was cut from, when a
/// document gave one. Empty for a steel that nobody identified.
std::vector<steel::StepSteel> steels_of(const ShopFile& shop, const blade::Blade& blade);

/// What the desk says about a step as it was logged; `record` is the blade's before it. Of several
/// steels each sentence names its own. Cautions are said also where the steel is not known.
std::vector<steel::Advice> advice_on(const ShopFile& shop, const BladeOnRecord& record,
                                     const blade::LogEntry& entry, TemperatureUnit unit);
/// The same about a step as it is planned.
std::vector<steel::Advice> advice_on(const ShopFile& shop, const BladeOnRecord& record,
                                     const blade::RouteStep& step, TemperatureUnit unit);

/// The same about a firing as it is booked, for every blade in it.
std::vector<steel::Advice> advice_on(const ShopFile& shop, const kiln::Firing& firing,
                                     TemperatureUnit unit);

/// The same about a stage of making a billet, for each steel in it: how near its heat is to
/// melting, how fast the carbon of its layers evens out, and cautions. Empty for cold work.
std::vector<steel::Advice> advice_on(const ShopFile& shop, const stock::KeptBillet& billet,
                                     const stock::WeldStage& stage, TemperatureUnit unit);

/// The tempers that count of a blade, as the steel desk reckons them: those after its last quench.
std::vector<steel::TemperStep> tempers_since_quench(const BladeOnRecord& record);

/// The handbooks' word for a medium as makers write it: "medium oil 50" is oil. Empty for none.
std::string bath_word(std::string_view medium);

}  // namespace tangmark::db
