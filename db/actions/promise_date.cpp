// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/promise_reader.h"
#include "db/store/promise_store.h"
#include "domain/commission/commission_step.h"
#include "domain/commission/promise_rules.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_promise_date(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto day = form.date("day");
  const auto words = form.maybe_text("words");
  const auto told = form.maybe_text("told");
  if (commission) form.take(after_step(commission->state, CommissionStep::promise, "commission"));
  if (form.has("day") && day.ok() && day < work.today())
    form.add({"day", "That day is past.", "Promise a day to come."});
  if (form.refused()) return form.problems();

  std::optional<Promise> before;
  if (auto standing = standing_promise(work.shop(), commission->id)) before = std::move(*standing);
  Catches caught;
  if (auto moved = moved_without_telling(before, day, told)) caught.push_back(std::move(*moved));
  if (auto early = promise_before_forecast(day, forecast_day(work.shop(), *commission, work.now())))
    caught.push_back(std::move(*early));
  if (!work.passes(caught)) return work.problems();
  insert_promise(work.shop(), {commission->id, day, work.at(), words, told});
  return work.done(to_stored(day));
}

}  // namespace

const Action promise_date{
    "promise_date",
    "Promise a day. Earlier promises stay on record; the latest one holds.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"day", "Day", FieldKind::date, true, "2027-03-15"},
     {"words", "In what words", FieldKind::text, false, "by the middle of March"},
     {"told", "Who was told, and how", FieldKind::text, false, "the buyer, by e-mail"}},
    run_promise_date};

}  // namespace tangmark::db
