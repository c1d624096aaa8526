// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "reports/page.h"

namespace tangmark::reports {

/// The document as plain text for approval tests: for each page the text from top to bottom and
/// left to right with its font, then every other element with what it covers, all to a tenth of a
/// point.
///
///     page 1 of 2, 595.3 x 841.9
///     26.2 45.1 serif bold 20.0 | Build certificate
///     line 26.2 64.0 543.0 0.0
std::string page_text(const Document& document);

/// Only the words of the document, one run a line in reading order.
std::string words_of(const Document& document);

}  // namespace tangmark::reports
