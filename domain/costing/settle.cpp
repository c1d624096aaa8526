// SPDX-License-Identifier: MIT
#include "domain/costing/settle.h"

#include <algorithm>

#include "domain/costing/loss.h"

namespace tangmark::costing {
namespace {

constexpr std::int64_t million = 1'000'000;

Duration scaled(Duration span, Share factor) {
  return Duration{(span.count() * factor.millionths() + million / 2) / million};
}

/// Builds the lines one after the other; the trial acts on the line with its index.
class Settling {
 public:
  Settling(const CostInputs& inputs, const Trial& trial, Text text, std::size_t first_line = 0)
      : inputs_(inputs), trial_(trial), text_(text), first_line_(first_line) {
    result_.cost = result_.labour = Money(0, inputs.currency);
    result_.paid = paid(Duration{}, Duration{});
  }
  /// All lines of one item. Refuses what the loss refuses.
  Outcome<Done> item(std::size_t index, const std::vector<CostDraft>& drafts);
  void whole_quote(LineKind kind, const char* text, Money amount) {
    if (amount.is_zero()) return;
    const Money moved = share_of(amount, factor());
    add({kind, text, {}, amount, moved, inputs_.items.size()});
  }
  Settled take() { return std::move(result_); }

 private:
  struct Step {
    Money cost;
    std::int64_t paid_seconds = 0;
  };

  PaidTime paid(Duration hands_on, Duration attended) const {
    return {hands_on, attended, inputs_.rates.attended_share};
  }
  /// For reading and for sharing out overhead; money is computed from the exact times.
  static std::int64_t paid_seconds(const PaidTime& t) {
    return t.hands_on.count() + scaled(t.attended, t.attended_share).count();
  }
  static Quantity in_hours(std::int64_t seconds) { return {(seconds * 1000 + 1800) / 3600, "h"}; }
  Share factor() const {
    const bool this_line = trial_.what == Trial::What::line &&
                           trial_.line == first_line_ + result_.lines.size();
    return this_line ? trial_.factor : Share::whole();
  }
  void add(CostLine line) {
    result_.cost += line.amount;
    if (line.kind == LineKind::hours) result_.labour += line.amount;
    result_.lines.push_back(std::move(line));
  }
  void add_of_piece(CostLine line) {
    line.quantity.thousandths *= item_->pieces;
    line.amount = line.amount * item_->pieces;
    line.item = index_;
    add(std::move(line));
  }
  std::string text_of(const CostDraft& draft) const {
    return text_ == Text::write ? draft.text : std::string();
  }
  void material_line(const CostDraft& draft);
  void hours_line(const CostDraft& draft);
  void overhead_line();
  Outcome<Done> loss_line();

  const CostInputs& inputs_;
  const Trial& trial_;
  Text text_;
  std::size_t first_line_;
  Settled result_;
  std::size_t index_ = 0;
  const CostedItem* item_ = nullptr;
  std::vector<Step> steps_;
  PaidTime item_paid_;
};

void Settling::material_line(const CostDraft& draft) {
  const Money amount = share_of(draft.amount, factor());
  steps_[draft.operation].cost += amount;
  add_of_piece({draft.kind, text_of(draft), draft.quantity, draft.each, amount, 0, draft.origin});
}

void Settling::hours_line(const CostDraft& draft) {
  result_.hours.unattended += draft.unattended * item_->pieces;
  if (!draft.has_line()) return;
  const Share f = factor();
  const PaidTime time = paid(scaled(draft.hands_on, f), scaled(draft.attended, f));
  const Money amount = pay_for(inputs_.rates.per_hour, time);
  Step& step = steps_[draft.operation];
  step.cost += amount;
  step.paid_seconds += paid_seconds(time);
  item_paid_.hands_on += time.hands_on;
  item_paid_.attended += time.attended;
  add_of_piece({LineKind::hours, text_of(draft), in_hours(paid_seconds(time)),
                inputs_.rates.per_hour, amount, 0, draft.origin});
}

void Settling::overhead_line() {
  if (inputs_.rates.overhead_per_hour.is_zero() || paid_seconds(item_paid_) == 0) return;
  const Money amount = share_of(pay_for(inputs_.rates.overhead_per_hour, item_paid_), factor());
  std::vector<std::int64_t> weights;
  for (const Step& step : steps_) weights.push_back(step.paid_seconds);
  const std::vector<Money> parts = split(amount, weights);
  for (std::size_t i = 0; i < parts.size(); ++i) steps_[i].cost += parts[i];
  add_of_piece({LineKind::overhead, "Overhead", in_hours(paid_seconds(item_paid_)),
                inputs_.rates.overhead_per_hour, amount, 0, {LineOrigin::From::whole_item, 0}});
}

Outcome<Done> Settling::loss_line() {
  if (item_->operations.empty()) return Done{};
  std::vector<StepAtRisk> at_risk;
  for (std::size_t i = 0; i < steps_.size(); ++i) {
    const PlannedOperation& op = item_->operations[i];
    Share survival = op.survival;
    if (trial_.what == Trial::What::survival_low) survival = survival_ends(op).first;
    if (trial_.what == Trial::What::survival_high) survival = survival_ends(op).second;
    at_risk.push_back({steps_[i].cost, survival});
  }
  const Outcome<GoodBlade> good = cost_per_good(at_risk);
  if (!good) return good.problems();
  add_of_piece({LineKind::loss, "Loss", {}, good->loss, good->loss, 0,
                {LineOrigin::From::whole_item, 0}});
  return Done{};
}

Outcome<Done> Settling::item(std::size_t index, const std::vector<CostDraft>& drafts) {
  result_.lines.reserve(result_.lines.size() + drafts.size() + 4);
  index_ = index;
  item_ = &inputs_.items[index];
  item_paid_ = paid(Duration{}, Duration{});
  steps_.assign(std::max<std::size_t>(1, item_->operations.size()),
                {Money(0, inputs_.currency), 0});
  for (const CostDraft& draft : drafts)
    draft.kind == LineKind::hours ? hours_line(draft) : material_line(draft);
  overhead_line();
  result_.paid.hands_on += item_paid_.hands_on * item_->pieces;
  result_.paid.attended += item_paid_.attended * item_->pieces;
  return loss_line();
}

}  // namespace

Settled in_currency_sold(Settled settled, const CostInputs& inputs) {
  if (!inputs.sold_at) return settled;
  const auto sold = [&](Money amount) { return exchanged_back(amount, *inputs.sold_at); };
  settled.cost = settled.labour = Money(0, inputs.sold_in());
  for (CostLine& line : settled.lines) {
    line.each = sold(line.each);
    line.amount = sold(line.amount);
    settled.cost += line.amount;
    if (line.kind == LineKind::hours) settled.labour += line.amount;
  }
  return settled;
}

std::pair<Share, Share> survival_ends(const PlannedOperation& op) {
  if (op.survival_band) return *op.survival_band;
  const std::int64_t tenth = (Share::whole() - op.survival).millionths() / 10;
  return {Share::millionths(std::max<std::int64_t>(1, op.survival.millionths() - tenth)),
          Share::millionths(op.survival.millionths() + tenth)};
}

Outcome<Settled> settle(const DraftedItems& drafts, const CostInputs& inputs, const Trial& trial,
                        Text text) {
  Settling settling(inputs, trial, text);
  for (std::size_t i = 0; i < inputs.items.size(); ++i)
    if (const Outcome<Done> done = settling.item(i, drafts[i]); !done) return done.problems();
  settling.whole_quote(LineKind::packing, "Packing", inputs.packing);
  settling.whole_quote(LineKind::shipping, "Shipping", inputs.shipping);
  Settled settled = settling.take();
  settled.hours.hands_on = settled.paid.hands_on;
  settled.hours.attended = settled.paid.attended;
  return settled;
}

Outcome<Settled> settle_item(const DraftedItems& drafts, const CostInputs& inputs,
                             std::size_t item, std::size_t first_line, const Trial& trial) {
  Settling settling(inputs, trial, Text::leave_out, first_line);
  if (const Outcome<Done> done = settling.item(item, drafts[item]); !done) return done.problems();
  return settling.take();
}

}  // namespace tangmark::costing
