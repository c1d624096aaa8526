// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/foreign_money.h"
#include "db/store/money_store.h"
#include "db/store/refund_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::string rule_words(const RefundDue& due) {
  std::string text = "By the terms frozen with it (" + std::string(word_of(due.terms)) + ") " +
                     to_text(due.due) + " of " + to_text(due.received) + " goes back";
  if (due.terms == RefundTerms::less_material && due.work_has_begun)
    text += "; material used on record: " + to_text(due.material);
  return text + ".";
}

// What is more than agreed goes back whatever the terms; only a smaller refund to a buyer who
// withdrew is against them.
Catch less_than_agreed(const KeptCommission& commission, const RefundDue& due, Money amount) {
  if (commission.state != CommissionState::cancelled || amount >= due.due) return std::nullopt;
  return Caught{20, Weight::ask, "amount", rule_words(due) + " " + to_text(amount) + " is less.",
                "Leave the amount out to give back what was agreed."};
}

Outcome<ActionResult> run_refund(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto given =
      maybe_money_in(form, "amount", commission ? commission->currency : work.settings().currency);
  const auto method = form.maybe_text("method");
  const auto why = form.text("why");
  if (commission && given && given->currency() != commission->currency)
    form.add({"amount", "The commission is reckoned in " + commission->currency.code() + ".",
              "Give the amount in " + commission->currency.code() + "."});
  const auto due =
      commission ? refund_due(work.shop(), *commission, work.settings(), work.at()) : std::nullopt;
  if (commission && !given && !due)
    form.add({"amount", "No terms were frozen with this commission to work it out by.",
              "Give the amount."});
  if (form.refused()) return form.problems();
  const Money amount = given ? *given : due->due;
  const Money held = account(work.shop(), *commission).received;
  if (amount.is_zero() && due)
    return Problem{"amount", rule_words(*due), "Give an amount to give back more."};
  if (amount.is_zero() || amount > held)
    return Problem{"amount", "Only " + to_text(held) + " is held for this commission.",
                   "Give an amount above zero and not above it."};
  if (due && !work.passes(less_than_agreed(*commission, *due, amount))) return work.problems();
  Payment payment{.commission = commission->id, .at = work.at()};
  payment.number = work.next_number("payment");
  payment.kind = PaymentKind::refund;
  payment.amount = -amount;
  payment.shop_rate = rate_to_keep(work, commission->currency);
  payment.method = method;
  payment.note = why;
  insert_payment(work.shop(), payment);
  if (due) work.warn(rule_words(*due));
  if (commission->refund_rule) work.warn("Agreed rule: " + *commission->refund_rule);
  return work.done(std::to_string(payment.number));
}

}  // namespace

const Action refund{
    "refund",
    "Give money back to the buyer; the terms frozen with the commission say how much.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"amount", "Amount", FieldKind::money, false, "200.00; by the frozen terms when not given"},
     {"method", "Went by", FieldKind::text, false, "bank"},
     {"why", "Why", FieldKind::text, true, "cancelled before work began"}},
    run_refund};

}  // namespace tangmark::db
