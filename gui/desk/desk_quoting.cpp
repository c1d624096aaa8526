// SPDX-License-Identifier: MIT
// The quote desk while it is open.
#include "gui/desk/desk_inside.h"

namespace tangmark::desk {

Outcome<std::variant<Said, Job>> Desk::at_quote_desk(const PlaceWork& work) {
  Inside& in = *inside_;
  Said said;
  said.go = GoTo{Place::commissions, work.id};
  if (work.name == "quote desk") {
    in.quoting = work.id;
    in.quote_typed.reset();
    in.beside.clear();
    said.sentence = "Change a figure or the price; everything follows.";
    said.then = PlaceWork{"promise odds", work.id};
  } else if (work.name == "leave quote") {
    in.quoting.clear();
    in.quote_typed.reset();
    said.go.reset();
  } else if (work.name == "quote versions" || work.name == "quote pieces") {
    in.beside = work.name.substr(6);
  } else if (work.name == "quote again") {
    in.beside.clear();
  } else if (work.name == "quote by models") {
    if (in.quote_typed) in.quote_typed->changes.clear();
    said.sentence = "Every line is again what the models and the shop say.";
  } else if (work.name == "keep quote") {
    const QuoteTyped typed = in.quote_typed.value_or(QuoteTyped{});
    auto kept = act("make_quote", make_quote_fields(in.quoting, typed));
    if (!kept) return kept.problems();
    return std::variant<Said, Job>(*kept);
  }
  return std::variant<Said, Job>(std::move(said));
}

Outcome<QuoteLive> Desk::quote(const QuoteTyped& typed) {
  Inside& in = *inside_;
  in.quote_typed = typed;
  if (!in.priced || in.priced->first != in.quoting) {
    auto inputs = read_quote_inputs(in.sight(), in.quoting);
    if (!inputs) return inputs.problems();
    in.priced.emplace(in.quoting, std::move(inputs).value());
  }
  return answer_quote(in.sight(), in.priced->second, typed);
}

Outcome<Said> Desk::add_quote_line(const Typed& typed) {
  const auto given = [&](const char* field) { return typed_value(typed, field); };
  if (given("name").empty())
    return Problem{"name", "The line needs a name.", "Say what it is, such as Mosaic pin."};
  if (given("each").empty())
    return Problem{"each", "The line needs a price.", "Say what one of it costs."};
  QuoteTyped more = inside_->quote_typed.value_or(QuoteTyped{});
  more.changes.push_back({"+ " + given("name"),
                          (given("much").empty() ? "1" : given("much")) + " at " + given("each")});
  const QuoteTyped before = inside_->quote_typed.value_or(QuoteTyped{});
  if (const auto live = quote(more); !live) {
    inside_->quote_typed = before;
    return Problem{"each", live.problem().sentence, live.problem().remedy};
  }
  return Said{given("name") + " is on the quote.", GoTo{Place::commissions, inside_->quoting}};
}

}  // namespace tangmark::desk
