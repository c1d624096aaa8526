// SPDX-License-Identifier: MIT
#include "db/row.h"
#include "db/store/blade_state.h"
#include "db/store/kiln_store.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "reports/calendar.h"
#include "reports/day_list.h"

namespace tangmark::desk {
namespace {

std::string blade_list(const db::ShopFile& shop, const kiln::Firing& firing) {
  std::string names;
  for (const auto& member : firing.blades) {
    db::Query q(shop, "SELECT number FROM blade WHERE id = ?");
    q.bind(member.blade);
    if (q.next()) names += (names.empty() ? "" : ", ") + q.text("number");
  }
  return names;
}

std::string kiln_name(const db::ShopFile& shop, kiln::KilnId id) {
  for (const auto& k : db::all_kilns(shop))
    if (k.id == id) return k.name;
  return {};
}

std::string doing(kiln::FiringKind kind) {
  switch (kind) {
    case kiln::FiringKind::harden: return "Load and quench";
    case kiln::FiringKind::anneal: return "Load for the anneal";
    case kiln::FiringKind::soak: return "Load";
  }
  return {};
}

void add_firings(const Press& press, const commission::ShopSettings& s, CalendarDate day,
                 reports::DayList& list) {
  const Instant from = s.zone.at(day, Duration{});
  for (const auto& firing : db::firings_after(press.shop, from)) {
    if (firing.state == kiln::FiringState::done) continue;
    const std::string kiln = kiln_name(press.shop, firing.kiln);
    const std::string blades = blade_list(press.shop, firing);
    const std::string heat = to_text(firing.set, s.temperature_unit);
    if (s.zone.date_of(firing.starts_at) == day)
      list.entries.push_back(
          {firing.starts_at,
           firing.kind == kiln::FiringKind::harden ? std::optional(firing.ends_at) : std::nullopt,
           doing(firing.kind) + " " + blades + " at " + heat, kiln,
           "firing " + std::to_string(firing.number),
           firing.starts_at < press.now && firing.state == kiln::FiringState::booked});
    if (firing.kind != kiln::FiringKind::harden && s.zone.date_of(firing.ends_at) == day)
      list.entries.push_back({firing.ends_at,
                              {},
                              "Take out " + blades,
                              kiln,
                              "firing " + std::to_string(firing.number),
                              false});
  }
}

void add_tempers(const Press& press, reports::DayList& list) {
  for (const auto& waiting : db::blades_waiting_for_temper(press.shop))
    list.entries.push_back({waiting.due,
                            {},
                            "Temper blade " + std::to_string(waiting.blade.number),
                            "temper oven",
                            blade::state_text(waiting.state, press.now),
                            waiting.due && *waiting.due < press.now});
}

void add_promises(const Press& press, CalendarDate day, reports::DayList& list) {
  db::Query q(press.shop,
              "SELECT c.number, p.day FROM promise p JOIN commission c ON c.id = p.commission_id "
              "WHERE p.id IN "
              "(SELECT max(id) FROM promise GROUP BY commission_id) AND c.state IN('accepted','in "
              "work','ready') "
              "AND p.day <= ? ORDER BY p.day");
  q.bind(to_stored(day));
  while (q.next()) {
    const CalendarDate due = q.date("day");
    list.notes.push_back(
        "Job " + q.text("number") +
        (due == day ? " is promised for today." : " was promised for " + short_text(due) + "."));
  }
}

}  // namespace

Outcome<reports::Document> day_list_paper(const Press& press, CalendarDate day) {
  const auto settings = db::load_settings(press.shop);
  reports::DayList list;
  list.shop = settings.shop_name;
  list.day = day;
  list.printed = press.now;
  add_firings(press, settings, day, list);
  if (settings.zone.date_of(press.now) == day) add_tempers(press, list);
  add_promises(press, day, list);
  return reports::day_list_document(list, look_of(settings), press.fonts);
}

Outcome<std::string> calendar_file(const Press& press) {
  const auto settings = db::load_settings(press.shop);
  std::vector<reports::CalendarEvent> events;
  for (const auto& firing : db::firings_after(press.shop, press.now)) {
    reports::CalendarEvent event;
    event.uid = "firing-" + std::to_string(firing.number) + "@tangmark";
    event.summary = kiln_name(press.shop, firing.kiln) + " " +
                    to_text(firing.set, settings.temperature_unit) + ": " +
                    blade_list(press.shop, firing);
    event.description = doing(firing.kind) + ", firing " + std::to_string(firing.number);
    event.location = settings.shop_name;
    event.start = firing.starts_at;
    event.end = firing.ends_at;
    event.remind_before = std::chrono::minutes(15);
    events.push_back(std::move(event));
  }
  db::Query q(press.shop,
              "SELECT p.id, p.day, c.number FROM promise p JOIN commission c ON c.id = "
              "p.commission_id WHERE p.id IN "
              "(SELECT max(id) FROM promise GROUP BY commission_id) AND c.state IN('accepted','in "
              "work','ready')");
  while (q.next()) {
    reports::CalendarEvent event;
    event.uid = "promise-" + q.text("number") + "@tangmark";
    event.summary = "Promised: job " + q.text("number");
    event.all_day = q.date("day");
    event.sequence = static_cast<int>(q.integer("id"));
    events.push_back(std::move(event));
  }
  return reports::calendar_text(events, press.now, settings.shop_name);
}

}  // namespace tangmark::desk
