// SPDX-License-Identifier: MIT
#include "db/store/commission_store.h"
#include "db/store/named.h"
#include "db/store/promise_reader.h"
#include "db/store/question_list.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::string number_of(const ShopFile& shop, CommissionId id) {
  const auto commission = load_commission(shop, id);
  return commission ? std::to_string(commission->number) : "";
}

std::string verdict(const Forecast& forecast, CalendarDate day) {
  if (day >= forecast.p95) return "Yes: " + to_text(day) + " is met in more than 95 of 100 runs.";
  if (day >= forecast.p80) return "Yes: " + to_text(day) + " is met in more than 80 of 100 runs.";
  if (day >= forecast.p50)
    return "Yes, if luck holds: " + to_text(day) + " is met in fewer than 80 of 100 runs; " +
           to_text(forecast.p80) + " is honest.";
  return "No: " + to_text(day) + " is met in fewer than half of the runs; " +
         to_text(forecast.p80) + " is honest.";
}

Outcome<Answer> answer_01(const ShopFile& shop, const Given& given, Instant now) {
  const auto commission = given_thing(shop, given, "commission", commission_named);
  if (!commission) return commission.problems();
  std::optional<CalendarDate> day = commission->wanted_by;
  if (const auto text = given_text(given, "day")) {
    const auto read = parse_date(*text, "day");
    if (!read) return read.problem();
    day = *read;
  }
  const bool rush = given_text(given, "rush").value_or("no") == "yes";
  const auto promise =
      answer_promise(shop, *commission, now, Runs{}, rush ? QueuePlace::rush : QueuePlace::last);
  if (!promise) return promise.problems();
  const Forecast& forecast = promise->forecast;
  Answer answer{"Can I take commission " + std::to_string(commission->number) + ", and what slips?",
                {},
                {},
                {}};
  if (day) answer.sentences.push_back(verdict(forecast, *day));
  answer.sentences.push_back("Ready by " + to_text(forecast.p50) + " in 50, by " +
                             to_text(forecast.p80) + " in 80 and by " + to_text(forecast.p95) +
                             " in 95 of 100 runs of the queue.");
  for (const LateShare& cause : promise->causes)
    if (cause.part >= 0.2)
      answer.sentences.push_back("When it runs late, it is mostly because " +
                                 std::string(sentence(cause.cause)) + ".");
  if (promise->harmed.empty()) answer.sentences.push_back("Nobody else is made to wait.");
  answer.columns = {"Commission", "Ready without it", "Ready with it", "Promised", "Promise"};
  for (const Harm& harm : promise->harmed)
    answer.rows.push_back({number_of(shop, harm.commission), to_stored(harm.before),
                           to_stored(harm.after), harm.promised ? to_stored(*harm.promised) : "",
                           harm.breaks_promise ? "breaks" : "holds"});
  return answer;
}

}  // namespace

const Question question_01{1,
                           "Can I take this commission by a day, and what slips?",
                           {{"commission", "Commission", FieldKind::commission, true, "12"},
                            {"day", "Day", FieldKind::date, false, "2027-05-12"},
                            {"rush", "As a rush, before all others", FieldKind::yes_no}},
                           answer_01};

}  // namespace tangmark::db
