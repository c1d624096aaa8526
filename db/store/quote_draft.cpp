// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/store/quote_inputs.h"
#include "db/store/quote_store.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::string figure_of(const costing::Quantity& quantity) {
  return costing::to_text(costing::Quantity{quantity.thousandths, ""});
}

void add_cost_lines(const costing::CostSheet& sheet, Quote& quote) {
  std::int64_t position = 0;
  for (const costing::CostLine& line : sheet.lines)
    quote.lines.push_back({.side = QuoteSide::cost,
                           .position = ++position,
                           .kind = std::string(costing::to_word(line.kind)),
                           .text = line.text,
                           .quantity = figure_of(line.quantity),
                           .unit = line.quantity.unit,
                           .each = line.each,
                           .amount = line.amount});
}

void add_price_lines(const costing::CostInputs& inputs, const costing::CostSheet& sheet,
                     Quote& quote) {
  std::int64_t position = 0;
  for (const costing::PriceLine& line : costing::price_lines(inputs, sheet))
    quote.lines.push_back({.side = QuoteSide::price,
                           .position = ++position,
                           .kind = "price",
                           .text = line.text,
                           .quantity = std::to_string(line.pieces),
                           .unit = std::nullopt,
                           .each = std::nullopt,
                           .amount = line.amount});
}

std::optional<std::string> joined(const std::vector<std::string>& assumptions) {
  std::string all;
  for (const std::string& words : assumptions) all += (all.empty() ? "" : "\n") + words;
  if (all.empty()) return std::nullopt;
  return all;
}

}  // namespace

Outcome<QuoteDraft> draft_quote(const ShopFile& shop, const KeptCommission& commission,
                                const QuoteWish& wish, Instant now) {
  auto inputs = quote_inputs(shop, commission, wish, now);
  if (!inputs) return inputs.problems();
  const auto sheet = costing::build_up(inputs->costs);
  if (!sheet) return sheet.problems();
  const ShopSettings settings = load_settings(shop);
  const auto newest = latest_quote(shop, commission.id);
  Quote quote{.commission = commission.id, .made_at = now, .valid_until = {}};
  quote.version = newest ? newest->version + 1 : 1;
  quote.valid_until = CalendarDate(date::sys_days(settings.zone.date_of(now)) +
                                   date::days(wish.valid_days.value_or(settings.quote_valid_days)));
  quote.cost = sheet->price.cost;
  quote.price = sheet->price.shown;
  quote.tax = sheet->price.tax;
  quote.total = sheet->price.total;
  quote.deposit = sheet->price.deposit;
  quote.floor = sheet->floor;
  quote.earned_per_hour = sheet->earned_per_hour.value_or(Money(0, commission.currency));
  quote.tax_mode = settings.tax_mode;
  quote.tax_rate = settings.tax_mode == TaxMode::none ? Share() : settings.tax_rate;
  quote.price_how = inputs->price_how;
  quote.hands_on = sheet->hours.hands_on;
  quote.attended = sheet->hours.attended;
  quote.unattended = sheet->hours.unattended;
  quote.assumptions = joined(inputs->assumptions);
  if (!inputs->changes.empty()) quote.changes = costing::to_text(inputs->changes);
  if (inputs->costs.sold_at) quote.rate = to_text(*inputs->costs.sold_at);
  add_cost_lines(*sheet, quote);
  add_price_lines(inputs->costs, *sheet, quote);
  return QuoteDraft{std::move(inputs).value(), *sheet, std::move(quote)};
}

}  // namespace tangmark::db
