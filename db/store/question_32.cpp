// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/store/bench_time_store.h"
#include "db/store/commission_store.h"
#include "db/store/named.h"
#include "db/store/promise_reader.h"
#include "db/store/promise_record.h"
#include "db/store/promise_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

// "15 Mar, then 20 Apr (told 3 Mar)": nothing that was ever promised is left out.
std::string history_of(const std::vector<KeptPromise>& promises, const Zone& zone) {
  std::string text;
  for (const KeptPromise& promise : promises) {
    text += (text.empty() ? "" : "; then ") + to_stored(promise.day) + ", given " +
            to_stored(zone.date_of(promise.made_at));
    if (promise.told) text += ", told " + *promise.told;
  }
  return text;
}

std::string standing_of(const Forecast& forecast) {
  if (!forecast.promised) return "no day promised";
  const int kept = static_cast<int>(100 * (1 - forecast.late_part) + 0.5);
  if (forecast.days_late > 0)
    return "at risk: " + std::to_string(forecast.days_late) + " days late, kept in " +
           std::to_string(kept) + " of 100";
  return "holds in " + std::to_string(kept) + " of 100";
}

std::string consent_of(const ShopFile& shop, CommissionId id) {
  const auto notices = delay_notices_of(shop, id);
  if (notices.empty()) return "";
  return "new day " + to_stored(notices.back().new_day) + ": " +
         std::string(word_of(notices.back().consent));
}

// The dates stand on the hours the maker means to be at the bench; what was logged stands beside.
void say_hours(const ShopFile& shop, Instant now, Answer& answer) {
  const auto logged = logged_a_week(shop, now);
  if (!logged) return;
  const BenchTime bench = load_bench_time(shop);
  Duration week{};
  for (unsigned day = 0; day < 7; ++day) week += bench.on(date::weekday(day));
  answer.sentences.push_back("Your week has " + hours_text(week) + " h at the bench; " +
                             hours_text(*logged) + " h a week were logged of late.");
}

Outcome<Answer> answer_32(const ShopFile& shop, const Given&, Instant now) {
  const Zone zone = load_settings(shop).zone;
  const auto forecasts = forecast(read_promise_queue(shop, now, std::nullopt), Runs{});
  if (!forecasts) return forecasts.problems();
  Answer answer{"Which promises hold?",
                {},
                {"Commission", "Promised", "50 of 100", "80 of 100", "95 of 100", "Stands",
                 "Delay notice", "Every promise given"},
                {}};
  int at_risk = 0;
  for (const Forecast& one : *forecasts) {
    const auto commission = load_commission(shop, one.commission);
    if (!commission) continue;
    if (one.days_late > 0) ++at_risk;
    answer.rows.push_back(
        {std::to_string(commission->number), one.promised ? to_stored(*one.promised) : "",
         to_stored(one.p50), to_stored(one.p80), to_stored(one.p95), standing_of(one),
         consent_of(shop, one.commission), history_of(promises_of(shop, one.commission), zone)});
  }
  answer.sentences.push_back(
      at_risk == 0 ? "Every promise given holds in 80 of 100 runs of the queue."
                   : std::to_string(at_risk) + (at_risk == 1 ? " promise is" : " promises are") +
                         " at risk. A letter is drafted for each, for you to edit; what was said "
                         "is kept.");
  say_hours(shop, now, answer);
  return answer;
}

}  // namespace

const Question question_32{
    32, "Which promises hold, and which are at risk by how much?", {}, answer_32};

}  // namespace tangmark::db
