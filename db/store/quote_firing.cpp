// SPDX-License-Identifier: MIT
#include "db/row.h"
#include "db/store/learning_store.h"
#include "db/store/quote_item.h"
#include "domain/blade/operation.h"

namespace tangmark::db {
namespace {

using namespace commission;

// One blade out of the kiln, into the tank, and the door shut again until the heat is back.
constexpr auto quench_each =
    std::chrono::minutes(4);                    // 1 to 4 min recovery; common practice, no source
constexpr auto usual_blade = Mass::grams(250);  // its own heat is small beside the brick's

std::chrono::minutes in_minutes(Duration time) {
  return std::chrono::ceil<std::chrono::minutes>(time);
}

costing::FiringKind kind_of(blade::Heat heat) {
  switch (heat) {
    case blade::Heat::harden:
      return costing::FiringKind::harden;
    case blade::Heat::anneal:
      return costing::FiringKind::anneal;
    case blade::Heat::soak:
    case blade::Heat::none:
      break;
  }
  return costing::FiringKind::soak;
}

// The load of this kind of firing when the maker has taken one from the record, else the usual.
std::int64_t load_of(const ShopFile& shop, const ShopSettings& settings, costing::FiringKind kind) {
  const char* word = kind == costing::FiringKind::harden ? "harden"
                     : kind == costing::FiringKind::soak ? "soak"
                                                         : "anneal";
  return expected_load(shop, word).value_or(settings.blades_in_a_firing);
}

struct KilnValues {
  costing::HeatingKiln heating;
  std::chrono::minutes load, unload;
  std::string name;
  bool by_plate = true;
};

// An oven before a kiln: the small one is used where it can be.
std::optional<KilnValues> kiln_for(const ShopFile& shop, Temperature at) {
  Query query(
      shop,
      "SELECT * FROM kiln WHERE out_of_use_on IS NULL AND low_k1800 <= ?1 AND high_k1800 >= ?1 "
      "ORDER BY kind = 'kiln', id LIMIT 1");
  query.bind(at);
  if (!query.next()) return std::nullopt;
  KilnValues values;
  values.heating.heat_c_per_h = query.integer("heat_k1800_per_h") / 1800;
  values.heating.heat_w = query.integer("heat_w");
  values.heating.hold_mw_per_c = query.integer("hold_mw_per_c");
  values.heating.load_mc_per_h = query.maybe_integer("load_k1800_per_h").value_or(0) * 10 / 18;
  values.name = query.text("name");
  values.by_plate = query.text("values_from") == "plate";
  values.load = in_minutes(query.duration("load_s"));
  values.unload = in_minutes(query.duration("unload_s"));
  return values;
}

}  // namespace

std::optional<costing::FiringPart> firing_of_step(const ShopFile& shop, const ModelStep& step,
                                                  const ShopSettings& settings,
                                                  std::vector<std::string>& assumptions) {
  const auto operation = blade::trade_operation(step.operation);
  if (!operation || operation->heat == blade::Heat::none || !step.temperature) return std::nullopt;
  const auto kiln = kiln_for(shop, *step.temperature);
  const std::string set = to_text(*step.temperature, settings.temperature_unit);
  if (!kiln) {
    assumptions.push_back("No kiln on record holds " + set + ", so no energy is counted for " +
                          step.operation + ".");
    return std::nullopt;
  }
  costing::ExpectedFiring firing;
  firing.kind = kind_of(operation->heat);
  firing.at = *step.temperature;
  firing.load = kiln->load;
  firing.soak = in_minutes(step.soak.value_or(Duration{}));
  firing.unload = kiln->unload;
  firing.quench_each = quench_each;
  if (step.cool_per_h && step.cool_to)
    firing.cooling = costing::ControlledCooling{*step.cool_to, step.cool_per_h->counts() / 1800};
  firing.blades = load_of(shop, settings, firing.kind);
  firing.steel = Mass::micrograms(usual_blade.micrograms() * firing.blades);
  const auto use = costing::firing_use(kiln->heating, firing);
  if (!use) {
    assumptions.push_back("No energy is counted for " + step.operation + ": " +
                          use.problem().sentence);
    return std::nullopt;
  }
  return costing::FiringPart{
      *use, settings.electricity_per_kwh,
      (kiln->by_plate ? "the plate values of the " : "the records of the ") + kiln->name};
}

}  // namespace tangmark::db
