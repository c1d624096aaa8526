// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/commission.h"
#include "domain/commission/invoice.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/money.h"

namespace tangmark::db {

/// One line of an issued paper: an item or a priced change.
struct InvoiceLine {
  std::string text;
  Money amount;
  friend bool operator==(const InvoiceLine&, const InvoiceLine&) = default;
};

/// Money already received when the paper was issued.
struct InvoicePayment {
  std::int64_t number = 0;
  CalendarDate day;
  std::string kind;
  Money amount;
  friend bool operator==(const InvoicePayment&, const InvoicePayment&) = default;
};

/// Everything an issued paper says, frozen as JSON in the invoice's row so that a reprint says the
/// same. The buyer's name and address are not in it: they are personal, stay with the customer, and
/// can be erased.
struct InvoiceBody {
  std::int64_t commission = 0;
  std::int64_t customer = 0;
  std::string shop_name, maker_name, address;
  std::string work;  ///< what is made, in one paragraph; empty on papers of an earlier program
  std::vector<InvoiceLine> lines;  ///< as the quote's price lines, then the priced changes
  Money without_tax, tax, total;
  commission::TaxMode tax_mode = commission::TaxMode::none;
  Share tax_rate;
  std::vector<InvoicePayment> received;
  Money paid, owed;
  std::string refund_rule, tolerance;
  std::optional<std::int64_t> payment;   ///< the deposit a receipt is for
  std::optional<std::int64_t> corrects;  ///< number of the paper that this one corrects
  std::optional<std::string> why;
  bool credit = false;  ///< a credit note: takes the invoice it corrects back, line by line
  friend bool operator==(const InvoiceBody&, const InvoiceBody&) = default;
};

/// "Chef's knife 240 mm, 80CrV2, bog oak. ...": what is made, as papers say it.
std::string work_words(const ShopFile& shop, commission::CommissionId commission);

/// The body of a paper issued now, from the accepted quote, the changes and the payments.
InvoiceBody invoice_body(const ShopFile& shop, const commission::KeptCommission& commission,
                         const commission::ShopSettings& settings);
std::string to_json(const InvoiceBody& body);
/// Reads what to_json wrote. Throws Failure when the file is damaged.
InvoiceBody read_invoice_body(const commission::Invoice& invoice);

}  // namespace tangmark::db
