// SPDX-License-Identifier: MIT
#include "gui/desk/quote_desk.h"

#include <array>
#include <cmath>

#include "db/store/customer_store.h"
#include "db/store/named.h"
#include "db/store/quote_inputs.h"

namespace tangmark::desk {
namespace {

using costing::LineKind;

struct Group {
  LineKind kind;
  const char* name;
};
constexpr std::array groups{Group{LineKind::material, "Material"},
                            Group{LineKind::used_up, "Used up"},
                            Group{LineKind::energy, "Firing"},
                            Group{LineKind::hours, "Hours"},
                            Group{LineKind::made_elsewhere, "Made elsewhere"},
                            Group{LineKind::overhead, "Shop"},
                            Group{LineKind::loss, "Spoilage"},
                            Group{LineKind::packing, "Packing"},
                            Group{LineKind::shipping, "Shipping"},
                            Group{LineKind::fee, "Payment fee"}};

double major(Money money) {
  return static_cast<double>(money.minor()) / static_cast<double>(money.currency().minor_per_major());
}

std::string difference_text(Money money) {
  if (money.minor() < 0) return "\xE2\x88\x92" + amount_text(-money);  // a minus sign, not a hyphen
  return "+" + amount_text(money);
}

// "0.92 kg" as the figure and its unit, to stand apart in the table.
std::pair<std::string, std::string> split_quantity(const costing::Quantity& quantity) {
  std::string text = to_text(quantity);
  if (!quantity.unit.empty() && text.ends_with(quantity.unit)) {
    text.erase(text.size() - quantity.unit.size());
    while (text.ends_with(' ')) text.pop_back();
    return {text, quantity.unit};
  }
  return {text, {}};
}

// "22.1 %": finer figures of a margin say nothing to anybody.
Share tenths_of_percent(Share share) {
  return Share::millionths(std::llround(static_cast<double>(share.millionths()) / 1000.0) * 1000);
}

// Under the head "Firing" the word is not said again, nor that its load is the one expected; the
// notes say that once.
std::string row_text(const costing::CostLine& line) {
  std::string text = line.text;
  if (line.kind != LineKind::energy) return text;
  constexpr std::string_view before = "Firing: ", after = " expected";
  if (text.starts_with(before)) text.erase(0, before.size());
  if (text.ends_with(after)) text.erase(text.size() - after.size());
  return text;
}

std::vector<QuoteRow> rows_of(const costing::CostSheet& sheet) {
  std::vector<QuoteRow> rows;
  for (const Group& group : groups) {
    Money sum(0, sheet.price.cost.currency());
    std::vector<QuoteRow> own;
    for (const costing::CostLine& line : sheet.lines) {
      if (line.kind != group.kind) continue;
      sum += line.amount;
      const auto [much, unit] = split_quantity(line.quantity);
      own.push_back({row_text(line), much, unit, amount_text(line.each), amount_text(line.amount)});
    }
    if (own.empty()) continue;
    rows.push_back({group.name, "", "", "", amount_text(sum), true, false});
    rows.insert(rows.end(), own.begin(), own.end());
  }
  rows.push_back({"Cost, with your hours paid", "", "", "", amount_text(sheet.price.cost), false, true});
  return rows;
}

std::vector<PricePart> parts_of(const costing::CostSheet& sheet) {
  std::vector<PricePart> parts;
  for (const Group& group : groups) {
    Money sum(0, sheet.price.cost.currency());
    for (const costing::CostLine& line : sheet.lines) {
      if (line.kind == group.kind) sum += line.amount;
    }
    if (sum.minor() > 0) parts.push_back({group.name, amount_text(sum), major(sum), false});
  }
  const Money margin = sheet.price.without_tax - sheet.price.cost;
  if (margin.minor() > 0) parts.push_back({"Margin", amount_text(margin), major(margin), true});
  return parts;
}

PriceAnswer answer_of(const Sight& sight, const costing::CostSheet& sheet) {
  const costing::Price& price = sheet.price;
  PriceAnswer answer;
  answer.margin = amount_text(price.without_tax - price.cost);
  answer.margin_share = to_text(tenths_of_percent(price.margin));
  answer.earned_per_hour = sheet.earned_per_hour ? amount_text(*sheet.earned_per_hour) : "no hours";
  answer.aim_per_hour = "aim " + amount_text(sight.settings.hourly_rate);
  answer.floor = amount_text(sheet.floor);
  answer.deposit = amount_text(price.deposit);
  answer.deposit_note = to_text(sight.settings.deposit_share) + ", to start";
  answer.total = amount_text(price.total);
  answer.tax = price.tax.is_zero() ? "no tax" : "tax " + amount_text(price.tax);
  const Money above = price.shown - sheet.floor;
  answer.sentence = above.minor() >= 0
                        ? "Above the floor by " + amount_text(above) + "."
                        : "Below the floor by " + amount_text(-above) + ": you earn less than your own rate.";
  answer.parts = parts_of(sheet);
  return answer;
}

std::vector<Mover> movers_of(const costing::CostSheet& sheet, const PriceAnswer&) {
  std::vector<Mover> movers;
  for (const costing::Mover& mover : sheet.movers) {
    // The two ends are prices by the rule; what counts is how far apart they lie around their middle.
    const Money middle = sheet.price.shown;
    Mover made;
    made.name = mover.text;
    made.range = mover.assumed ? "10 % either way" : "by your record";
    made.low = major(mover.price_low - middle);
    made.high = major(mover.price_high - middle);
    made.low_text = difference_text(mover.price_low - middle);
    made.high_text = difference_text(mover.price_high - middle);
    movers.push_back(std::move(made));
  }
  return movers;
}

std::string buyer_of(const Sight& sight, const commission::KeptCommission& commission) {
  const auto customer = db::load_customer(sight.shop, commission.customer);
  return customer && customer->name ? *customer->name : "a buyer whose data was erased";
}

PlaceView refused_view(const std::string& number, const Problems& problems) {
  PlaceView view;
  view.next.sentence = "Commission " + number + " cannot be quoted yet";
  for (const Problem& problem : problems) {
    view.next.why += (view.next.why.empty() ? "" : " ") + problem.sentence + " " + problem.remedy;
  }
  view.next.offers = {{"Back to the commission", PlaceWork{"leave quote", number}, "Enter", ""},
                      {"Add an item", OpenForm{"add_item", {{"commission", number}}}, "Ctrl Enter", ""}};
  return view;
}

Outcome<db::QuoteDraft> draft_at(const Sight& sight, const std::string& number, std::optional<Money> price) {
  const auto commission = db::commission_named(sight.shop, number, "commission");
  if (!commission) return commission.problems();
  db::QuoteWish wish;
  wish.price = price;
  return db::draft_quote(sight.shop, *commission, wish, sight.now);
}

}  // namespace

Outcome<db::QuoteInputs> read_quote_inputs(const Sight& sight, const std::string& number) {
  const auto commission = db::commission_named(sight.shop, number, "commission");
  if (!commission) return commission.problems();
  return db::quote_inputs(sight.shop, *commission, db::QuoteWish{});
}

Outcome<PriceAnswer> answer_price(const Sight& sight, const db::QuoteInputs& inputs,
                                  const std::string& typed) {
  const auto price = parse_money(typed, inputs.costs.currency, "price");
  if (!price) return price.problems();
  costing::CostInputs costs = inputs.costs;
  costs.terms.rule = costing::FixedPrice{*price};
  const auto sheet = costing::build_up(costs);
  if (!sheet) return sheet.problems();
  return answer_of(sight, *sheet);
}

PlaceView quote_view(const Sight& sight, const std::string& number, const std::optional<PromiseView>& promise) {
  const auto commission = db::commission_named(sight.shop, number, "commission");
  const auto draft = draft_at(sight, number, std::nullopt);
  if (!draft || !commission) return refused_view(number, draft.problems());
  QuoteView quote;
  quote.commission = number;
  quote.currency = commission->currency.code();
  quote.rows = rows_of(draft->sheet);
  quote.price = amount_text(draft->sheet.price.shown);
  quote.answer = answer_of(sight, draft->sheet);
  quote.movers = movers_of(draft->sheet, quote.answer);
  quote.notes = draft->inputs.assumptions;
  quote.notes.insert(quote.notes.begin(),
                     "A firing is shared by slot among the blades it is expected to hold.");
  if (promise) quote.promise = *promise;
  quote.promise_ready = promise && !promise->curve.empty();
  PlaceView view;
  view.next.sentence = "Quote commission " + number + " for " + buyer_of(sight, *commission);
  view.next.why = "By " + draft->inputs.price_how + ". Type another price, and every figure follows.";
  view.next.offers = {{"Make this quote", PlaceWork{"keep quote", number}, "Enter", ""},
                      {"Leave it", PlaceWork{"leave quote", number}, "Esc", ""}};
  view.picture = std::move(quote);
  return view;
}

}  // namespace tangmark::desk
