// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>

#include "reports/seal/pdf_content.h"
#include "reports/seal/sealed_pdf.h"

namespace tangmark::reports {

/// Bytes kept for a signature; it takes about 2 kB with a key of 3072 bits.
inline constexpr std::size_t signature_room = 4096;
/// Numbers of ten digits that stand in /ByteRange until the real ones are known.
inline constexpr std::array<long long, 3> range_places{8888888881, 8888888882, 8888888883};

/// The work done by the libraries that read and write PDFs (qpdf, poppler). They bring some thirty
/// others with them, and loading all those takes longer than most answers of the program take. So
/// this work stands in a part of its own beside the program (libtangmark_pdf.so), loaded the first
/// time a paper is sealed or read.
struct PdfLibraries {
  /// Fills `content`; false when the file is damaged or locked.
  bool (*read_content)(const std::string& pdf, PdfContent& content);
  /// The PDF written anew with a signature field whose place is empty: zeros for the signature,
  /// `range_places` for what it covers. Throws std::exception when the PDF cannot be read.
  std::string (*with_empty_signature)(const std::string& pdf, const SealWords& words);
};

/// Throws PageFailure when the part does not stand beside the program.
const PdfLibraries& pdf_libraries();

}  // namespace tangmark::reports
