// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"
#include "reports/page.h"

namespace tangmark::reports {

/// How this maker likes figures on paper. Money carries its own currency.
struct Look {
  Paper paper = Paper::a4;
  TemperatureUnit temperature = TemperatureUnit::celsius;
  LengthUnit length = LengthUnit::millimetre;
  MassUnit mass = MassUnit::gram;
  Zone zone;
};

/// What stands at the head of a paper that leaves the shop.
struct Letterhead {
  std::string shop;
  std::string maker;
  std::vector<std::string> address;  ///< as many lines as the maker likes
  std::string contact;               ///< telephone, mail; one line
  std::string tax_number;            ///< with its name, "VAT no. ..."; may be empty
  std::optional<Picture> mark;  ///< the maker's mark; without one the initials are set in a ring
};

/// To whom a paper goes.
struct Addressee {
  std::string name;
  std::vector<std::string> address;
};

}  // namespace tangmark::reports
