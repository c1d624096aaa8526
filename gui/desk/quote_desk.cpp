// SPDX-License-Identifier: MIT
#include "gui/desk/quote_desk.h"

#include "db/store/customer_store.h"
#include "db/store/named.h"
#include "db/store/quote_store.h"
#include "gui/desk/quote_rows.h"
#include "gui/desk/window_words.h"

namespace tangmark::desk {
namespace {

std::string buyer_of(const Sight& sight, const commission::KeptCommission& commission) {
  const auto customer = db::load_customer(sight.shop, commission.customer);
  return customer && customer->name ? *customer->name : "a buyer whose data was erased";
}

PlaceView refused_view(const std::string& number, const Problems& problems) {
  PlaceView view;
  view.next.sentence = "Commission " + number + " cannot be quoted yet";
  for (const Problem& problem : in_window_words(problems)) {
    view.next.why += (view.next.why.empty() ? "" : " ") + problem.sentence + " " + problem.remedy;
  }
  view.next.offers = {
      {"Back to the commission", PlaceWork{"leave quote", number}, "Enter", ""},
      {"Add an item", OpenForm{"add_item", {{"commission", number}}}, "Ctrl Enter", ""}};
  return view;
}

// The rule as typed, put in the place of the one the inputs came with.
Outcome<costing::PriceRule> rule_of(const db::QuoteInputs& inputs, const QuoteTyped& typed) {
  switch (typed.price_by) {
    case PriceBy::hand: {
      const auto price = parse_money(typed.price, inputs.costs.sold_in(), "price");
      if (!price) return price.problem();
      return costing::PriceRule(costing::FixedPrice{*price});
    }
    case PriceBy::list:
      if (!inputs.list)
        return Problem{"price", "Not every item has a model with a list price.",
                       "Choose another way to the price."};
      return costing::PriceRule(costing::ListPrice{inputs.list->price});
    case PriceBy::margin:
    case PriceBy::markup:
      break;
  }
  const bool bare = typed.share.find('%') == std::string::npos;
  const auto share = parse_share(bare ? typed.share + " %" : typed.share, "share");
  if (!share) return share.problem();
  if (typed.price_by == PriceBy::margin) return costing::PriceRule(costing::Margin{*share});
  return costing::PriceRule(costing::MarkUp{*share});
}

std::vector<costing::LineChange> changes_before(const Sight& sight,
                                                const commission::KeptCommission& commission) {
  const auto latest = db::latest_quote(sight.shop, commission.id);
  if (!latest || !latest->changes) return {};
  const auto changes = costing::parse_changes(*latest->changes, "lines");
  return changes ? *changes : std::vector<costing::LineChange>{};
}

std::string percent_of(Share share) {
  std::string text = to_text(share);
  if (text.ends_with(" %")) text.erase(text.size() - 2);
  return text;
}

// The desk begins where the last version ended: with its changes, and the price by the usual rule.
QuoteTyped typed_first(const db::QuoteInputs& inputs, const costing::CostSheet& sheet) {
  QuoteTyped typed;
  typed.changes = inputs.changes;
  typed.price = amount_text(sheet.price.shown);
  if (const auto* margin = std::get_if<costing::Margin>(&inputs.costs.terms.rule)) {
    typed.price_by = PriceBy::margin;
    typed.share = percent_of(margin->of_price);
  } else if (const auto* markup = std::get_if<costing::MarkUp>(&inputs.costs.terms.rule)) {
    typed.price_by = PriceBy::markup;
    typed.share = percent_of(markup->on_cost);
  } else if (std::holds_alternative<costing::ListPrice>(inputs.costs.terms.rule)) {
    typed.price_by = PriceBy::list;
  }
  return typed;
}

std::vector<Offer> offers_of(const std::string& number) {
  return {{"Add a line", OpenForm{"desk.quote_line", {}}, "", ""},
          {"Versions", PlaceWork{"quote versions", number}, "", ""},
          {"The last of these", PlaceWork{"quote pieces", number}, "", ""},
          {"Back to the models", PlaceWork{"quote by models", number}, "", ""}};
}

}  // namespace

Outcome<db::QuoteInputs> read_quote_inputs(const Sight& sight, const std::string& number) {
  const auto commission = db::commission_named(sight.shop, number, "commission");
  if (!commission) return commission.problems();
  db::QuoteWish wish;
  wish.changes = changes_before(sight, *commission);
  wish.carried_over = true;
  return db::quote_inputs(sight.shop, *commission, wish, sight.now);
}

Outcome<QuoteLive> answer_quote(const Sight& sight, const db::QuoteInputs& inputs,
                                const QuoteTyped& typed) {
  costing::CostInputs costs = inputs.by_model;
  for (const costing::LineChange& change : typed.changes) {
    auto changed = costing::with_change(std::move(costs), change);
    if (!changed) return changed.problems();
    costs = std::move(changed).value();
  }
  const auto rule = rule_of(inputs, typed);
  if (!rule) return rule.problem();
  costs.terms.rule = *rule;
  const auto sheet = costing::build_up(costs);
  if (!sheet) return sheet.problems();
  return live_of(sight, costs, *sheet, typed.changes);
}

Typed make_quote_fields(const std::string& number, const QuoteTyped& typed) {
  Typed fields{{"commission", number}};
  switch (typed.price_by) {
    case PriceBy::hand:
      fields["price"] = typed.price;
      break;
    case PriceBy::list:
      fields["by_list"] = "yes";
      break;
    case PriceBy::margin:
      fields["margin"] = typed.share + (typed.share.find('%') == std::string::npos ? " %" : "");
      break;
    case PriceBy::markup:
      fields["markup"] = typed.share + (typed.share.find('%') == std::string::npos ? " %" : "");
      break;
  }
  if (!typed.changes.empty()) fields["lines"] = costing::to_text(typed.changes) + "\n";
  return fields;
}

PlaceView quote_view(const Sight& sight, const std::string& number,
                     const std::optional<QuoteTyped>& typed,
                     const std::optional<PromiseView>& promise) {
  const auto commission = db::commission_named(sight.shop, number, "commission");
  const auto inputs = read_quote_inputs(sight, number);
  if (!inputs || !commission) return refused_view(number, inputs.problems());
  const auto sheet = costing::build_up(inputs->costs);
  if (!sheet) return refused_view(number, sheet.problems());
  QuoteView quote;
  quote.commission = number;
  quote.currency = commission->currency.code();
  quote.typed = typed.value_or(typed_first(*inputs, *sheet));
  // What cannot be read yet stays in its field; the figures are those it began with.
  const auto live = answer_quote(sight, *inputs, quote.typed);
  quote.live = live ? *live : live_of(sight, inputs->costs, *sheet, inputs->changes);
  if (inputs->list) quote.list_words = inputs->list->words;
  quote.notes = inputs->assumptions;
  quote.notes.insert(quote.notes.begin(),
                     "A firing is shared by slot among the blades it is expected to hold.");
  if (promise) quote.promise = *promise;
  quote.promise_ready = promise && !promise->curve.empty();
  quote.offers = offers_of(number);
  PlaceView view;
  view.next.sentence = "Quote commission " + number + " for " + buyer_of(sight, *commission);
  view.next.why =
      "Change any figure in its place, or the price: everything follows. F6 goes between them.";
  view.next.offers = {{"Make this quote", PlaceWork{"keep quote", number}, "Enter", ""},
                      {"Leave it", PlaceWork{"leave quote", number}, "Esc", ""}};
  view.picture = std::move(quote);
  return view;
}

}  // namespace tangmark::desk
