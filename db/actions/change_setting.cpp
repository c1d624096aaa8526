// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/shop_action_list.h"
#include "db/actions/work.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_change_setting(Work& work, Form& form) {
  const std::string name = form.text("name");
  const std::string value = form.maybe_text("value").value_or("");
  if (form.refused()) return form.problems();
  auto changed = with_setting(work.settings(), name, value);
  if (!changed) {
    Problems problems = changed.problems();
    for (Problem& problem : problems)
      problem.field = problem.field == name && problem.sentence.starts_with("There is no setting")
                          ? "name"
                          : "value";
    return problems;
  }
  store_settings(work.shop(), *changed);
  return work.done(name);
}

}  // namespace

const Action change_setting{"change_setting",
                            "Change one setting of the shop.",
                            {{"name", "Setting", FieldKind::text, true, "hourly_rate"},
                             {"value", "New value", FieldKind::text, false, "42.00"}},
                            run_change_setting};

}  // namespace tangmark::db
