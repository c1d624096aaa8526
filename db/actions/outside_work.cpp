// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/outside_work_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<KeptOutsideWork> outside_work_named(const ShopFile& shop, std::string_view text,
                                            std::string_view field) {
  const auto number = number_named(text, field);
  if (!number) return number.problem();
  if (auto work = load_outside_work(shop, OutsideWorkId{*number})) return std::move(*work);
  return Problem{std::string(field), "There is no outside work " + std::string(text) + ".",
                 "Give the number that send_outside gave."};
}

Outcome<ActionResult> send(Work& work, Form& form) {
  const auto item = asked(work, form, "item", item_named);
  const auto blade = asked(work, form, "blade", blade_id_named);
  OutsideWork sent{.item = {},
                   .blade = blade,
                   .operation = form.text("operation"),
                   .who = form.text("who"),
                   .sent_at = work.at(),
                   .due_back = form.maybe_date("due_back"),
                   .back_at = {},
                   .their_words = {},
                   .cost = form.maybe_money("cost")};
  if (item) sent.item = item->id;
  if (!form.has("item") && !form.has("blade"))
    form.add({"item", "Nobody said what goes out.", "Give an item or a blade."});
  if (sent.due_back && form.has("due_back") &&
      *sent.due_back < work.settings().zone.date_of(work.at()))
    form.add({"due_back", "It would be back before it went.", "Give a later day."});
  if (form.refused()) return form.problems();
  return work.done(std::to_string(insert_outside_work(work.shop(), sent).row()));
}

Outcome<ActionResult> back(Work& work, Form& form) {
  auto sent = asked(work, form, "outside_work", outside_work_named);
  const auto their_words = form.maybe_text("their_words");
  const auto cost = form.maybe_money("cost");
  if (sent && sent->back_at) form.add({"outside_work", "This is back already.", "Choose another."});
  if (sent && work.at() < sent->sent_at)
    form.add({"at", "It had not gone out by then.", "Give a later time."});
  if (form.refused()) return form.problems();
  sent->back_at = work.at();
  if (their_words) sent->their_words = their_words;
  if (cost) sent->cost = cost;
  store_outside_work(work.shop(), *sent);
  return work.done(std::to_string(sent->id.row()));
}

}  // namespace

const Action send_outside{
    "send_outside",
    "Note that a part goes out of the shop to be worked on; the certificate will name it.",
    {{"item", "Item", FieldKind::item, false, "7"},
     {"blade", "Blade", FieldKind::blade, false, "41"},
     {"operation", "To be done", FieldKind::text, true, "sheath"},
     {"who", "By whom", FieldKind::text, true, "the saddler in town"},
     {"due_back", "Due back", FieldKind::date, false, "2026-12-10"},
     {"cost", "Cost", FieldKind::money, false, "80.00"}},
    send};

const Action back_from_outside{"back_from_outside",
                               "Note that outside work came back.",
                               {{"outside_work", "Outside work", FieldKind::number, true, "3"},
                                {"their_words", "Words on their slip", FieldKind::long_text, false,
                                 "hardened 1060 C, tempered 2 x 180 C"},
                                {"cost", "Cost", FieldKind::money, false, "80.00"}},
                               back};

}  // namespace tangmark::db
