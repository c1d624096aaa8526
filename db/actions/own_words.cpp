// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/shop_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"
#include "domain/steel/grade.h"

namespace tangmark::db {
namespace {

bool is_taken(const ShopFile& shop, const char* table, const std::string& name) {
  Query query(shop, std::string("SELECT id FROM ") + table + " WHERE name = ?");
  query.bind(name);
  return query.next();
}

Outcome<ActionResult> operation(Work& work, Form& form) {
  const auto name = form.text("name");
  const bool hot = form.yes("hot");
  const auto note = form.maybe_text("note");
  if (form.refused()) return form.problems();
  if (is_taken(work.shop(), "own_operation", name))
    return Problem{"name", "The shop has this operation already.", "Choose another name."};
  Row("own_operation").set("name", name).set("hot", hot).set("note", note).insert(work.shop());
  return work.done(name);
}

Outcome<ActionResult> grade(Work& work, Form& form) {
  const auto name = form.text("name");
  const auto limits = form.text("limits");
  const auto harden_low = form.maybe_temperature("harden_from");
  const auto harden_high = form.maybe_temperature("harden_to");
  const auto temper_low = form.maybe_temperature("temper_from");
  const auto temper_high = form.maybe_temperature("temper_to");
  const auto source = form.text("source");
  if (harden_low.has_value() != harden_high.has_value() || (harden_low && *harden_high < *harden_low))
    form.add({"harden_to", "The hardening window has no lower and upper end.", "Give both, the lower one first."});
  if (temper_low.has_value() != temper_high.has_value() || (temper_low && *temper_high < *temper_low))
    form.add({"temper_to", "The tempering window has no lower and upper end.", "Give both, the lower one first."});
  if (const auto read = steel::parse_limits(limits, "limits"); !read && form.has("limits"))
    for (const Problem& problem : read.problems()) form.add(problem);
  if (form.refused()) return form.problems();
  if (is_taken(work.shop(), "own_grade", name))
    return Problem{"name", "The shop has this grade already.", "Choose another name."};
  Row("own_grade").set("name", name).set("limits", limits).set("harden_lo_k1800", harden_low)
      .set("harden_hi_k1800", harden_high).set("temper_lo_k1800", temper_low)
      .set("temper_hi_k1800", temper_high).set("source", source).insert(work.shop());
  return work.done(name);
}

}  // namespace

const Action add_operation{"add_operation", "Add an operation of this shop to the ones of the trade.",
                           {{"name", "Operation", FieldKind::text, true, "fuller"},
                            {"hot", "Done hot", FieldKind::yes_no, false, "no", "no"},
                            {"note", "Note", FieldKind::long_text}},
                           operation};

const Action add_grade{
    "add_grade", "Add a steel grade, marked as entered by the shop.",
    {{"name", "Grade", FieldKind::text, true, "115W8"},
     {"limits", "Limits in %", FieldKind::text, true, "C:1.10-1.20,Mn:0.2-0.4,W:1.8-2.1"},
     {"harden_from", "Harden from", FieldKind::temperature, false, "780 C"},
     {"harden_to", "Harden to", FieldKind::temperature, false, "820 C"},
     {"temper_from", "Temper from", FieldKind::temperature, false, "150 C"},
     {"temper_to", "Temper to", FieldKind::temperature, false, "230 C"},
     {"source", "Where the figures are from", FieldKind::text, true, "supplier's sheet of 2026"}},
    grade};

}  // namespace tangmark::db
