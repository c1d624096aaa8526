// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/kiln/firing.h"
#include "domain/kiln/kiln.h"
#include "domain/kiln/kiln_fit.h"

namespace tangmark::db {

/// The newest records of a kiln's own logger, two dozen at most, ready to be fitted: read by the
/// mapping kept with each and corrected as the maker corrected it. A record that cannot be read any
/// more is left out.
std::vector<kiln::FitRun> fit_runs(const ShopFile& shop, kiln::KilnId kiln);

/// A fit as it was taken over. Only the values and their errors are kept; the curves are fitted
/// anew.
struct TakenFit {
  Instant at;
  kiln::KilnFit fit;
};
void add_fit(const ShopFile& shop, kiln::KilnId kiln, const kiln::KilnFit& fit, Instant at);
std::optional<TakenFit> last_fit(const ShopFile& shop, kiln::KilnId kiln);

/// What the fit of all records of a kiln says of one stretch of one record.
struct FittedStretch {
  std::string text;  ///< "fitted: it heats by 862 °C/h; error 3.1 °C over 2 records"
  std::vector<std::pair<Instant, Temperature>> points;
};
/// The stretches of a firing's record that the fit explains: heating at full power, free cooling.
/// None where the record shows neither.
std::vector<FittedStretch> fitted_over(const ShopFile& shop, const kiln::KeptFiring& firing,
                                       TemperatureUnit unit);

/// Where a kiln's values are from, in a sentence: "The Long kiln uses the values on its plate: no
/// record has been fitted." or "... heats by 862 C/h, error 3.1 C over 2 records; ...".
std::string values_in_words(const ShopFile& shop, const kiln::KeptKiln& kiln, TemperatureUnit unit);

}  // namespace tangmark::db
