// SPDX-License-Identifier: MIT
#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/route_store.h"
#include "db/store/settings_store.h"
#include "domain/blade/operation.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "reports/traveller_card.h"

namespace tangmark::desk {
namespace {

// What a pencil is asked for, by kind of work, in the order in which the log takes it.
std::vector<std::string> to_fill(const std::string& operation, blade::Heat heat) {
  switch (heat) {
    case blade::Heat::harden: return {"in", "out", "read", "bath at", "s to bath", "file"};
    case blade::Heat::anneal: return {"in", "out", "read"};
    case blade::Heat::soak:
      return operation == "temper" ? std::vector<std::string>{"in", "out", "read", "cold before"}
                                   : std::vector<std::string>{"in", "out", "read"};
    case blade::Heat::none: break;
  }
  if (operation == "etch") return {"strength", "passes", "min"};
  if (operation == "hand sand" || operation == "finish grind" || operation == "rough grind")
    return {"grit", "edge", "min"};
  if (operation == "straighten") return {"warp", "min"};
  return {"min"};
}

bool is_gate(const std::string& operation) {
  return operation == "temper" || operation == "drill" || operation == "normalize";
}

reports::TravellerStep step_of(const blade::RouteStep& step, int& tempers) {
  reports::TravellerStep card;
  card.operation = step.operation;
  if (step.operation == "temper") card.operation = "temper " + std::to_string(++tempers);
  card.operation[0] =
      static_cast<char>(std::toupper(static_cast<unsigned char>(card.operation[0])));
  if (step.temperature) card.set.push_back(*step.temperature);
  card.hold = step.soak;
  card.note = step.medium.value_or(step.note.value_or(""));
  const auto known = blade::trade_operation(step.operation);
  card.to_fill = to_fill(step.operation, known ? known->heat : blade::Heat::none);
  card.done = step.done_at;
  card.gate = is_gate(step.operation);
  return card;
}

std::vector<std::string> cautions_for(const std::vector<blade::KeptRouteStep>& route) {
  bool hot = false, etch = false;
  for (const auto& step : route) {
    const auto known = blade::trade_operation(step.operation);
    hot = hot || (known && known->hot);
    etch = etch || step.operation == "etch";
  }
  std::vector<std::string> cautions;
  if (hot)
    cautions.push_back(
        "Hot steel, oil and gas: lid and extinguisher at hand, ventilate; follow your local fire "
        "code.");
  cautions.push_back("Grinding dust: respirator and extraction.");
  if (etch) cautions.push_back("Etchant: gloves, goggles; the product's own safety sheet decides.");
  return cautions;
}

}  // namespace

Outcome<reports::Document> traveller_paper(const Press& press, std::string_view number) {
  const auto kept = db::blade_named(press.shop, number, "blade");
  if (!kept) return kept.problems();
  const auto settings = db::load_settings(press.shop);
  const auto route = db::route_of(press.shop, kept->id);
  reports::TravellerCard card;
  card.blade = std::to_string(kept->number);
  card.model = kept->title;
  card.steel = kept->grade.value_or("steel not identified");
  card.blade_length = kept->length;
  card.height_at_heel = kept->width;
  card.spine_thickness = kept->thickness;
  card.hardness_aim = kept->hardness_aim.value_or("");
  db::Query q(
      press.shop,
      "SELECT c.number AS commission, p.tag FROM blade b LEFT JOIN item i ON i.id = b.item_id "
      "LEFT JOIN commission c ON c.id = i.commission_id LEFT JOIN piece p ON p.id = b.piece_id "
      "WHERE b.id = ?");
  q.bind(kept->id);
  if (q.next()) {
    card.job = q.is_null("commission") ? "stock" : "job " + q.text("commission");
    card.piece = q.text("tag");
  }
  int tempers = 0;
  for (const auto& step : route)
    if (!step.skipped_why) card.steps.push_back(step_of(step, tempers));
  card.cautions = cautions_for(route);
  card.qr = "TANGMARK BLADE " + card.blade;
  card.printed = press.now;
  return reports::traveller_document(card, look_of(settings), press.fonts);
}

}  // namespace tangmark::desk
