// SPDX-License-Identifier: MIT
#include "db/actions/commission_action_list.h"
#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/store/customer_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_new_customer(Work& work, Form& form) {
  commission::Customer customer{.name = form.text("name"),
                                .contact = form.maybe_text("contact"),
                                .address = form.maybe_text("address"),
                                .note = form.maybe_text("note"),
                                .country = form.maybe_text("country"),
                                .added_at = work.at(),
                                .erased_at = {}};
  if (form.refused()) return form.problems();
  if (!customers_named(work.shop(), *customer.name).empty())
    work.warn("There is another customer of this name; from now on the number tells them apart.");
  return work.done(std::to_string(insert_customer(work.shop(), customer).row()));
}

}  // namespace

const Action new_customer{"new_customer",
                          "Note a buyer.",
                          {{"name", "Name", FieldKind::text, true, "Ida Holm"},
                           {"contact", "Reached at", FieldKind::text, false, "ida@example.org"},
                           {"address", "Address", FieldKind::long_text, false, "street, town"},
                           {"country", "Country", FieldKind::text, false, "Norway"},
                           {"note", "Note", FieldKind::long_text}},
                          run_new_customer};

}  // namespace tangmark::db
