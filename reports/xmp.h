// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "reports/page.h"

namespace tangmark::reports {

/// The metadata of a document as an XMP packet, which readers without a PDF parser find as well:
/// the same title, author, subject, language and day as the information dictionary says.
/// **Source** ISO 16684-1 (XMP); ISO 32000-1, 14.3.2.
std::string xmp_packet(const Document& document);

}  // namespace tangmark::reports
