// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/share.h"
#include "domain/measure/temperature.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

enum class Paper { a4, letter };
enum class TaxMode { none, exclusive, inclusive };

/// The shop as it presents itself and reckons. Every figure is the maker's own to change; the
/// defaults are common practice, no source.
struct ShopSettings {
  std::string shop_name = "My shop";
  std::string maker_name = "";
  std::string address = "";
  Zone zone;
  std::string country = "";  ///< where the shop is, as the maker writes it

  // How things are shown.
  Paper paper = Paper::a4;
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;
  LengthUnit length_unit = LengthUnit::millimetre;
  MassUnit mass_unit = MassUnit::gram;

  // Money.
  Currency currency;
  Money hourly_rate{35'00, Currency()};
  Share attended_share = Share::percent(50);  ///< of the rate, for attended wait
  Money overhead_per_hour{12'00, Currency()};
  Share margin = Share::percent(20);
  Money price_step{5'00, Currency()};
  Share deposit_share = Share::percent(40);
  int quote_valid_days = 30;
  TaxMode tax_mode = TaxMode::none;
  Share tax_rate;     ///< as the maker's tax office says
  Share payment_fee;  ///< of the price
  Money packing{8'00, Currency()};
  Money shipping{0, Currency()};
  std::string refund_rule =
      "The deposit is returned in full until work begins; after that, less the material used.";
  std::string tolerance_words = "Sizes may differ by 3 %; a pattern differs from every photograph.";

  // Energy and stock.
  Money electricity_per_kwh{35, Currency()};
  Money gas_per_kg{4'00, Currency()};
  int blades_in_a_firing = 3;  ///< expected load that a quote shares a firing by
  Length kerf = Length::millimetres(2);
  Length keep_at_least = Length::millimetres(100);  ///< shorter is short stock
  Share mass_gap_allowed =
      Share::percent(5);  ///< unexplained mass per stage before it is asked about

  // Rules of the bench.
  Duration temper_remark = std::chrono::minutes(30);
  Duration temper_limit = std::chrono::minutes(90);
  TemperatureDifference temper_tolerance = TemperatureDifference::celsius(5);
  int contact_days = 90;
  Duration timer_limit = std::chrono::hours(12);
  Money shop_cost_of_late_day{20'00, Currency()};  ///< what the planner holds a late day to cost
  Money cost_of_moved_firing{4'00, Currency()};    ///< what moving or dropping a booked one costs
};

}  // namespace tangmark::commission

namespace tangmark {
template <>
inline constexpr auto trade_words<commission::TaxMode> =
    std::array{std::pair{commission::TaxMode::none, std::string_view{"none"}},
               std::pair{commission::TaxMode::exclusive, std::string_view{"exclusive"}},
               std::pair{commission::TaxMode::inclusive, std::string_view{"inclusive"}}};
}  // namespace tangmark
