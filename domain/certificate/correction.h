// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/when.h"

namespace tangmark::certificate {

struct Dossier;

/// A printed fact that was first on record otherwise. What was written first is kept in the shop
/// file and told on the certificate, with the day and the reason.
struct Correction {
  std::string of;   ///< "temper 2, hold", "melt number of lot 17"
  std::string was;  ///< "1 h"; empty when nothing stood there before
  bool struck_out = false;  ///< nothing took its place
  CalendarDate day{};
  std::string why;  ///< the maker's words
  friend bool operator==(const Correction&, const Correction&) = default;
};

/// Corrections of the bench log that touch what a certificate prints: heats, quenches, times of
/// heats, hands, what was done. A changed note or a changed minute of work is none.
std::vector<Correction> log_corrections(const Dossier& dossier);

/// "Corrected on 12 Nov 2026, temper 2, hold: first written as 1 h. Reason: wrong line read."
/// "Struck out on 12 Nov 2026: normalize. Reason: another blade."
std::string correction_text(const Correction& correction);

}  // namespace tangmark::certificate
