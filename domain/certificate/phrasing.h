// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/certificate/dossier.h"

namespace tangmark::certificate {

/// "a, b and c".
std::string listed(const std::vector<std::string>& parts);
/// "once", "twice", "3 times".
std::string times_text(int n);
/// "3 days", "1 day".
std::string counted(long long n, std::string_view one, std::string_view many);
/// 615 is "61.5", 610 is "61".
std::string tenths_text(int tenths);
/// First letter as a capital (ASCII; other letters stay).
std::string capital(std::string text);
/// The mass fraction as a plain figure in per cent, at least two decimals: "0.85", "0.0015".
std::string percent_figure(Share share);
/// The element symbols of an analysis in the order a mill document lists them.
std::vector<std::string> elements_in_order(const Analysis& analysis);
/// "C 0.85, Mn 0.71".
std::string analysis_text(const Analysis& analysis);
/// "lot 17".
std::string lot_name(const Lot& lot);
/// "line 12", by the number of the entry in its blade's log.
std::string line_name(const BenchEntry& entry);
/// Name of a person or firm: "X", or in words that the name is not on record.
std::string hand_name(const Hand& hand);

}  // namespace tangmark::certificate
