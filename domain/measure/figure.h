// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"

// How this room reads and rounds figures. Other rooms use the measures themselves.
namespace tangmark::figures {

__extension__ typedef __int128 Wide;  // products of two 64-bit counts, exact

/// n / d to the nearest whole number, ties to the even one. d > 0.
/// Source: IEEE 754-2008, 4.3.1, roundTiesToEven.
Wide half_even(Wide n, Wide d);
/// Whether a count fits the 64 bits that measures are kept in.
bool fits(Wide n);

enum class Letters { any_case, as_written };

/// One spelling of a unit. One of it is numerator / denominator counts of the measure.
struct Unit {
  std::string_view spelling;
  std::int64_t numerator;
  std::int64_t denominator = 1;
  Letters letters = Letters::any_case;
};

/// A spelling that means two things and is refused with the remedy.
struct Ambiguous {
  std::string_view spelling;
  std::string_view sentence;
  std::string_view remedy;
};

enum class Sign { refused, allowed };

/// What is being read, so that a refusal can say what would be right.
struct Kind {
  std::string_view noun;     ///< "a length"
  std::string_view measure;  ///< "length"
  std::string_view example;  ///< "3.2 mm or 1/8 in"
  std::span<const Unit> units;
  std::span<const Ambiguous> ambiguous = {};
  std::int64_t most = INT64_MAX;  ///< the largest count accepted
  std::string_view most_text = {};
  Sign sign = Sign::refused;
};

/// An exact fraction as typed. denominator > 0.
struct Exact {
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;
};

/// One figure with its unit; unit is null when none was written. rest is what follows.
struct Term {
  Exact figure;
  const Unit* unit = nullptr;
  std::string_view rest;
};

/// Reads one figure ("12", "-0.5", "3/8", "1 1/2", "1-1/2") and the unit behind it.
Outcome<Term> read_term(std::string_view text, const Kind& kind, std::string_view field);
/// Reads "2 lb 3 oz": terms in falling units, summed into counts, each to the nearest count. A lone
/// bare figure is in `usual`.
Outcome<std::int64_t> read_quantity(std::string_view text, const Kind& kind, const Unit& usual,
                                    std::string_view field);

/// Figure times unit, to the nearest count.
Wide counts(Exact figure, const Unit& unit);

/// text without white space at both ends; no-break and thin spaces count as white space.
std::string_view trimmed(std::string_view text);
/// text for a sentence: in quotation marks, control characters and broken bytes as "?", at most 40
/// code points.
std::string quoted(std::string_view text);
/// A refusal of text as not being this kind of measure.
Problem not_a(std::string_view text, const Kind& kind, std::string_view field);
/// A refusal of text as being above the kind's limit.
Problem too_much(std::string_view text, const Kind& kind, std::string_view field);

/// value / 10^digits with all its decimals: (1250, 2) is "12.50".
std::string fixed(std::int64_t value, int digits);
/// The same without trailing zeros: (1250, 2) is "12.5".
std::string shortest(std::int64_t value, int digits);

}  // namespace tangmark::figures
