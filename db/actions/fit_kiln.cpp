// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/store/kiln_fit_store.h"
#include "db/store/kiln_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_fit_kiln(Work& work, Form& form) {
  const auto kept = find_kiln(work.shop(), form.text("kiln"), "kiln");
  const bool accept = form.yes("accept");
  if (!kept) return kept.problems();
  if (form.refused()) return form.problems();
  const auto fit = kiln::fit_kiln(fit_runs(work.shop(), kept->id));
  if (!fit) return fit.problems();
  std::string words;
  for (const std::string& line : kiln::proposal(*kept, *fit, work.settings().temperature_unit))
    words += (words.empty() ? "" : " ") + line;
  if (!accept)
    return Problem{"accept", "The records of " + kept->name + " say: " + words,
                   "Say yes to use these values, or leave all as it is."};
  change(work.shop(), kept->id, kiln::with_fit(*kept, *fit));
  add_fit(work.shop(), kept->id, *fit, work.now());
  work.warn(words);
  return work.done(kept->name);
}

}  // namespace

const Action fit_kiln{
    "fit_kiln",
    "Fit a kiln's heating, cooling and power to its records; shown before it is taken.",
    {{"kiln", "Kiln", FieldKind::kiln, true, "Long kiln"},
     {"accept", "Use the fitted values", FieldKind::yes_no, false, "no", "no"}},
    run_fit_kiln};

}  // namespace tangmark::db
