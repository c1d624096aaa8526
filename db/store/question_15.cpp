// SPDX-License-Identifier: MIT
#include "db/store/commission_store.h"
#include "db/store/item_store.h"
#include "db/store/outside_work_store.h"
#include "db/store/question_list.h"
#include "db/store/quote_store.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::string item_title(const ShopFile& shop, std::optional<ItemId> id) {
  const auto item = id ? load_item(shop, *id) : std::nullopt;
  return item ? std::to_string(item->id.row()) + " " + item->title : "";
}

std::string day_or_nothing(const std::optional<CalendarDate>& day) {
  return day ? to_stored(*day) : "";
}

Outcome<Answer> answer_15(const ShopFile& shop, const Given&, Instant now) {
  const auto zone = load_settings(shop).zone;
  Answer answer{"What is waiting on what?", {}, {"Item", "Waits for", "Since", "Expected"}, {}};
  int overdue = 0;
  const auto add = [&](std::string item, std::string what, Instant since,
                       std::optional<CalendarDate> until) {
    if (until && *until < zone.date_of(now)) ++overdue;
    answer.rows.push_back(
        {std::move(item), std::move(what), to_stored(zone.date_of(since)), day_or_nothing(until)});
  };
  for (const KeptHold& hold : standing_holds(shop))
    add(item_title(shop, hold.item), hold.what, hold.since, hold.until);
  for (const KeptOutsideWork& out : outside_now(shop))
    add(item_title(shop, out.item), out.operation + " by " + out.who, out.sent_at, out.due_back);
  for (const KeptCommission& commission : list_commissions(shop)) {
    if (commission.state != CommissionState::quoted) continue;
    if (const auto quote = latest_quote(shop, commission.id);
        quote && quote->sent_at && !quote->answer)
      add("commission " + std::to_string(commission.number), "the buyer's answer to the quote",
          *quote->sent_at, quote->valid_until);
  }
  answer.sentences.push_back(answer.rows.empty() ? "Nothing waits."
                                                 : std::to_string(answer.rows.size()) + " wait.");
  if (overdue > 0)
    answer.sentences.push_back(std::to_string(overdue) +
                               " of them are past their expected day: ask.");
  return answer;
}

}  // namespace

const Question question_15{
    15, "What is waiting on what: glue, post, wood, engraver, buyer's answer?", {}, answer_15};

}  // namespace tangmark::db
