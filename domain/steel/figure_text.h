// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "domain/measure/outcome.h"

namespace tangmark::steel {

/// Reads a plain number with a decimal point: "0.95", "-3", "1.6e-11". Refuses anything else, a
/// comma included, because a comma means two things.
Outcome<double> parse_figure(std::string_view text, std::string_view field);
/// The shortest text that reads back to the same number.
std::string figure_text(double value);
/// With so many decimals at most, trailing zeros dropped: (1.250, 2) is "1.25".
std::string rounded_text(double value, int decimals);

/// Without blanks and tabs at either end.
std::string_view trimmed(std::string_view text);
/// Small letters, ASCII only.
std::string lower(std::string_view text);
/// Cut at each separator that stands outside round brackets.
std::vector<std::string_view> split_outside_brackets(std::string_view text, char separator);
/// "204C" into "204" and "C", at the end of the leading number.
std::pair<std::string_view, std::string_view> number_then_unit(std::string_view text);

}  // namespace tangmark::steel
