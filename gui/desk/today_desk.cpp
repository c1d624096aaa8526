// SPDX-License-Identifier: MIT
#include "gui/desk/today_desk.h"

#include <algorithm>

#include "db/listing/kiln_rows.h"
#include "gui/desk/commissions_desk.h"
#include "gui/desk/questions_desk.h"
#include "gui/desk/today_task.h"

namespace tangmark::desk {
namespace {

Section firings_section(const Sight& sight) {
  using namespace std::chrono;
  Section section;
  section.title = "The kilns until tomorrow night";
  section.table.columns = {{"Kiln"}, {"On"}, {"Load"}, {"Out"}, {"At", Align::right}, {"Blades"}};
  for (const db::FiringRow& firing :
       db::firing_rows(sight.shop, sight.now, sight.now + hours{36})) {
    std::string blades;
    for (const auto& member : firing.members)
      blades += (blades.empty() ? "" : " ") + std::to_string(member.blade);
    section.table.rows.push_back(
        {{firing.kiln, when(sight, firing.heat_from), when(sight, firing.starts_at),
          when(sight, firing.ends_at), words(sight, firing.set), blades},
         false,
         {{"See", GoTo{Place::kiln, std::to_string(firing.number)}, "", ""}}});
  }
  if (section.table.rows.empty())
    section.paragraphs = {"No firing is booked until tomorrow night."};
  return section;
}

Section promises_section(const Sight& sight) {
  Section section;
  section.title = "Promised next";
  section.table.columns = {{"Day"}, {"Buyer"}, {"What"}, {"State"}};
  std::vector<db::CommissionRow> open = db::commission_rows(sight.shop);
  std::erase_if(open, [](const db::CommissionRow& c) {
    return !c.promised || c.state == "delivered" || c.state == "declined" || c.state == "cancelled";
  });
  std::sort(open.begin(), open.end(),
            [](const auto& a, const auto& b) { return *a.promised < *b.promised; });
  constexpr std::size_t seen = 5;
  for (std::size_t i = 0; i < std::min(seen, open.size()); ++i) {
    const db::CommissionRow& c = open[i];
    section.table.rows.push_back(
        {{day(sight, *c.promised) + ", " + days_away(sight, *c.promised), c.buyer, c.items,
          c.state},
         date::sys_days{*c.promised} < date::sys_days{sight.today()},
         {{"See", GoTo{Place::commissions, std::to_string(c.number)}, "", ""}}});
  }
  section.paragraphs = {held_words(sight)};
  return section;
}

}  // namespace

PlaceList today_list(const Sight& sight) {
  std::vector<Row> rows;
  for (const Task& task : tasks_of(sight)) {
    rows.push_back({task.id, task.number, task.sentence, task.why, ""});
  }
  return {"Needs hands", "Find a blade, firing or buyer", List(std::move(rows))};
}

PlaceView today_view(const Sight& sight, const std::string& id) {
  const std::vector<Task> tasks = tasks_of(sight);
  const auto found =
      std::find_if(tasks.begin(), tasks.end(), [&](const Task& t) { return t.id == id; });
  PlaceView view;
  if (found == tasks.end()) {
    view.next = {"Nothing waits for your hands",
                 "No blade, firing, promise or payment asks for anything now.",
                 {{"New enquiry", OpenForm{"new_commission", {}}, "Enter", ""},
                  {"Plan the kilns", GoTo{Place::kiln, ""}, "Ctrl Enter", ""}}};
  } else {
    std::string sentence = found->sentence;
    if (sentence.front() >= 'A' && sentence.front() <= 'Z')
      sentence.front() = static_cast<char>(sentence.front() + 32);
    view.next = {"Next: " + sentence, found->why, found->offers};
  }
  view.sheet.title = to_text(sight.today());
  view.sheet.under = "It is " + clock_text(sight.now, sight.zone()) + ".";
  Section start;
  start.offers = {{"New enquiry", OpenForm{"new_commission", {}}, "", ""},
                  {"Log a step", OpenForm{"log_step", {}}, "", ""},
                  {"Start a timer", OpenForm{"start_timer", {}}, "", ""},
                  {"Receive a lot", OpenForm{"receive_lot", {}}, "", ""},
                  {"Day list", ShowDocument{"day-list", to_stored(sight.today())}, "", ""}};
  view.sheet.sections = {firings_section(sight), promises_section(sight), start,
                         questions_section()};
  return view;
}

}  // namespace tangmark::desk
