// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"

namespace tangmark::reports {

/// What a reader finds in a PDF, read by libraries that had no part in writing it.
struct PdfContent {
  std::vector<std::string> pages;  ///< the words of each page in the order in which they are drawn
  std::map<std::string, std::string> attachments;  ///< by name
  std::vector<std::string> photographs;            ///< JPEG files that the pages show
  std::vector<std::string> drawings;  ///< of each page: all that a reader draws from, as one text
};

/// Reads a PDF. Refuses one that is damaged or locked.
Outcome<PdfContent> pdf_content(const std::string& pdf);

/// A text without its blanks and line ends, to compare words whatever their spacing.
std::string without_blanks(std::string_view text);

}  // namespace tangmark::reports
