// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/outcome.h"

namespace tangmark::steel {

/// A mix of ferric chloride stock and water. Volumes do not add exactly: make up to the mark.
struct EtchantMix {
  double stock_ml = 0;
  double water_ml = 0;
  double density_g_ml = 0;  ///< of the finished bath
};

/// Density in g/ml at 20 C of ferric chloride in water, linear between the rows of the table.
/// **Source**: a producer's table as republished online; water 0.998. **Valid**: 0 to 44 weight per
/// cent. **Outside**: refused.
Outcome<double> ferric_chloride_density_g_ml(double weight_percent);
/// The strength in weight per cent of a heavy Baume degree: 145 - 145 / SG, density taken as SG,
/// then back through the density table. **Outside** 0 to 46.3 degrees: refused.
Outcome<double> ferric_chloride_from_baume_wt(double degrees);
/// Heavy Baume degrees of a density.
double baume_of_density(double density_g_ml);

/// Stock and water for a finished volume. Dilution is by mass: the ferric chloride in the bath is
/// all from the stock. **Source**: conservation of mass and the density table. Refuses a bath
/// stronger than its stock, a strength outside the table and a volume that is not above zero. A
/// bottle marked 40 % may mean 40 g in 100 ml, which is about 31 weight per cent.
Outcome<EtchantMix> dilute_ferric_chloride(double have_wt, double want_wt, double make_ml);

}  // namespace tangmark::steel
