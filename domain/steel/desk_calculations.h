// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/steel/desk_calc.h"

namespace tangmark::steel {

// The computations by what they are about; desk_calc.cpp puts them in order.
std::vector<DeskCalculation> bench_calculations();  ///< mass, layers, blend, etchant, fuel, cooling
std::vector<DeskCalculation> hardening_calculations();  ///< critical, ms, hardenability, through
std::vector<DeskCalculation> carbon_calculations();     ///< phases, carbon, decarb, equalize
std::vector<DeskCalculation> temper_calculations();     ///< hardness, temper, expect
std::vector<DeskCalculation> grade_calculations();      ///< grade, advice
std::vector<DeskCalculation> money_calculations();      ///< loss, price

/// Fields of a composition, for an answer.
DeskValue composition_value(const Composition& composition);

}  // namespace tangmark::steel
