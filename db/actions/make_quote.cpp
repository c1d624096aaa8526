// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/foreign_money.h"
#include "db/actions/item_catches.h"
#include "db/actions/quote_asked.h"
#include "db/store/item_store.h"
#include "db/store/quote_inputs.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

QuoteWish read_wish(Form& form, Currency currency) {
  QuoteWish wish{.price = maybe_money_in(form, "price", currency),
                 .margin = form.maybe_share("margin"),
                 .markup = form.maybe_share("markup"),
                 .by_list = form.yes("by_list"),
                 .shipping = maybe_money_in(form, "shipping", currency),
                 .valid_days = form.maybe_whole("valid_days", 1, 365),
                 .rate = form.maybe_text("rate"),
                 .changes = {}};
  if (const auto lines = form.maybe_text("lines")) {
    const auto changes = costing::parse_changes(*lines, "lines");
    if (changes) wish.changes = *changes;
    if (!changes) form.add(changes.problem());
  }
  const int ways =
      (wish.price ? 1 : 0) + (wish.margin ? 1 : 0) + (wish.markup ? 1 : 0) + (wish.by_list ? 1 : 0);
  if (ways > 1)
    form.add({"price", "The price is told in more than one way.",
              "Give one of price, margin, markup or by_list."});
  if (wish.margin && *wish.margin >= Share::whole())
    form.add({"margin", "A margin is a part of the price, below 100 %.", "Write 20 %."});
  return wish;
}

Outcome<ActionResult> run_make_quote(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const QuoteWish wish =
      read_wish(form, commission ? commission->currency : work.settings().currency);
  if (commission)
    form.take(after_step(commission->state, CommissionStep::make_quote, "commission"));
  if (form.refused()) return form.problems();
  auto draft = draft_quote(work.shop(), *commission, wish, work.at());
  if (!draft) return draft.problems();
  // A species that may not go there is cheapest to hear of now.
  for (const KeptItem& item : items_of(work.shop(), commission->id))
    if (!item.cancelled_on && !work.passes(handle_catches(work, item))) return work.problems();
  insert_quote(work.shop(), draft->quote);
  for (const std::string& assumption : draft->inputs.assumptions) work.warn(assumption);
  if (draft->quote.price < draft->quote.floor)
    work.warn("The price is below " + to_text(draft->quote.floor) +
              ": at it you earn less than your own rate.");
  return work.done(quote_number(*commission, draft->quote));
}

}  // namespace

const Action make_quote{
    "make_quote",
    "Work out a quote from the commission's items and keep it as a new version.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"margin", "Margin", FieldKind::share, false, "20 %; the shop's when nothing is given"},
     {"markup", "Or mark-up", FieldKind::share, false, "30 %"},
     {"price", "Or price by hand", FieldKind::money, false, "480.00"},
     {"by_list", "Or by the list prices", FieldKind::yes_no, false, "no", "no"},
     {"shipping", "Shipping", FieldKind::money, false, "18.00; the shop's when not given"},
     {"lines", "Lines set by hand", FieldKind::long_text, false,
      "rough grind = 2 h; Handle block = 1 at 45.00; harden survives = 90 %; + Mosaic pin = 2 at "
      "14.00"},
     {"rate", "Exchange rate of a foreign commission", FieldKind::text, false,
      "1 USD = 0.92 EUR; the one on record when not given"},
     {"valid_days", "Good for days", FieldKind::number, false, "30"}},
    run_make_quote};

}  // namespace tangmark::db
