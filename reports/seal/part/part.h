// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "reports/seal/pdf_libraries.h"

namespace tangmark::reports {

/// What the loaded part does; see PdfLibraries, whose members these are.
bool read_content(const std::string& pdf, PdfContent& content);
std::string with_empty_signature(const std::string& pdf, const SealWords& words);

}  // namespace tangmark::reports
