// SPDX-License-Identifier: MIT
#include "db/actions/commission_action_list.h"
#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/store/rate_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_note_rate(Work& work, Form& form) {
  const Currency from = form.take(Currency::of(form.text("currency"), "currency"));
  const auto rate =
      form.take(parse_exchange_rate(form.text("rate"), from, work.settings().currency, "rate"));
  const auto day = form.maybe_date("day").value_or(work.today());
  const auto source = form.maybe_text("source");
  if (!form.refused() && from == work.settings().currency)
    form.add({"currency", "That is the shop's own currency.", "Give a foreign one."});
  if (form.refused()) return form.problems();
  insert_rate(work.shop(), rate, day, source);
  return work.done(to_text(rate));
}

}  // namespace

const Action note_rate{
    "note_rate",
    "Note what a foreign currency is worth in the shop's, from a day on.",
    {{"currency", "Foreign currency", FieldKind::text, true, "USD"},
     {"rate", "One of it is worth", FieldKind::text, true, "1 USD = 0.92 EUR"},
     {"day", "From", FieldKind::date, false, "2026-11-25; today when not given"},
     {"source", "Who says so", FieldKind::text, false, "the bank, statement of November"}},
    run_note_rate};

}  // namespace tangmark::db
