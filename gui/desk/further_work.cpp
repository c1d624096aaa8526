// SPDX-License-Identifier: MIT
#include "gui/desk/further_work.h"

#include "db/listing/waiting_rows.h"

namespace tangmark::desk {
namespace {

Offer open_form(const char* label, const char* action, Typed filled) {
  return {label, OpenForm{action, std::move(filled)}, "", ""};
}

bool is_open(const db::CommissionRow& c) {
  return c.state != "delivered" && c.state != "declined" && c.state != "cancelled";
}
bool is_order(const db::CommissionRow& c) {
  return c.state == "accepted" || c.state == "in work" || c.state == "ready";
}

// The item of a commission that has only one; else the maker chooses.
Typed item_filled(const Sight& sight, const db::CommissionRow& c) {
  const auto items = db::item_rows(sight.shop, c.number);
  if (items.size() != 1) return {};
  return {{"item", std::to_string(items.front().id)}};
}

Section holds_section(const Sight& sight, std::int64_t commission) {
  Section section;
  section.title = "Waits for";
  section.table.columns = {{"Item"}, {"What"}, {"Since"}, {"Expected"}};
  for (const db::HoldRow& hold : db::open_holds(sight.shop, commission)) {
    section.table.rows.push_back(
        {{hold.item, hold.what, when(sight, hold.since), hold.until ? day(sight, *hold.until) : ""},
         false,
         {open_form("It is over", "release_hold", {{"hold", std::to_string(hold.id)}})}});
  }
  return section;
}

Section outside_section(const Sight& sight, std::int64_t commission) {
  Section section;
  section.title = "Outside work";
  section.table.columns = {{"What"}, {"Who"}, {"Sent"}, {"Due back"}, {"Back"}};
  for (const db::OutsideRow& work : db::outside_rows(sight.shop, commission)) {
    TableRow row;
    row.cells = {work.operation, work.who, when(sight, work.sent_at),
                 work.due_back ? day(sight, *work.due_back) : "",
                 work.back_at ? when(sight, *work.back_at) : "not yet"};
    if (!work.back_at) {
      row.offers = {open_form("It is back", "back_from_outside",
                              {{"outside_work", std::to_string(work.id)}})};
    }
    section.table.rows.push_back(std::move(row));
  }
  return section;
}

Section reserved_section(const Sight& sight, std::int64_t commission) {
  Section section;
  section.title = "Reserved for it";
  section.table.columns = {{"Item"}, {"Material"}};
  for (const db::ReservationRow& row : db::open_reservations(sight.shop, commission)) {
    section.table.rows.push_back(
        {{row.item, row.material},
         false,
         {open_form("Free it", "release_reservation", {{"reservation", std::to_string(row.id)}})}});
  }
  return section;
}

}  // namespace

std::vector<Section> waits_of_commission(const Sight& sight, const db::CommissionRow& c) {
  return {holds_section(sight, c.number), outside_section(sight, c.number),
          reserved_section(sight, c.number)};
}

Section further_at_commission(const Sight& sight, const db::CommissionRow& c) {
  const Typed here{{"commission", std::to_string(c.number)}};
  const Typed item = item_filled(sight, c);
  Section section;
  section.title = "Also to note";
  std::vector<Offer>& offers = section.offers;
  if (is_open(c)) {
    offers.push_back(open_form("What was said", "note_contact", here));
    offers.push_back(open_form("A change of an item", "change_item", item));
    offers.push_back(open_form("An option from the price list", "choose_option", item));
    offers.push_back(open_form("A stock knife goes into it", "sell_stock_knife", here));
    offers.push_back(open_form("They confirm the specification", "confirm_specification", here));
  }
  if (is_open(c) && !is_order(c)) {
    offers.push_back(open_form("It comes to nothing", "decline_quote", here));
  }
  if (is_order(c)) {
    offers.push_back(open_form("It waits for something", "hold", item));
    offers.push_back(open_form("A part goes out of the shop", "send_outside", item));
    offers.push_back(open_form("Reserve material", "reserve", item));
    offers.push_back(open_form("Letter of delay", "tell_delay", here));
    offers.push_back(open_form("Their answer to a delay", "record_consent", here));
    if (c.state != "ready") offers.push_back(open_form("All of it is ready", "make_ready", here));
    offers.push_back(open_form("Cancel it", "cancel_commission", here));
  }
  if (is_open(c))
    offers.push_back(
        {"What if a line took more",
         OpenForm{"desk.ask", {{"question", "40"}, {"commission", std::to_string(c.number)}}}, "",
         ""});
  if (c.quote_version)
    offers.push_back(
        {"Compare the quote's versions",
         OpenForm{"desk.ask", {{"question", "33"}, {"commission", std::to_string(c.number)}}}, "",
         ""});
  if (!c.paid.is_zero()) {
    offers.push_back(open_form("Give money back", "refund", here));
    offers.push_back(open_form("A payment was wrong", "correct_payment", {}));
  }
  return section;
}

Section further_at_blade(const db::BladeRow& blade) {
  const Typed here{{"blade", std::to_string(blade.number)}};
  Section section;
  section.title = "Also to note";
  std::vector<Offer>& offers = section.offers;
  if (blade.delivered) {
    offers.push_back(open_form("It came back", "note_aftercare", here));
    return section;
  }
  if (blade.scrapped) return section;
  offers.push_back(open_form("Add a step to its route", "add_route_step", here));
  offers.push_back(open_form("Used up for it", "use_consumable", here));
  offers.push_back(open_form("It goes out of the shop", "send_outside", here));
  offers.push_back(open_form("The handle is fitted", "fit_handle", here));
  if (!blade.finished) offers.push_back(open_form("All work is done", "finish_blade", here));
  return section;
}

std::vector<Offer> further_at_lot(const db::LotRow& lot) {
  const Typed here{{"lot", std::to_string(lot.number)}};
  std::vector<Offer> offers;
  if (lot.bought) offers.push_back(open_form("Used up", "use_consumable", here));
  if (lot.kind == "steel") offers.push_back(open_form("Cut for the queue", "take_cuts", here));
  if (lot.kind == "handle") offers.push_back(open_form("Reserve", "reserve", here));
  offers.push_back(open_form("Attach a photo", "attach_photo", here));
  return offers;
}

std::vector<Offer> further_at_piece(const db::PieceRow& piece) {
  std::vector<Offer> offers;
  if (piece.state == "on hand") {
    offers.push_back(open_form("Reserve it", "reserve", {{"piece", piece.tag}}));
  }
  if (piece.state == "blank" && piece.blade.empty()) {
    offers.push_back(open_form("Begin a blade of it", "assign_blade", {{"piece", piece.tag}}));
  }
  return offers;
}

std::vector<Offer> further_at_billet(const db::BilletRow& billet) {
  std::vector<Offer> offers;
  if (!billet.finished && !billet.scrapped) {
    offers.push_back(
        open_form("It is finished", "finish_billet", {{"billet", std::to_string(billet.number)}}));
  }
  return offers;
}

}  // namespace tangmark::desk
