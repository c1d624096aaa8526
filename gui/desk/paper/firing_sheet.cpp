// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/kiln_store.h"
#include "db/store/route_store.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "gui/desk/paper/recorded_curve.h"
#include "reports/firing_sheet.h"

namespace tangmark::desk {
namespace {

using std::chrono::minutes;

// The planned curve: heating in a straight line, soak, controlled cooling, then natural cooling.
reports::Curve planned_curve(const kiln::KeptFiring& firing, const kiln::Kiln& kiln) {
  reports::Curve curve{"Planned", {}, {}, {}};
  const auto add = [&](Instant at, Temperature t) { curve.points.push_back({at, t}); };
  const Temperature room = Temperature::celsius(20);
  add(firing.heat_from, room);
  add(firing.starts_at, firing.set);
  Instant off = firing.ends_at;
  Temperature off_at = firing.set;
  if (firing.kind == kiln::FiringKind::anneal && firing.cool_to && firing.cool_per_h) {
    const Instant soaked = firing.starts_at + kiln.load + firing.soak;
    const double hours =
        (firing.set - *firing.cool_to).kelvins() / std::max(0.1, firing.cool_per_h->kelvins());
    off = soaked + std::chrono::seconds(static_cast<std::int64_t>(hours * 3600));
    off_at = *firing.cool_to;
    add(soaked, firing.set);
  }
  add(off, off_at);
  const double tau_s = static_cast<double>(kiln.tau.count());
  for (int step = 1; step <= 12; ++step) {
    const double after_s = tau_s * step / 6.0;
    const double c = 20 + (off_at.in_celsius() - 20) * std::exp(-after_s / tau_s);
    add(off + std::chrono::seconds(static_cast<std::int64_t>(after_s)),
        Temperature::nearest_celsius(c));
  }
  return curve;
}

struct Own {
  reports::FiringBlade line;
  std::optional<Temperature> low, high;
};

Own blade_line(const db::ShopFile& shop, const kiln::KeptFiring& firing, const kiln::Kiln& kiln,
               const kiln::FiringBlade& member, std::size_t index) {
  Own own;
  const auto kept = db::load_blade(shop, member.blade);
  if (kept) {
    own.line.number = std::to_string(kept->number);
    own.line.steel = kept->grade.value_or("not identified");
  }
  own.line.position = std::to_string(member.position);
  own.line.in = member.time_in ? *member.time_in : firing.starts_at;
  own.line.out = member.time_out;
  const bool pulled = firing.kind == kiln::FiringKind::harden;
  if (!own.line.out && pulled) {
    const auto soaked = firing.starts_at + kiln.load + firing.soak;
    const auto each = (firing.ends_at - soaked) / static_cast<int>(firing.blades.size());
    own.line.out = soaked + each * static_cast<int>(index);
  } else if (!own.line.out) {
    own.line.out = firing.ends_at;
  }
  if (!member.step) return own;
  db::Query q(shop, "SELECT * FROM route_step WHERE id = ?");
  q.bind(*member.step);
  if (!q.next()) return own;
  own.low = q.maybe_temperature("low_k1800");
  own.high = q.maybe_temperature("high_k1800");
  own.line.soak_least = q.maybe_duration("soak_s");
  own.line.soak_most = q.maybe_duration("soak_max_s");
  if (pulled) own.line.medium = q.text("medium");
  own.line.note = q.text("note");
  return own;
}

std::string purpose_of(const db::ShopFile& shop, const kiln::KeptFiring& firing) {
  if (firing.kind == kiln::FiringKind::harden) return "hardening";
  if (firing.kind == kiln::FiringKind::anneal) return "anneal";
  if (!firing.blades.empty() && firing.blades.front().step) {
    db::Query q(shop, "SELECT operation FROM route_step WHERE id = ?");
    q.bind(*firing.blades.front().step);
    if (q.next()) return q.text("operation");
  }
  return "soak";
}

}  // namespace

Outcome<reports::Document> firing_sheet_paper(const Press& press, std::string_view number) {
  const auto firing = db::find_firing(press.shop, number, "firing");
  if (!firing) return firing.problems();
  const auto settings = db::load_settings(press.shop);
  const auto kilns = db::all_kilns(press.shop);
  const auto kiln =
      std::find_if(kilns.begin(), kilns.end(), [&](const auto& k) { return k.id == firing->kiln; });
  reports::FiringSheet sheet;
  sheet.number = std::to_string(firing->number);
  sheet.kiln = kiln->name;
  sheet.purpose = purpose_of(press.shop, *firing);
  sheet.start = firing->starts_at;
  sheet.end = firing->ends_at;
  sheet.set = firing->set;
  sheet.soak = firing->soak;
  std::optional<Temperature> low, high;
  for (std::size_t i = 0; i < firing->blades.size(); ++i) {
    Own own = blade_line(press.shop, *firing, *kiln, firing->blades[i], i);
    if (own.low && (!low || *own.low > *low)) low = own.low;
    if (own.high && (!high || *own.high < *high)) high = own.high;
    sheet.blades.push_back(std::move(own.line));
  }
  if (low && high) sheet.window = reports::Window{*low, *high};
  sheet.programme.push_back({firing->set, kiln->heat_per_h, firing->ends_at - firing->starts_at});
  if (firing->cool_to)
    sheet.programme.push_back({*firing->cool_to, firing->cool_per_h, std::nullopt});
  sheet.planned = planned_curve(*firing, *kiln);
  sheet.planned.window = sheet.window;
  sheet.recorded = recorded_curve(press, number);
  sheet.attendance = firing->kind == kiln::FiringKind::harden
                         ? "Somebody stays from loading to the last quench."
                         : "Hands are needed to load and to unload; your insurer and fire code "
                           "decide what may run alone.";
  sheet.qr = "TANGMARK FIRING " + sheet.number;
  sheet.printed = press.now;
  return reports::firing_sheet_document(sheet, look_of(settings), press.fonts);
}

}  // namespace tangmark::desk
