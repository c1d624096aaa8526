// SPDX-License-Identifier: MIT
#include "db/store/quote_item.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "db/row.h"
#include "db/store/learning_store.h"
#include "db/store/lot_store.h"
#include "db/store/model_store.h"
#include "db/store/price_extra_store.h"
#include "domain/blade/operation.h"
#include "domain/costing/learning.h"

namespace tangmark::db {
namespace {

using namespace commission;

// Where along the route something is used up: lost with a blade that is lost there or later.
std::size_t operation_of(UseKind kind, const std::vector<ModelStep>& route) {
  const auto first = [&](auto is_it) -> std::size_t {
    const auto found = std::find_if(route.begin(), route.end(), is_it);
    return found == route.end() ? route.size() - 1
                                : static_cast<std::size_t>(found - route.begin());
  };
  switch (kind) {
    case UseKind::gas:
      return first([](const ModelStep& s) { return s.operation.starts_with("forge"); });
    case UseKind::used_up:
      return first(
          [](const ModelStep& s) { return s.operation.find("grind") != std::string::npos; });
    case UseKind::material:
    case UseKind::made_elsewhere:
      return first([](const ModelStep& s) {
        const auto known = blade::trade_operation(s.operation);
        return known && known->after_temper;
      });
    case UseKind::packing:
      break;
  }
  return route.size() - 1;
}

costing::Quantity quantity_of(const ModelUse& use) {
  return {(use.quantity.millionths() + 500) / 1000, use.unit};
}

std::optional<costing::Swing> swing_of(const ModelUse& use) {
  if (!use.low || !use.high || use.quantity <= Share()) return std::nullopt;
  const auto part = [&](Share of) {
    return Share::millionths(of.millionths() * 1'000'000 / use.quantity.millionths());
  };
  return costing::Swing{part(*use.low), part(*use.high)};
}

// Today's price of one: from the newest lot of that name bought in the same unit, else the model's.
Money price_today(const ShopFile& shop, const ModelUse& use) {
  Query query(shop,
              "SELECT price_minor, currency, quantity_ppm FROM lot WHERE name = ? AND unit = ? "
              "AND owner_id IS NULL AND quantity_ppm > 0 AND price_minor > 0 "
              "ORDER BY received_at DESC, id DESC LIMIT 1");
  query.bind(use.text).bind(use.unit);
  if (!query.next()) return use.each;
  const Money price = query.money("price_minor", "currency");
  if (price.currency() != use.each.currency()) return use.each;
  return scaled_half_even(price, Share::whole().millionths(), query.integer("quantity_ppm"));
}

costing::CostSource source_of(const ShopFile& shop, const ModelUse& use,
                              const ShopSettings& settings) {
  const Money each = price_today(shop, use);
  switch (use.kind) {
    case UseKind::material:
      return costing::BoughtMaterial{quantity_of(use), each};
    case UseKind::gas:
      if (use.unit == "kg")
        return costing::GasByWeight{Mass::micrograms(use.quantity.millionths() * 1'000), Mass(),
                                    settings.gas_per_kg, 1};
      return costing::UsedUp{quantity_of(use), each};
    case UseKind::made_elsewhere:
      return costing::MadeElsewhere{scaled_half_even(each, use.quantity.millionths(), 1'000'000)};
    case UseKind::used_up:
    case UseKind::packing:
      break;
  }
  return costing::UsedUp{quantity_of(use), each};
}

// A quote counts the hours the maker holds to be right. Where the record says otherwise it is told,
// and changes nothing until the maker takes it.
void tell_proposals(const ShopFile& shop, const KeptItem& item,
                    std::vector<std::string>& assumptions) {
  if (!item.model) return;
  for (const ModelProposal& one : model_proposals(shop, item.model))
    assumptions.push_back(fmt::format(
        "{}: the record would change {} of {}: {:.2f} {} counted, "
        "{:.2f} proposed. {}",
        one.model.name, word_of(one.what), one.of, one.now, one.unit, one.proposed, one.why));
}

// How far the hours of an operation went either way on record.
std::optional<costing::Swing> swing_on_record(const ShopFile& shop, std::optional<ModelId> model,
                                              const std::vector<ModelStep>& route,
                                              const ModelStep& step) {
  if (!model || step.hands_on <= Duration{}) return std::nullopt;
  const auto seen = costing::seen(hours_on_record(shop, *model, step.operation));
  if (!seen || seen->n < 4) return std::nullopt;
  // The record holds all the times the operation was done on one blade.
  double hours = 0;
  for (const ModelStep& other : route)
    if (other.operation == step.operation)
      hours += static_cast<double>(other.hands_on.count()) / 3600.0;
  const auto part = [&](double of) { return Share::millionths(std::llround(of / hours * 1e6)); };
  return costing::Swing{std::min(part(seen->low_quarter), Share::whole()),
                        std::max(part(seen->high_quarter), Share::whole())};
}

// The exact band of the losses on record, drawn wide enough to hold what is counted; without
// blades on record nothing is known.
std::optional<std::pair<Share, Share>> survival_on_record(const ShopFile& shop,
                                                          std::optional<ModelId> model,
                                                          const ModelStep& step) {
  if (!model) return std::nullopt;
  const auto record = losses_on_record(shop, *model, step.operation);
  if (record.of < 3) return std::nullopt;
  const auto rate = costing::loss_rate(record);
  if (!rate) return std::nullopt;
  const auto survives = [](double lost) {
    return Share::millionths(std::max<std::int64_t>(1, std::llround((1 - lost) * 1e6)));
  };
  return std::pair{std::min(survives(rate->high), step.survival),
                   std::max(survives(rate->low), step.survival)};
}

// How many blades a filling serves when the record is still short. Common practice, no source.
constexpr std::int64_t quenches_of_a_filling = 100, etches_of_a_filling = 20;

// Oil and etchant by their filling: its price over the blades it serves. Nothing when the model
// counts the medium itself, or no bath with a priced filling is on record.
void add_bath_wear(const ShopFile& shop, const ModelStep& step, std::size_t at,
                   const ShopSettings& settings, ItemCosts& costs) {
  const bool etches = step.operation == "etch";
  if (!step.medium || !(etches || step.operation == "harden")) return;
  Query query(shop, R"(
SELECT bath.name, lot.price_minor, lot.currency, (SELECT count(DISTINCT blade_id) FROM log_entry
  WHERE log_entry.bath_id = bath.id AND started_at >= coalesce(bath.filled_at, '')) AS served
FROM bath JOIN lot ON lot.id = bath.lot_id
WHERE bath.medium = ? AND bath.retired_at IS NULL AND lot.price_minor > 0 ORDER BY bath.id LIMIT 1)");
  query.bind(*step.medium);
  if (!query.next()) return;
  const Money filling = query.money("price_minor", "currency");
  if (filling.currency() != settings.currency) return;
  const std::int64_t usual = etches ? etches_of_a_filling : quenches_of_a_filling;
  const std::int64_t blades = std::max(usual, query.integer("served"));
  costs.item.ingredients.push_back(
      {"Bath: " + query.text("name"), costing::BathWear{filling, blades}, at});
  costs.assumptions.push_back("A filling of " + query.text("name") + " is shared by " +
                              std::to_string(blades) + " blades; " + query.text("served") +
                              " are on record since it was filled.");
}

void add_operations(const ShopFile& shop, const KeptItem& item, const std::vector<ModelStep>& route,
                    const ShopSettings& settings, ItemCosts& costs) {
  for (const ModelStep& step : route) {
    costs.item.operations.push_back({step.operation, step.hands_on, step.attended, step.unattended,
                                     step.survival, swing_on_record(shop, item.model, route, step),
                                     survival_on_record(shop, item.model, step)});
    const std::size_t at = costs.item.operations.size() - 1;
    add_bath_wear(shop, step, at, settings, costs);
    if (auto firing = firing_of_step(shop, step, settings, costs.assumptions)) {
      if (step.hands_on + step.attended > Duration{})
        firing->use.hands_on = firing->use.attended = firing->use.unattended =
            std::chrono::minutes(0);
      else
        costs.item.operations[at].unattended = Duration{};
      costs.item.ingredients.push_back({"Firing: " + step.operation, *firing, at});
    }
  }
}

void add_uses(const ShopFile& shop, const KeptItem& item, const std::vector<ModelStep>& route,
              const ShopSettings& settings, ItemCosts& costs) {
  if (!item.model) return;
  for (const KeptModelUse& use : uses_of_model(shop, *item.model)) {
    if (use.kind == UseKind::packing) {
      costs.packing +=
          scaled_half_even(price_today(shop, use), use.quantity.millionths(), 1'000'000);
      continue;
    }
    costs.item.ingredients.push_back(
        {use.text, source_of(shop, use, settings), operation_of(use.kind, route), swing_of(use)});
  }
}

}  // namespace

Outcome<ItemCosts> costed_item(const ShopFile& shop, const KeptItem& item,
                               const ShopSettings& settings) {
  const auto route = route_of_item(shop, item);
  if (route.empty())
    return Problem{
        "commission",
        "Item " + std::to_string(item.id.row()) + " (" + item.title +
            ") has no model with a route, so its hours are not known.",
        "Add its model with add_model and add_model_step, or assign a blade with a route."};
  ItemCosts costs;
  costs.packing = Money(0, settings.currency);
  costs.item.text = item.title;
  const auto model = item.model ? load_model(shop, *item.model) : std::nullopt;
  if (model && model->currency != settings.currency)
    return Problem{"commission",
                   "Model " + model->name + " is reckoned in " + model->currency.code() +
                       " and the shop in " + settings.currency.code() + ".",
                   "Add the model anew with today's prices."};
  if (auto steel = steel_of_item(shop, item, model, settings, costs.assumptions))
    costs.item.ingredients.push_back(std::move(*steel));
  for (const ItemOption& option : options_of_item(shop, item.id))
    costs.item.options.push_back({option.name, option.price});
  add_operations(shop, item, route, settings, costs);
  add_uses(shop, item, route, settings, costs);
  tell_proposals(shop, item, costs.assumptions);
  return costs;
}

std::vector<ModelStep> route_of_item(const ShopFile& shop, const KeptItem& item) {
  std::vector<ModelStep> route;
  Query query(
      shop,
      "SELECT route_step.* FROM route_step JOIN blade ON blade.id = route_step.blade_id "
      "WHERE blade.id = (SELECT max(id) FROM blade WHERE item_id = ? AND scrapped_at IS NULL) "
      "AND route_step.skipped_why IS NULL ORDER BY route_step.position");
  query.bind(item.id);
  while (query.next()) {
    ModelStep step{.model = item.model.value_or(ModelId{1})};  // a blade's own route has no model
    step.position = query.integer("position");
    step.operation = query.text("operation");
    step.hands_on = query.duration("hands_on_s");
    step.attended = query.duration("attended_s");
    step.unattended = query.duration("unattended_s");
    step.survival = query.share("survival_ppm");
    step.temperature = query.maybe_temperature("temperature_k1800");
    step.soak = query.maybe_duration("soak_s");
    step.cool_per_h = query.maybe_difference("cool_k1800_per_h");
    step.cool_to = query.maybe_temperature("cool_to_k1800");
    route.push_back(std::move(step));
  }
  if (route.empty() && item.model)
    for (const KeptModelStep& step : steps_of_model(shop, *item.model)) route.push_back(step);
  return route;
}

std::vector<double> hours_on_record(const ShopFile& shop, ModelId model,
                                    std::string_view operation) {
  Query query(shop, R"(
SELECT sum(entry.hands_on_s) AS hands_on_s FROM log_entry AS entry
JOIN blade ON blade.id = entry.blade_id
WHERE blade.model_id = ? AND entry.operation = ? AND blade.finished_at IS NOT NULL
  AND blade.scrapped_at IS NULL
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id)
GROUP BY blade.id HAVING sum(entry.hands_on_s) > 0 ORDER BY blade.id)");
  query.bind(model).bind(operation);
  std::vector<double> hours;
  while (query.next()) hours.push_back(static_cast<double>(query.integer("hands_on_s")) / 3600.0);
  return hours;
}

}  // namespace tangmark::db
