// SPDX-License-Identifier: MIT
#include "reports/seal/pdf_libraries.h"

namespace tangmark::reports {

bool read_content(const std::string& pdf, PdfContent& content);
std::string with_empty_signature(const std::string& pdf, const SealWords& words);

}  // namespace tangmark::reports

// Found by its name when the part is loaded.
extern "C" const tangmark::reports::PdfLibraries tangmark_pdf_libraries{
    tangmark::reports::read_content, tangmark::reports::with_empty_signature};
