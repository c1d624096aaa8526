// SPDX-License-Identifier: MIT
// Deposit and balance are one act with two names: money came.
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/foreign_money.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/money_store.h"
#include "db/store/rate_store.h"
#include "db/store/refund_store.h"
#include "db/store/usual_terms_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

// What is open when no amount is given.
Money amount_due(const Account& account, PaymentKind kind) {
  return kind == PaymentKind::deposit ? account.deposit_due - account.received : account.owed();
}

// What came in, in the commission's currency: foreign money by the rate given, else by the one
// noted for the day.
struct Came {
  Money worth;
  ExchangeRate rate;
  bool foreign = false;
};

std::optional<Came> worth_of(Work& work, Form& form, const std::optional<Money>& given,
                             const std::optional<std::string>& stated, Currency currency) {
  if (!given) return std::nullopt;
  const Currency from = given->currency();
  if (from == currency) return Came{*given, {from, currency, 1'000'000}, false};
  if (stated) {
    const auto rate = parse_exchange_rate(*stated, from, currency, "rate");
    if (rate) return Came{exchanged(*given, *rate), *rate, true};
    form.add(rate.problem());
    return std::nullopt;
  }
  const auto day = work.settings().zone.date_of(work.at());
  if (const auto noted = rate_on(work.shop(), from, currency, day))
    return Came{exchanged(*given, *noted), *noted, true};
  form.add({"amount",
            "The commission is reckoned in " + currency.code() + ", and no rate for " +
                from.code() + " is on record.",
            "Give the bank's rate: 1 " + from.code() + " = 0.92 " + currency.code() + "."});
  return std::nullopt;
}

void keep_what_came(Work& work, PaymentId id, Money paid, const Came& came) {
  Row("payment")
      .set("paid_minor", paid)
      .set("paid_currency", paid.currency().code())
      .update(work.shop(), id.row());
  work.warn(to_text(paid) + " at " + to_text(came.rate) + " is " + to_text(came.worth) + ".");
}

Outcome<ActionResult> take(Work& work, Form& form, PaymentKind kind) {
  auto commission = asked(work, form, "commission", commission_named);
  const auto given =
      maybe_money_in(form, "amount", commission ? commission->currency : work.settings().currency);
  const auto method = form.maybe_text("method");
  const auto rate = form.maybe_text("rate");
  const auto note = form.maybe_text("note");
  if (commission)
    form.take(after_step(commission->state, CommissionStep::take_money, "commission"));
  const auto came =
      commission ? worth_of(work, form, given, rate, commission->currency) : std::nullopt;
  if (form.refused()) return form.problems();

  const Account before = account(work.shop(), *commission);
  const Money amount = came ? came->worth : amount_due(before, kind);
  if (amount <= Money(0, amount.currency()))
    return Problem{"amount", "Nothing is open.", "Give the amount that came."};
  Payment payment{.commission = commission->id, .at = work.at()};
  payment.number = work.next_number("payment");
  payment.kind = kind;
  payment.amount = amount;
  payment.rate = came && came->foreign ? std::optional(to_text(came->rate)) : rate;
  payment.shop_rate = rate_to_keep(work, commission->currency);
  payment.method = method;
  payment.note = note;
  const PaymentId id = insert_payment(work.shop(), payment);
  if (came && came->foreign) keep_what_came(work, id, *given, *came);
  if (!commission->refund_rule) {
    commission->refund_rule = work.settings().refund_rule;
    store_commission(work.shop(), *commission);
    freeze_refund_terms(work.shop(), commission->id, usual_refund_terms(work.shop()));
  }
  const Account after = account(work.shop(), *commission);
  if (after.owed() < Money(0, amount.currency()))
    work.warn(to_text(-after.owed()) + " more than agreed is in; give it back with refund.");
  if (kind == PaymentKind::deposit && !after.deposit_is_in())
    work.warn("The deposit of " + to_text(after.deposit_due) +
              " is not complete: " + to_text(after.received) + " is in.");
  return work.done(std::to_string(payment.number));
}

std::vector<Field> fields_of_money() {
  return {
      {"commission", "Commission", FieldKind::commission, true, "12"},
      {"amount", "Amount", FieldKind::money, false, "200.00; what is open when not given"},
      {"method", "Came by", FieldKind::text, false, "bank"},
      {"rate", "Exchange rate, as the bank states it", FieldKind::text, false, "1 USD = 0.92 EUR"},
      {"note", "Note", FieldKind::text}};
}

}  // namespace

const Action take_deposit{
    "take_deposit", "Note that a deposit came.", fields_of_money(),
    [](Work& work, Form& form) { return take(work, form, PaymentKind::deposit); }};
const Action take_balance{
    "take_balance", "Note that the balance, or a part of it, came.", fields_of_money(),
    [](Work& work, Form& form) { return take(work, form, PaymentKind::balance); }};

}  // namespace tangmark::db
