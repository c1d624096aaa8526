// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "domain/measure/caught.h"
#include "domain/measure/when.h"

namespace tangmark::stock {

/// How a species or material stands in the treaty on trade in endangered species. `look_alike` is
/// not listed but taken for a listed one; `origin_rules` may need papers of the country of origin.
enum class Listing { appendix_1, appendix_2, appendix_3, look_alike, origin_rules };

/// One entry of the watch list. It prompts and gives no verdict.
struct WatchedSpecies {
  std::string_view words;  ///< trade names and Latin names, divided by commas
  Listing listing;
  std::string_view note;
};

/// The list and the day it was drawn up. Source: general knowledge of the treaty's appendices as
/// they stood then, written from memory; lists change every two to three years, so every prompt
/// says to verify.
std::span<const WatchedSpecies> watch_list();
CalendarDate watch_list_day();

/// The entry that a trade name or Latin name falls under: every word of one of its names occurs.
const WatchedSpecies* find_watched(std::string_view species, std::string_view latin);

/// "Appendix II of CITES".
std::string_view words_of(Listing listing);

/// Whether goods to `destination` leave the shop's country. A country not stated is not foreign; a
/// shop that states no country of its own sends everything abroad.
bool goes_abroad(std::string_view home, std::string_view destination);

struct HandleAbroad {
  std::string species, latin;  ///< as entered; may be empty
  std::string papers;          ///< what is on file; may be empty
  std::string home, destination;
};

/// Catch 18: a species on the watch list going abroad. A prompt only.
Catch watched_species_abroad(const HandleAbroad& handle);

}  // namespace tangmark::stock
