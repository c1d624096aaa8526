// SPDX-License-Identifier: MIT
// What the firings on record say about how many blades share one.
#include <fmt/format.h>

#include <array>
#include <cmath>

#include "db/row.h"
#include "db/store/learning_store.h"

namespace tangmark::db {
namespace {

using commission::ShopSettings;

constexpr std::array kinds{"harden", "soak", "anneal"};

// Blades of each firing of a kind that was run, oldest first.
std::vector<double> loads_on_record(const ShopFile& shop, std::string_view kind) {
  Query query(shop, R"(
SELECT count(*) AS blades FROM firing_blade JOIN firing ON firing.id = firing_blade.firing_id
WHERE firing.state = 'done' AND firing.kind = ? GROUP BY firing.id ORDER BY firing.id)");
  query.bind(kind);
  std::vector<double> all;
  while (query.next()) all.push_back(static_cast<double>(query.integer("blades")));
  return all;
}

}  // namespace

std::optional<std::int64_t> expected_load(const ShopFile& shop, std::string_view kind) {
  Query query(shop, "SELECT blades FROM expected_load WHERE kind = ?");
  query.bind(kind);
  if (!query.next()) return std::nullopt;
  return query.integer("blades");
}

void store_expected_load(const ShopFile& shop, std::string_view kind, std::int64_t blades) {
  Query query(shop, "SELECT id FROM expected_load WHERE kind = ?");
  query.bind(kind);
  if (query.next())
    Row("expected_load").set("blades", blades).update(shop, query.integer("id"));
  else
    Row("expected_load").set("kind", kind).set("blades", blades).insert(shop);
}

std::vector<LoadProposal> load_proposals(const ShopFile& shop, const ShopSettings& settings) {
  std::vector<LoadProposal> all;
  for (const char* kind : kinds) {
    const std::int64_t now = expected_load(shop, kind).value_or(settings.blades_in_a_firing);
    // The guess is the shop's usual load, however often a load was taken: no firing counts twice.
    const auto estimate =
        costing::estimate(settings.blades_in_a_firing, loads_on_record(shop, kind));
    const std::int64_t proposed = std::max<std::int64_t>(1, std::llround(estimate.figure));
    if (estimate.n < 3 || proposed == now) continue;
    all.push_back({kind, now, proposed, estimate.n, estimate.why(),
                   fmt::format("{:.1f} to {:.1f}", estimate.record->low_quarter,
                               estimate.record->high_quarter)});
  }
  return all;
}

}  // namespace tangmark::db
