// SPDX-License-Identifier: MIT
#include "gui/desk/paper/issued_paper.h"

#include <algorithm>

#include "db/actions/invoice_body.h"
#include "db/store/commission_store.h"
#include "db/store/customer_store.h"
#include "db/store/money_store.h"
#include "db/store/named.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/letterhead.h"
#include "reports/invoice_paper.h"
#include "reports/receipt_paper.h"

namespace tangmark::desk {
namespace {

using commission::KeptCommission;
using commission::KeptInvoice;

reports::Letterhead frozen_head(const db::InvoiceBody& body) {
  commission::ShopSettings then;
  then.shop_name = body.shop_name;
  then.maker_name = body.maker_name;
  then.address = body.address;
  return letterhead_of(then);
}

std::string frozen_work(const Press& press, const KeptCommission& commission,
                        const db::InvoiceBody& body) {
  return body.work.empty() ? db::work_words(press.shop, commission.id) : body.work;
}

std::optional<reports::CorrectedInvoice> corrected_by(const Press& press, const Zone& zone,
                                                      const db::InvoiceBody& body) {
  if (!body.corrects) return std::nullopt;
  const auto old = db::find_invoice(press.shop, *body.corrects);
  if (!old) return std::nullopt;
  return reports::CorrectedInvoice{std::to_string(old->number), zone.date_of(old->issued_at),
                                   body.why.value_or("")};
}

// What every issued paper of money says first, as it was frozen.
template <typename Paper>
Paper begun(const Press& press, const KeptCommission& commission, const KeptInvoice& issued,
            const db::InvoiceBody& body) {
  Paper paper;
  paper.shop = frozen_head(body);
  paper.buyer = buyer_of(press, commission);
  paper.number = std::to_string(issued.number);
  paper.commission = std::to_string(commission.number);
  paper.issued = issued.issued_at;
  paper.work = frozen_work(press, commission, body);
  return paper;
}

Outcome<reports::Document> invoice_of(const Press& press, const KeptCommission& commission,
                                      const KeptInvoice& issued, const db::InvoiceBody& body) {
  const auto settings = db::load_settings(press.shop);
  auto paper = begun<reports::InvoicePaper>(press, commission, issued, body);
  paper.delivered = commission.delivered_on;
  constexpr date::days usual_term{14};  // common practice, no source
  paper.due = CalendarDate{date::sys_days{settings.zone.date_of(issued.issued_at)} + usual_term};
  for (const db::InvoiceLine& line : body.lines)
    paper.lines.push_back({line.text, "", 1, line.amount});
  paper.tax_in = tax_in(body.tax_mode);
  paper.taxes = taxes(body.tax, body.tax_rate);
  paper.total = body.total;
  for (const db::InvoicePayment& paid : body.received)
    paper.paid.push_back({std::to_string(paid.number), paid.day, paid.amount});
  paper.corrects = corrected_by(press, settings.zone, body);
  if (body.credit) paper.sort = reports::InvoicePaper::Sort::credit_note;
  return reports::invoice_document(paper, look_of(settings), press.fonts);
}

Outcome<reports::Document> receipt_of(const Press& press, const KeptCommission& commission,
                                      const KeptInvoice& issued, const db::InvoiceBody& body) {
  const auto settings = db::load_settings(press.shop);
  auto paper = begun<reports::ReceiptPaper>(press, commission, issued, body);
  paper.amount = issued.total;
  paper.total = body.total;
  paper.paid_before = std::max(body.paid - issued.total, Money(0, issued.total.currency()));
  paper.received = settings.zone.date_of(issued.issued_at);
  if (const auto payment = body.payment ? db::find_payment(press.shop, *body.payment)
                                        : std::nullopt) {
    paper.received = settings.zone.date_of(payment->at);
    paper.method = payment->method.value_or("");
  }
  paper.buys = "A place in the order of work, and the material.";
  paper.refund_rule = body.refund_rule;
  if (const auto old = corrected_by(press, settings.zone, body))
    paper.correction = "This receipt replaces receipt " + old->number + " of " +
                       to_text(old->issued) + ". The reason: " + old->reason;
  return reports::receipt_document(paper, look_of(settings), press.fonts);
}

}  // namespace

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

reports::TaxIn tax_in(commission::TaxMode mode) {
  return mode == commission::TaxMode::exclusive ? reports::TaxIn::price_exclusive
                                                : reports::TaxIn::price_inclusive;
}

std::vector<reports::TaxLine> taxes(Money tax, Share rate) {
  if (tax.is_zero()) return {};
  return {{"Tax " + to_text(rate), tax}};
}

Outcome<reports::Document> issued_document(const Press& press, const KeptCommission& commission,
                                           const KeptInvoice& issued) {
  const db::InvoiceBody body = db::read_invoice_body(issued);
  if (issued.kind == commission::InvoiceKind::deposit_receipt)
    return receipt_of(press, commission, issued, body);
  return invoice_of(press, commission, issued, body);
}

Outcome<reports::Document> issued_paper(const Press& press, std::string_view number) {
  const auto read = db::number_named(number, "paper");
  if (!read) return read.problem();
  const auto issued = db::find_invoice(press.shop, *read);
  const auto commission =
      issued ? db::load_commission(press.shop, issued->commission) : std::nullopt;
  if (!commission)
    return Problem{"paper", "There is no issued paper " + std::string(number) + ".",
                   "Give the number of one."};
  return issued_document(press, *commission, *issued);
}

}  // namespace tangmark::desk
