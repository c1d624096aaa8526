// SPDX-License-Identifier: MIT
#include "domain/stock/bath_heat.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <string>

namespace tangmark::stock {
namespace {

constexpr double room_c = 20, hottest_c = 1200;
constexpr double ground_share = 2.0 / 3, steel_kg_per_litre = 7.85;
constexpr Length usual_width = Length::nanometres(40'000'000);
constexpr Length usual_thickness = Length::nanometres(5'000'000);

/// kJ/kg from 20 C up, piece by piece of the standard's formula.
double enthalpy_kj_per_kg(double c) {
  const auto first = [](double t) {
    return 425 * t + 0.773 / 2 * t * t - 1.69e-3 / 3 * t * t * t + 2.22e-6 / 4 * t * t * t * t;
  };
  const auto span = [&](double from, double to) { return std::clamp(c, from, to) - from; };
  double joules = first(std::min(c, 600.0)) - first(room_c);
  joules += 666 * span(600, 735) + 13002 * std::log(138 / (138 - span(600, 735)));
  joules += 545 * span(735, 900) + 17820 * std::log((4 + span(735, 900)) / 4);
  joules += 650 * span(900, hottest_c);
  return joules / 1000;
}

double litres(Length a, Length b, Length c) {
  constexpr double dm = 1e8;  // nanometres
  return static_cast<double>(a.nanometres()) / dm * (static_cast<double>(b.nanometres()) / dm) *
         (static_cast<double>(c.nanometres()) / dm);
}

}  // namespace

Energy heat_of_steel_per_kg(Temperature hot, Temperature cold) {
  const auto kj = [](Temperature t) {
    return enthalpy_kj_per_kg(std::clamp(t.in_celsius(), room_c, hottest_c));
  };
  return Energy::joules(std::llround(1000 * (kj(hot) - kj(cold))));
}

std::optional<Energy> heat_per_litre_and_degree(std::string_view medium) {
  std::string words(medium);
  for (char& c : words) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  if (words.find("oil") != std::string::npos) return Energy::joules(1'700);
  for (const char* wet : {"water", "brine"})
    if (words.find(wet) != std::string::npos) return Energy::joules(4'100);
  return std::nullopt;
}

std::optional<TemperatureDifference> warms_by(const Bath& bath, Length length,
                                              std::optional<Length> width,
                                              std::optional<Length> thickness, Temperature hot) {
  const auto per_litre = heat_per_litre_and_degree(bath.medium);
  if (!per_litre || !bath.volume || bath.volume->microlitres() <= 0) return std::nullopt;
  const double kg =
      ground_share * steel_kg_per_litre *
      litres(length, width.value_or(usual_width), thickness.value_or(usual_thickness));
  const double joules =
      kg * static_cast<double>(heat_of_steel_per_kg(hot, rest_of(bath)).joules());
  const double degrees =
      joules / (static_cast<double>(per_litre->joules()) * bath.volume->in_litres());
  return TemperatureDifference::counts(std::llround(degrees * 1800));
}

Temperature rest_of(const Bath& bath) { return bath.low.value_or(Temperature::celsius(20)); }

}  // namespace tangmark::stock
