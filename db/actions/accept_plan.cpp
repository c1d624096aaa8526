// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/store/firing_reasons.h"
#include "db/store/plan_difference.h"
#include "db/store/step_advice_reader.h"
#include "domain/kiln/plan_json.h"

namespace tangmark::db {
namespace {

// The plan was made from a case of the same moment; if the shop has changed since, the checker
// finds what no longer fits and nothing is stored.
Outcome<ActionResult> run_accept_plan(Work& work, Form& form) {
  const Instant from = form.instant("from");
  const std::string text = form.text("plan");
  if (form.refused()) return form.problems();
  const auto plan = kiln::read_firing_plan(text);
  if (!plan) return plan.problems();
  const ShopCase shop = shop_case(work.shop(), from, Keep::locked_only);
  std::set<std::string> all;
  for (const auto& [name, chain] : shop.chains) all.insert(name);
  const auto check = kiln::check_plan(shop.a_case, *plan, all);
  if (!work.passes(catches_in_words(shop, *plan, check.violations))) return work.problems();
  const PlanDifference changes = difference(shop, *plan);
  book(work, changes);
  std::size_t touched = 0;
  for (const auto& change : changes.changes) {
    if (change.what == PlanDifference::What::kept) continue;
    ++touched;
    if (change.what != PlanDifference::What::dropped)
      work.advise(advice_on(work.shop(), change.firing, work.settings().temperature_unit));
  }
  return work.done(std::to_string(touched));
}

}  // namespace

const Action accept_plan{
    "accept_plan",
    "Book a kiln plan: add, move and drop firings as it says.",
    {{"from", "Minute 0 of the plan", FieldKind::instant, true, "2026-11-26T08:00:00Z"},
     {"plan", "Plan", FieldKind::long_text, true, "{\"instance\": \"shop\", ...}"}},
    run_accept_plan};

}  // namespace tangmark::db
