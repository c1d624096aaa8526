// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/money_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto amount = form.money("amount");
  const auto method = form.maybe_text("method");
  const auto why = form.text("why");
  if (commission && form.has("amount") && amount.currency() != commission->currency)
    form.add({"amount", "The commission is reckoned in " + commission->currency.code() + ".",
              "Give the amount in " + commission->currency.code() + "."});
  if (form.refused()) return form.problems();
  const Money held = account(work.shop(), *commission).received;
  if (amount.is_zero() || amount > held)
    return Problem{"amount", "Only " + to_text(held) + " is held for this commission.",
                   "Give an amount above zero and not above it."};
  Payment payment{.commission = commission->id, .at = work.at()};
  payment.number = work.next_number("payment");
  payment.kind = PaymentKind::refund;
  payment.amount = -amount;
  payment.method = method;
  payment.note = why;
  insert_payment(work.shop(), payment);
  if (commission->refund_rule) work.warn("Agreed rule: " + *commission->refund_rule);
  return work.done(std::to_string(payment.number));
}

}  // namespace

const Action refund{"refund",
                    "Give money back to the buyer.",
                    {{"commission", "Commission", FieldKind::commission, true, "12"},
                     {"amount", "Amount", FieldKind::money, true, "200.00"},
                     {"method", "Went by", FieldKind::text, false, "bank"},
                     {"why", "Why", FieldKind::text, true, "cancelled before work began"}},
                    run};

}  // namespace tangmark::db
