// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "reports/font_book.h"
#include "reports/page.h"

namespace tangmark::reports::samples {

/// Reads a document as a proof reader would and lists every fault: something outside the page or in
/// the margin no printer reaches, text over text, a stroke or picture through text, text painted
/// over, anything in the quiet margin of a code, a width that is not what the font takes, a
/// character the font lacks.
std::vector<std::string> faults_of(const Document& document, const FontBook& fonts);

}  // namespace tangmark::reports::samples
