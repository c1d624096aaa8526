// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/foreign_money.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/money_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<KeptPayment> payment_named(const ShopFile& shop, std::string_view text,
                                   std::string_view field) {
  const auto number = number_named(text, field);
  if (!number) return number.problem();
  if (auto payment = find_payment(shop, *number)) return std::move(*payment);
  return Problem{std::string(field), "There is no payment " + std::string(text) + ".",
                 "Give the number of one."};
}

bool is_corrected(const ShopFile& shop, PaymentId id) {
  Query query(shop, "SELECT id FROM payment WHERE corrects_id = ?");
  query.bind(id);
  return query.next();
}

Payment reversal_of(const KeptPayment& wrong, Work& work, const std::string& why) {
  Payment reversal{.commission = wrong.commission, .at = work.at()};
  reversal.number = work.next_number("payment");
  reversal.kind = PaymentKind::correction;
  reversal.amount = -wrong.amount;
  reversal.shop_rate = wrong.shop_rate;
  reversal.corrects = wrong.id;
  reversal.note = why;
  return reversal;
}

Outcome<ActionResult> run_correct_payment(Work& work, Form& form) {
  const auto wrong = asked(work, form, "payment", payment_named);
  const auto amount =
      maybe_money_in(form, "amount", wrong ? wrong->amount.currency() : work.settings().currency);
  const auto why = form.text("why");
  if (wrong && wrong->kind == PaymentKind::correction)
    form.add({"payment", "That row is a correction itself.", "Note the right payment anew."});
  else if (wrong && is_corrected(work.shop(), wrong->id))
    form.add({"payment", "This payment was corrected already.", "Note the right payment anew."});
  if (wrong && amount && amount->currency() != wrong->amount.currency())
    form.add({"amount", "The payment is in " + wrong->amount.currency().code() + ".",
              "Give the amount in it."});
  if (form.refused()) return form.problems();
  const Payment reversal = reversal_of(*wrong, work, why);
  insert_payment(work.shop(), reversal);
  if (!amount || amount->is_zero()) return work.done(std::to_string(reversal.number));
  Payment right = *wrong;
  right.number = work.next_number("payment");
  right.amount = wrong->kind == PaymentKind::refund ? -*amount : *amount;
  right.note = "In place of payment " + std::to_string(wrong->number) + ": " + why;
  insert_payment(work.shop(), right);
  return work.done(std::to_string(right.number));
}

}  // namespace

const Action correct_payment{
    "correct_payment",
    "Reverse a payment that was noted wrongly, and note the right amount. The wrong one stays "
    "readable.",
    {{"payment", "Payment", FieldKind::number, true, "5"},
     {"amount", "Right amount", FieldKind::money, false, "210.00; none when it never came"},
     {"why", "Why", FieldKind::text, true, "typed 201 for 210"}},
    run_correct_payment};

}  // namespace tangmark::db
