// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

namespace tangmark::certificate {

/// The value of one folded number word in English, German, French, Italian or Spanish that a text
/// on a knife may count layers or tempers with: "hundred", "dreihundert", "trecento",
/// "trescientas". None for any other word; small words that also mean something else ("a", "un",
/// "six") are kept out unless they are plainly numbers.
std::optional<double> number_word(std::string_view folded);

/// "One" in any of the languages: a figure only behind a ten or a hundred.
bool is_one(std::string_view folded);

}  // namespace tangmark::certificate
