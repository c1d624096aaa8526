// SPDX-License-Identifier: MIT
// Papers about money that follow the record: the quote, and a receipt that is not issued yet.
#include "db/actions/invoice_body.h"
#include "db/store/commission_store.h"
#include "db/store/money_store.h"
#include "db/store/named.h"
#include "db/store/promise_store.h"
#include "db/store/quote_store.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/issued_paper.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "reports/quote_paper.h"
#include "reports/receipt_paper.h"

namespace tangmark::desk {
using commission::KeptCommission;

Outcome<reports::Document> quote_paper(const Press& press, std::string_view number) {
  const auto commission = db::commission_named(press.shop, number, "commission");
  if (!commission) return commission.problems();
  const auto settings = db::load_settings(press.shop);
  const auto quote = db::latest_quote(press.shop, commission->id);
  if (!quote)
    return Problem{"commission",
                   "Nothing has been quoted on commission " + std::string(number) + ".",
                   "Make a quote first."};
  reports::QuotePaper paper;
  paper.shop = letterhead_of(settings);
  paper.buyer = buyer_of(press, *commission);
  paper.number = std::string(number);
  paper.version = static_cast<int>(quote->version);
  paper.commission = std::string(number);
  paper.made = quote->made_at;
  paper.valid_until = quote->valid_until;
  paper.work = db::work_words(press.shop, commission->id);
  for (const commission::QuoteLine& line : quote->lines) {
    if (line.side != commission::QuoteSide::price) continue;
    paper.lines.push_back({line.text, "", 1, line.amount});
  }
  paper.tax_in = tax_in(quote->tax_mode);
  paper.taxes = taxes(quote->tax, quote->tax_rate);
  paper.total = quote->total;
  if (!quote->deposit.is_zero()) paper.deposit = quote->deposit;
  if (const auto promise = db::standing_promise(press.shop, commission->id)) {
    paper.promise = promise->day;
    paper.promise_words = promise->words.value_or("");
  }
  paper.refund_rule = commission->refund_rule.value_or(settings.refund_rule);
  paper.tolerance = settings.tolerance_words;
  return reports::quote_document(paper, look_of(settings), press.fonts);
}

namespace {

// The deposit as it stands, for a receipt that was not issued yet.
Outcome<reports::Document> receipt_to_come(const Press& press, const KeptCommission& commission) {
  const auto settings = db::load_settings(press.shop);
  const std::vector<commission::KeptPayment> payments = db::payments_of(press.shop, commission.id);
  const commission::KeptPayment* deposit = nullptr;
  Money before(0, commission.currency);
  Money last_before = before;
  for (const commission::KeptPayment& payment : payments) {
    if (payment.kind == commission::PaymentKind::deposit) {
      deposit = &payment;
      last_before = before;
    }
    before += payment.amount;
  }
  if (deposit == nullptr) {
    return Problem{
        "commission",
        "No deposit has been taken on commission " + std::to_string(commission.number) + ".",
        "Take the deposit first."};
  }
  reports::ReceiptPaper paper;
  paper.shop = letterhead_of(settings);
  paper.buyer = buyer_of(press, commission);
  paper.number = std::to_string(deposit->number);
  paper.commission = std::to_string(commission.number);
  paper.issued = press.now;
  paper.received = settings.zone.date_of(deposit->at);
  paper.work = db::work_words(press.shop, commission.id);
  paper.amount = deposit->amount;
  paper.method = deposit->method.value_or("");
  paper.total = db::account(press.shop, commission).total();
  paper.paid_before = last_before;
  paper.buys = "A place in the order of work, and the material.";
  paper.refund_rule = commission.refund_rule.value_or(settings.refund_rule);
  return reports::receipt_document(paper, look_of(settings), press.fonts);
}

}  // namespace

Outcome<reports::Document> receipt_paper(const Press& press, std::string_view number) {
  const auto commission = db::commission_named(press.shop, number, "commission");
  if (!commission) return commission.problems();
  std::optional<commission::KeptInvoice> issued;
  for (commission::KeptInvoice& paper : db::invoices_of(press.shop, commission->id))
    if (paper.kind == commission::InvoiceKind::deposit_receipt) issued = std::move(paper);
  if (issued) return issued_document(press, *commission, *issued);
  return receipt_to_come(press, *commission);
}

Outcome<reports::Document> invoice_paper(const Press& press, std::string_view number) {
  const auto commission = db::commission_named(press.shop, number, "commission");
  if (!commission) return commission.problems();
  std::optional<commission::KeptInvoice> issued;
  for (commission::KeptInvoice& paper : db::invoices_of(press.shop, commission->id))
    if (paper.kind != commission::InvoiceKind::deposit_receipt) issued = std::move(paper);
  if (!issued)
    return Problem{"commission",
                   "No invoice has been issued on commission " + std::string(number) + ".",
                   "Issue it first; an issued invoice is never edited."};
  return issued_document(press, *commission, *issued);
}

}  // namespace tangmark::desk
