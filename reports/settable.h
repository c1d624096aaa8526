// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace tangmark::reports {

/// The first character of a text and how many bytes it takes; broken UTF-8 reads as U+FFFD, one
/// byte at a time. `text` is not empty.
struct Sign {
  char32_t code = 0;
  std::size_t bytes = 1;
};
Sign first_sign(std::string_view text);

/// The text with characters that take no room (joiners, soft hyphens, byte order marks) left out
/// and tabs and carriage returns as spaces; line ends stay.
std::string settable(std::string_view text);

}  // namespace tangmark::reports
