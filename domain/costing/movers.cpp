// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cstdlib>
#include <utility>

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
      if (!draft.has_line()) continue;
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

/// What the price and the earnings come to when a trial is made.
struct Tried {
  Money price;
  std::optional<Money> earned;
};

/// Tries changes against one settled quote.
class Trying {
 public:
  Trying(const DraftedItems& drafts, const CostInputs& inputs, const Settled& base,
         const Price& price)
      : drafts_(drafts), inputs_(inputs), base_(base), price_(price), terms_(inputs.terms) {
    terms_.step.reset();
    std::size_t line = 0;
    for (std::size_t item = 0; item < drafts.size(); ++item) {
      first_line_.push_back(line);
      while (line < base.lines.size() && base.lines[line].item == item) ++line;
      items_.push_back(settle_item(drafts, inputs, item, first_line_.back(), Trial{}));
    }
  }

  Tried operator()(const Trial& trial) const {
    const std::size_t item =
        trial.what == Trial::What::line ? base_.lines[trial.line].item : drafts_.size();
    if (item >= drafts_.size()) return judged(settle(drafts_, inputs_, trial, Text::leave_out));
    Outcome<Settled> changed = settle_item(drafts_, inputs_, item, first_line_[item], trial);
    if (!changed || !items_[item]) return judged(std::move(changed));
    Settled sum = std::move(changed).value();
    const Settled& before = *items_[item];
    sum.cost += base_.cost - before.cost;
    sum.labour += base_.labour - before.labour;
    sum.paid.hands_on += base_.paid.hands_on - before.paid.hands_on;
    sum.paid.attended += base_.paid.attended - before.paid.attended;
    return judged(std::move(sum));
  }

 private:
  Tried judged(Outcome<Settled> worked_out) const {
    if (!worked_out) return {price_.shown, std::nullopt};
    const auto sold = [&](Money m) {
      return inputs_.sold_at ? exchanged_back(m, *inputs_.sold_at) : m;
    };
    Settled settled = std::move(worked_out).value();
    settled.cost = sold(settled.cost);
    settled.labour = sold(settled.labour);
    const bool by_cost =
        std::holds_alternative<Margin>(terms_.rule) || std::holds_alternative<MarkUp>(terms_.rule);
    Tried t{price_.shown,
            earned_per_hour(price_.without_tax, settled.cost + price_.fee - settled.labour,
                            settled.paid)};
    if (by_cost) {
      const Outcome<Price> moved = price_for(settled.cost, terms_);
      if (moved) t.price = moved->shown;
    } else {
      t.price = floor_price(settled.cost, terms_).value_or(price_.shown);
    }
    return t;
  }

  const DraftedItems& drafts_;
  const CostInputs& inputs_;
  const Settled& base_;
  const Price& price_;
  PriceTerms terms_;
  std::vector<std::size_t> first_line_;
  std::vector<Outcome<Settled>> items_;
};

std::int64_t span(const Mover& m) {
  return std::llabs(m.price_high.minor() - m.price_low.minor());
}

}  // namespace

std::vector<Mover> movers_of(const DraftedItems& drafts, const CostInputs& inputs,
                             const Settled& base, const Price& price) {
  const std::vector<LineRange> ranges = ranges_of(drafts, base);
  const Trying tried(drafts, inputs, base, price);
  const Tried now = tried(Trial{});
  std::vector<Mover> movers;
  std::optional<std::size_t> loss_seen;  // all losses move together, as one mover
  for (std::size_t i = 0; i < base.lines.size(); ++i) {
    const bool loss = base.lines[i].kind == LineKind::loss;
    if (loss && loss_seen) continue;
    if (loss) loss_seen = i;
    Trial low{Trial::What::line, i, ranges[i].low}, high{Trial::What::line, i, ranges[i].high};
    // Few survivors is the dear end: its price is the high one.
    if (loss) low.what = Trial::What::survival_high, high.what = Trial::What::survival_low;
    const Tried at_low = tried(low);
    const Tried at_high = tried(high);
    movers.push_back({i, base.lines[i].text, now.price, at_low.price, at_high.price, at_low.earned,
                      at_high.earned, loss ? !loss_is_on_record(inputs) : ranges[i].assumed});
  }
  std::stable_sort(movers.begin(), movers.end(),
                   [](const Mover& a, const Mover& b) { return span(a) > span(b); });
  if (movers.size() > movers_shown) movers.resize(movers_shown);
  return movers;
}

}  // namespace tangmark::costing
