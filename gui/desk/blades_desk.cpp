// SPDX-License-Identifier: MIT
#include "gui/desk/blades_desk.h"

#include "db/store/trial_store.h"
#include "gui/desk/blade_sheet.h"
#include "gui/desk/trial_sheet.h"

namespace tangmark::desk {
namespace {

bool waits_for_temper(const db::BladeRow& blade) {
  return blade.quenched_at && blade.tempers_since_quench == 0 && !blade.scrapped;
}

NextLine nothing_here() {
  return {"No blade yet",
          "A blade begins with an item of a commission, or as a stock knife.",
          {{"Begin a blade", OpenForm{"assign_blade", {}}, "Enter", ""}}};
}

NextLine next_for(const Sight& sight, const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  NextLine next;
  next.why = blade.title + ". " + sentence_case(standing(sight, blade)) + ".";
  if (blade.scrapped || blade.delivered) {
    next.sentence = "Blade " + number + (blade.scrapped ? " was scrapped" : " is with its buyer");
    next.offers = {{"See its certificate", GoTo{Place::certificates, number}, "Enter", ""}};
    return next;
  }
  if (blade.open_finding) {
    next.sentence = "Next: decide what was found on " + number;
    next.offers = {{"Settle the finding",
                    OpenForm{"settle_finding", open_finding_filled(sight, blade.number)}, "Enter",
                    ""}};
  } else if (blade.next_operation.empty() && !blade.finished) {
    next.sentence = "Next: is all work on " + number + " done?";
    next.offers = {{"All is done", DoNow{"finish_blade", {{"blade", number}}}, "Enter", ""}};
  } else if (blade.next_operation.empty()) {
    next.sentence = "Next: the certificate of " + number;
    next.offers = {{"To its certificate", GoTo{Place::certificates, number}, "Enter", ""}};
  } else {
    std::string step = blade.next_operation;
    step += " " + number;
    if (blade.next_temperature) step += " at " + words(sight, *blade.next_temperature);
    next.sentence = "Next: " + step;
    if (blade.next_operation == "temper") {
      next.offers = {temper_offer(sight, blade)};
    } else {
      next.offers = {{"Log " + blade.next_operation,
                      OpenForm{log_action_for(blade.next_operation), next_step_filled(blade)},
                      "Enter", ""}};
    }
  }
  next.offers.push_back(
      {"Log something else", OpenForm{"log_step", {{"blade", number}}}, "Ctrl Enter", ""});
  return next;
}

}  // namespace

std::string log_action_for(const std::string& operation) {
  if (operation == "harden") return "log_quench";
  if (operation == "temper") return "log_temper";
  if (operation == "handle") return "fit_handle";
  return "log_step";
}

Typed next_step_filled(const db::BladeRow& blade) {
  Typed filled{{"blade", std::to_string(blade.number)}};
  const std::string action = log_action_for(blade.next_operation);
  if (action == "log_step") filled["operation"] = blade.next_operation;
  if (action == "fit_handle") return filled;
  if (blade.next_temperature) {
    filled["set"] = to_text(*blade.next_temperature, TemperatureUnit::celsius);
  }
  if (blade.next_soak) filled["hold"] = to_text(*blade.next_soak);
  return filled;
}

bool in_the_oven(const db::BladeRow& blade) {
  return blade.held_by == "hold warm" && blade.held_at && blade.quenched_at &&
         *blade.held_at >= *blade.quenched_at && blade.last_operation == blade.held_by;
}

std::optional<Instant> out_of_the_oven(const db::BladeRow& blade) {
  if (!in_the_oven(blade) || !blade.next_soak) return std::nullopt;
  return *blade.held_at + *blade.next_soak;
}

Offer temper_offer(const Sight& sight, const db::BladeRow& blade) {
  const std::string number = std::to_string(blade.number);
  Typed filled = next_step_filled(blade);
  if (in_the_oven(blade)) {
    filled["started"] = to_text(*blade.held_at, sight.zone());
    if (sight.now > *blade.held_at) filled["hold"] = to_text(sight.now - *blade.held_at);
    return {number + " is out: log it", OpenForm{"log_temper", std::move(filled)}, "Enter", ""};
  }
  if (!blade.next_temperature) {
    return {"Log its temper", OpenForm{"log_temper", std::move(filled)}, "Enter", ""};
  }
  return {number + " is in the oven",
          DoNow{"log_temper", {{"blade", number}, {"kind", "hold warm"}, {"set", filled["set"]}}},
          "Enter", ""};
}

std::string standing(const Sight& sight, const db::BladeRow& blade) {
  if (blade.scrapped) return "scrapped";
  if (blade.delivered) return "delivered";
  if (blade.open_finding) return "a finding waits for a decision";
  if (in_the_oven(blade)) {
    return "in the oven" + (blade.held_set ? " at " + words(sight, *blade.held_set) : "") + ", " +
           ago(sight, *blade.held_at);
  }
  if (waits_for_temper(blade) && blade.held_by == "snap temper" &&
      *blade.held_at >= *blade.quenched_at) {
    return "snap temper" + (blade.held_set ? " at " + words(sight, *blade.held_set) : "") +
           ", not tempered, " + ago(sight, *blade.quenched_at);
  }
  if (waits_for_temper(blade)) return "quenched, not tempered, " + ago(sight, *blade.quenched_at);
  if (blade.quenched_at && blade.tempers_ahead > 0) {
    return "tempered " + std::to_string(blade.tempers_since_quench) + " of " +
           std::to_string(blade.tempers_since_quench + blade.tempers_ahead);
  }
  if (blade.finished) return "finished";
  if (blade.last_operation.empty()) return "not begun";
  if (blade.next_operation.empty()) return "every step done";
  return "after " + blade.last_operation + ", next " + blade.next_operation;
}

PlaceList blades_list(const Sight& sight) {
  std::vector<Row> rows;
  for (const db::BladeRow& blade : db::blade_rows(sight.shop)) {
    Row row;
    row.id = std::to_string(blade.number);
    row.number = row.id;
    row.line = blade.title;
    row.under = sentence_case(standing(sight, blade));
    row.more_words = blade.buyer + " " + blade.grade + " " + blade.construction;
    if (blade.commission) row.more_words += " " + std::to_string(*blade.commission);
    rows.push_back(std::move(row));
  }
  for (const db::KeptTrial& trial : db::all_trials(sight.shop)) {
    const std::string number = std::to_string(trial.number);
    rows.push_back({"trial " + number, "T" + number, trial.question,
                    trial.ended_at ? "Ended: " + trial.conclusion : "Trial, still asked", "trial"});
  }
  return {"Blades", "Find a blade, steel or buyer", List(std::move(rows))};
}

PlaceView blade_view(const Sight& sight, const std::string& number) {
  if (number.starts_with("trial ")) return trial_view(sight, number.substr(6));
  const auto wanted = number_of(number);
  const auto found = wanted ? db::blade_row(sight.shop, *wanted) : std::nullopt;
  if (!found) return {nothing_here(), {}, {}};
  PlaceView view;
  view.next = next_for(sight, *found);
  view.sheet = blade_sheet(sight, *found);
  view.picture = life_of(sight, *found);
  return view;
}

}  // namespace tangmark::desk
