// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/store/learning_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_expect_load(Work& work, Form& form) {
  const std::string kind = form.text("kind");
  const auto blades = form.maybe_whole("blades", 1, 40);
  if (kind != "harden" && kind != "soak" && kind != "anneal")
    form.add({"kind", "\"" + kind + "\" is no kind of firing.", "Use harden, soak or anneal."});
  if (!blades) form.add({"blades", "How many is missing.", "Give a count from 1 to 40."});
  if (form.refused()) return form.problems();
  store_expected_load(work.shop(), kind, *blades);
  return work.done(std::to_string(*blades));
}

}  // namespace

const Action expect_load{"expect_load",
                         "State how many blades a quote shares a firing of a kind by.",
                         {{"kind",
                           "Kind of firing",
                           FieldKind::choice,
                           true,
                           "harden",
                           {},
                           {"harden", "soak", "anneal"}},
                          {"blades", "Blades in it", FieldKind::number, true, "4"}},
                         run_expect_load};

}  // namespace tangmark::db
