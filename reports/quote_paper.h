// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/money.h"
#include "domain/measure/outcome.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;

/// A line that the buyer sees: a thing and its price. There is no place here for cost, margin or
/// hours, so that none can reach the buyer.
struct PriceLine {
  std::string text;
  std::string detail;  ///< second line in grey; may be empty
  int count = 1;       ///< how many the amount covers
  Money amount;
};

/// One tax, as it is named on the paper ("VAT 19 %").
struct TaxLine {
  std::string name;
  Money amount;
};

/// Whether the price lines already hold the tax.
enum class TaxIn { price_exclusive, price_inclusive };

/// An offer to a buyer.
struct QuotePaper {
  Letterhead shop;
  Addressee buyer;
  std::string number;  ///< quote number as printed
  int version = 1;
  std::string commission;  ///< commission number as printed
  Instant made{};
  CalendarDate valid_until{};
  std::string work;  ///< what is to be made, in a sentence or two
  std::vector<PriceLine> lines;
  TaxIn tax_in = TaxIn::price_exclusive;
  std::vector<TaxLine> taxes;
  Money total;
  std::optional<Money> deposit;
  std::optional<CalendarDate> promise;  ///< the day it can be ready, if one is offered
  std::string promise_words;            ///< what that day hangs on; may be empty
  std::string terms;
  std::string refund_rule;
  std::string tolerance;  ///< how far size and pattern may differ from drawing and picture
  std::vector<std::string> cautions;
};

/// Sets the quote. Refuses, naming the field: lines and taxes that do not sum to the total, a line
/// in another currency, no line at all, a character the fonts cannot print.
Outcome<Document> quote_document(const QuotePaper& quote, const Look& look, const FontBook& fonts);

}  // namespace tangmark::reports
