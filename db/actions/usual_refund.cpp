// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/form.h"
#include "db/actions/shop_action_list.h"
#include "db/actions/work.h"
#include "db/store/settings_store.h"
#include "db/store/usual_terms_store.h"

namespace tangmark::db {
namespace {

using commission::RefundTerms;

Outcome<ActionResult> run_usual_refund(Work& work, Form& form) {
  const auto terms = form.word<RefundTerms>("terms", RefundTerms::less_material);
  const auto words = form.maybe_text("words");
  if (form.refused()) return form.problems();
  store_usual_refund_terms(work.shop(), terms);
  if (words) {
    const auto changed = with_setting(work.settings(), "refund_rule", *words);
    if (!changed) return changed.problems();
    store_settings(work.shop(), *changed);
  } else {
    work.warn("The words printed are as before: " + work.settings().refund_rule);
  }
  work.warn(
      "Commissions that froze other terms keep them. What the law gives a buyer comes first, "
      "and differs by country.");
  return work.done(std::string(word_of(terms)));
}

}  // namespace

const Action usual_refund{
    "usual_refund",
    "State what goes back to a buyer who withdraws, as new commissions freeze it.",
    {{"terms",
      "What came in goes back",
      FieldKind::choice,
      true,
      "less material used",
      {},
      choices_of<RefundTerms>()},
     {"words", "As the papers say it", FieldKind::long_text, false,
      "The deposit is returned in full until work begins; after that, less the material used."}},
    run_usual_refund};

}  // namespace tangmark::db
