// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "reports/quote_paper.h"

namespace tangmark::reports {

/// A letter in the maker's own words, on the shop's paper.
struct PlainLetter {
  Letterhead shop;
  Addressee buyer;
  Instant written{};
  std::string subject;     ///< "Commission 118: a later day"
  std::string commission;  ///< its number; may be empty
  std::string text;        ///< paragraphs between empty lines; single line breaks are kept
};

/// Sets the letter, over as many pages as it needs. Refuses a letter without words, and characters
/// that cannot be printed.
Outcome<Document> plain_letter_document(const PlainLetter& letter, const Look& look,
                                        const FontBook& fonts);

}  // namespace tangmark::reports
