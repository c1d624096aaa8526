// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// The few shapes of DER that a signature is made of, written in their one canonical form. Nothing
/// is read here. **Source** ITU-T X.690, 8 and 10.
namespace tangmark::reports::der {

/// Any element: its tag, its length in the shortest form, its content.
std::string element(unsigned char tag, std::string_view content);
std::string sequence(std::string_view content);
/// SET OF: the elements in ascending order of their encodings (X.690, 11.6).
std::string set_of(std::vector<std::string> elements);
std::string octets(std::string_view content);
/// A whole number from 0 to 127.
std::string small_integer(int value);

}  // namespace tangmark::reports::der
