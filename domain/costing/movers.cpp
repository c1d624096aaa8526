// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cstdlib>

#include "domain/costing/settle.h"

namespace tangmark::costing {
namespace {

constexpr std::size_t movers_shown = 3;

struct LineRange {
  Share low, high;
  bool assumed = true;
};

/// The range of each line in the order `settle` writes them; the same lines are left out.
std::vector<LineRange> ranges_of(const DraftedItems& drafts, const Settled& base) {
  std::vector<LineRange> ranges(base.lines.size(), {Swing{}.low, Swing{}.high, true});
  std::size_t line = 0;
  for (std::size_t item = 0; item < drafts.size(); ++item) {
    while (line < base.lines.size() && base.lines[line].item < item) ++line;
    for (const CostDraft& draft : drafts[item]) {
      const bool without_line =
          draft.kind == LineKind::hours && draft.hands_on + draft.attended == Duration{};
      if (without_line) continue;
      if (draft.swing) ranges[line] = {draft.swing->low, draft.swing->high, false};
      ++line;
    }
  }
  return ranges;
}

bool loss_is_on_record(const CostInputs& inputs) {
  for (const CostedItem& item : inputs.items)
    for (const PlannedOperation& op : item.operations)
      if (op.survival_band) return true;
  return false;
}

/// What the build-up comes to when the trial is made.
struct Tried {
  Money price;
  std::optional<Money> earned;
};

Tried tried(const DraftedItems& drafts, const CostInputs& inputs, const Trial& trial,
            const Price& price) {
  const Outcome<Settled> settled = settle(drafts, inputs, trial, Text::leave_out);
  if (!settled) return {price.shown, std::nullopt};
  PriceTerms unstepped = inputs.terms;
  unstepped.step.reset();
  const bool by_cost = std::holds_alternative<Margin>(unstepped.rule) ||
                       std::holds_alternative<MarkUp>(unstepped.rule);
  Tried t{price.shown, earned_per_hour(price.without_tax,
                                       settled->cost + price.fee - settled->labour, settled->paid)};
  if (by_cost) {
    const Outcome<Price> moved = price_for(settled->cost, unstepped);
    if (moved) t.price = moved->shown;
  } else {
    t.price = floor_price(settled->cost, unstepped).value_or(price.shown);
  }
  return t;
}

std::int64_t span(const Mover& m) {
  return std::llabs(m.price_high.minor() - m.price_low.minor());
}

}  // namespace

std::vector<Mover> movers_of(const DraftedItems& drafts, const CostInputs& inputs,
                             const Settled& base, const Price& price) {
  const std::vector<LineRange> ranges = ranges_of(drafts, base);
  std::vector<Mover> movers;
  std::optional<std::size_t> loss_seen;  // all losses move together, as one mover
  for (std::size_t i = 0; i < base.lines.size(); ++i) {
    const bool loss = base.lines[i].kind == LineKind::loss;
    if (loss && loss_seen) continue;
    if (loss) loss_seen = i;
    Trial low{Trial::What::line, i, ranges[i].low}, high{Trial::What::line, i, ranges[i].high};
    // Few survivors is the dear end: its price is the high one.
    if (loss) low.what = Trial::What::survival_high, high.what = Trial::What::survival_low;
    const Tried at_low = tried(drafts, inputs, low, price);
    const Tried at_high = tried(drafts, inputs, high, price);
    movers.push_back({i, base.lines[i].text, at_low.price, at_high.price, at_low.earned,
                      at_high.earned, loss ? !loss_is_on_record(inputs) : ranges[i].assumed});
  }
  std::stable_sort(movers.begin(), movers.end(),
                   [](const Mover& a, const Mover& b) { return span(a) > span(b); });
  if (movers.size() > movers_shown) movers.resize(movers_shown);
  return movers;
}

}  // namespace tangmark::costing
