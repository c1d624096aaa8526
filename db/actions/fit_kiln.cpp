// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"
#include "db/store/kiln_store.h"
#include "domain/kiln/kiln_fit.h"

namespace tangmark::db {
namespace {

// The records are read again from the files that were attached: nothing stands in between.
std::vector<kiln::FitRun> runs_of(const ShopFile& shop, kiln::KilnId id, const Zone& zone) {
  Query q(shop, "SELECT f.number, f.kind, f.metered_j, a.bytes, (SELECT count(*) FROM firing_blade b "
                "WHERE b.firing_id = f.id) AS blades FROM kiln_record r JOIN firing f ON f.id = r.firing_id "
                "JOIN attachment a ON a.id = r.attachment_id WHERE r.kiln_id = ? ORDER BY f.number");
  q.bind(id);
  std::vector<kiln::FitRun> runs;
  while (q.next()) {
    const auto record = kiln::read_kiln_record(q.text("bytes"), zone);
    if (!record) continue;
    kiln::FitRun run = kiln::run_of(*record);
    run.name = "firing " + std::to_string(q.integer("number"));
    run.blades = static_cast<int>(q.integer("blades"));
    run.cools_by_itself = q.text("kind") != "anneal";
    if (!q.is_null("metered_j")) run.metered_watt_min = static_cast<double>(q.integer("metered_j")) / 60;
    runs.push_back(std::move(run));
  }
  return runs;
}

Outcome<ActionResult> run(Work& work, Form& form) {
  const auto kept = find_kiln(work.shop(), form.text("kiln"), "kiln");
  const bool accept = form.yes("accept");
  if (!kept) return kept.problems();
  if (form.refused()) return form.problems();
  const auto fit = kiln::fit_kiln(runs_of(work.shop(), kept->id, work.settings().zone));
  if (!fit) return fit.problems();
  std::string words;
  for (const std::string& line : kiln::proposal(*kept, *fit)) words += (words.empty() ? "" : " ") + line;
  if (!accept) return Problem{"accept", "The records of " + kept->name + " say: " + words, "Say yes to use these values, or leave all as it is."};
  change(work.shop(), kept->id, kiln::with_fit(*kept, *fit));
  work.warn(words);
  return work.done(kept->name);
}

}  // namespace

const Action fit_kiln{"fit_kiln", "Fit a kiln's heating, cooling and power to its records; shown before it is taken.",
                      {{"kiln", "Kiln", FieldKind::kiln, true, "Long kiln"},
                       {"accept", "Use the fitted values", FieldKind::yes_no, false, "no", "no"}},
                      run};

}  // namespace tangmark::db
