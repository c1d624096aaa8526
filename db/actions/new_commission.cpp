// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/commission_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_new_commission(Work& work, Form& form) {
  const auto customer = asked(work, form, "customer", customer_named);
  const auto channel = form.maybe_text("channel");
  const auto buyers_words = form.maybe_text("buyers_words");
  const auto budget = form.maybe_money("budget");
  const auto currency = form.maybe_text("currency");
  const auto wanted_by = form.maybe_date("wanted_by");
  const auto wanted_why = form.maybe_text("wanted_why");
  const auto destination = form.maybe_text("destination");
  const auto reply_by = form.maybe_date("reply_by");
  Currency in = work.settings().currency;
  if (currency) in = form.take(Currency::of(*currency, "currency"), in);
  if (budget && budget->currency() != in)
    form.add({"budget",
              "The budget is in " + budget->currency().code() + " and the commission in " +
                  in.code() + ".",
              "Give both in one currency."});
  if (wanted_by && *wanted_by < work.today())
    form.add({"wanted_by", "That day is past.", "Give a day to come."});
  if (form.refused()) return form.problems();
  if (customer->erased_at)
    return Problem{"customer", "This person was erased.",
                   "Note the buyer again with new_customer."};

  Commission commission{.customer = customer->id, .opened_at = work.at()};
  commission.number = work.next_number("commission");
  commission.channel = channel;
  commission.buyers_words = buyers_words;
  commission.budget = budget;
  commission.currency = in;
  commission.wanted_by = wanted_by;
  commission.wanted_why = wanted_why;
  commission.destination = destination ? destination : customer->country;
  commission.reply_by = reply_by;
  insert_commission(work.shop(), commission);
  return work.done(std::to_string(commission.number));
}

}  // namespace

const Action new_commission{
    "new_commission",
    "Note an enquiry. It is not an order until a quote is accepted.",
    {{"customer", "Customer", FieldKind::customer, true, "4 or the full name"},
     {"channel", "Came by", FieldKind::text, false, "e-mail"},
     {"buyers_words", "In the buyer's words", FieldKind::long_text, false,
      "a knife for filleting pike"},
     {"budget", "Budget", FieldKind::money, false, "400.00"},
     {"currency", "Currency", FieldKind::text, false, "EUR; the shop's when not given"},
     {"wanted_by", "Wanted by", FieldKind::date, false, "2027-05-12"},
     {"wanted_why", "Why that day", FieldKind::text, false, "wedding"},
     {"destination", "Country it goes to", FieldKind::text, false, "the customer's when not given"},
     {"reply_by", "Reply promised by", FieldKind::date, false, "2026-12-01"}},
    run_new_commission};

}  // namespace tangmark::db
