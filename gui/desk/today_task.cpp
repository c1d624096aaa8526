// SPDX-License-Identifier: MIT
#include "gui/desk/today_task.h"

#include <algorithm>

#include "db/listing/blade_rows.h"
#include "db/listing/commission_rows.h"
#include "db/listing/kiln_rows.h"
#include "db/listing/stock_rows.h"
#include "db/store/timer_store.h"
#include "gui/desk/blades_desk.h"
#include "gui/desk/commissions_desk.h"
#include "gui/desk/timer_offers.h"

namespace tangmark::desk {
namespace {

// Order of urgency: steel that may crack, then fire, then people, then stock.
enum Urgency {
  untempered_late,
  running,
  untempered,
  timer,
  firing_soon,
  finding,
  promise_late,
  money,
  contact,
  stock_low
};

// One offer leads to the blade's temper, the other to the blade.
std::vector<Offer> temper_offers(const Sight& sight, const db::BladeRow& blade) {
  return {temper_offer(sight, blade),
          {"See the blade", GoTo{Place::blades, std::to_string(blade.number)}, "Ctrl Enter", ""}};
}

Task out_of_oven_task(const Sight& sight, const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  const auto out = out_of_the_oven(blade);
  const bool due = out && *out <= sight.now;
  return {"temper " + number,
          number,
          "Take " + number + " out" + (out ? " at " + clock_text(*out, sight.zone()) : ""),
          sentence_case(standing(sight, blade)) + ". Log its temper when it is out.",
          temper_offers(sight, blade),
          due ? untempered : firing_soon};
}

Task first_temper_task(const Sight& sight, const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  const Duration waited = sight.now - *blade.quenched_at;
  const bool late = waited >= sight.settings.temper_limit;
  const Instant limit = *blade.quenched_at + sight.settings.temper_limit;
  std::string sentence = "Temper " + number;
  if (blade.next_operation == "temper" && blade.next_temperature)
    sentence += " at " + words(sight, *blade.next_temperature);
  return {"temper " + number,
          number,
          sentence,
          to_text(std::chrono::floor<std::chrono::minutes>(waited)) + " since its quench" +
              (late ? ", past your limit of " : "; by your rule within ") +
              to_text(sight.settings.temper_limit) + ", " + when(sight, limit) + ".",
          temper_offers(sight, blade),
          late ? untempered_late : untempered};
}

Task next_temper_task(const Sight& sight, const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  return {"temper " + number,
          number,
          "Second temper of " + number,
          sentence_case(standing(sight, blade)) + ". It cannot go to the handle before.",
          temper_offers(sight, blade),
          untempered};
}

Task finding_task(const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  return {"finding " + number,
          number,
          "Decide what was found on " + number,
          blade.title + ". Handle, certificate and delivery wait for it.",
          {{"See the blade", GoTo{Place::blades, number}, "Enter", ""}},
          finding};
}

void add_blades(const Sight& sight, std::vector<Task>& tasks) {
  for (const db::BladeRow& blade : db::blades_in_shop(sight.shop)) {
    if (blade.scrapped || blade.delivered) continue;
    if (in_the_oven(blade))
      tasks.push_back(out_of_oven_task(sight, blade));
    else if (blade.quenched_at && blade.tempers_since_quench == 0)
      tasks.push_back(first_temper_task(sight, blade));
    else if (blade.quenched_at && blade.tempers_ahead > 0)
      tasks.push_back(next_temper_task(sight, blade));
    if (blade.open_finding) tasks.push_back(finding_task(blade));
  }
}

std::string blades_of(const db::FiringRow& firing) {
  std::vector<std::string> numbers;
  for (const auto& member : firing.members) numbers.push_back(std::to_string(member.blade));
  return listed(numbers);
}

void add_firings(const Sight& sight, std::vector<Task>& tasks) {
  using namespace std::chrono;
  const Instant until = sight.now + hours{18};
  for (const db::FiringRow& firing : db::firing_rows(sight.shop, sight.now - hours{24}, until)) {
    const std::string number = std::to_string(firing.number);
    const Offer see{"See the kiln", GoTo{Place::kiln, number}, "Ctrl Enter", ""};
    const std::string what =
        words(sight, firing.set) + " " + firing.kind + " in the " + firing.kiln;
    if (firing.state == "done") continue;
    if (firing.state == "running" || firing.starts_at <= sight.now) {
      tasks.push_back(
          {"firing " + number,
           number,
           "Log firing " + number + ": " + what,
           "With " + blades_of(firing) + ". Planned until " + when(sight, firing.ends_at) + ".",
           {{"Log it", OpenForm{"run_firing", {{"firing", number}}}, "Enter", ""}, see},
           running});
    } else {
      tasks.push_back(
          {"firing " + number,
           number,
           "Load " + blades_of(firing) + " at " + clock_text(firing.starts_at, sight.zone()),
           sentence_case(what) + ". Switch on at " + clock_text(firing.heat_from, sight.zone()) +
               "; out " + when(sight, firing.ends_at) + ".",
           {{"Firing sheet", ShowDocument{"firing-sheet", number}, "Enter", ""}, see},
           firing_soon});
    }
  }
}

// The list of the day needs no "Next:" before each of its lines.
std::string plain(const std::string& sentence) {
  constexpr std::string_view next = "Next: ";
  return sentence.starts_with(next) ? sentence_case(sentence.substr(next.size())) : sentence;
}

void add_commissions(const Sight& sight, std::vector<Task>& tasks) {
  for (const db::CommissionRow& c : db::commission_rows(sight.shop)) {
    if (c.state == "delivered" || c.state == "declined" || c.state == "cancelled") continue;
    const std::string number = std::to_string(c.number);
    const NextLine next = next_for(sight, c);
    const bool late = c.promised && date::sys_days{*c.promised} < date::sys_days{sight.today()};
    if (late) {
      tasks.push_back(
          {"promise " + number,
           number,
           "Late: commission " + number + " for " + c.buyer,
           "Promised " + day(sight, *c.promised) + ", " + days_away(sight, *c.promised) + ". " +
               c.items + ".",
           {{"Tell them", OpenForm{"tell_delay", {{"commission", number}}}, "Enter", ""},
            {"See it", GoTo{Place::commissions, number}, "Ctrl Enter", ""}},
           promise_late});
    }
    const bool deposit = c.state == "accepted" && c.deposit_asked && c.deposits < *c.deposit_asked;
    const bool balance = c.state == "ready" && balance_of(c).minor() > 0;
    if (deposit || balance) {
      tasks.push_back(
          {"money " + number, number, plain(next.sentence), next.why, next.offers, money});
    }
    const bool unanswered = c.state == "enquiry" && !c.quote_version;
    if (unanswered) {
      tasks.push_back(
          {"answer " + number, number, plain(next.sentence), next.why, next.offers, contact});
    }
  }
}

void add_stock(const Sight& sight, std::vector<Task>& tasks) {
  for (const db::LotRow& lot : db::lot_rows(sight.shop)) {
    if (!lot.bought || !lot.floor) continue;
    const Share left = *lot.bought - lot.used.value_or(Share());
    if (!(left < *lot.floor)) continue;
    const std::string number = std::to_string(lot.number);
    tasks.push_back({"lot " + number,
                     number,
                     "Buy " + lot.name,
                     "What is left is below its floor.",
                     {{"See the lot", GoTo{Place::steel, "lot " + number}, "Enter", ""},
                      {"Receive a lot", OpenForm{"receive_lot", {}}, "Ctrl Enter", ""}},
                     stock_low});
  }
}

void add_timers(const Sight& sight, std::vector<Task>& tasks) {
  for (const auto& open : db::open_timers(sight.shop)) {
    const std::string number = std::to_string(open.number);
    const bool lost = db::forgotten_timer(sight.shop, open, sight.settings, sight.now).has_value();
    tasks.push_back(
        {"timer " + number, number,
         lost ? "Was timer " + number + " forgotten?" : "Timer " + number + ", " + open.operation,
         timer_words(sight, open), timer_offers(sight, open), lost ? running : timer});
  }
}

}  // namespace

std::vector<Task> tasks_of(const Sight& sight) {
  std::vector<Task> tasks;
  add_blades(sight, tasks);
  add_firings(sight, tasks);
  add_timers(sight, tasks);
  add_commissions(sight, tasks);
  add_stock(sight, tasks);
  std::stable_sort(tasks.begin(), tasks.end(),
                   [](const Task& a, const Task& b) { return a.urgency < b.urgency; });
  return tasks;
}

}  // namespace tangmark::desk
