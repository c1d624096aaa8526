// SPDX-License-Identifier: MIT
// What the shop enters of steels itself: grades, heat-treat windows and temper tables.
#include <cmath>

#include "db/actions/form.h"
#include "db/actions/shop_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"
#include "db/store/grade_store.h"
#include "domain/steel/figure_text.h"

namespace tangmark::db {
namespace {

constexpr double least_hrc = 20;
constexpr double most_hrc = 70;

using Window = steel::HeatTreatWindow;

// "harden_from" and "harden_to": both or none, the lower one first.
std::optional<Window> window_in(Form& form, const std::string& operation) {
  const std::string from = operation + "_from", to = operation + "_to";
  const auto low = form.maybe_temperature(from);
  const auto high = form.maybe_temperature(to);
  if (low.has_value() != high.has_value() || (low && *high < *low))
    form.add({to, "The window to " + operation + " has no lower and upper end.",
              "Give both, the lower one first."});
  if (!low || !high) return std::nullopt;
  Window window;
  window.operation = operation;
  window.low = *low;
  window.high = *high;
  return window;
}

bool is_grade_name(const ShopFile& shop, const std::string& name) {
  Query query(shop, "SELECT id FROM own_grade WHERE name = ?");
  query.bind(name);
  return query.next();
}

Outcome<ActionResult> grade(Work& work, Form& form) {
  const auto name = form.text("name");
  const auto limits = form.text("limits");
  std::vector<Window> windows;
  for (const char* operation : {"normalize", "anneal", "harden", "temper"})
    if (auto window = window_in(form, operation)) windows.push_back(*std::move(window));
  const auto source = form.text("source");
  if (const auto read = steel::parse_limits(limits, "limits"); !read && form.has("limits"))
    for (const Problem& problem : read.problems()) form.add(problem);
  if (form.refused()) return form.problems();
  if (is_grade_name(work.shop(), name))
    return Problem{"name", "The shop has this grade already.", "Choose another name."};
  Row("own_grade")
      .set("name", name)
      .set("limits", limits)
      .set("source", source)
      .insert(work.shop());
  for (Window& window : windows) {
    window.source = source;
    store_own_window(work.shop(), name, window, work.at());
  }
  return work.done(name);
}

// The grade's main name, which is what windows and tables are kept under.
std::string known_grade(Work& work, Form& form) {
  const std::string name = form.text("grade");
  const steel::GradeBook book = grade_book(work.shop());
  const steel::Grade* grade = book.find(name);
  if (grade != nullptr) return grade->name;
  if (form.has("grade"))
    form.add({"grade", "\"" + name + "\" is no grade on file.",
              "Check the name, or add the grade with add_grade."});
  return {};
}

void read_cool(Form& form, Window& window) {
  window.cooling = form.maybe_text("cooling").value_or("");
  window.most_fall_per_hour = form.maybe_temperature_step("fall_per_h");
  window.slow_until = form.maybe_temperature("slow_to");
  if (window.slow_until && !window.most_fall_per_hour)
    form.add({"fall_per_h", "Down to where is said, but not how slowly.",
              "Give the fall in an hour, such as 28 C."});
}

Outcome<ActionResult> window(Work& work, Form& form) {
  const std::string name = known_grade(work, form);
  Window window;
  window.operation = form.text("step");
  const bool withdrawn = form.yes("withdraw");
  const auto low = form.maybe_temperature("low");
  const auto high = form.maybe_temperature("high");
  window.hold_least = form.maybe_duration("hold_least");
  window.hold_most = form.maybe_duration("hold_most");
  read_cool(form, window);
  window.source = form.maybe_text("source").value_or("");
  if (!withdrawn && (!low || !high || *high < *low))
    form.add({"high", "The window has no lower and upper end.", "Give both, the lower one first."});
  if (window.hold_least && window.hold_most && *window.hold_most < *window.hold_least)
    form.add({"hold_most", "The longest hold is shorter than the shortest.", "Exchange them."});
  if (!withdrawn && window.source.empty())
    form.add({"source", "A window needs a source.", "Name the sheet it was read in."});
  if (form.refused()) return form.problems();
  if (withdrawn) {
    if (!withdraw_own_window(work.shop(), name, window.operation, work.at()))
      return Problem{"step", "The shop entered no window to " + window.operation + ' ' + name + ".",
                     "Published windows cannot be withdrawn; enter your own, which stands first."};
    return work.done(name);
  }
  window.low = *low;
  window.high = *high;
  store_own_window(work.shop(), name, window, work.at());
  return work.done(name);
}

std::optional<steel::RockwellC> maybe_hrc(Form& form, const char* field) {
  const auto text = form.maybe_text(field);
  if (!text) return std::nullopt;
  const steel::RockwellC hardness{form.take(steel::parse_figure(*text, field), least_hrc)};
  if (!(hardness.points >= least_hrc && hardness.points <= most_hrc))
    form.add({field, "A hardness lies between 20 and 70 HRC.", "Check the figure."});
  return hardness;
}

Outcome<ActionResult> temper_table(Work& work, Form& form) {
  const std::string name = known_grade(work, form);
  steel::TemperTable table;
  table.source = form.text("source");
  const bool withdrawn = form.yes("withdraw");
  const std::string rows = form.maybe_text("rows").value_or("");
  table.hold = form.maybe_duration("hold").value_or(Duration(0));
  table.times = static_cast<std::size_t>(form.whole("times", 1, 6));
  table.hardened_at = form.maybe_temperature("hardened_at");
  table.medium = form.maybe_text("medium").value_or("");
  table.as_quenched = maybe_hrc(form, "as_quenched");
  if (!withdrawn) {
    table.rows = form.take(steel::parse_temper_rows(rows, "rows"));
    if (table.hold <= Duration(0))
      form.add({"hold", "How long each temper was is not said.", "Give it, such as 2 h."});
  }
  if (form.refused()) return form.problems();
  if (withdrawn) {
    if (!withdraw_own_temper_table(work.shop(), name, table.source, work.at()))
      return Problem{"source", "The shop entered no temper table of " + name + " from this source.",
                     "Give the source as it was entered."};
    return work.done(name);
  }
  store_own_temper_table(work.shop(), name, table, rows, work.at());
  return work.done(name);
}

}  // namespace

const Action add_grade{
    "add_grade",
    "Add a steel grade, marked as entered by the shop.",
    {{"name", "Grade", FieldKind::text, true, "115W8"},
     {"limits", "Limits in %", FieldKind::text, true, "C:1.10-1.20,Mn:0.2-0.4,W:1.8-2.1"},
     {"source", "Where the figures are from", FieldKind::text, true, "supplier's sheet of 2026"},
     {"harden_from", "Harden from", FieldKind::temperature, false, "780 C"},
     {"harden_to", "Harden to", FieldKind::temperature, false, "820 C"},
     {"temper_from", "Temper from", FieldKind::temperature, false, "150 C"},
     {"temper_to", "Temper to", FieldKind::temperature, false, "230 C"},
     {"normalize_from", "Normalize from", FieldKind::temperature, false, "860 C"},
     {"normalize_to", "Normalize to", FieldKind::temperature, false, "880 C"},
     {"anneal_from", "Anneal from", FieldKind::temperature, false, "740 C"},
     {"anneal_to", "Anneal to", FieldKind::temperature, false, "770 C"}},
    grade};

const Action add_window{
    "add_window",
    "Enter the window of one heat-treat step of a grade, marked as entered by the shop.",
    {{"grade", "Grade", FieldKind::text, true, "1084"},
     {"step", "Step", FieldKind::choice, true, "", "", {"normalize", "anneal", "harden", "temper"}},
     {"low", "From", FieldKind::temperature, false, "800 C"},
     {"high", "To", FieldKind::temperature, false, "815 C"},
     {"source", "Where it is from", FieldKind::text, false, "supplier's sheet of 2026"},
     {"hold_least", "Shortest hold", FieldKind::duration, false, "5 min"},
     {"hold_most", "Longest hold", FieldKind::duration, false, "12 min"},
     {"cooling", "Then", FieldKind::text, false, "fast oil; still air; kiln"},
     {"fall_per_h", "Cooling per hour at most", FieldKind::temperature_step, false, "28 C"},
     {"slow_to", "Slow cooling down to", FieldKind::temperature, false, "650 C"},
     {"withdraw", "Take the shop's window back", FieldKind::yes_no, false, "no", "no"}},
    window};

const Action add_temper_table{
    "add_temper_table",
    "Enter a temper table of a grade, marked as entered by the shop.",
    {{"grade", "Grade", FieldKind::text, true, "1084"},
     {"source", "Where it is from", FieldKind::text, true, "supplier's sheet of 2026"},
     {"rows", "Temper and HRC, coolest first", FieldKind::long_text, false,
      "150 C: 64, 177 C: 63, 204 C: 61"},
     {"hold", "Each temper", FieldKind::duration, false, "2 h"},
     {"times", "How many tempers", FieldKind::number, false, "1 or 2", "1"},
     {"hardened_at", "Hardened from", FieldKind::temperature, false, "815 C"},
     {"medium", "In", FieldKind::text, false, "oil"},
     {"as_quenched", "HRC off the quench", FieldKind::text, false, "65"},
     {"withdraw", "Take the table back", FieldKind::yes_no, false, "no", "no"}},
    temper_table};

}  // namespace tangmark::db
