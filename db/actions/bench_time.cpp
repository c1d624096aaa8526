// SPDX-License-Identifier: MIT
#include <array>

#include "db/actions/form.h"
#include "db/actions/shop_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"

namespace tangmark::db {
namespace {

constexpr std::array<std::string_view, 7> weekdays{"monday", "tuesday",  "wednesday", "thursday",
                                                   "friday", "saturday", "sunday"};

Field weekday_field() {
  return {"weekday",
          "Weekday",
          FieldKind::choice,
          true,
          "monday",
          {},
          {weekdays.begin(), weekdays.end()}};
}

int weekday_number(const std::string& name) {
  for (std::size_t i = 0; i < weekdays.size(); ++i)
    if (weekdays[i] == name) return static_cast<int>(i) + 1;
  return 0;
}

// A time of day is read as a span since midnight: "8:30" is 8 h 30 min.
std::optional<Duration> time_of_day(Form& form, std::string_view field) {
  const auto span = form.maybe_duration(field);
  if (span && *span > std::chrono::hours(24)) {
    form.add({std::string(field), "A day has 24 hours.", "Write a time of day such as 8:30."});
    return std::nullopt;
  }
  return span;
}

Outcome<ActionResult> add_hours(Work& work, Form& form) {
  const int weekday = weekday_number(form.text("weekday"));
  if (weekday == 0)
    form.add({"weekday", "That is not a weekday.", "Write monday, tuesday ... sunday."});
  const auto from = time_of_day(form, "from");
  const auto to = time_of_day(form, "to");
  if (form.refused()) return form.problems();
  if (*to <= *from)
    return Problem{"to", "The hours end before they begin.", "Give an end later than the start."};
  Query overlap(work.shop(),
                "SELECT id FROM bench_hours WHERE weekday = ? AND from_s < ? AND to_s > ?");
  overlap.bind(weekday).bind(*to).bind(*from);
  if (overlap.next())
    return Problem{"from", "These hours overlap hours that are already there.",
                   "Take the old ones out first with remove_bench_hours."};
  Row("bench_hours")
      .set("weekday", weekday)
      .set("from_s", *from)
      .set("to_s", *to)
      .insert(work.shop());
  return work.done(form.text("weekday"));
}

Outcome<ActionResult> remove_hours(Work& work, Form& form) {
  const int weekday = weekday_number(form.text("weekday"));
  if (weekday == 0)
    form.add({"weekday", "That is not a weekday.", "Write monday, tuesday ... sunday."});
  if (form.refused()) return form.problems();
  std::vector<std::int64_t> rows;
  {
    Query query(work.shop(), "SELECT id FROM bench_hours WHERE weekday = ?");
    query.bind(weekday);
    while (query.next()) rows.push_back(query.integer("id"));
  }
  if (rows.empty())
    return Problem{"weekday", "There are no bench hours on that day.", "Choose another day."};
  for (const std::int64_t row : rows) delete_row(work.shop(), "bench_hours", row);
  return work.done(form.text("weekday"));
}

Outcome<ActionResult> add_off(Work& work, Form& form) {
  const auto day = form.date("day");
  const auto why = form.maybe_text("why");
  if (form.refused()) return form.problems();
  Query query(work.shop(), "SELECT id FROM day_off WHERE day = ?");
  query.bind(day);
  if (query.next()) return Problem{"day", "That day is off already.", "Choose another day."};
  Row("day_off").set("day", day).set("why", why).insert(work.shop());
  return work.done(to_stored(day));
}

}  // namespace

const Action add_bench_hours{"add_bench_hours",
                             "State when somebody is at the bench on a weekday.",
                             {weekday_field(),
                              {"from", "From", FieldKind::duration, true, "8:00"},
                              {"to", "To", FieldKind::duration, true, "12:30"}},
                             add_hours};

const Action remove_bench_hours{"remove_bench_hours",
                                "Take out all bench hours of a weekday.",
                                {weekday_field()},
                                remove_hours};

const Action add_day_off{"add_day_off",
                         "State a day when nobody is at the bench.",
                         {{"day", "Day", FieldKind::date, true, "2026-12-24"},
                          {"why", "Why", FieldKind::text, false, "market in town"}},
                         add_off};

}  // namespace tangmark::db
