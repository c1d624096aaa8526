// SPDX-License-Identifier: MIT
#include "db/store/blade_actuals.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/item_store.h"
#include "db/store/piece_costs.h"
#include "db/store/piece_store.h"
#include "db/store/quote_store.h"
#include "domain/costing/cost_line.h"
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

enum class Noted { gas, all_but_gas };

Money used_up_of(const ShopFile& shop, BladeId blade, Noted what, Currency currency) {
  Query query(
      shop,
      "SELECT lot.price_minor, lot.currency, lot.quantity_ppm AS bought, "
      "consumable_use.quantity_ppm AS used "
      "FROM consumable_use JOIN lot ON lot.id = consumable_use.lot_id "
      "WHERE consumable_use.blade_id = ? AND lot.quantity_ppm > 0 AND (lot.kind = 'gas') = ?");
  query.bind(blade).bind(what == Noted::gas ? 1 : 0);
  Money sum(0, currency);
  while (query.next())
    if (const Money price = query.money("price_minor", "currency"); price.currency() == currency)
      sum += scaled_half_even(price, query.integer("used"), query.integer("bought"));
  return sum;
}

// A log without a note of belts or gas of its own counts what was binned and weighed in it.
bool is_noted(const ShopFile& shop, BladeId blade, std::string_view kind) {
  Query query(shop,
              "SELECT 1 FROM consumable_use JOIN lot ON lot.id = consumable_use.lot_id "
              "WHERE consumable_use.blade_id = ? AND lot.kind = ?");
  query.bind(blade).bind(kind);
  return query.next();
}

std::int64_t logged(const ShopFile& shop, BladeId blade, const std::string& column) {
  Query query(shop, "SELECT coalesce(sum(" + column + "), 0) AS figure FROM log_entry AS entry " +
                        "WHERE blade_id = ? AND operation <> 'struck out' AND " + standing);
  query.bind(blade);
  query.next();
  return query.integer("figure");
}

Money logged_belts(const ShopFile& shop, BladeId blade, Currency currency) {
  const Money none(0, currency);
  if (is_noted(shop, blade, "belt")) return none;
  Query query(shop,
              "SELECT price_minor, currency, quantity_ppm FROM lot WHERE kind = 'belt' AND "
              "price_minor > 0 AND quantity_ppm > 0 ORDER BY received_at DESC, id DESC LIMIT 1");
  if (!query.next()) return none;
  const Money price = query.money("price_minor", "currency");
  if (price.currency() != currency) return none;
  return scaled_half_even(price, logged(shop, blade, "belts_ppm"), query.integer("quantity_ppm"));
}

Money logged_gas(const ShopFile& shop, BladeId blade, const ShopSettings& settings) {
  if (is_noted(shop, blade, "gas")) return Money(0, settings.currency);
  return scaled_half_even(settings.gas_per_kg, logged(shop, blade, "gas_ug"),
                          Mass::grams(1000).micrograms());
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

// A blade's part of box, post and payment fee: the pieces of a commission share them alike.
Money selling_of(const ShopFile& shop, std::optional<ItemId> id, Currency currency) {
  Money sum(0, currency);
  const auto item = id ? load_item(shop, *id) : std::nullopt;
  if (!item || !item->commission) return sum;
  const auto quote = accepted_quote(shop, *item->commission);
  if (!quote) return sum;
  for (const QuoteLine& line : quote->lines) {
    const auto kind = costing::line_kind_from(line.kind);
    if (line.side == QuoteSide::cost &&
        (kind == costing::LineKind::packing || kind == costing::LineKind::shipping ||
         kind == costing::LineKind::fee))
      sum += at_home(*quote, line.amount, currency).value_or(Money(0, currency));
  }
  std::int64_t pieces = 0;
  for (const KeptItem& other : items_of(shop, *item->commission))
    pieces += other.cancelled_on ? 0 : 1;
  return scaled_half_even(sum, 1, std::max<std::int64_t>(1, pieces));
}

Money overhead_of(const BladeActuals& actuals, const ShopSettings& settings) {
  return costing::pay_for(settings.overhead_per_hour,
                          {actuals.hands_on, actuals.attended, settings.attended_share});
}

// What a blade took by itself: neither its selling nor the blades lost before it.
BladeActuals taken_by(const ShopFile& shop, BladeId id, const ShopSettings& settings) {
  Query query(shop, "SELECT number, title, item_id, piece_id FROM blade WHERE id = ?");
  query.bind(id);
  query.next();
  const Money none(0, settings.currency);
  BladeActuals actuals{
      .id = id,
      .number = query.integer("number"),
      .title = query.text("title"),
      .steel = steel_of(shop, query.maybe_id<stock::PieceId>("piece_id"), settings),
      .used_up = used_up_of(shop, id, Noted::all_but_gas, settings.currency) +
                 logged_belts(shop, id, settings.currency),
      .energy = energy_of(shop, id, settings) +
                used_up_of(shop, id, Noted::gas, settings.currency) +
                logged_gas(shop, id, settings),
      .outside = none,
      .overhead = none,
      .selling = none,
      .lost = none,
      .price = std::nullopt,
      .earned_per_hour = std::nullopt};
  add_hours(shop, actuals);
  actuals.overhead = overhead_of(actuals, settings);
  return actuals;
}

Money lost_of(const ShopFile& shop, std::optional<ItemId> item, const ShopSettings& settings) {
  Money sum(0, settings.currency);
  if (!item) return sum;
  Query query(shop,
              "SELECT id FROM blade WHERE item_id = ? AND scrapped_at IS NOT NULL "
              "AND scrap_cost_to = 'job' ORDER BY id");
  query.bind(*item);
  while (query.next()) {
    const BladeActuals blade = taken_by(shop, query.id<BladeId>("id"), settings);
    sum += blade.cost_but_labour() +
           costing::pay_for(settings.hourly_rate,
                            {blade.hands_on, blade.attended, settings.attended_share});
  }
  return sum;
}

// The item's own price line of the accepted quote, without tax.
std::optional<Money> price_of(const ShopFile& shop, std::optional<ItemId> id, Currency currency) {
  const auto item = id ? load_item(shop, *id) : std::nullopt;
  if (!item || !item->commission) return std::nullopt;
  const auto quote = accepted_quote(shop, *item->commission);
  if (!quote) return std::nullopt;
  std::int64_t position = 0;
  for (const KeptItem& other : items_of(shop, *item->commission)) {
    if (other.cancelled_on) continue;
    ++position;
    if (other.id == item->id) break;
  }
  for (const QuoteLine& line : quote->lines) {
    if (line.side != QuoteSide::price || line.position != position) continue;
    const auto amount = at_home(*quote, line.amount, currency);
    if (!amount || quote->tax_mode != TaxMode::inclusive) return amount;
    return scaled_half_even(*amount, 1'000'000, (Share::whole() + quote->tax_rate).millionths());
  }
  return std::nullopt;
}

}  // namespace

BladeActuals actuals_of(const ShopFile& shop, BladeId id, const ShopSettings& settings) {
  Query query(shop, "SELECT item_id FROM blade WHERE id = ?");
  query.bind(id);
  query.next();
  const auto item = query.maybe_id<ItemId>("item_id");
  BladeActuals actuals = taken_by(shop, id, settings);
  actuals.outside = outside_of(shop, id, item, settings.currency);
  actuals.selling = selling_of(shop, item, settings.currency);
  actuals.lost = lost_of(shop, item, settings);
  actuals.price = price_of(shop, item, settings.currency);
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
