// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "domain/certificate/certificate_sheet.h"
#include "domain/measure/outcome.h"
#include "reports/font_book.h"
#include "reports/page.h"

namespace tangmark::desk {

enum class PageState { draft, issued };

/// What stands on the page of a certificate beside its record.
struct PageDress {
  PageState state = PageState::draft;
  std::string key;    ///< fingerprint of the key that signs; empty: not signed
  std::string photo;  ///< the JPEG of the newest picture of the record; empty for none
  int photo_side_px = 200;  ///< how fine the picture is read for a screen; the PDF holds the file
};

/// The page of a certificate, made from its record alone: it can say nothing else, and the page of
/// an issued certificate can be made again from the record inside it. Refuses what the fonts cannot
/// print and a picture that is not the one of the record.
Outcome<reports::Document> certificate_page(const certificate::CertificateSheet& sheet,
                                            const PageDress& dress,
                                            const reports::FontBook& fonts);

/// "Build certificate 12, issue 1".
std::string certificate_words(const certificate::CertificateSheet& sheet);

}  // namespace tangmark::desk
