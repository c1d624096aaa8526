// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "db/actions/bench_fields.h"
#include "db/actions/blade_action_list.h"
#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/finding_store.h"
#include "domain/blade/finding_kind.h"
#include "domain/blade/scrap_rules.h"

namespace tangmark::db {
namespace {

using namespace blade;

std::optional<std::int64_t> waiting_commission(const ShopFile& shop, const Blade& blade) {
  if (!blade.item) return std::nullopt;
  Query query(
      shop,
      "SELECT c.number FROM item i JOIN commission c ON c.id = i.commission_id WHERE i.id = ? "
      "AND i.cancelled_on IS NULL AND c.state NOT IN('delivered', 'declined', 'cancelled')");
  query.bind(*blade.item);
  if (!query.next()) return std::nullopt;
  return query.integer("number");
}

bool other_blade_lives(const ShopFile& shop, const KeptBlade& blade) {
  if (!blade.item) return false;
  const auto all = blades_of_item(shop, *blade.item);
  return std::any_of(all.begin(), all.end(),
                     [&](const KeptBlade& b) { return b.id != blade.id && !b.scrapped_at; });
}

struct Booking {
  std::int64_t row, firing, number, blades;
};

// It leaves the firings that have not begun; one that nobody else is in is cancelled.
void leave_booked_firings(Work& work, const KeptBlade& blade) {
  std::vector<Booking> bookings;
  {
    Query query(work.shop(),
                "SELECT m.id, f.id AS firing, f.number, (SELECT count(*) FROM firing_blade a "
                "WHERE a.firing_id = f.id) AS blades FROM firing_blade m JOIN firing f ON f.id = "
                "m.firing_id "
                "WHERE m.blade_id = ? AND f.state = 'booked'");
    query.bind(blade.id);
    while (query.next())
      bookings.push_back({query.integer("id"), query.integer("firing"), query.integer("number"),
                          query.integer("blades")});
  }
  for (const Booking& booking : bookings) {
    delete_row(work.shop(), "firing_blade", booking.row);
    if (booking.blades > 1) {
      work.warn(fmt::format("It was taken out of firing {}.", booking.number));
      continue;
    }
    Row("firing")
        .set("state", "cancelled")
        .set("cancelled_why", fmt::format("blade {} was scrapped", blade.number))
        .update(work.shop(), booking.firing);
    work.warn(fmt::format("Firing {} held no other blade and is cancelled.", booking.number));
  }
}

void settle_its_findings(Work& work, const KeptBlade& blade, const std::string& why) {
  for (KeptFinding& finding : findings_of(work.shop(), blade.id)) {
    if (!waits_for_decision(finding)) continue;
    finding.decision = Decision::scrap;
    finding.decided_at = work.at();
    finding.decided_words = why;
    store_finding(work.shop(), finding);
  }
}

Outcome<ActionResult> scrap(Work& work, Form& form) {
  auto blade = asked_blade(work, form);
  const std::string why = form.text("why");
  const auto cost_to = form.maybe_word<CostGoesTo>("cost_to");
  if (form.refused()) return form.problems();
  if (blade->scrapped_at || blade->delivered_at)
    return Problem{"blade",
                   fmt::format("Blade {} was {} already.", blade->number,
                               blade->scrapped_at ? "scrapped" : "delivered"),
                   "Choose a blade that is still here."};
  if (work.at() < blade->started_at)
    return Problem{"at", "That is before the blade was begun.", "Check the time and its date."};
  if (!work.passes(scrap_without_cost(blade->number, cost_to))) return work.problems();
  work.passes(scrap_leaves_promise(blade->number, waiting_commission(work.shop(), *blade),
                                   other_blade_lives(work.shop(), *blade)));
  blade->scrapped_at = work.at();
  blade->scrap_why = why;
  blade->scrap_cost_to = cost_to;
  store_blade(work.shop(), *blade);
  if (blade->piece) Row("piece").set("state", "scrap").update(work.shop(), blade->piece->row());
  settle_its_findings(work, *blade, why);
  leave_booked_firings(work, *blade);
  return work.done(std::to_string(blade->number));
}

}  // namespace

const Action scrap_blade{
    "scrap_blade",
    "Scrap a blade; its number is never given again, its cost is kept.",
    {blade_field(),
     {"why", "Why", FieldKind::text, true, "cracked in the water quench"},
     {"cost_to", "Cost goes to", FieldKind::choice, false, "who bears it", {}, {"job", "shop"}}},
    scrap};

}  // namespace tangmark::db
