// SPDX-License-Identifier: MIT
// The tanks of the shop, as a planning case sees them.
#include <algorithm>
#include <cctype>
#include <cmath>

#include "db/row.h"
#include "db/store/bath_store.h"
#include "db/store/blade_store.h"
#include "db/store/plan_case.h"
#include "domain/stock/bath_heat.h"

namespace tangmark::db {
namespace {

std::string in_small_letters(std::string text) {
  for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return text;
}

/// Only a bath whose figures say how it warms and cools is planned by.
bool is_watched(const stock::KeptBath& bath) {
  return bath.use == stock::BathUse::quench && bath.high && bath.volume && bath.cooling &&
         stock::rest_of(bath) < *bath.high && stock::heat_per_litre_and_degree(bath.medium);
}

std::string medium_of(const ShopFile& shop, blade::RouteStepId step) {
  Query q(shop, "SELECT medium FROM route_step WHERE id = ?");
  q.bind(step);
  return q.next() ? in_small_letters(q.text("medium")) : "";
}

}  // namespace

void add_baths(const ShopFile& shop, ShopCase& made) {
  std::vector<stock::KeptBath> baths = list_baths(shop);
  std::erase_if(baths, [](const stock::KeptBath& bath) { return !is_watched(bath); });
  if (baths.empty()) return;
  for (const stock::KeptBath& bath : baths)
    made.a_case.baths.push_back(
        {bath.name, static_cast<int>(stock::rest_of(bath).whole_celsius()),
         static_cast<int>(bath.high->whole_celsius()),
         static_cast<int>(std::chrono::ceil<std::chrono::minutes>(*bath.cooling).count()), {}});
  for (kiln::PlanBlade& plan : made.a_case.blades) {
    const ShopCase::Chain& chain = made.chains.at(plan.id);
    const auto blade = load_blade(shop, chain.blade);
    for (std::size_t i = 0; blade && i < plan.operations.size(); ++i) {
      kiln::PlanOperation& op = plan.operations[i];
      if (op.kind != kiln::PlanKind::harden) continue;
      const std::string medium = medium_of(shop, chain.steps[i]);
      const auto bath = std::find_if(baths.begin(), baths.end(), [&](const stock::KeptBath& b) {
        return in_small_letters(b.name) == medium || in_small_letters(b.medium) == medium;
      });
      if (medium.empty() || bath == baths.end()) continue;
      const auto rise = stock::warms_by(*bath, blade->length, blade->width, blade->thickness,
                                        Temperature::celsius(op.target_c));
      op.bath = bath->name;
      op.warms_mk = static_cast<int>(std::lround(rise->kelvins() * 1000));
    }
  }
}

}  // namespace tangmark::db
