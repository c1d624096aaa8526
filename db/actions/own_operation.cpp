// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/shop_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"

namespace tangmark::db {
namespace {

bool is_operation_name(const ShopFile& shop, const std::string& name) {
  Query query(shop, "SELECT id FROM own_operation WHERE name = ?");
  query.bind(name);
  return query.next();
}

Outcome<ActionResult> operation(Work& work, Form& form) {
  const auto name = form.text("name");
  const bool hot = form.yes("hot");
  const auto note = form.maybe_text("note");
  if (form.refused()) return form.problems();
  if (is_operation_name(work.shop(), name))
    return Problem{"name", "The shop has this operation already.", "Choose another name."};
  Row("own_operation").set("name", name).set("hot", hot).set("note", note).insert(work.shop());
  return work.done(name);
}

}  // namespace

const Action add_operation{"add_operation",
                           "Add an operation of this shop to the ones of the trade.",
                           {{"name", "Operation", FieldKind::text, true, "fuller"},
                            {"hot", "Done hot", FieldKind::yes_no, false, "no", "no"},
                            {"note", "Note", FieldKind::long_text}},
                           operation};

}  // namespace tangmark::db
