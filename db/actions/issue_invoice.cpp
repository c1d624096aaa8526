// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/foreign_money.h"
#include "db/actions/invoice_body.h"
#include "db/store/money_store.h"
#include "domain/commission/commission_step.h"
#include "domain/commission/money_rules.h"

namespace tangmark::db {
namespace {

using namespace commission;

constexpr std::string_view credit_note = "credit note";

std::optional<KeptPayment> newest_deposit(const ShopFile& shop, CommissionId commission) {
  std::optional<KeptPayment> newest;
  for (KeptPayment& payment : payments_of(shop, commission))
    if (payment.kind == PaymentKind::deposit) newest = std::move(payment);
  return newest;
}

// A receipt is of one deposit; the newest one written for it, if any.
std::optional<KeptInvoice> receipt_of(const ShopFile& shop, const KeptPayment& deposit) {
  std::optional<KeptInvoice> newest;
  for (KeptInvoice& invoice : invoices_of(shop, deposit.commission))
    if (invoice.kind == InvoiceKind::deposit_receipt &&
        read_invoice_body(invoice).payment == deposit.number)
      newest = std::move(invoice);
  return newest;
}

std::optional<KeptInvoice> receipt_named(const ShopFile& shop, CommissionId commission,
                                         std::int64_t number) {
  const auto found = find_invoice(shop, number);
  if (!found || found->commission != commission || found->kind != InvoiceKind::deposit_receipt)
    return std::nullopt;
  return found;
}

Outcome<ActionResult> issue(Work& work, Invoice invoice, const InvoiceBody& body) {
  invoice.number = work.next_number("invoice");
  invoice.issued_at = work.now();
  invoice.shop_rate = rate_to_keep(work, invoice.total.currency());
  invoice.body = to_json(body);
  insert_invoice(work.shop(), invoice);
  return work.done(std::to_string(invoice.number));
}

// What every correction says: the paper it names, and why.
struct Correction {
  std::optional<std::int64_t> number;
  std::optional<std::string> why;
};

Correction read_correction(Form& form) {
  Correction correction{form.maybe_whole("corrects", 1, 1'000'000'000), form.maybe_text("why")};
  if (correction.number && !correction.why)
    form.add({"why", "A correction says why.", "Give the reason, which is printed."});
  return correction;
}

Outcome<ActionResult> issue_receipt(Work& work, Form& form, const KeptCommission& commission) {
  const Correction correction = read_correction(form);
  const auto deposit = newest_deposit(work.shop(), commission.id);
  if (!deposit) return Problem{"commission", "No deposit has come yet.", "Take the deposit first."};
  std::optional<KeptInvoice> corrected;
  if (correction.number) corrected = receipt_named(work.shop(), commission.id, *correction.number);
  if (correction.number && !corrected)
    form.add({"corrects",
              "Paper " + std::to_string(*correction.number) + " is no receipt of this commission.",
              "Give the number of the receipt."});
  if (form.refused()) return form.problems();
  const auto written = receipt_of(work.shop(), *deposit);
  if (!corrected && !work.passes(invoice_issued_already(
                        written ? std::optional(written->number) : std::nullopt, std::nullopt)))
    return work.problems();
  Invoice receipt{.commission = commission.id, .issued_at = {}};
  receipt.kind = InvoiceKind::deposit_receipt;
  receipt.total = deposit->amount;
  if (corrected) receipt.corrects = corrected->id;
  InvoiceBody body = invoice_body(work.shop(), commission, work.settings());
  body.payment = deposit->number;
  body.corrects = correction.number;
  body.why = correction.why;
  return issue(work, std::move(receipt), body);
}

Outcome<ActionResult> issue_balance(Work& work, Form& form, const KeptCommission& commission) {
  const auto standing = standing_invoice(work.shop(), commission.id);
  const Correction correction = read_correction(form);
  if (correction.number && (!standing || standing->number != *correction.number))
    form.add({"corrects",
              "Invoice " + std::to_string(*correction.number) +
                  " is not the standing invoice of this commission.",
              standing ? "The standing one is " + std::to_string(standing->number) + "."
                       : "There is none yet."});
  if (form.refused()) return form.problems();
  std::optional<std::int64_t> issued;
  if (standing) issued = standing->number;
  if (!work.passes(invoice_issued_already(issued, correction.number))) return work.problems();
  Invoice invoice{.commission = commission.id, .issued_at = {}};
  invoice.kind = correction.number ? InvoiceKind::correction : InvoiceKind::balance_invoice;
  const Account money = account(work.shop(), commission);
  invoice.total = money.total();
  if (correction.number) invoice.corrects = standing->id;
  InvoiceBody body = invoice_body(work.shop(), commission, work.settings());
  body.corrects = correction.number;
  body.why = correction.why;
  if (money.owed().is_zero()) work.warn("Everything is paid: the invoice asks for nothing more.");
  return issue(work, std::move(invoice), body);
}

// The standing invoice taken back in full; it stays readable, and another may be issued after it.
Outcome<ActionResult> issue_credit(Work& work, Form& form, const KeptCommission& commission) {
  const auto standing = standing_invoice(work.shop(), commission.id);
  Correction correction = read_correction(form);
  if (!standing)
    form.add({"kind", "No invoice of this commission stands.", "There is nothing to take back."});
  else if (correction.number && *correction.number != standing->number)
    form.add({"corrects",
              "Invoice " + std::to_string(*correction.number) +
                  " is not the standing invoice of this commission.",
              "The standing one is " + std::to_string(standing->number) + "."});
  if (!correction.number && !correction.why)
    form.add({"why", "A credit note says why.", "Give the reason, which is printed."});
  if (form.refused()) return form.problems();
  Invoice credit{.commission = commission.id, .issued_at = {}};
  credit.kind = InvoiceKind::correction;
  credit.total = -standing->total;
  credit.corrects = standing->id;
  InvoiceBody body = read_invoice_body(*standing);
  body.credit = true;
  body.corrects = standing->number;
  body.why = correction.why;
  return issue(work, std::move(credit), body);
}

Outcome<ActionResult> run_issue_invoice(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto kind = form.text("kind");
  if (commission && kind != credit_note)
    form.take(after_step(commission->state, CommissionStep::take_money, "commission"));
  if (form.refused()) return form.problems();
  if (kind == word_of(InvoiceKind::deposit_receipt)) return issue_receipt(work, form, *commission);
  if (kind == word_of(InvoiceKind::balance_invoice)) return issue_balance(work, form, *commission);
  if (kind == credit_note) return issue_credit(work, form, *commission);
  return Problem{"kind", "\"" + kind + "\" is no paper about money.",
                 "Use deposit receipt, balance invoice or credit note."};
}

}  // namespace

const Action issue_invoice{
    "issue_invoice",
    "Issue a deposit receipt, the balance invoice or a credit note. Issued papers are frozen; a "
    "correction names the old one.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"kind",
      "Paper",
      FieldKind::choice,
      true,
      "balance invoice",
      "balance invoice",
      {"balance invoice", "deposit receipt", "credit note"}},
     {"corrects", "Corrects paper", FieldKind::number, false, "8"},
     {"why", "Why it is corrected", FieldKind::text, false, "the sheath was left out"}},
    run_issue_invoice};

}  // namespace tangmark::db
