// SPDX-License-Identifier: MIT
#pragma once

#include "tests/unit/db/maker.h"

namespace tangmark::test {

inline void add_long_kiln(Maker& maker) {
  maker.did("add_kiln", {{"name", "Long kiln"},
                         {"kind", "kiln"},
                         {"slots", "4"},
                         {"usable_length", "420 mm"},
                         {"lowest", "100 C"},
                         {"highest", "1100 C"},
                         {"heats_per_hour", "900 C"},
                         {"cooling_time_constant", "2h"},
                         {"heating_watts", "2900"},
                         {"holding_mw_per_c", "1100"}});
}

// A kiln, an oven and blades that are ready to harden.
struct KilnDay : Maker {
  KilnDay() {
    add_long_kiln(*this);
    did("add_kiln", {{"name", "Temper oven"},
                     {"kind", "oven"},
                     {"slots", "8"},
                     {"usable_length", "420 mm"},
                     {"lowest", "50 C"},
                     {"highest", "300 C"},
                     {"heats_per_hour", "600 C"},
                     {"cooling_time_constant", "45 min"},
                     {"heating_watts", "1200"},
                     {"holding_mw_per_c", "1500"}});
  }
  std::string blade(const std::string& length = "200 mm") {
    const std::string number = did("assign_blade", {{"title", "petty"},
                                                    {"grade", "1084"},
                                                    {"length", length},
                                                    {"route", "harden,temper,temper"}});
    return number;
  }
  // Gives the steps of a bare route their heats.
  std::string planned_blade(const std::string& length = "200 mm") {
    const std::string number =
        did("assign_blade",
            {{"title", "petty"}, {"grade", "1084"}, {"length", length}, {"route", "profile"}});
    did("add_route_step", {{"blade", number},
                           {"operation", "harden"},
                           {"set", "805 C"},
                           {"low", "795 C"},
                           {"high", "815 C"},
                           {"soak", "10 min"},
                           {"soak_max", "25 min"},
                           {"medium", "fast oil"}});
    for (int i = 0; i < 2; ++i)
      did("add_route_step", {{"blade", number},
                             {"operation", "temper"},
                             {"set", "200 C"},
                             {"low", "195 C"},
                             {"high", "205 C"},
                             {"soak", "2h"},
                             {"soak_max", "3h"},
                             {"unattended_allowed", "yes"}});
    did("log_step", {{"blade", number}, {"operation", "profile"}, {"hands_on", "30 min"}});
    return number;
  }
};

}  // namespace tangmark::test
