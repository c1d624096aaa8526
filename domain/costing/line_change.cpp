// SPDX-License-Identifier: MIT
#include "domain/costing/line_change.h"

#include <algorithm>

#include "domain/costing/cost_draft.h"

namespace tangmark::costing {
namespace {

using From = LineOrigin::From;
constexpr std::string_view survives = " survives";
constexpr Share most_of_a_line = Share::millionths(1'000'000'000'000);  // a million of anything

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\n')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\n' || text.back() == '\r'))
    text.remove_suffix(1);
  return text;
}

std::string of_item(const CostInputs& inputs, std::size_t item, std::string name) {
  return inputs.items.size() < 2 ? name : std::to_string(item + 1) + ". " + name;
}

// The second line of a name is told apart by its number.
template <class Things, class NameOf>
std::string with_count(const Things& things, std::size_t index, NameOf name_of) {
  std::size_t before = 0;
  for (std::size_t i = 0; i < index; ++i) before += name_of(things[i]) == name_of(things[index]);
  const std::string name = name_of(things[index]);
  return before == 0 ? name : name + " (" + std::to_string(before + 1) + ")";
}
std::string name_of(const CostedItem& item, const Ingredient&, std::size_t index) {
  return with_count(item.ingredients, index, [](const Ingredient& i) { return i.text; });
}
// An ingredient that is called like an operation leaves the name to it.
std::string name_of(const CostedItem& item, const PlannedOperation&, std::size_t index) {
  return with_count(item.operations, index, [&](const PlannedOperation& o) {
    const bool taken = std::any_of(item.ingredients.begin(), item.ingredients.end(),
                                   [&](const Ingredient& i) { return i.text == o.name; });
    return taken ? o.name + " hours" : o.name;
  });
}

// What a change may name, and how it is taken.
struct Place {
  enum class What { ingredient, firing_minutes, operation, survival };
  What what = What::ingredient;
  std::size_t item = 0, index = 0;
};

std::optional<Place> place_named(const CostInputs& inputs, std::string_view name) {
  for (std::size_t i = 0; i < inputs.items.size(); ++i) {
    const CostedItem& item = inputs.items[i];
    for (std::size_t k = 0; k < item.ingredients.size(); ++k) {
      const std::string own = of_item(inputs, i, name_of(item, item.ingredients[k], k));
      if (own == name) return Place{Place::What::ingredient, i, k};
      if (own + " minutes" == name) return Place{Place::What::firing_minutes, i, k};
    }
    for (std::size_t k = 0; k < item.operations.size(); ++k) {
      const std::string own = of_item(inputs, i, name_of(item, item.operations[k], k));
      if (own == name) return Place{Place::What::operation, i, k};
      if (own + std::string(survives) == name) return Place{Place::What::survival, i, k};
    }
  }
  return std::nullopt;
}

Problem cannot_read(const LineChange& change, const std::string& remedy) {
  return {change.what, "\"" + change.to + "\" is nothing that this line can be set to.", remedy};
}

// A bare amount is in the currency the quote shows; a line is kept in the one costs are reckoned
// in.
Outcome<Money> money_of(const LineChange& change, std::string_view text, const CostInputs& inputs) {
  const auto money = parse_money(text, inputs.sold_in(), change.what);
  if (!money) return money.problem();
  if (money->currency() == inputs.currency) return *money;
  if (money->currency() == inputs.sold_in()) return exchanged(*money, *inputs.sold_at);
  return Problem{change.what, "Costs are reckoned in " + inputs.currency.code() + ".",
                 "Give the amount in it."};
}

// "1.5" in hours, "1.5 h", "90 min".
Outcome<Duration> time_of(const LineChange& change, std::string_view text) {
  if (const auto hours = parse_quantity(text, change.what); hours && *hours >= Share{})
    return Duration(hours->millionths() * 3600 / 1'000'000);
  const auto time = parse_duration(text, change.what);
  if (!time || *time < Duration{}) return cannot_read(change, "Write a time such as 1.5 h.");
  return *time;
}

std::string unit_of(const CostInputs& inputs, const Place& place) {
  const auto drafts = drafts_of(inputs.items[place.item], inputs);
  if (drafts)
    for (const CostDraft& draft : *drafts)
      if (draft.origin.from == From::ingredient && draft.origin.index == place.index)
        return draft.quantity.unit;
  return {};
}

Outcome<std::int64_t> quantity_of(const LineChange& change, std::string_view text,
                                  const std::string& unit) {
  std::string figure(trimmed(text));
  if (!unit.empty() && figure.ends_with(unit))
    figure = std::string(trimmed(std::string_view(figure).substr(0, figure.size() - unit.size())));
  if (const auto read = parse_quantity(figure, change.what);
      read && *read >= Share{} && *read <= most_of_a_line)
    return (read->millionths() + 500) / 1000;
  if (unit == "g")
    if (const auto mass = parse_mass(text, MassUnit::gram, change.what); mass && *mass >= Mass())
      return (mass->micrograms() + 500) / 1000;
  return cannot_read(change, "Write how much, such as 2" + (unit.empty() ? "" : " " + unit) +
                                 ", and the price of one after \"at\": 2 at 14.00.");
}

// "2 at 14.00", "2", "at 14.00".
Outcome<SetByHand> by_hand(const LineChange& change, SetByHand set, const std::string& unit,
                           const CostInputs& inputs) {
  std::string_view text = trimmed(change.to);
  const auto at = text.starts_with("at ") ? std::size_t{0} : text.find(" at ");
  if (at != std::string_view::npos) {
    const auto each = money_of(change, trimmed(text.substr(text.find("at ", at) + 3)), inputs);
    if (!each) return each.problem();
    set.each = *each;
    text = trimmed(text.substr(0, at));
    if (text.empty()) return set;
  }
  const auto much = quantity_of(change, text, unit);
  if (!much) return much.problem();
  set.thousandths = *much;
  return set;
}

Duration in_proportion(Duration part, Duration whole, Duration to) {
  return Duration{part.count() * to.count() / whole.count()};
}

// The time is what is paid: hands-on, and the attended wait at the maker's share. Both go with it.
void set_time(PlannedOperation& op, Duration to, Share attended_share) {
  const Duration attended{op.attended.count() * attended_share.millionths() / 1'000'000};
  const Duration paid = op.hands_on + attended;
  if (paid <= Duration{}) {
    op.hands_on = to;
    return;
  }
  op.hands_on = in_proportion(op.hands_on, paid, to);
  op.attended = in_proportion(op.attended, paid, to);
}

void set_time(FiringPart& firing, Duration to) {
  const auto whole = std::chrono::round<std::chrono::minutes>(to * firing.use.blades);
  firing.use.hands_on = whole;
  firing.use.attended = std::chrono::minutes(0);
}

Outcome<Done> set_at(CostInputs& inputs, const Place& place, const LineChange& change) {
  CostedItem& item = inputs.items[place.item];
  switch (place.what) {
    case Place::What::ingredient: {
      Ingredient& part = item.ingredients[place.index];
      const auto set = by_hand(change, part.set, unit_of(inputs, place), inputs);
      if (!set) return set.problem();
      part.set = *set;
      return Done{};
    }
    case Place::What::firing_minutes: {
      auto* firing = std::get_if<FiringPart>(&item.ingredients[place.index].source);
      const auto time = time_of(change, change.to);
      if (!time) return time.problem();
      if (firing) set_time(*firing, *time);
      item.ingredients[place.index].minutes_by_hand = true;
      return Done{};
    }
    case Place::What::operation: {
      const auto time = time_of(change, change.to);
      if (!time) return time.problem();
      set_time(item.operations[place.index], *time, inputs.rates.attended_share);
      item.operations[place.index].by_hand = true;
      return Done{};
    }
    case Place::What::survival: {
      const bool bare = change.to.find('%') == std::string::npos;
      const auto share = parse_share(bare ? change.to + " %" : change.to, change.what);
      if (!share || *share <= Share{} || *share > Share::whole())
        return cannot_read(change, "Write the share of blades that come through, such as 90 %.");
      item.operations[place.index].survival = *share;
      item.operations[place.index].survival_band.reset();
      return Done{};
    }
  }
  return Done{};
}

// A line that no model has: it is part of the first item, or of the one named, from the start on.
Outcome<Done> add_line(CostInputs& inputs, const LineChange& change) {
  std::string_view name = change.what;
  std::size_t item = 0;
  for (std::size_t i = 0; i < inputs.items.size(); ++i)
    if (const std::string own = std::to_string(i + 1) + ". "; name.starts_with(own)) {
      item = i;
      name.remove_prefix(own.size());
    }
  if (!name.starts_with("+ ")) return cannot_read(change, "");
  const Money none(0, inputs.currency);
  const auto set = by_hand(change, {1000, none}, "", inputs);
  if (!set) return set.problem();
  CostedItem& to = inputs.items[item];
  const std::size_t last = to.operations.empty() ? 0 : to.operations.size() - 1;
  to.ingredients.push_back(
      {std::string(trimmed(name.substr(2))), BoughtMaterial{{1000, ""}, none}, last, {}, *set});
  return Done{};
}

Outcome<Done> set_of_quote(CostInputs& inputs, const LineChange& change) {
  if (change.what == "Payment fee") {
    const bool bare = change.to.find('%') == std::string::npos;
    const auto share = parse_share(bare ? change.to + " %" : change.to, change.what);
    if (!share || *share < Share{} || *share >= Share::whole())
      return cannot_read(change, "Write a share such as 1.5 %.");
    inputs.terms.fee.of_total = *share;
    return Done{};
  }
  std::string_view text = trimmed(change.to);
  if (text.starts_with("at ")) text = trimmed(text.substr(3));
  const auto amount = money_of(change, text, inputs);
  if (!amount) return amount.problem();
  if (change.what == "Packing") inputs.packing = *amount;
  if (change.what == "Shipping") inputs.shipping = *amount;
  if (change.what == "Hourly rate") inputs.rates.per_hour = *amount;
  if (change.what == "Overhead") inputs.rates.overhead_per_hour = *amount;
  return Done{};
}

bool is_of_quote(std::string_view name) {
  return name == "Packing" || name == "Shipping" || name == "Payment fee" ||
         name == "Hourly rate" || name == "Overhead";
}

}  // namespace

std::string name_of_line(const CostInputs& inputs, const CostLine& line) {
  if (line.kind == LineKind::loss) return {};
  if (line.item >= inputs.items.size() || line.kind == LineKind::overhead) return line.text;
  const CostedItem& item = inputs.items[line.item];
  const std::size_t i = line.origin.index;
  switch (line.origin.from) {
    case From::ingredient:
      return of_item(inputs, line.item, name_of(item, item.ingredients[i], i));
    case From::firing_hours:
      return of_item(inputs, line.item, name_of(item, item.ingredients[i], i)) + " minutes";
    case From::operation:
      return of_item(inputs, line.item, name_of(item, item.operations[i], i));
    case From::whole_quote:
    case From::whole_item:
      break;
  }
  return {};
}

std::vector<SurvivalLine> survival_lines(const CostInputs& inputs) {
  std::vector<SurvivalLine> lines;
  for (std::size_t i = 0; i < inputs.items.size(); ++i)
    for (std::size_t k = 0; k < inputs.items[i].operations.size(); ++k) {
      const PlannedOperation& op = inputs.items[i].operations[k];
      if (op.survival >= Share::whole() && op.name != "harden") continue;
      const std::string name = name_of(inputs.items[i], op, k);
      lines.push_back({of_item(inputs, i, name) + std::string(survives), name, i, op.survival});
    }
  return lines;
}

Outcome<CostInputs> with_change(CostInputs inputs, const LineChange& change) {
  Outcome<Done> done = Done{};
  if (is_of_quote(change.what)) {
    done = set_of_quote(inputs, change);
  } else if (const auto place = place_named(inputs, change.what)) {
    done = set_at(inputs, *place, change);
  } else if (change.what.starts_with("+ ") || change.what.find(". + ") != std::string::npos) {
    done = add_line(inputs, change);
  } else {
    return Problem{change.what, "No line of the quote is called \"" + change.what + "\".",
                   "Call it as the quote does."};
  }
  if (!done) return done.problems();
  return inputs;
}

Outcome<std::vector<LineChange>> parse_changes(std::string_view text, std::string_view field) {
  std::vector<LineChange> changes;
  const char between = text.find('\n') == std::string_view::npos ? ';' : '\n';
  while (!text.empty()) {
    const auto end = std::min(text.find(between), text.size());
    const std::string_view part = trimmed(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
    if (part.empty()) continue;
    const auto equals = part.rfind('=');
    if (equals == std::string_view::npos || trimmed(part.substr(0, equals)).empty())
      return Problem{std::string(field), "\"" + std::string(part) + "\" sets nothing.",
                     "Write it as: rough grind = 2 h; Handle block = 1 at 45.00."};
    changes.push_back({std::string(trimmed(part.substr(0, equals))),
                       std::string(trimmed(part.substr(equals + 1)))});
  }
  return changes;
}

std::string to_text(const std::vector<LineChange>& changes) {
  std::string text;
  for (const LineChange& change : changes)
    text += (text.empty() ? "" : "\n") + change.what + " = " + change.to;
  return text;
}

}  // namespace tangmark::costing
