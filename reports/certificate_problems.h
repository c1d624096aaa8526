// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/outcome.h"
#include "reports/build_certificate.h"
#include "reports/font_book.h"

namespace tangmark::reports {

/// What keeps a certificate from being set: texts that its fonts cannot print, a trail out of
/// order, a reading off the blade, a level that is none. Empty when it can be set.
Problems certificate_problems(const BuildCertificate& certificate, const FontBook& fonts);

}  // namespace tangmark::reports
