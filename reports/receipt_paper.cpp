// SPDX-License-Identifier: MIT
#include "reports/receipt_paper.h"

#include "reports/letter.h"
#include "reports/text_check.h"

namespace tangmark::reports {

namespace {

void check_money(TextCheck& check, const ReceiptPaper& receipt) {
  const Currency currency = receipt.total.currency();
  Money taxes(0, currency);
  bool mixed = receipt.amount.currency() != currency || receipt.paid_before.currency() != currency;
  for (const TaxLine& tax : receipt.taxes) mixed = mixed || tax.amount.currency() != currency;
  if (mixed) {
    check.add({"amount", "The receipt is in more than one currency.",
               "Enter all amounts in " + currency.code() + "."});
    return;
  }
  for (const TaxLine& tax : receipt.taxes) taxes += tax.amount;
  if (receipt.amount.minor() <= 0) {
    check.add({"amount", "A receipt needs an amount above zero.", "Enter what was received."});
  }
  if (taxes > receipt.amount) {
    check.add({"taxes", "The tax is more than the amount received.", "Correct the tax."});
  }
  if (receipt.paid_before.minor() < 0 || receipt.paid_before + receipt.amount > receipt.total) {
    check.add({"amount",
               "The deposits come to more than the agreed total of " + to_text(receipt.total) + ".",
               "Correct the amount or the total."});
  }
}

Problems problems_of(const ReceiptPaper& receipt, const FontBook& fonts) {
  TextCheck check(fonts);
  check.letterhead(receipt.shop);
  check.addressee(receipt.buyer);
  check.needed(receipt.number, "receipt number");
  check.text(receipt.commission, "commission number");
  check.text(receipt.work, "description of the work");
  check.text(receipt.method, "method of payment");
  check.text(receipt.buys, "what the deposit buys");
  check.text(receipt.refund_rule, "refund rule");
  check.text(receipt.correction, "correction");
  for (const TaxLine& tax : receipt.taxes) check.needed(tax.name, "tax line");
  check_money(check, receipt);
  return check.problems();
}

}  // namespace

Outcome<Document> receipt_document(const ReceiptPaper& receipt, const Look& look,
                                   const FontBook& fonts) {
  Problems problems = problems_of(receipt, fonts);
  if (!problems.empty()) return problems;
  std::vector<std::pair<std::string, std::string>> facts = {
      {"Date", to_text(look.zone.date_of(receipt.issued))},
      {"Received", to_text(receipt.received)}};
  if (!receipt.method.empty()) facts.emplace_back("By", receipt.method);
  if (!receipt.commission.empty()) facts.emplace_back("Commission", receipt.commission);

  Letter letter(receipt.shop, look, fonts, receipt.issued);
  letter.open(receipt.buyer, "Deposit receipt " + receipt.number, facts);
  if (!receipt.correction.empty()) letter.text(receipt.correction);
  letter.text("Received with thanks: " + to_text(receipt.amount) +
              ", a deposit for the work below.");
  letter.text(receipt.work);
  std::vector<Letter::SumLine> sums;
  sums.push_back({"Agreed total", receipt.total, false, ink});
  if (!receipt.paid_before.is_zero()) {
    sums.push_back({"Paid before", receipt.paid_before, false, ink});
  }
  sums.push_back({"This deposit", receipt.amount, true, ink});
  for (const TaxLine& tax : receipt.taxes) {
    sums.push_back({"of which " + tax.name, tax.amount, false, second_ink});
  }
  sums.push_back(
      {"Stays to pay", receipt.total - receipt.paid_before - receipt.amount, false, ink});
  letter.sums(sums);
  letter.section("What the deposit buys", receipt.buys);
  letter.section("If you step back", receipt.refund_rule);
  letter.signatures({receipt.shop.maker.empty() ? receipt.shop.shop : receipt.shop.maker});
  return letter.close("Deposit receipt " + receipt.number, receipt.work);
}

}  // namespace tangmark::reports
