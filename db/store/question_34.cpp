// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "db/row.h"
#include "db/store/blade_actuals.h"
#include "db/store/item_store.h"
#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/quote_store.h"
#include "db/store/settings_store.h"
#include "domain/costing/estimate_against_actual.h"

namespace tangmark::db {
namespace {

using namespace commission;
using costing::CostLine;
using costing::CostSheet;
using costing::LineKind;

// Both sides are brought to the lines that the record can tell apart: hours by operation, and the
// rest by kind. Box, post and payment fee are no part of a blade's record.
std::optional<std::string> line_name(LineKind kind, const std::string& text) {
  switch (kind) {
    case LineKind::hours:
      return text;
    case LineKind::material:
    case LineKind::used_up:
      return "Steel, handle and what is used up";
    case LineKind::energy:
      return "Energy";
    case LineKind::made_elsewhere:
      return "Work done elsewhere";
    case LineKind::overhead:
      return "Overhead";
    case LineKind::loss:
      return "Loss";
    case LineKind::packing:
    case LineKind::shipping:
    case LineKind::fee:
      break;
  }
  return std::nullopt;
}

LineKind folded(LineKind kind) {
  return kind == LineKind::used_up ? LineKind::material : kind;
}

std::int64_t thousandths_of(const std::optional<std::string>& figure) {
  if (!figure) return 0;
  const auto read = parse_quantity(*figure, "quantity");
  return read ? read->millionths() / 1000 : 0;
}

void add(CostSheet& sheet, LineKind kind, const std::string& text, Money amount,
         costing::Quantity quantity) {
  if (amount.is_zero() && quantity.thousandths == 0) return;
  sheet.lines.push_back({kind, text, std::move(quantity), amount, amount, 0});
  sheet.price.cost += amount;
}

// The lines of one item of a quote: they stand in the order of the items, each ending with its
// overhead and loss.
CostSheet quoted_sheet(const KeptQuote& quote, std::size_t item, Currency own) {
  CostSheet sheet;
  const Money none(0, own);
  sheet.price.cost = none;
  std::size_t at = 0;
  bool closing = false;
  for (const QuoteLine& line : quote.lines) {
    const auto kind = costing::line_kind_from(line.kind);
    if (line.side != QuoteSide::cost || !kind) continue;
    const bool closes = *kind == LineKind::overhead || *kind == LineKind::loss;
    if (closing && !closes) ++at;
    closing = closes;
    const auto name = line_name(*kind, line.text);
    if (at != item || !name) continue;
    const bool hours = *kind == LineKind::hours;
    add(sheet, folded(*kind), *name, at_home(quote, line.amount, own).value_or(none),
        {hours ? thousandths_of(line.quantity) : 0, hours ? "h" : ""});
  }
  sheet.earned_per_hour = at_home(quote, quote.earned_per_hour, own);
  return sheet;
}

void add_hours(const ShopFile& shop, const BladeActuals& blade, const ShopSettings& settings,
               CostSheet& sheet) {
  Query query(shop, R"(
SELECT operation, sum(hands_on_s) AS hands_on_s, sum(attended_s) AS attended_s
FROM log_entry AS entry WHERE blade_id = ? AND operation <> 'struck out'
  AND NOT EXISTS(SELECT 1 FROM log_entry AS later WHERE later.supersedes_id = entry.id)
GROUP BY operation ORDER BY min(started_at))");
  query.bind(blade.id);
  while (query.next()) {
    const costing::PaidTime paid{query.duration("hands_on_s"), query.duration("attended_s"),
                                 settings.attended_share};
    const auto seconds = paid.hands_on.count() +
                         paid.attended.count() * settings.attended_share.millionths() / 1'000'000;
    add(sheet, LineKind::hours, query.text("operation"),
        costing::pay_for(settings.hourly_rate, paid), {seconds * 1000 / 3600, "h"});
  }
}

CostSheet actual_sheet(const ShopFile& shop, const BladeActuals& blade,
                       const ShopSettings& settings) {
  CostSheet sheet;
  sheet.price.cost = Money(0, settings.currency);
  add_hours(shop, blade, settings, sheet);
  add(sheet, LineKind::material, "Steel, handle and what is used up", blade.steel + blade.used_up,
      {0, ""});
  add(sheet, LineKind::energy, "Energy", blade.energy, {0, ""});
  add(sheet, LineKind::made_elsewhere, "Work done elsewhere", blade.outside, {0, ""});
  add(sheet, LineKind::overhead, "Overhead", blade.overhead, {0, ""});
  add(sheet, LineKind::loss, "Loss", blade.lost, {0, ""});
  sheet.earned_per_hour = blade.earned_per_hour;
  return sheet;
}

struct QuotedItem {
  KeptQuote quote;
  std::size_t place;
};

std::optional<QuotedItem> quoted_item(const ShopFile& shop, blade::BladeId blade) {
  Query query(shop, "SELECT item_id FROM blade WHERE id = ?");
  query.bind(blade);
  if (!query.next() || query.is_null("item_id")) return std::nullopt;
  const auto item = load_item(shop, query.id<ItemId>("item_id"));
  if (!item || !item->commission) return std::nullopt;
  const auto quote = accepted_quote(shop, *item->commission);
  if (!quote) return std::nullopt;
  std::size_t place = 0;
  for (const KeptItem& other : items_of(shop, *item->commission)) {
    if (other.cancelled_on) continue;
    if (other.id == item->id) return QuotedItem{*quote, place};
    ++place;
  }
  return std::nullopt;
}

std::string signed_text(Money money) {
  return (money.minor() > 0 ? "+" : "") + amount_text(money);
}

void say_why(const std::string& blade, const costing::Comparison& compared, Answer& answer) {
  std::string why;
  for (const auto& line : costing::why_they_differ(compared)) {
    const Money difference = line.actual - line.quoted;
    why += (why.empty() ? "" : "; ") + line.text + " " + signed_text(difference);
    if (line.kind == LineKind::hours)
      why += " (" + costing::to_text(line.quoted_quantity) + " quoted, " +
             costing::to_text(line.actual_quantity) + " worked)";
  }
  answer.sentences.push_back("Blade " + blade + ": quoted " + to_text(compared.quoted) +
                             ", came to " + to_text(compared.actual) +
                             (why.empty() ? "." : ". Mostly: " + why + "."));
}

void add_blade(const ShopFile& shop, const BladeActuals& blade, const ShopSettings& settings,
               Answer& answer) {
  const std::string number = std::to_string(blade.number);
  const auto quoted = quoted_item(shop, blade.id);
  if (!quoted || !at_home(quoted->quote, quoted->quote.total, settings.currency)) {
    answer.sentences.push_back("Blade " + number +
                               " was never quoted, so only its record stands: see question 2.");
    return;
  }
  const auto compared =
      costing::compare(quoted_sheet(quoted->quote, quoted->place, settings.currency),
                       actual_sheet(shop, blade, settings));
  if (!compared) return;
  say_why(number, *compared, answer);
  for (const auto& line : compared->lines)
    answer.rows.push_back({number, line.text, amount_text(line.quoted), amount_text(line.actual),
                           signed_text(line.actual - line.quoted), amount_text(line.by_quantity),
                           amount_text(line.by_price)});
}

Outcome<Answer> answer_34(const ShopFile& shop, const Given& given, Instant) {
  const auto model = given_thing(shop, given, "model", model_named);
  if (!model) return model.problems();
  std::int64_t last = 3;
  if (const auto text = given_text(given, "last")) {
    const auto read = number_named(*text, "last");
    if (!read) return read.problem();
    last = std::clamp<std::int64_t>(*read, 1, 50);
  }
  const auto settings = load_settings(shop);
  Answer answer{"Quoted and actual: the last of " + model->name,
                {},
                {"Blade", "Line", "Quoted", "Actual", "Difference", "By quantity", "By price"},
                {}};
  const auto all = latest_actuals(shop, model->id, static_cast<int>(last), settings);
  if (all.empty()) answer.sentences.push_back("No finished blade of this model is on record.");
  for (const BladeActuals& blade : all) add_blade(shop, blade, settings, answer);
  if (!all.empty())
    answer.sentences.push_back(
        "Only what was logged counts as actual; box, post and payment fee are left out of both.");
  return answer;
}

}  // namespace

const Question question_34{34,
                           "The last pieces of a model: what was quoted, what came of it, and why?",
                           {{"model", "Model", FieldKind::model, true, "chef 240"},
                            {"last", "How many", FieldKind::number, false, "3", "3"}},
                           answer_34};

}  // namespace tangmark::db
