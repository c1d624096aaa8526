// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reports/quote_paper.h"

namespace tangmark::reports {

/// A payment taken before the balance.
struct PaidBefore {
  std::string receipt;  ///< number of its receipt
  CalendarDate received{};
  Money amount;
};

/// What an invoice that corrects another one says about it.
struct CorrectedInvoice {
  std::string number;
  CalendarDate issued{};
  std::string reason;
};

/// The invoice for the balance, with what was paid before deducted.
struct InvoicePaper {
  Letterhead shop;
  Addressee buyer;
  std::string number;
  std::string commission;
  Instant issued{};
  std::optional<CalendarDate> delivered;
  CalendarDate due{};
  std::string work;
  std::vector<PriceLine> lines;
  TaxIn tax_in = TaxIn::price_exclusive;
  std::vector<TaxLine> taxes;
  Money total;
  std::vector<PaidBefore> paid;
  std::string how_to_pay;
  std::string terms;
  std::optional<CorrectedInvoice> corrects;
  /// A credit note takes the invoice in `corrects` back: the same lines, and what is credited.
  enum class Sort { invoice, credit_note };
  Sort sort = Sort::invoice;
};

/// Sets the invoice; the balance is total less what was paid. A balance below zero is printed as an
/// amount to give back. Refuses what quote_document refuses.
Outcome<Document> invoice_document(const InvoicePaper& invoice, const Look& look,
                                   const FontBook& fonts);

}  // namespace tangmark::reports
