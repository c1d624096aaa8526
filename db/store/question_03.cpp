// SPDX-License-Identifier: MIT
#include "db/store/blade_actuals.h"
#include "db/store/item_store.h"
#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/quote_inputs.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

// What similar jobs really took, beside what is planned for this one.
void add_similar(const ShopFile& shop, commission::CommissionId commission, Answer& answer) {
  const auto settings = load_settings(shop);
  for (const auto& item : items_of(shop, commission)) {
    if (!item.model || item.cancelled_on) continue;
    const auto similar = latest_actuals(shop, *item.model, 3, settings);
    if (similar.empty()) continue;
    std::string hours;
    for (const BladeActuals& one : similar)
      hours += (hours.empty() ? "" : ", ") + hours_text(one.hands_on) + " h";
    answer.sentences.push_back("The last " + std::to_string(similar.size()) + " like " +
                               item.title + " took " + hours + " hands on.");
  }
}

Outcome<Answer> answer_03(const ShopFile& shop, const Given& given, Instant now) {
  const auto commission = given_thing(shop, given, "commission", commission_named);
  if (!commission) return commission.problems();
  const auto draft = draft_quote(shop, *commission, {}, now);
  if (!draft) return draft.problems();
  Answer answer{
      "What should I quote for commission " + std::to_string(commission->number) + "?", {}, {}, {}};
  const auto& quote = draft->quote;
  answer.sentences.push_back(to_text(quote.price) + " by " + quote.price_how + "; with tax " +
                             to_text(quote.total) + ".");
  answer.sentences.push_back("At that you earn " + to_text(quote.earned_per_hour) +
                             " an hour over " + to_text(quote.hands_on) + " hands on; below " +
                             to_text(quote.floor) + " you earn less than your own rate.");
  for (const auto& mover : draft->sheet.movers)
    answer.sentences.push_back(mover.text + " moves the price most: from " +
                               to_text(mover.price_low) + " to " + to_text(mover.price_high) + ".");
  add_similar(shop, commission->id, answer);
  for (const std::string& words : draft->inputs.assumptions) answer.sentences.push_back(words);
  answer.columns = {"Kind", "Line", "Amount"};
  for (const auto& line : quote.lines)
    if (line.side == commission::QuoteSide::cost)
      answer.rows.push_back({line.kind, line.text, amount_text(line.amount)});
  return answer;
}

}  // namespace

const Question question_03{3,
                           "What should I quote for this one?",
                           {{"commission", "Commission", FieldKind::commission, true, "12"}},
                           answer_03};

}  // namespace tangmark::db
