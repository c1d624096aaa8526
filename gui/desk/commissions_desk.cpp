// SPDX-License-Identifier: MIT
#include "gui/desk/commissions_desk.h"
#include "gui/desk/further_work.h"

#include <algorithm>

#include "db/store/commission_store.h"
#include "db/store/money_store.h"

namespace tangmark::desk {
namespace {

std::string title_of(const db::CommissionRow& commission) {
  std::string text = commission.items.empty() ? "nothing chosen yet" : commission.items;
  return text;
}

std::string buyer_of(const db::CommissionRow& commission) {
  return commission.buyer.empty() ? "a buyer whose data was erased" : commission.buyer;
}

std::string promise_words(const Sight& sight, const db::CommissionRow& c) {
  if (!c.promised) return {};
  const bool over = c.state == "delivered" || c.state == "cancelled" || c.state == "declined";
  if (over) return "promised " + day(sight, *c.promised);
  if (date::sys_days{*c.promised} < date::sys_days{sight.today()}) {
    return "late: promised " + day(sight, *c.promised) + ", " + days_away(sight, *c.promised);
  }
  return "promised " + day(sight, *c.promised);
}

std::string under_words(const Sight& sight, const db::CommissionRow& c) {
  std::string text = sentence_case(c.state);
  const std::string promise = promise_words(sight, c);
  if (!promise.empty()) text += ", " + promise;
  if (c.state == "accepted" && c.deposit_asked && c.deposits < *c.deposit_asked) {
    text += ", deposit awaited";
  }
  return text;
}

// Every paper issued; none is ever edited, and each prints again as it was.
Table papers_table(const Sight& sight, const db::CommissionRow& c) {
  Table table;
  const auto commission = db::find_commission(sight.shop, c.number);
  if (!commission) return table;
  for (const auto& paper : db::invoices_of(sight.shop, commission->id)) {
    const std::string number = std::to_string(paper.number);
    const bool credit = paper.total.minor() < 0;
    const std::string kind = credit ? "credit note" : std::string(word_of(paper.kind));
    table.rows.push_back({{sentence_case(kind) + " " + number, when(sight, paper.issued_at),
                           to_text(credit ? -paper.total : paper.total)},
                          false,
                          {{"See it", ShowDocument{"paper", number}, "", ""}}});
  }
  if (!table.rows.empty()) table.columns = {{"Paper issued"}, {"On"}, {"Sum", Align::right}};
  return table;
}

Section money_section(const Sight& sight, const db::CommissionRow& c) {
  Section section;
  section.title = "Money";
  if (c.total) {
    section.facts.push_back({"Quoted", amount_text(*c.total), c.currency.code(),
                             c.quote_version ? "version " + std::to_string(*c.quote_version) : ""});
    section.facts.push_back({"Paid", amount_text(c.paid), c.currency.code(), ""});
    section.facts.push_back({"Still owed", amount_text(balance_of(c)), c.currency.code(), ""});
  }
  for (const db::PaymentRow& payment : db::payment_rows(sight.shop, c.number)) {
    section.facts.push_back(
        {sentence_case(payment.kind) + " " + std::to_string(payment.number),
         amount_text(payment.amount), payment.amount.currency().code(),
         when(sight, payment.at) + (payment.method.empty() ? "" : ", " + payment.method)});
  }
  section.paragraphs.push_back(held_words(sight));
  section.table = papers_table(sight, c);
  const std::string number = std::to_string(c.number);
  if (!c.deposits.is_zero())
    section.offers.push_back({"Deposit receipt", ShowDocument{"receipt", number}, "", ""});
  if (c.total) {
    section.offers.push_back(
        {"Issue a paper", OpenForm{"issue_invoice", {{"commission", number}}}, "", ""});
  }
  return section;
}

Section items_section(const Sight& sight, const db::CommissionRow& c) {
  const std::string number = std::to_string(c.number);
  Section section;
  section.title = "Items";
  section.table.columns = {{"Item"}, {"Steel"}, {"Handle"}, {"Sheath"}, {"Blade"}};
  for (const db::ItemRow& item : db::item_rows(sight.shop, c.number)) {
    TableRow row;
    row.cells = {item.title, item.grade.empty() ? item.construction : item.grade, item.handle,
                 item.sheath, item.cancelled ? "cancelled" : item.blade};
    if (!item.blade.empty()) {
      row.offers = {{"To the blade",
                     GoTo{Place::blades, item.blade.substr(0, item.blade.find(','))}, "", ""}};
    } else if (!item.cancelled) {
      row.offers = {{"Begin its blade",
                     OpenForm{"assign_blade", {{"item", std::to_string(item.id)}}}, "", ""}};
    }
    section.table.rows.push_back(std::move(row));
  }
  section.offers = {{"Add an item", OpenForm{"add_item", {{"commission", number}}}, "", ""}};
  return section;
}

Section quotes_section(const Sight& sight, const db::CommissionRow& c) {
  Section section;
  section.title = "Quotes";
  section.table.columns = {
      {"Version"}, {"Made"}, {"Until"}, {"Buyer pays", Align::right}, {"State"}};
  for (const db::QuoteRow& quote : db::quote_rows(sight.shop, c.number)) {
    std::string state = "not sent";
    if (quote.sent_at) state = "sent " + when(sight, *quote.sent_at);
    if (!quote.answer.empty()) state = quote.answer;
    section.table.rows.push_back({{std::to_string(quote.version), when(sight, quote.made_at),
                                   day(sight, quote.valid_until), to_text(quote.total), state},
                                  false,
                                  {}});
  }
  if (c.quote_version) {
    section.offers = {
        {"See the quote as printed", ShowDocument{"quote", std::to_string(c.number)}, "", ""}};
  }
  return section;
}

// A letter is long; the table shows how it begins.
std::string beginning_of(const std::string& words) {
  constexpr std::size_t most = 60;
  std::string line = words.substr(0, words.find('\n'));
  const bool cut = line.size() < words.size() || line.size() > most;
  if (line.size() > most) line.resize(std::min(line.size(), line.find(' ', most)));
  return line + (cut ? " \xE2\x80\xA6" : "");
}

Section promises_section(const Sight& sight, const db::CommissionRow& c) {
  const std::string number = std::to_string(c.number);
  Section section;
  section.title = "Promises";
  section.table.columns = {{"Day promised"}, {"Said on"}, {"To whom"}, {"Words"}};
  for (const db::PromiseRow& promise : db::promise_rows(sight.shop, c.number)) {
    section.table.rows.push_back({{day(sight, promise.day), when(sight, promise.made_at),
                                   promise.told, beginning_of(promise.words)},
                                  false,
                                  {}});
  }
  if (c.state != "delivered" && c.state != "cancelled" && c.state != "declined") {
    section.offers = {{"Promise a day", OpenForm{"promise_date", {{"commission", number}}}, "", ""},
                      {"Tell of a delay", OpenForm{"tell_delay", {{"commission", number}}}, "", ""},
                      {"When can it be ready?", PlaceWork{"promise odds", number}, "", ""},
                      {"Letter as printed", ShowDocument{"letter", number}, "", ""}};
  }
  return section;
}

Section contacts_section(const Sight& sight, const db::CommissionRow& c) {
  Section section;
  section.title = "Said between you";
  section.table.columns = {{"When"}, {"How"}, {"Words"}};
  for (const db::ContactRow& contact : db::contact_rows(sight.shop, c.number)) {
    section.table.rows.push_back(
        {{when(sight, contact.at), contact.channel, contact.words}, false, {}});
  }
  return section;
}

NextLine quote_line(const Sight& sight, const db::CommissionRow& c, const std::string& number) {
  if (!c.quote_version) {
    if (c.items.empty()) {
      return {"Next: what does " + buyer_of(c) + " want made?",
              "Commission " + number + " has no item yet.",
              {{"Add an item", OpenForm{"add_item", {{"commission", number}}}, "Enter", ""}}};
    }
    return {"Next: quote " + title_of(c) + " for " + buyer_of(c),
            "Enquiry of " + when(sight, c.opened_at) + ". Nothing has been quoted.",
            {{"To the quote desk", PlaceWork{"quote desk", number}, "Enter", ""},
             {"Add an item", OpenForm{"add_item", {{"commission", number}}}, "Ctrl Enter", ""}}};
  }
  if (!c.quote_sent_at) {
    return {"Next: send quote " + number + ", version " + std::to_string(*c.quote_version) +
                ", to " + buyer_of(c),
            title_of(c) + ". Not sent. Open until " +
                (c.quote_until ? day(sight, *c.quote_until) : "further notice") + ".",
            {{"Mark as sent", DoNow{"send_quote", {{"commission", number}}}, "Enter", ""},
             {"To the quote desk", PlaceWork{"quote desk", number}, "Ctrl Enter", ""}}};
  }
  return {"Waiting for " + buyer_of(c) + " to answer quote " + number,
          "Sent " + when(sight, *c.quote_sent_at) + ". Open until " +
              (c.quote_until ? day(sight, *c.quote_until) : "further notice") + ".",
          {{"They accept", OpenForm{"accept_quote", {{"commission", number}}}, "Enter", ""},
           {"To the quote desk", PlaceWork{"quote desk", number}, "Ctrl Enter", ""}}};
}

}  // namespace

Money balance_of(const db::CommissionRow& c) {
  if (!c.total) return Money(0, c.currency);
  return *c.total - c.paid;
}

std::string held_words(const Sight& sight) {
  const std::vector<Money> held = db::money_held(sight.shop);
  if (held.empty()) return "No money is held for unfinished work.";
  std::vector<std::string> amounts;
  for (const Money& money : held) amounts.push_back(to_text(money));
  return "Held for unfinished work, all commissions: " + listed(amounts) + ".";
}

NextLine next_for(const Sight& sight, const db::CommissionRow& c) {
  const std::string number = std::to_string(c.number);
  if (c.state == "enquiry" || c.state == "quoted") return quote_line(sight, c, number);
  const bool deposit_missing = c.deposit_asked && c.deposits < *c.deposit_asked;
  if (c.state == "accepted" && deposit_missing) {
    const Money open = *c.deposit_asked - c.deposits;
    return {
        "Next: the deposit of " + buyer_of(c) + ", " + to_text(open),
        "Accepted. No material is cut before it is here. " + held_words(sight),
        {{"It is here",
          OpenForm{"take_deposit", {{"commission", number}, {"amount", to_text(open)}}}, "Enter",
          ""},
         {"Tell of a delay", OpenForm{"tell_delay", {{"commission", number}}}, "Ctrl Enter", ""}}};
  }
  if (c.state == "ready" && balance_of(c).minor() > 0) {
    return {
        "Next: the balance of " + buyer_of(c) + ", " + to_text(balance_of(c)),
        "Ready. It leaves when it is paid.",
        {{"It is here",
          OpenForm{"take_balance", {{"commission", number}, {"amount", to_text(balance_of(c))}}},
          "Enter", ""},
         {"Balance invoice", ShowDocument{"invoice", number}, "Ctrl Enter", ""}}};
  }
  if (c.state == "ready") {
    return {"Next: deliver commission " + number + " to " + buyer_of(c),
            "Ready and paid.",
            {{"It is delivered", OpenForm{"deliver", {{"commission", number}}}, "Enter", ""}}};
  }
  if (c.state == "accepted" || c.state == "in work") {
    const std::string promise = promise_words(sight, c);
    return {"In work for " + buyer_of(c) + ": " + title_of(c),
            promise.empty() ? "No day is promised. " + held_words(sight)
                            : sentence_case(promise) + ". " + held_words(sight),
            {{"See the blades", GoTo{Place::blades, ""}, "Enter", ""},
             {"When can it be ready?", PlaceWork{"promise odds", number}, "Ctrl Enter", ""}}};
  }
  return {"Commission " + number + " is " + c.state,
          title_of(c) + ", " + buyer_of(c) + ". " + held_words(sight),
          {{"New enquiry", OpenForm{"new_commission", {}}, "Enter", ""}}};
}

PlaceList commissions_list(const Sight& sight) {
  std::vector<Row> rows;
  for (const db::CommissionRow& c : db::commission_rows(sight.shop)) {
    Row row;
    row.id = std::to_string(c.number);
    row.number = row.id;
    row.line = buyer_of(c) + ": " + title_of(c);
    row.under = under_words(sight, c);
    rows.push_back(std::move(row));
  }
  return {"Commissions", "Find a buyer, a knife or a state", List(std::move(rows))};
}

PlaceView commission_view(const Sight& sight, const std::string& number) {
  const std::vector<db::CommissionRow> all = db::commission_rows(sight.shop);
  const auto found = std::find_if(all.begin(), all.end(), [&](const db::CommissionRow& c) {
    return std::to_string(c.number) == number;
  });
  PlaceView view;
  if (found == all.end()) {
    view.next = {"No commission yet",
                 "An enquiry takes half a minute and is not an order. " + held_words(sight),
                 {{"New enquiry", OpenForm{"new_commission", {}}, "Enter", ""},
                  {"New customer", OpenForm{"new_customer", {}}, "Ctrl Enter", ""}}};
    return view;
  }
  view.next = next_for(sight, *found);
  view.sheet.title = "Commission " + number + ", " + buyer_of(*found);
  view.sheet.under = sentence_case(found->state) + ", opened " + when(sight, found->opened_at);
  Section more;
  more.offers = {{"New enquiry", OpenForm{"new_commission", {}}, "", ""},
                 {"New customer", OpenForm{"new_customer", {}}, "", ""},
                 {"Quote desk", PlaceWork{"quote desk", number}, "",
                  found->items.empty() ? "It has no item yet." : ""}};
  std::vector<Section>& sections = view.sheet.sections;
  sections = {items_section(sight, *found), money_section(sight, *found),
              promises_section(sight, *found), quotes_section(sight, *found)};
  for (Section& waits : waits_of_commission(sight, *found)) sections.push_back(std::move(waits));
  sections.push_back(contacts_section(sight, *found));
  sections.push_back(further_at_commission(sight, *found));
  sections.push_back(std::move(more));
  return view;
}

}  // namespace tangmark::desk
