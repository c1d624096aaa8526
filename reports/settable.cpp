// SPDX-License-Identifier: MIT
#include "reports/settable.h"

#include "domain/measure/utf8.h"

namespace tangmark::reports {

namespace {
bool takes_no_room(char32_t code) {
  return code == 0xAD || code == 0xFEFF || (code >= 0x200B && code <= 0x200D) || code == 0x2060;
}
}  // namespace

Sign first_sign(std::string_view text) {
  std::string_view rest = text;
  const char32_t code = take_code_point(rest);
  return {code, text.size() - rest.size()};
}

std::string settable(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  while (!text.empty()) {
    const Sign sign = first_sign(text);
    if (sign.code == '\t' || sign.code == '\r') {
      out += ' ';
    } else if (!takes_no_room(sign.code)) {
      out += text.substr(0, sign.bytes);
    }
    text.remove_prefix(sign.bytes);
  }
  return out;
}

}  // namespace tangmark::reports
