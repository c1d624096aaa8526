// SPDX-License-Identifier: MIT
#include "reports/qr.h"

#include <qrencode.h>

#include <algorithm>
#include <memory>
#include <string>

namespace tangmark::reports {

namespace {
constexpr int quiet_modules = 4;
}

Outcome<QrModules> qr_modules(std::string_view ascii, std::string_view field) {
  const std::string text(ascii);
  const bool printable =
      std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c < 0x7F; });
  if (text.empty() || !printable) {
    return Problem{std::string(field), "A QR code holds plain ASCII text and not nothing.",
                   "Percent-encode other characters."};
  }
  const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
      QRcode_encodeData(static_cast<int>(text.size()),
                        reinterpret_cast<const unsigned char*>(text.data()), 0, QR_ECLEVEL_M),
      &QRcode_free);
  if (!code) {
    return Problem{std::string(field), "The text is too long for a QR code.",
                   "Shorten it to 2,300 letters or fewer."};
  }
  QrModules modules;
  modules.across = code->width;
  for (int i = 0; i < code->width * code->width; ++i) {
    modules.dark.push_back((code->data[i] & 1) != 0);
  }
  return modules;
}

Element placed_qr(const QrModules& modules, Place corner, Points side) {
  const Points module = side / (modules.across + 2 * quiet_modules);
  const Points quiet = quiet_modules * module;
  return PlacedQr{{corner.x + quiet, corner.y + quiet, side - 2 * quiet, side - 2 * quiet},
                  modules};
}

}  // namespace tangmark::reports
