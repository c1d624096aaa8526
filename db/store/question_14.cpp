// SPDX-License-Identifier: MIT
#include "db/store/commission_store.h"
#include "db/store/promise_reader.h"
#include "db/store/promise_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "domain/commission/contact_rules.h"

namespace tangmark::db {
namespace {

using namespace commission;

void add_late(const ShopFile& shop, Instant now, Answer& answer) {
  const auto forecasts = forecast(read_promise_queue(shop, now, std::nullopt), Runs{});
  if (!forecasts) {
    answer.sentences.push_back("Nothing can be forecast: " + forecasts.problem().sentence + " " +
                               forecasts.problem().remedy);
    return;
  }
  for (const Forecast& one : *forecasts) {
    if (!one.promised || one.days_late <= 0) continue;
    const auto commission = load_commission(shop, one.commission);
    if (!commission) continue;
    answer.rows.push_back({std::to_string(commission->number),
                           "late by " + std::to_string(one.days_late) + " days",
                           to_stored(*one.promised), to_stored(one.p80), "tell_delay"});
  }
}

void add_silent(const ShopFile& shop, Instant now, Answer& answer) {
  const ShopSettings settings = load_settings(shop);
  for (const KeptCommission& commission : list_commissions(shop)) {
    if (const auto notice = unanswered_notice(shop, commission.id);
        notice && !is_over(commission.state))
      answer.rows.push_back({std::to_string(commission.number), "told of a delay, no answer yet",
                             "", to_stored(notice->new_day), "record_consent"});
    const auto silent =
        silent_too_long(commission, last_contact_day(shop, commission, settings.zone),
                        settings.zone.date_of(now), settings.contact_days);
    if (silent)
      answer.rows.push_back(
          {std::to_string(commission.number), silent->sentence, "", "", "note_contact"});
  }
}

Outcome<Answer> answer_14(const ShopFile& shop, const Given&, Instant now) {
  Answer answer{"Whom must I tell about a delay this week?",
                {},
                {"Commission", "Why", "Promised", "Forecast", "Then note it with"},
                {}};
  add_late(shop, now, answer);
  add_silent(shop, now, answer);
  answer.sentences.push_back(
      answer.rows.empty()
          ? "Nobody: every promise holds in 80 of 100 runs, and nobody waits in silence."
          : std::to_string(answer.rows.size()) + " to tell or ask.");
  return answer;
}

}  // namespace

const Question question_14{14, "Whom must I tell about a delay this week?", {}, answer_14};

}  // namespace tangmark::db
