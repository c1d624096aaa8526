// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "domain/measure/outcome.h"
#include "reports/page.h"

namespace tangmark::reports {

/// The text as a QR code with error correction M, which survives about 15 % of soot and grease.
/// Refuses empty text, text that is not printable ASCII (readers guess the encoding of anything
/// else), and text too long for a code (about 2,300 letters).
/// **Source** ISO/IEC 18004:2015.
Outcome<QrModules> qr_modules(std::string_view ascii, std::string_view field);

/// A code in a square of this side, quiet margin of 4 modules included, at its top left corner.
Element placed_qr(const QrModules& modules, Place corner, Points side);

}  // namespace tangmark::reports
