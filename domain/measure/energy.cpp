// SPDX-License-Identifier: MIT
#include "domain/measure/energy.h"

#include <array>

#include "domain/measure/figure.h"

namespace tangmark {
namespace {

using figures::Letters;

constexpr figures::Unit kilowatt_hour = {"kWh", 3'600'000};

// Btu: NIST SP 811, B.8, "British thermal unit (IT)", 1.055056 E+03 J.
constexpr std::array<figures::Unit, 9> energy_units = {{
    kilowatt_hour,
    {"kW h", 3'600'000},
    {"Wh", 3'600},
    {"J", 1},
    {"kJ", 1'000},
    {"MJ", 1'000'000, 1, Letters::as_written},
    {"GJ", 1'000'000'000},
    {"Btu", 1'055'056, 1000},
    {"MWh", 3'600'000'000, 1, Letters::as_written},
}};

constexpr figures::Kind energy_kind = {.noun = "an energy",
                                       .measure = "energy",
                                       .example = "4.2 kWh or 15 MJ",
                                       .units = energy_units,
                                       .most = 3'600'000 * std::int64_t{1'000'000},
                                       .most_text = "1000000 kWh"};

constexpr figures::Unit litre = {"l", 1'000'000};

// Gallons: NIST SP 811, B.8: US 3.785411784 l (exact by 231 cubic inches), imperial 4.54609 l.
constexpr std::array<figures::Unit, 19> volume_units = {{
    litre,
    {"litre", 1'000'000},
    {"litres", 1'000'000},
    {"liter", 1'000'000},
    {"liters", 1'000'000},
    {"dl", 100'000},
    {"cl", 10'000},
    {"ml", 1'000, 1, Letters::as_written},
    {"mL", 1'000, 1, Letters::as_written},
    {"cc", 1'000},
    {"US gal", 3'785'411'784, 1000},
    {"US gallon", 3'785'411'784, 1000},
    {"US gallons", 3'785'411'784, 1000},
    {"imp gal", 4'546'090},
    {"imp gallon", 4'546'090},
    {"imp gallons", 4'546'090},
    {"qt", 946'352'946, 1000},
    {"US qt", 946'352'946, 1000},
    {"US fl oz", 295'735'295'625, 10'000'000},
}};

constexpr std::string_view gallon = "A gallon is two different volumes.";
constexpr std::string_view gallon_remedy = "Write US gal, imp gal or litres.";
constexpr std::string_view small = "This measure is not the same in the US and in Britain.";
constexpr std::string_view small_remedy = "Write ml, l or US fl oz.";
constexpr std::array<figures::Ambiguous, 6> volume_ambiguous = {{
    {"gal", gallon, gallon_remedy},
    {"gallon", gallon, gallon_remedy},
    {"gallons", gallon, gallon_remedy},
    {"fl oz", small, small_remedy},
    {"pt", small, small_remedy},
    {"pint", small, small_remedy},
}};

constexpr figures::Kind volume_kind = {.noun = "a volume",
                                       .measure = "volume",
                                       .example = "15 l, 250 ml or 2 US gal",
                                       .units = volume_units,
                                       .ambiguous = volume_ambiguous,
                                       .most = std::int64_t{100'000} * 1'000'000,
                                       .most_text = "100000 l"};

std::int64_t rounded(std::int64_t n, std::int64_t d) {
  return static_cast<std::int64_t>(figures::half_even(n, d));
}

}  // namespace

Outcome<Energy> parse_energy(std::string_view text, std::string_view field) {
  const auto joules = figures::read_quantity(text, energy_kind, kilowatt_hour, field);
  if (!joules) return joules.problems();
  return Energy::joules(*joules);
}

std::string to_text(Energy e) {
  return figures::fixed(rounded(e.joules(), 36'000), 2) + " kWh";
}

Outcome<Volume> parse_volume(std::string_view text, std::string_view field) {
  const auto ul = figures::read_quantity(text, volume_kind, litre, field);
  if (!ul) return ul.problems();
  return Volume::microlitres(*ul);
}

std::string to_text(Volume v) {
  const std::int64_t ul = v.microlitres();
  if (ul < 1'000'000 && ul > -1'000'000) return figures::shortest(ul, 3) + " ml";
  return figures::shortest(rounded(ul, 1000), 3) + " l";
}

}  // namespace tangmark
