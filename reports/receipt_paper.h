// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reports/quote_paper.h"

namespace tangmark::reports {

/// A receipt for a deposit taken before the work.
struct ReceiptPaper {
  Letterhead shop;
  Addressee buyer;
  std::string number;
  std::string commission;
  Instant issued{};
  CalendarDate received{};
  std::string work;
  Money amount;                ///< what was received, tax included
  std::string method;          ///< "bank transfer", "cash"
  std::vector<TaxLine> taxes;  ///< tax inside the amount, where an advance payment is taxed
  Money total;                 ///< the agreed total of the commission, tax included
  Money paid_before;           ///< deposits already taken before this one; zero when none
  std::string buys;            ///< what the deposit buys: a place in the order of work, material
  std::string refund_rule;     ///< as agreed that day
  std::string correction;      ///< which receipt it replaces, and why; empty for a first one
};

/// Sets the receipt; what stays to pay is total - paid_before - amount. Refuses an amount of zero
/// or below, mixed currencies, payments above the total, taxes above the amount.
Outcome<Document> receipt_document(const ReceiptPaper& receipt, const Look& look,
                                   const FontBook& fonts);

}  // namespace tangmark::reports
