// SPDX-License-Identifier: MIT
#include "db/store/blade_actuals.h"

#include "db/row.h"
#include "db/store/item_store.h"
#include "db/store/piece_costs.h"
#include "db/store/piece_store.h"
#include "db/store/quote_store.h"
#include "domain/costing/price.h"

namespace tangmark::db {
namespace {

using namespace commission;
using blade::BladeId;

// Entries that no later entry supersedes.
constexpr const char* standing =
    "NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id)";

void add_hours(const ShopFile& shop, BladeActuals& actuals) {
  Query log(
      shop,
      std::string("SELECT coalesce(sum(hands_on_s), 0) AS hands_on_s, coalesce(sum(attended_s), 0) "
                  "AS attended_s FROM log_entry AS entry WHERE blade_id = ? AND ") +
          standing);
  log.bind(actuals.id);
  log.next();
  Query after(
      shop, "SELECT coalesce(sum(hands_on_s), 0) AS hands_on_s FROM aftercare WHERE blade_id = ?");
  after.bind(actuals.id);
  after.next();
  actuals.hands_on = log.duration("hands_on_s") + after.duration("hands_on_s");
  actuals.attended = log.duration("attended_s");
}

// Bars by their lots' prices, billets by what went into them; nothing when that is not on record.
Money steel_of(const ShopFile& shop, std::optional<stock::PieceId> id,
               const ShopSettings& settings) {
  const auto piece = id ? load_piece(shop, *id) : std::nullopt;
  const auto cost = piece ? cost_of_piece(shop, *piece, piece->mass, settings) : std::nullopt;
  return cost.value_or(Money(0, settings.currency));
}

Money used_up_of(const ShopFile& shop, BladeId blade, Currency currency) {
  Query query(shop,
              "SELECT lot.price_minor, lot.currency, lot.quantity_ppm AS bought, "
              "consumable_use.quantity_ppm AS used "
              "FROM consumable_use JOIN lot ON lot.id = consumable_use.lot_id "
              "WHERE consumable_use.blade_id = ? AND lot.quantity_ppm > 0");
  query.bind(blade);
  Money sum(0, currency);
  while (query.next())
    if (const Money price = query.money("price_minor", "currency"); price.currency() == currency)
      sum += scaled_half_even(price, query.integer("used"), query.integer("bought"));
  return sum;
}

Money energy_of(const ShopFile& shop, BladeId blade, const ShopSettings& settings) {
  Query query(shop, R"(
SELECT coalesce(firing.metered_j, firing.energy_j) AS joules,
  (SELECT count(*) FROM firing_blade AS other WHERE other.firing_id = firing.id) AS blades
FROM firing_blade JOIN firing ON firing.id = firing_blade.firing_id
WHERE firing_blade.blade_id = ? AND firing.state = 'done')");
  query.bind(blade);
  Money sum(0, settings.currency);
  while (query.next())
    sum += scaled_half_even(settings.electricity_per_kwh, query.integer("joules"),
                            3'600'000 * query.integer("blades"));
  return sum;
}

Money outside_of(const ShopFile& shop, BladeId blade, std::optional<ItemId> item,
                 Currency currency) {
  Query query(shop,
              "SELECT cost_minor, currency FROM outside_work WHERE cost_minor IS NOT NULL "
              "AND (blade_id = ? OR item_id = ?)");
  query.bind(blade).bind(item ? item->row() : std::int64_t{-1});
  Money sum(0, currency);
  while (query.next())
    if (const Money cost = query.money("cost_minor", "currency"); cost.currency() == currency)
      sum += cost;
  return sum;
}

Money lost_of(const ShopFile& shop, std::optional<ItemId> item, const ShopSettings& settings) {
  const Money none(0, settings.currency);
  if (!item) return none;
  Query query(
      shop, std::string("SELECT coalesce(sum(hands_on_s), 0) AS hands_on_s FROM log_entry AS entry "
                        "JOIN blade ON blade.id = entry.blade_id WHERE blade.item_id = ? "
                        "AND blade.scrapped_at IS NOT NULL AND blade.scrap_cost_to = 'job' AND ") +
                standing);
  query.bind(*item);
  query.next();
  return costing::pay_for(settings.hourly_rate,
                          {query.duration("hands_on_s"), Duration{}, Share()});
}

// The item's own price line of the accepted quote, without tax.
std::optional<Money> price_of(const ShopFile& shop, std::optional<ItemId> id, Currency currency) {
  const auto item = id ? load_item(shop, *id) : std::nullopt;
  if (!item || !item->commission) return std::nullopt;
  const auto quote = accepted_quote(shop, *item->commission);
  if (!quote || quote->total.currency() != currency) return std::nullopt;
  std::int64_t position = 0;
  for (const KeptItem& other : items_of(shop, *item->commission)) {
    if (other.cancelled_on) continue;
    ++position;
    if (other.id == item->id) break;
  }
  for (const QuoteLine& line : quote->lines) {
    if (line.side != QuoteSide::price || line.position != position) continue;
    if (quote->tax_mode != TaxMode::inclusive) return line.amount;
    return scaled_half_even(line.amount, 1'000'000,
                            (Share::whole() + quote->tax_rate).millionths());
  }
  return std::nullopt;
}

}  // namespace

BladeActuals actuals_of(const ShopFile& shop, BladeId id, const ShopSettings& settings) {
  Query query(shop, "SELECT number, title, item_id, piece_id FROM blade WHERE id = ?");
  query.bind(id);
  query.next();
  const auto item = query.maybe_id<ItemId>("item_id");
  const Currency currency = settings.currency;
  BladeActuals actuals{
      .id = id,
      .number = query.integer("number"),
      .title = query.text("title"),
      .steel = steel_of(shop, query.maybe_id<stock::PieceId>("piece_id"), settings),
      .used_up = used_up_of(shop, id, currency),
      .energy = energy_of(shop, id, settings),
      .outside = outside_of(shop, id, item, currency),
      .lost = lost_of(shop, item, settings),
      .price = price_of(shop, item, currency),
      .earned_per_hour = std::nullopt};
  add_hours(shop, actuals);
  if (actuals.price)
    actuals.earned_per_hour =
        costing::earned_per_hour(*actuals.price, actuals.cost_but_labour(),
                                 {actuals.hands_on, actuals.attended, settings.attended_share});
  return actuals;
}

std::vector<BladeActuals> latest_actuals(const ShopFile& shop, ModelId model, int most,
                                         const ShopSettings& settings) {
  Query query(
      shop,
      "SELECT id FROM blade WHERE model_id = ? AND finished_at IS NOT NULL AND scrapped_at IS NULL "
      "ORDER BY finished_at DESC, id DESC LIMIT ?");
  query.bind(model).bind(most);
  std::vector<BladeActuals> all;
  while (query.next()) all.push_back(actuals_of(shop, query.id<BladeId>("id"), settings));
  return all;
}

}  // namespace tangmark::db
