// SPDX-License-Identifier: MIT
#include "reports/seal/der.h"

#include <algorithm>

namespace tangmark::reports::der {

std::string element(unsigned char tag, std::string_view content) {
  std::string out(1, static_cast<char>(tag));
  const std::size_t size = content.size();
  if (size < 128) {
    out += static_cast<char>(size);
  } else {
    std::string digits;
    for (std::size_t rest = size; rest > 0; rest >>= 8) {
      digits.insert(digits.begin(), static_cast<char>(rest & 0xFF));
    }
    out += static_cast<char>(0x80 + digits.size());
    out += digits;
  }
  return out.append(content);
}

std::string sequence(std::string_view content) {
  return element(0x30, content);
}

std::string set_of(std::vector<std::string> elements) {
  // DER compares encodings as unsigned octets; std::string does so as well.
  std::sort(elements.begin(), elements.end());
  std::string content;
  for (const std::string& one : elements) content += one;
  return element(0x31, content);
}

std::string octets(std::string_view content) {
  return element(0x04, content);
}

std::string small_integer(int value) {
  return element(0x02, std::string(1, static_cast<char>(value)));
}

}  // namespace tangmark::reports::der
