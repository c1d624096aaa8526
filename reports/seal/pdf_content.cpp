// SPDX-License-Identifier: MIT
#include "reports/seal/pdf_content.h"

#include "reports/seal/pdf_libraries.h"

namespace tangmark::reports {

Outcome<PdfContent> pdf_content(const std::string& pdf) {
  PdfContent content;
  if (!pdf_libraries().read_content(pdf, content))
    return Problem{"file", "The PDF is damaged and cannot be read.",
                   "Ask the maker for the certificate as it was issued."};
  return content;
}

std::string without_blanks(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f') continue;
    // The blank that does not break, U+00A0.
    if (c == '\xC2' && i + 1 < text.size() && text[i + 1] == '\xA0') {
      ++i;
      continue;
    }
    out += c;
  }
  return out;
}

}  // namespace tangmark::reports
