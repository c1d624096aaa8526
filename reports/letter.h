// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "reports/layout.h"
#include "reports/look.h"
#include "reports/paragraph.h"
#include "reports/quote_paper.h"
#include "reports/type.h"

namespace tangmark::reports {

/// What quote, receipt and invoice share: a head with the shop, to whom it goes, the facts of the
/// paper, a title, sections, and a foot with the page count.
class Letter {
 public:
  /// `facts` are pairs of a name and what it says, printed beside the addressee.
  Letter(const Letterhead& shop, const Look& look, const FontBook& fonts, Instant created);

  void open(const Addressee& buyer, const std::string& title,
            const std::vector<std::pair<std::string, std::string>>& facts);
  void text(const std::string& words);
  /// A heading with its text; nothing when there is no text.
  void section(const std::string& head, const std::string& words);
  void section(const std::string& head, const std::vector<std::string>& points);
  void prices(const std::vector<PriceLine>& lines);
  /// A line of the sum at the right: a name and an amount.
  struct SumLine {
    std::string name;
    Money amount;
    bool strong = false;
    Grey grey = ink;
  };
  void sums(const std::vector<SumLine>& lines);
  /// Places to sign, side by side. They never open a page alone: the section before comes along.
  void signatures(const std::vector<std::string>& under);
  /// Adds the foot to every page and hands the document over.
  Document close(std::string title, std::string subject);

 private:
  Flow head(Points width) const;
  Flow heading(const std::string& words) const;
  void put_last_section();

  const Letterhead& shop_;
  const FontBook& fonts_;
  TypeScale type_ = letter_type();
  Document document_;
  Pour pour_;
  Flow last_section_;  ///< held back until it is known whether places to sign follow
};

/// The maker's mark in a square of this side, or the shop's initials in a ring.
std::vector<Element> mark_in(const FontBook& fonts, const Letterhead& shop, Place corner,
                             Points side);

/// A foot for every page: words at the left, "Page 1 of 2" at the right.
void add_feet(Document& document, const FontBook& fonts, const Sheet& sheet, const Font& font,
              const std::string& words);

/// Problems of lines and taxes that do not sum to the total, or mix currencies.
void check_sums(class TextCheck& check, const std::vector<PriceLine>& lines, TaxIn tax_in,
                const std::vector<TaxLine>& taxes, const Money& total);

/// Subtotal, taxes and total as they are printed for either way of taxing.
std::vector<Letter::SumLine> sum_lines(const std::vector<PriceLine>& lines, TaxIn tax_in,
                                       const std::vector<TaxLine>& taxes, const Money& total);

}  // namespace tangmark::reports
