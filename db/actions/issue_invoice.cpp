// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/invoice_body.h"
#include "db/store/money_store.h"
#include "domain/commission/commission_step.h"
#include "domain/commission/money_rules.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::optional<KeptPayment> newest_deposit(const ShopFile& shop, CommissionId commission) {
  std::optional<KeptPayment> newest;
  for (KeptPayment& payment : payments_of(shop, commission))
    if (payment.kind == PaymentKind::deposit) newest = std::move(payment);
  return newest;
}

// A receipt is of one deposit; the receipt already written for it, if any.
std::optional<std::int64_t> receipt_of(const ShopFile& shop, const KeptPayment& deposit) {
  for (const KeptInvoice& invoice : invoices_of(shop, deposit.commission))
    if (invoice.kind == InvoiceKind::deposit_receipt &&
        read_invoice_body(invoice).payment == deposit.number)
      return invoice.number;
  return std::nullopt;
}

Outcome<ActionResult> issue(Work& work, const KeptCommission& commission, Invoice invoice,
                            InvoiceBody body) {
  invoice.number = work.next_number("invoice");
  invoice.issued_at = work.now();
  invoice.body = to_json(body);
  insert_invoice(work.shop(), invoice);
  if (invoice.kind != InvoiceKind::deposit_receipt &&
      account(work.shop(), commission).owed().is_zero())
    work.warn("Everything is paid: the invoice asks for nothing more.");
  return work.done(std::to_string(invoice.number));
}

Outcome<ActionResult> issue_receipt(Work& work, const KeptCommission& commission) {
  const auto deposit = newest_deposit(work.shop(), commission.id);
  if (!deposit) return Problem{"commission", "No deposit has come yet.", "Take the deposit first."};
  if (!work.passes(invoice_issued_already(receipt_of(work.shop(), *deposit), std::nullopt)))
    return work.problems();
  Invoice receipt{.commission = commission.id, .issued_at = {}};
  receipt.kind = InvoiceKind::deposit_receipt;
  receipt.total = deposit->amount;
  InvoiceBody body = invoice_body(work.shop(), commission, work.settings());
  body.payment = deposit->number;
  return issue(work, commission, std::move(receipt), std::move(body));
}

Outcome<ActionResult> issue_balance(Work& work, Form& form, const KeptCommission& commission) {
  const auto standing = standing_invoice(work.shop(), commission.id);
  const auto corrects = form.maybe_whole("corrects", 1, 1'000'000'000);
  const auto why = form.maybe_text("why");
  if (corrects && (!standing || standing->number != *corrects))
    form.add({"corrects",
              "Invoice " + std::to_string(*corrects) +
                  " is not the standing invoice of this commission.",
              standing ? "The standing one is " + std::to_string(standing->number) + "."
                       : "There is none yet."});
  if (corrects && !why)
    form.add({"why", "A correction says why.", "Give the reason, which is printed."});
  if (form.refused()) return form.problems();
  std::optional<std::int64_t> issued;
  if (standing) issued = standing->number;
  if (!work.passes(invoice_issued_already(issued, corrects))) return work.problems();
  Invoice invoice{.commission = commission.id, .issued_at = {}};
  invoice.kind = corrects ? InvoiceKind::correction : InvoiceKind::balance_invoice;
  invoice.total = account(work.shop(), commission).total();
  if (corrects) invoice.corrects = standing->id;
  InvoiceBody body = invoice_body(work.shop(), commission, work.settings());
  body.corrects = corrects;
  body.why = why;
  return issue(work, commission, std::move(invoice), std::move(body));
}

Outcome<ActionResult> run(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto kind = form.text("kind");
  if (commission)
    form.take(after_step(commission->state, CommissionStep::take_money, "commission"));
  if (form.refused()) return form.problems();
  if (kind == word_of(InvoiceKind::deposit_receipt)) return issue_receipt(work, *commission);
  if (kind == word_of(InvoiceKind::balance_invoice)) return issue_balance(work, form, *commission);
  return Problem{"kind", "\"" + kind + "\" is no paper about money.",
                 "Use deposit receipt or balance invoice."};
}

}  // namespace

const Action issue_invoice{
    "issue_invoice",
    "Issue a deposit receipt or the balance invoice. Issued papers are frozen; a correction names "
    "the old one.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"kind",
      "Paper",
      FieldKind::choice,
      true,
      "balance invoice",
      "balance invoice",
      {"balance invoice", "deposit receipt"}},
     {"corrects", "Corrects invoice", FieldKind::number, false, "8"},
     {"why", "Why it is corrected", FieldKind::text, false, "the sheath was left out"}},
    run};

}  // namespace tangmark::db
