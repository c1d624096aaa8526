// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

#include "reports/font_book.h"
#include "reports/page.h"

namespace tangmark::reports {

/// The document as a PDF with embedded subset fonts, metadata, outline and attachments. The same
/// document gives the same bytes. Pictures are reduced to 300 dots per inch of their place.
/// Not claimed to be PDF/A. Throws PageFailure when a font or the memory fails.
/// **Source** ISO 32000-1.
std::string pdf_bytes(const Document& document, const FontBook& fonts);

/// Writes the PDF beside its place and moves it there, so that a failure leaves what was there
/// before. Throws PageFailure with the path and the reason.
void write_pdf(const Document& document, const FontBook& fonts, const std::filesystem::path& path);

/// Writes any bytes the same way.
void write_whole(const std::string& bytes, const std::filesystem::path& path);

}  // namespace tangmark::reports
