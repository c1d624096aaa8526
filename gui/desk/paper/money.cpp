// SPDX-License-Identifier: MIT
// Papers about money: the quote, the receipt of a deposit, the invoice.
#include "db/actions/invoice_body.h"
#include "db/store/commission_store.h"
#include "db/store/customer_store.h"
#include "db/store/item_store.h"
#include "db/store/money_store.h"
#include "db/store/named.h"
#include "db/store/promise_store.h"
#include "db/store/quote_store.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "reports/invoice_paper.h"
#include "reports/quote_paper.h"
#include "reports/receipt_paper.h"

namespace tangmark::desk {
namespace {

using commission::KeptCommission;

reports::Addressee buyer_of(const Press& press, const KeptCommission& commission) {
  reports::Addressee buyer;
  const auto customer = db::load_customer(press.shop, commission.customer);
  if (!customer || !customer->name) {
    buyer.name = "(the buyer's data was erased)";
    return buyer;
  }
  buyer.name = *customer->name;
  if (customer->address) buyer.address = lines_of(*customer->address);
  if (customer->country) buyer.address.push_back(*customer->country);
  return buyer;
}

std::string work_words(const Press& press, const KeptCommission& commission) {
  std::string text;
  for (const commission::KeptItem& item : db::items_of(press.shop, commission.id)) {
    if (item.cancelled_on) continue;
    text += (text.empty() ? "" : " ") + item.title;
    if (item.grade) text += ", " + *item.grade;
    if (item.handle) text += ", " + *item.handle;
    text += ".";
  }
  return text;
}

reports::TaxIn tax_in(commission::TaxMode mode) {
  return mode == commission::TaxMode::exclusive ? reports::TaxIn::price_exclusive
                                                : reports::TaxIn::price_inclusive;
}

std::vector<reports::TaxLine> taxes(Money tax, Share rate) {
  if (tax.is_zero()) return {};
  return {{"Tax " + to_text(rate), tax}};
}

}  // namespace

Outcome<reports::Document> quote_paper(const Press& press, std::string_view number) {
  const auto commission = db::commission_named(press.shop, number, "commission");
  if (!commission) return commission.problems();
  const auto settings = db::load_settings(press.shop);
  const auto quote = db::latest_quote(press.shop, commission->id);
  if (!quote) return Problem{"commission", "Nothing has been quoted on commission " + std::string(number) + ".", "Make a quote first."};
  reports::QuotePaper paper;
  paper.shop = letterhead_of(settings);
  paper.buyer = buyer_of(press, *commission);
  paper.number = std::string(number);
  paper.version = static_cast<int>(quote->version);
  paper.commission = std::string(number);
  paper.made = quote->made_at;
  paper.valid_until = quote->valid_until;
  paper.work = work_words(press, *commission);
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

Outcome<reports::Document> receipt_paper(const Press& press, std::string_view number) {
  const auto commission = db::commission_named(press.shop, number, "commission");
  if (!commission) return commission.problems();
  const auto settings = db::load_settings(press.shop);
  const std::vector<commission::KeptPayment> payments = db::payments_of(press.shop, commission->id);
  const commission::KeptPayment* deposit = nullptr;
  Money before(0, commission->currency);
  Money last_before = before;
  for (const commission::KeptPayment& payment : payments) {
    if (payment.kind == commission::PaymentKind::deposit) {
      deposit = &payment;
      last_before = before;
    }
    before += payment.amount;
  }
  if (deposit == nullptr) {
    return Problem{"commission", "No deposit has been taken on commission " + std::string(number) + ".", "Take the deposit first."};
  }
  reports::ReceiptPaper paper;
  paper.shop = letterhead_of(settings);
  paper.buyer = buyer_of(press, *commission);
  paper.number = std::to_string(deposit->number);
  paper.commission = std::string(number);
  paper.issued = press.now;
  paper.received = settings.zone.date_of(deposit->at);
  paper.work = work_words(press, *commission);
  paper.amount = deposit->amount;
  paper.method = deposit->method.value_or("");
  paper.total = db::account(press.shop, *commission).total();
  paper.paid_before = last_before;
  paper.buys = "A place in the order of work, and the material.";
  paper.refund_rule = commission->refund_rule.value_or(settings.refund_rule);
  return reports::receipt_document(paper, look_of(settings), press.fonts);
}

Outcome<reports::Document> invoice_paper(const Press& press, std::string_view number) {
  const auto commission = db::commission_named(press.shop, number, "commission");
  if (!commission) return commission.problems();
  const auto settings = db::load_settings(press.shop);
  const auto issued = db::standing_invoice(press.shop, commission->id);
  if (!issued) {
    return Problem{"commission", "No invoice has been issued on commission " + std::string(number) + ".",
                   "Issue it first; an issued invoice is never edited."};
  }
  const db::InvoiceBody body = db::read_invoice_body(*issued);
  reports::InvoicePaper paper;
  paper.shop = letterhead_of(settings);
  paper.buyer = buyer_of(press, *commission);
  paper.number = std::to_string(issued->number);
  paper.commission = std::string(number);
  paper.issued = issued->issued_at;
  paper.delivered = commission->delivered_on;
  constexpr date::days usual_term{14};  // common practice, no source
  paper.due = CalendarDate{date::sys_days{settings.zone.date_of(issued->issued_at)} + usual_term};
  paper.work = work_words(press, *commission);
  for (const db::InvoiceLine& line : body.lines) paper.lines.push_back({line.text, "", 1, line.amount});
  paper.tax_in = tax_in(body.tax_mode);
  paper.taxes = taxes(body.tax, body.tax_rate);
  paper.total = body.total;
  for (const db::InvoicePayment& paid : body.received) {
    paper.paid.push_back({std::to_string(paid.number), paid.day, paid.amount});
  }
  if (body.corrects) {
    if (const auto corrected = db::find_invoice(press.shop, *body.corrects)) {
      paper.corrects = reports::CorrectedInvoice{std::to_string(corrected->number),
                                                 settings.zone.date_of(corrected->issued_at), body.why.value_or("")};
    }
  }
  return reports::invoice_document(paper, look_of(settings), press.fonts);
}

}  // namespace tangmark::desk
