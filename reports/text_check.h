// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/font_book.h"
#include "reports/look.h"

namespace tangmark::reports {

/// Looks through the texts of a document before it is set, and gathers every problem, so that the
/// maker sees all of them at once.
class TextCheck {
 public:
  explicit TextCheck(const FontBook& fonts) : fonts_(fonts) {}
  void text(std::string_view text, std::string_view field);
  void texts(const std::vector<std::string>& texts, std::string_view field);
  /// A text that must be there.
  void needed(std::string_view text, std::string_view field);
  void letterhead(const Letterhead& shop);
  void addressee(const Addressee& buyer);
  /// A picture whose bytes do not match its size.
  void picture(const Picture& picture, std::string_view field);
  /// A text to be printed as a QR code; empty is none.
  void code(std::string_view ascii, std::string_view field);
  void add(Problem problem) { problems_.push_back(std::move(problem)); }
  bool refused() const { return !problems_.empty(); }
  const Problems& problems() const { return problems_; }

 private:
  const FontBook& fonts_;
  Problems problems_;
};

}  // namespace tangmark::reports
