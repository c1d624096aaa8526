// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/quote_inputs.h"
#include "domain/costing/build_up.h"

namespace tangmark::db {
namespace {

using costing::CostSheet;

Duration times(Duration time, double factor) {
  return Duration(std::llround(static_cast<double>(time.count()) * factor));
}
Money times(Money amount, double factor) {
  return scaled_half_even(amount, std::llround(factor * 1e6), 1'000'000);
}

// A source that costs so many times as much; its quantity is not told apart from its price.
struct Scale {
  double factor;
  void operator()(costing::SteelFromBar& s) const { s.per_kg = times(s.per_kg, factor); }
  void operator()(costing::SteelFromBillet& s) const {
    s.billet.cost = times(s.billet.cost, factor);
  }
  void operator()(costing::BoughtMaterial& s) const { s.each = times(s.each, factor); }
  void operator()(costing::UsedUp& s) const { s.each = times(s.each, factor); }
  void operator()(costing::GasByBurner& s) const { s.per_kg = times(s.per_kg, factor); }
  void operator()(costing::GasByWeight& s) const { s.per_kg = times(s.per_kg, factor); }
  void operator()(costing::FiringPart& s) const { s.per_kwh = times(s.per_kwh, factor); }
  void operator()(costing::BeltWear& s) const { s.each = times(s.each, factor); }
  void operator()(costing::BathWear& s) const { s.filling = times(s.filling, factor); }
  void operator()(costing::MadeElsewhere& s) const { s.charge = times(s.charge, factor); }
};

// Every line of that name; none found says so.
bool change(costing::CostInputs& inputs, const std::string& line, double factor) {
  bool found = false;
  for (auto& item : inputs.items) {
    for (auto& operation : item.operations)
      if (operation.name == line) {
        operation.hands_on = times(operation.hands_on, factor);
        operation.attended = times(operation.attended, factor);
        found = true;
      }
    for (auto& ingredient : item.ingredients)
      if (ingredient.text == line) {
        std::visit(Scale{factor}, ingredient.source);
        found = true;
      }
  }
  if (line == "Packing") inputs.packing = times(inputs.packing, factor), found = true;
  if (line == "Shipping") inputs.shipping = times(inputs.shipping, factor), found = true;
  return found;
}

std::string known_lines(const costing::CostInputs& inputs) {
  std::string names;
  for (const auto& item : inputs.items) {
    for (const auto& ingredient : item.ingredients) names += ingredient.text + ", ";
    for (const auto& operation : item.operations) names += operation.name + ", ";
  }
  return names + "Packing, Shipping";
}

void add_row(const std::string& what, Money before, Money after, Answer& answer) {
  const Money change = after - before;
  answer.rows.push_back({what, amount_text(before), amount_text(after),
                         (change.minor() > 0 ? "+" : "") + amount_text(change)});
}

Outcome<Answer> answer_40(const ShopFile& shop, const Given& given, Instant now) {
  const auto commission = given_thing(shop, given, "commission", commission_named);
  if (!commission) return commission.problems();
  const std::string line = given_text(given, "line").value_or("");
  const auto factor = parse_quantity(given_text(given, "times").value_or("1.2"), "times");
  if (!factor) return factor.problem();
  QuoteWish wish;
  if (const auto text = given_text(given, "price")) {
    const auto price = parse_money(*text, commission->currency, "price");
    if (!price) return price.problem();
    wish.price = *price;
  }
  const auto inputs = quote_inputs(shop, *commission, wish, now);
  if (!inputs) return inputs.problems();
  costing::CostInputs changed = inputs->costs;
  if (!change(changed, line, factor->fraction()))
    return Problem{"line", "No line of it is called \"" + line + "\".",
                   "Its lines are: " + known_lines(inputs->costs) + "."};
  const auto before = costing::build_up(inputs->costs), after = costing::build_up(changed);
  if (!before) return before.problems();
  if (!after) return after.problems();
  Answer answer{"What if " + line + " took " + quantity_text(*factor) + " times as much?",
                {"Nothing is stored. The price is by " + inputs->price_how + "."},
                {"What", "As it stands", "Then", "Change"},
                {}};
  const Money none(0, commission->currency);
  add_row("Cost", before->price.cost, after->price.cost, answer);
  add_row("Price", before->price.shown, after->price.shown, answer);
  add_row("Margin", before->price.without_tax - before->price.cost,
          after->price.without_tax - after->price.cost, answer);
  add_row("Floor price", before->floor, after->floor, answer);
  add_row("Earned per hour", before->earned_per_hour.value_or(none),
          after->earned_per_hour.value_or(none), answer);
  for (const auto& mover : after->movers)
    answer.sentences.push_back(mover.text + " would then move the price most: from " +
                               to_text(mover.price_low) + " to " + to_text(mover.price_high) + ".");
  return answer;
}

}  // namespace

const Question question_40{
    40,
    "What if a line of a quote took more or less?",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"line", "Line, as the quote names it", FieldKind::text, true, "hand sand"},
     {"times", "Times as much", FieldKind::number, false, "1.2", "1.2"},
     {"price", "At this fixed price", FieldKind::money, false,
      "600.00; the usual rule when not given"}},
    answer_40};

}  // namespace tangmark::db
