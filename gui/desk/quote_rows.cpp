// SPDX-License-Identifier: MIT
#include "gui/desk/quote_rows.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "domain/costing/line_change.h"

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
  return static_cast<double>(money.minor()) /
         static_cast<double>(money.currency().minor_per_major());
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

bool has_change(const std::vector<costing::LineChange>& changes, const std::string& name) {
  return !name.empty() &&
         std::any_of(changes.begin(), changes.end(), [&](const auto& c) { return c.what == name; });
}

// Which figures of a line may be changed, and under what name.
void open_cells(const costing::CostLine& line, QuoteRow& row) {
  using From = costing::LineOrigin::From;
  row.each_name = row.name;
  if (line.origin.from == From::ingredient) {
    row.cells = {QuoteCell::how_much, QuoteCell::each};
  } else if (line.kind == LineKind::hours) {
    row.cells = {QuoteCell::how_much, QuoteCell::each};
    row.each_name = "Hourly rate";
  } else if (line.kind == LineKind::overhead) {
    row.cells = {QuoteCell::each};
  } else if (line.kind == LineKind::packing || line.kind == LineKind::shipping) {
    row.cells = {QuoteCell::amount};
  } else if (line.kind == LineKind::fee) {
    row.cells = {QuoteCell::how_much};
  }
}

struct Rows {
  const costing::CostInputs& costs;
  const costing::CostSheet& sheet;
  const std::vector<costing::LineChange>& changes;

  QuoteRow row_of(const costing::CostLine& line) const {
    const auto [much, unit] = split_quantity(line.quantity);
    QuoteRow row{row_text(line), much, unit, amount_text(line.each), amount_text(line.amount)};
    if (line.kind == LineKind::fee) {
      row.how_much = to_text(costs.terms.fee.of_total);
      row.unit = "%";
      if (row.how_much.ends_with(" %")) row.how_much.erase(row.how_much.size() - 2);
      row.each.clear();
    }
    row.name = costing::name_of_line(costs, line);
    open_cells(line, row);
    row.by_hand = has_change(changes, row.name) ||
                  (row.each_name != row.name && has_change(changes, row.each_name));
    return row;
  }

  // The loss follows what comes through each operation, which is what may be changed.
  void add_survivals(std::vector<QuoteRow>& own) const {
    for (const costing::SurvivalLine& line : costing::survival_lines(costs)) {
      std::string share = to_text(line.survival);
      if (share.ends_with(" %")) share.erase(share.size() - 2);
      QuoteRow row{line.operation, share, "% come through", "", ""};
      row.name = row.each_name = line.name;
      row.cells = {QuoteCell::how_much};
      row.by_hand = has_change(changes, line.name);
      own.push_back(std::move(row));
    }
  }

  std::vector<QuoteRow> all() const {
    std::vector<QuoteRow> rows;
    for (const Group& group : groups) {
      Money sum(0, sheet.price.cost.currency());
      std::vector<QuoteRow> own;
      if (group.kind == LineKind::loss) add_survivals(own);
      for (const costing::CostLine& line : sheet.lines) {
        if (line.kind != group.kind) continue;
        sum += line.amount;
        own.push_back(row_of(line));
      }
      if (own.empty()) continue;
      rows.push_back({group.name, "", "", "", amount_text(sum), true, false});
      rows.insert(rows.end(), own.begin(), own.end());
    }
    rows.push_back(
        {"Cost, with your hours paid", "", "", "", amount_text(sheet.price.cost), false, true});
    return rows;
  }
};

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

PriceAnswer answer_of(const Sight& sight, const costing::CostSheet& sheet, Money aim) {
  const costing::Price& price = sheet.price;
  PriceAnswer answer;
  answer.margin = amount_text(price.without_tax - price.cost);
  answer.margin_share = to_text(tenths_of_percent(price.margin));
  answer.share = price.cost.is_zero()
                     ? ""
                     : to_text(tenths_of_percent(price.margin)) + " of the price, " +
                           to_text(tenths_of_percent(price.markup)) + " on the cost";
  answer.earned_per_hour = sheet.earned_per_hour ? amount_text(*sheet.earned_per_hour) : "no hours";
  answer.aim_per_hour = "aim " + amount_text(aim);
  answer.floor = amount_text(sheet.floor);
  answer.deposit = amount_text(price.deposit);
  answer.deposit_note = to_text(sight.settings.deposit_share) + ", to start";
  answer.total = amount_text(price.total);
  answer.tax = price.tax.is_zero() ? "no tax" : "tax " + amount_text(price.tax);
  const Money above = price.shown - sheet.floor;
  answer.sentence = above.minor() >= 0 ? "Above the floor by " + amount_text(above) + "."
                                       : "Below the floor by " + amount_text(-above) +
                                             ": you earn less than your own rate.";
  answer.parts = parts_of(sheet);
  return answer;
}

// How far apart the two ends lie from the price as it stands.
std::vector<Mover> movers_of(const costing::CostSheet& sheet) {
  std::vector<Mover> movers;
  for (const costing::Mover& mover : sheet.movers) {
    Mover made;
    made.name = mover.text;
    made.range = mover.assumed ? "10 % either way" : "by your record";
    const Money low = mover.price_low - mover.price_now;
    const Money high = mover.price_high - mover.price_now;
    made.low = major(low);
    made.high = major(high);
    made.low_text = difference_text(low);
    made.high_text = difference_text(high);
    movers.push_back(std::move(made));
  }
  return movers;
}

Money aim_of(const costing::CostInputs& costs) {
  return costs.sold_at ? exchanged_back(costs.rates.per_hour, *costs.sold_at)
                       : costs.rates.per_hour;
}

}  // namespace

QuoteLive live_of(const Sight& sight, const costing::CostInputs& costs,
                  const costing::CostSheet& sheet,
                  const std::vector<costing::LineChange>& changes) {
  return {Rows{costs, sheet, changes}.all(), amount_text(sheet.price.shown),
          answer_of(sight, sheet, aim_of(costs)), movers_of(sheet)};
}

}  // namespace tangmark::desk
