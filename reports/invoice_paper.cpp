// SPDX-License-Identifier: MIT
#include "reports/invoice_paper.h"

#include "reports/letter.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

Problems problems_of(const InvoicePaper& invoice, const FontBook& fonts) {
  TextCheck check(fonts);
  check.letterhead(invoice.shop);
  check.addressee(invoice.buyer);
  check.needed(invoice.number, "invoice number");
  check.text(invoice.commission, "commission number");
  check.text(invoice.work, "description of the work");
  check.text(invoice.how_to_pay, "way to pay");
  check.text(invoice.terms, "terms");
  if (invoice.corrects) {
    check.needed(invoice.corrects->number, "number of the corrected invoice");
    check.needed(invoice.corrects->reason, "reason of the correction");
  }
  check_sums(check, invoice.lines, invoice.tax_in, invoice.taxes, invoice.total);
  for (const PaidBefore& paid : invoice.paid) {
    check.needed(paid.receipt, "receipt number");
    if (paid.amount.currency() != invoice.total.currency()) {
      check.add({"payments", "A payment is in another currency than the total.",
                 "Enter it in " + invoice.total.currency().code() + "."});
      break;
    }
  }
  return check.problems();
}

bool is_credit(const InvoicePaper& invoice) {
  return invoice.sort == InvoicePaper::Sort::credit_note;
}

std::string title_of(const InvoicePaper& invoice) {
  return (is_credit(invoice) ? "Credit note " : "Invoice ") + invoice.number;
}

std::string correction_words(const InvoicePaper& invoice) {
  const CorrectedInvoice& corrected = *invoice.corrects;
  if (is_credit(invoice))
    return "This credit note takes invoice " + corrected.number + " of " +
           to_text(corrected.issued) + " back in full. The reason: " + corrected.reason;
  return "This invoice replaces invoice " + corrected.number + " of " + to_text(corrected.issued) +
         ". The reason: " + corrected.reason;
}

std::vector<Letter::SumLine> balance_lines(const InvoicePaper& invoice) {
  std::vector<Letter::SumLine> sums =
      sum_lines(invoice.lines, invoice.tax_in, invoice.taxes, invoice.total);
  if (is_credit(invoice)) {
    sums.push_back({"Credited", invoice.total, true, ink});
    return sums;
  }
  Money left = invoice.total;
  for (const PaidBefore& paid : invoice.paid) {
    left -= paid.amount;
    sums.push_back({"Deposit, receipt " + paid.receipt + ", " + short_text(paid.received),
                    -paid.amount, false, ink});
  }
  if (left.minor() < 0) {
    sums.push_back({"To give back", -left, true, ink});
  } else {
    sums.push_back({"Balance to pay", left, true, ink});
  }
  return sums;
}

}  // namespace

Outcome<Document> invoice_document(const InvoicePaper& invoice, const Look& look,
                                   const FontBook& fonts) {
  Problems problems = problems_of(invoice, fonts);
  if (!problems.empty()) return problems;
  std::vector<std::pair<std::string, std::string>> facts = {
      {"Date", to_text(look.zone.date_of(invoice.issued))}};
  if (invoice.delivered) facts.emplace_back("Delivered", to_text(*invoice.delivered));
  if (!is_credit(invoice)) facts.emplace_back("Please pay by", to_text(invoice.due));
  if (!invoice.commission.empty()) facts.emplace_back("Commission", invoice.commission);

  Letter letter(invoice.shop, look, fonts, invoice.issued);
  letter.open(invoice.buyer, title_of(invoice), facts);
  if (invoice.corrects) letter.text(correction_words(invoice));
  letter.text(invoice.work);
  letter.prices(invoice.lines);
  letter.sums(balance_lines(invoice));
  letter.section("How to pay", invoice.how_to_pay);
  letter.section("Terms", invoice.terms);
  return letter.close(title_of(invoice), invoice.work);
}

}  // namespace tangmark::reports
