// SPDX-License-Identifier: MIT
#include "gui/desk/shop_desk.h"

#include <array>

#include "db/actions/action.h"
#include "db/history.h"
#include "db/listing/kiln_rows.h"
#include "db/listing/name_rows.h"
#include "db/store/label_stock_store.h"
#include "db/store/settings_store.h"
#include "db/store/usual_terms_store.h"
#include "gui/desk/money_sheets.h"
#include "gui/desk/seal_sheet.h"
#include "gui/desk/sheet.h"

namespace tangmark::desk {
namespace {

constexpr std::array weekdays{"Monday", "Tuesday",  "Wednesday", "Thursday",
                              "Friday", "Saturday", "Sunday"};

// A form for an action, offered only when the program has that action.
void offer(std::vector<Offer>& offers, const std::string& label, const std::string& action,
           Typed filled = {}) {
  if (db::find_action(action) != nullptr)
    offers.push_back({label, OpenForm{action, std::move(filled)}, "", ""});
}

// Which sheet of labels is printed on, and the usual ones to choose from.
Section labels_section(const Sight& sight) {
  Section section;
  section.title = "Sheet of labels";
  const auto chosen = db::label_stock(sight.shop);
  section.table.columns = {{"Sheet"}, {"Labels", Align::right}, {"Size"}, {""}};
  const auto add = [&](const stock::LabelStock& one, bool used) {
    TableRow row{{one.name, std::to_string(one.across) + " x " + std::to_string(one.down),
                  words(sight, one.width) + " x " + words(sight, one.height), used ? "in use" : ""},
                 used,
                 {}};
    if (!used) row.offers = {{"Use it", DoNow{"use_label_sheet", {{"name", one.name}}}, "", ""}};
    section.table.rows.push_back(std::move(row));
  };
  bool listed = false;
  for (const stock::LabelStock& one : stock::usual_label_stock()) {
    const bool used = chosen && chosen->name == one.name;
    listed = listed || used;
    add(used ? *chosen : one, used);
  }
  if (chosen && !listed) add(*chosen, true);
  if (!chosen)
    section.paragraphs = {
        "None is chosen: the usual one of your paper is taken. Print one sheet on plain paper "
        "first and hold it against the labels."};
  section.offers = {{"Measure your own", OpenForm{"use_label_sheet", {}}, "", ""}};
  return section;
}

Sheet settings_sheet(const Sight& sight) {
  Sheet sheet{
      "Settings", "Every figure is yours to change; where you set none, a usual one stands.", {}};
  Section section;
  section.table.columns = {{"Setting"}, {"Value"}};
  for (const db::SettingText& setting : db::settings_as_text(sight.settings)) {
    section.table.rows.push_back(
        {{std::string(setting.label), setting.value},
         false,
         {{"Change",
           OpenForm{"change_setting",
                    {{"name", std::string(setting.name)}, {"value", setting.value}}},
           "", ""}}});
  }
  const std::string terms(word_of(db::usual_refund_terms(sight.shop)));
  section.table.rows.push_back(
      {{"Refund, as it is worked out", terms},
       false,
       {{"Change",
         OpenForm{"usual_refund", {{"terms", terms}, {"words", sight.settings.refund_rule}}}, "",
         ""}}});
  sheet.sections = {section, labels_section(sight)};
  return sheet;
}

Sheet hours_sheet(const Sight& sight) {
  Sheet sheet{"Hours at the bench", "The planner books hands-on work only in these.", {}};
  Section week;
  week.table.columns = {{"Day"}, {"From", Align::right}, {"To", Align::right}};
  const auto clock = [](Duration span) {
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(span).count();
    std::string text = std::to_string(minutes / 60) + ":";
    if (minutes % 60 < 10) text += "0";
    return text + std::to_string(minutes % 60);
  };
  for (const db::BenchHoursRow& row : db::bench_hours(sight.shop)) {
    week.table.rows.push_back(
        {{weekdays[static_cast<std::size_t>(row.weekday - 1) % weekdays.size()], clock(row.from),
          clock(row.to)},
         false,
         {}});
  }
  if (week.table.rows.empty())
    week.paragraphs = {"No hours are set, so no firing that needs hands can be planned."};
  offer(week.offers, "Add hours", "add_bench_hours");
  offer(week.offers, "Take a day's hours out", "remove_bench_hours");
  Section off;
  off.title = "Days off";
  for (const CalendarDate date : db::days_off(sight.shop)) off.paragraphs.push_back(to_text(date));
  offer(off.offers, "Add a day off", "add_day_off");
  sheet.sections = {week, off};
  return sheet;
}

Sheet kilns_sheet(const Sight& sight) {
  Sheet sheet{"Kilns, ovens and baths", "Their real limits; the planner keeps to them.", {}};
  Section kilns;
  kilns.table.columns = {{"Name"},
                         {"Range"},
                         {"Blades", Align::right},
                         {"Longest", Align::right},
                         {"Heats per h", Align::right},
                         {"Cools, tau", Align::right},
                         {"Circuit"}};
  for (const db::KilnRow& kiln : db::kiln_rows(sight.shop)) {
    kilns.table.rows.push_back(
        {{kiln.name, words(sight, kiln.low) + " to " + words(sight, kiln.high),
          std::to_string(kiln.slots), words(sight, kiln.usable_length),
          std::to_string(static_cast<int>(kiln.heat_per_hour.kelvins())) + " K",
          to_text(kiln.time_constant), kiln.circuit},
         false,
         {}});
  }
  offer(kilns.offers, "Add a kiln or oven", "add_kiln");
  offer(kilns.offers, "Change a kiln", "change_kiln");
  offer(kilns.offers, "Fit a kiln to its records", "fit_kiln");
  offer(kilns.offers, "Add a recipe", "add_recipe");
  Section baths;
  baths.title = "Baths";
  for (const db::NamedRow& bath : db::bath_names(sight.shop))
    baths.facts.push_back({bath.name, bath.words, "", ""});
  offer(baths.offers, "Add a bath", "add_bath");
  offer(baths.offers, "Check a bath", "check_bath");
  sheet.sections = {kilns, baths};
  return sheet;
}

Sheet names_sheet(const std::string& title, const std::string& under,
                  const std::vector<db::NamedRow>& names, std::vector<Offer> offers) {
  Sheet sheet{title, under, {}};
  Section section;
  for (const db::NamedRow& row : names) section.facts.push_back({row.name, row.words, "", ""});
  if (names.empty()) section.paragraphs = {"There is none yet."};
  section.offers = std::move(offers);
  sheet.sections = {section};
  return sheet;
}

Sheet models_sheet(const Sight& sight) {
  std::vector<Offer> offers;
  offer(offers, "Add a model", "add_model");
  offer(offers, "Add a step to a model", "add_model_step");
  offer(offers, "Add what it uses", "add_model_use");
  offer(offers, "Put a steel or option on the price list", "add_price_extra");
  offer(offers, "Add an operation of this shop", "add_operation");
  return names_sheet("Models",
                     "A knife the shop makes again: its usual route, hours, belts and blank.",
                     db::model_names(sight.shop), std::move(offers));
}

Sheet customers_sheet(const Sight& sight) {
  std::vector<Offer> offers;
  offer(offers, "New customer", "new_customer");
  offer(offers, "Erase a person's data", "erase_customer");
  return names_sheet("Customers", "Kept short, and erased when they ask.",
                     db::customer_names(sight.shop), std::move(offers));
}

Sheet file_sheet(const Sight& sight) {
  Sheet sheet{"The shop file", sight.shop.path().string(), {}};
  Section safe;
  safe.paragraphs = {
      "One shop, one file. Copy it to a stick when no window is open, or make a backup here."};
  safe.offers = {{"Back up now", OpenForm{"desk.backup", {}}, "", ""},
                 {"Check the file", PlaceWork{"check", {}}, "", ""},
                 {"Export everything", OpenForm{"desk.export", {}}, "", ""}};
  Section latest;
  latest.title = "Latest changes";
  latest.table.columns = {{"When"}, {"What was done"}, {"To"}, {"Why"}};
  constexpr int seen = 20;
  for (const db::HistoryRow& row : db::latest_history(sight.shop, seen)) {
    latest.table.rows.push_back(
        {{when(sight, row.at), row.action, row.subject, row.reason}, false, {}});
  }
  sheet.sections = {safe, latest};
  return sheet;
}

}  // namespace

PlaceList shop_list(const Sight&) {
  return {"Shop", "Find a chapter",
          List({{"settings", "", "Settings", "Name, units, money, rules of the bench", ""},
                {"hours", "", "Hours at the bench", "When somebody is here; days off", ""},
                {"kilns", "", "Kilns, ovens and baths", "Their limits, circuits and checks", ""},
                {"models", "", "Models", "Knives made again", "pattern route"},
                {"promises", "", "Promises", "The board: kept, at risk, by how much",
                 "delay letter late"},
                {"learning", "", "What the record says", "Hours, belts, gas, losses to take over",
                 "learn estimate"},
                {"buying", "", "To buy", "Steel, belts and gas for the queue", "stock recall"},
                {"money", "", "Money", "The year, rates, the rack by age", "tax ledger accountant"},
                {"customers", "", "Customers", "People", "buyers"},
                {"seal", "", "Seal", "The key that signs certificates", "sign passphrase"},
                {"file", "", "The shop file", "Backup, check, export, history", ""}})};
}

PlaceView shop_view(const Sight& sight, const std::string& id) {
  PlaceView view;
  view.next = {sight.settings.shop_name,
               "One file keeps this shop. A backup on a stick keeps the file.",
               {{"Back up now", OpenForm{"desk.backup", {}}, "Enter", ""},
                {"Check the file", PlaceWork{"check", {}}, "Ctrl Enter", ""}}};
  if (id == "hours") {
    view.sheet = hours_sheet(sight);
  } else if (id == "kilns") {
    view.sheet = kilns_sheet(sight);
  } else if (id == "models") {
    view.sheet = models_sheet(sight);
  } else if (id == "promises") {
    view.sheet = promises_sheet(sight);
  } else if (id == "learning") {
    view.sheet = learning_sheet(sight);
  } else if (id == "buying") {
    view.sheet = buying_sheet(sight);
  } else if (id == "money") {
    view.sheet = money_sheet(sight);
  } else if (id == "customers") {
    view.sheet = customers_sheet(sight);
  } else if (id == "seal") {
    view.sheet = seal_sheet(sight);
  } else if (id == "file") {
    view.sheet = file_sheet(sight);
  } else {
    view.sheet = settings_sheet(sight);
  }
  return view;
}

}  // namespace tangmark::desk
