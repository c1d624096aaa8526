// SPDX-License-Identifier: MIT
#include "reports/seal/part/part.h"

// Found by its name when the part is loaded.
extern "C" const tangmark::reports::PdfLibraries tangmark_pdf_libraries{
    tangmark::reports::read_content, tangmark::reports::with_empty_signature};
