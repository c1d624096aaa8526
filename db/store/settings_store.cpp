// SPDX-License-Identifier: MIT
#include "db/store/settings_store.h"

#include <algorithm>
#include <charconv>
#include <functional>
#include <map>

#include "db/row.h"

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::Paper> =
    std::array{std::pair{commission::Paper::a4, std::string_view{"A4"}},
               std::pair{commission::Paper::letter, std::string_view{"Letter"}}};
template <>
inline constexpr auto trade_words<TemperatureUnit> =
    std::array{std::pair{TemperatureUnit::celsius, std::string_view{"C"}},
               std::pair{TemperatureUnit::fahrenheit, std::string_view{"F"}}};
template <>
inline constexpr auto trade_words<LengthUnit> =
    std::array{std::pair{LengthUnit::millimetre, std::string_view{"mm"}},
               std::pair{LengthUnit::inch, std::string_view{"in"}}};
template <>
inline constexpr auto trade_words<MassUnit> =
    std::array{std::pair{MassUnit::gram, std::string_view{"g"}},
               std::pair{MassUnit::pound, std::string_view{"lb"}}};
}  // namespace tangmark

namespace tangmark::db {
namespace {

using commission::ShopSettings;
using Read = std::function<Problems(ShopSettings&, std::string_view text, std::string_view name)>;
using Write = std::function<std::string(const ShopSettings&)>;

struct Setting {
  std::string_view name, label;
  Read read;
  Write write;
};

template <class T>
Problems into(T& place, Outcome<T> value) {
  if (!value) return value.problems();
  place = std::move(value).value();
  return {};
}

Setting text(std::string_view name, std::string_view label, std::string ShopSettings::*member) {
  return {name, label,
          [member](ShopSettings& s, std::string_view t, std::string_view) {
            s.*member = t;
            return Problems{};
          },
          [member](const ShopSettings& s) { return s.*member; }};
}

template <class E>
Setting word(std::string_view name, std::string_view label, E ShopSettings::*member) {
  return {name, label,
          [member](ShopSettings& s, std::string_view t, std::string_view n) {
            return into(s.*member, of_word<E>(t, n));
          },
          [member](const ShopSettings& s) { return std::string(word_of(s.*member)); }};
}

Setting money(std::string_view name, std::string_view label, Money ShopSettings::*member) {
  return {name, label,
          [member](ShopSettings& s, std::string_view t, std::string_view n) {
            auto amount = parse_money(t, s.currency, n);
            if (amount && amount->currency() != s.currency)
              return Problems{{std::string(n), "The shop reckons in " + s.currency.code() + ".",
                               "Give the amount in " + s.currency.code() + "."}};
            return into(s.*member, std::move(amount));
          },
          [member](const ShopSettings& s) { return amount_text(s.*member); }};
}

Setting share(std::string_view name, std::string_view label, Share ShopSettings::*member) {
  return {name, label,
          [member](ShopSettings& s, std::string_view t, std::string_view n) {
            return into(s.*member, parse_share(t, n));
          },
          [member](const ShopSettings& s) { return to_text(s.*member); }};
}

Setting length(std::string_view name, std::string_view label, Length ShopSettings::*member) {
  return {name, label,
          [member](ShopSettings& s, std::string_view t, std::string_view n) {
            return into(s.*member, parse_length(t, s.length_unit, n));
          },
          [member](const ShopSettings& s) { return to_text(s.*member, s.length_unit); }};
}

Setting duration(std::string_view name, std::string_view label, Duration ShopSettings::*member) {
  return {name, label,
          [member](ShopSettings& s, std::string_view t, std::string_view n) {
            return into(s.*member, parse_duration(t, n));
          },
          [member](const ShopSettings& s) { return to_text(s.*member); }};
}

Setting whole(std::string_view name, std::string_view label, int ShopSettings::*member, int low,
              int high) {
  return {name, label,
          [=](ShopSettings& s, std::string_view t, std::string_view n) {
            int value = 0;
            const auto [end, error] = std::from_chars(t.data(), t.data() + t.size(), value);
            if (error != std::errc() || end != t.data() + t.size() || value < low || value > high)
              return Problems{{std::string(n), "\"" + std::string(t) + "\" does not fit here.",
                               "Write a whole number from " + std::to_string(low) + " to " +
                                   std::to_string(high) + "."}};
            s.*member = value;
            return Problems{};
          },
          [member](const ShopSettings& s) { return std::to_string(s.*member); }};
}

Problems read_zone(ShopSettings& s, std::string_view t, std::string_view n) {
  return into(s.zone, Zone::of(t, n));
}

// All amounts of a shop are in one currency; a new one keeps the figures, as a maker who moves
// would retype them anyway and is told so by the form.
Problems read_currency(ShopSettings& s, std::string_view t, std::string_view n) {
  Problems problems = into(s.currency, Currency::of(t, n));
  for (Money ShopSettings::*member :
       {&ShopSettings::hourly_rate, &ShopSettings::overhead_per_hour, &ShopSettings::price_step,
        &ShopSettings::packing, &ShopSettings::shipping, &ShopSettings::electricity_per_kwh,
        &ShopSettings::gas_per_kg, &ShopSettings::shop_cost_of_late_day,
        &ShopSettings::cost_of_moved_firing})
    s.*member = Money((s.*member).minor(), s.currency);
  return problems;
}

Problems read_tolerance(ShopSettings& s, std::string_view t, std::string_view n) {
  return into(s.temper_tolerance, parse_temperature_difference(t, s.temperature_unit, n));
}

std::vector<Setting> all_settings() {
  using S = ShopSettings;
  return {
      text("shop_name", "Name of the shop", &S::shop_name),
      text("maker_name", "Your name", &S::maker_name),
      text("address", "Address", &S::address),
      text("country", "Country", &S::country),
      {"zone", "Time zone", read_zone, [](const S& s) { return s.zone.name(); }},
      word("paper", "Paper", &S::paper),
      word("temperature_unit", "Temperatures in", &S::temperature_unit),
      word("length_unit", "Lengths in", &S::length_unit),
      word("mass_unit", "Masses in", &S::mass_unit),
      {"currency", "Currency", read_currency, [](const S& s) { return s.currency.code(); }},
      money("hourly_rate", "Your rate per hour", &S::hourly_rate),
      share("attended_share", "Share of it for attended wait", &S::attended_share),
      money("overhead_per_hour", "Overhead per hour", &S::overhead_per_hour),
      share("margin", "Usual margin", &S::margin),
      money("price_step", "Prices go up to a multiple of", &S::price_step),
      share("deposit_share", "Deposit", &S::deposit_share),
      whole("quote_valid_days", "A quote stands for days", &S::quote_valid_days, 1, 365),
      word("tax_mode", "Tax in prices", &S::tax_mode),
      share("tax_rate", "Tax rate, as your tax office says", &S::tax_rate),
      share("payment_fee", "Payment fee", &S::payment_fee),
      money("packing", "Box and packing", &S::packing),
      money("shipping", "Shipping", &S::shipping),
      text("refund_rule", "Refund rule", &S::refund_rule),
      text("tolerance_words", "Tolerance on sizes and pattern", &S::tolerance_words),
      money("electricity_per_kwh", "Electricity per kWh", &S::electricity_per_kwh),
      money("gas_per_kg", "Gas per kg", &S::gas_per_kg),
      whole("blades_in_a_firing", "Blades that usually share a firing", &S::blades_in_a_firing, 1,
            40),
      length("kerf", "Saw kerf", &S::kerf),
      length("keep_at_least", "Keep offcuts from", &S::keep_at_least),
      share("mass_gap_allowed", "Unexplained mass allowed per stage", &S::mass_gap_allowed),
      duration("temper_remark", "Temper is due after quench", &S::temper_remark),
      duration("temper_limit", "Temper must have begun after quench", &S::temper_limit),
      {"temper_tolerance", "Temper set points may differ by", read_tolerance,
       [](const S& s) {
         const bool f = s.temperature_unit == TemperatureUnit::fahrenheit;
         const std::int64_t hundredths = s.temper_tolerance.counts() / (f ? 10 : 18);
         std::string figure = std::to_string(hundredths / 100);
         if (hundredths % 100 != 0) {
           const std::string decimals = std::to_string(100 + hundredths % 100).substr(1);
           figure += "." + decimals;
         }
         return figure + (f ? " F" : " C");
       }},
      whole("contact_days", "Contact a waiting buyer every days", &S::contact_days, 1, 3650),
      duration("timer_limit", "A timer is forgotten after", &S::timer_limit),
      money("shop_cost_of_late_day", "A late day costs, for planning", &S::shop_cost_of_late_day),
      money("cost_of_moved_firing", "Moving a booked firing costs, for planning",
            &S::cost_of_moved_firing),
  };
}

const std::vector<Setting>& settings() {
  static const std::vector<Setting> all = all_settings();
  return all;
}

}  // namespace

commission::ShopSettings load_settings(const ShopFile& shop) {
  std::map<std::string, std::string, std::less<>> stored;
  Query query(shop, "SELECT name, value FROM setting");
  while (query.next()) stored.emplace(query.text("name"), query.text("value"));
  ShopSettings loaded;
  // In the table's order: units and currency come before the figures that are read in them.
  for (const Setting& setting : settings())
    if (const auto found = stored.find(setting.name); found != stored.end())
      setting.read(loaded, found->second, setting.name);
  return loaded;
}

std::vector<SettingText> settings_as_text(const commission::ShopSettings& shown) {
  std::vector<SettingText> texts;
  for (const Setting& setting : settings())
    texts.push_back({setting.name, setting.label, setting.write(shown)});
  return texts;
}

Outcome<commission::ShopSettings> with_setting(commission::ShopSettings changed,
                                               std::string_view name, std::string_view value) {
  const auto found = std::find_if(settings().begin(), settings().end(),
                                  [&](const Setting& s) { return s.name == name; });
  if (found == settings().end())
    return Problem{std::string(name), "There is no setting \"" + std::string(name) + "\".",
                   "Use one of the names that change_setting lists."};
  if (Problems problems = found->read(changed, value, name); !problems.empty()) return problems;
  return changed;
}

void store_settings(const ShopFile& shop, const commission::ShopSettings& kept) {
  std::map<std::string, std::pair<std::int64_t, std::string>, std::less<>> stored;
  {
    Query query(shop, "SELECT id, name, value FROM setting");
    while (query.next())
      stored.emplace(query.text("name"), std::pair(query.integer("id"), query.text("value")));
  }
  for (const Setting& setting : settings()) {
    const std::string value = setting.write(kept);
    const auto found = stored.find(setting.name);
    if (found == stored.end())
      Row("setting").set("name", setting.name).set("value", value).insert(shop);
    else if (found->second.second != value)
      Row("setting").set("value", value).update(shop, found->second.first);
  }
}

}  // namespace tangmark::db
