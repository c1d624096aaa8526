// SPDX-License-Identifier: MIT
#include "db/store/next_steps.h"

#include "db/store/commission_store.h"
#include "db/store/learning_store.h"
#include "db/store/named.h"
#include "db/store/promise_reader.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "db/store/timer_store.h"

namespace tangmark::db {
namespace {

using Steps = std::vector<NextStep>;

// Every timer that was left running, as of the time its work should have ended.
Steps of_timers(const ShopFile& shop, Instant now) {
  const auto settings = load_settings(shop);
  Steps steps;
  for (const auto& timer : open_timers(shop))
    if (const auto lost = forgotten_timer(shop, timer, settings, now)) {
      const std::string number = std::to_string(timer.number);
      steps.push_back({"Stop timer " + number + " as of " + to_text(lost->ended, settings.zone),
                       "stop_timer",
                       {{"timer", number}, {"until", to_stored(lost->ended)}}});
    }
  return steps;
}

Steps of_promises(const ShopFile& shop, Instant now) {
  const auto forecasts =
      commission::forecast(read_promise_queue(shop, now, std::nullopt), commission::Runs{});
  if (!forecasts) return {};
  Steps steps;
  for (const auto& one : *forecasts) {
    const auto late = one.days_late > 0 ? load_commission(shop, one.commission) : std::nullopt;
    if (!late) continue;
    const std::string number = std::to_string(late->number);
    steps.push_back({"Letter of delay for commission " + number,
                     "tell_delay",
                     {{"commission", number}, {"new_day", to_stored(one.p80)}}});
  }
  return steps;
}

Steps of_the_record(const ShopFile& shop, const Given& given) {
  std::optional<commission::ModelId> only;
  if (given_text(given, "model"))
    if (const auto model = given_thing(shop, given, "model", model_named)) only = model->id;
  Steps steps;
  for (const ModelProposal& one : model_proposals(shop, only)) {
    const std::string what(word_of(one.what));
    steps.push_back({"Take " + what + " of " + one.of + " into " + one.model.name,
                     "accept_estimate",
                     {{"model", one.model.name}, {"what", what}, {"of", one.of}}});
  }
  if (only) return steps;
  for (const LoadProposal& one : load_proposals(shop, load_settings(shop)))
    steps.push_back({"Share a " + one.kind + " firing by " + std::to_string(one.proposed),
                     "expect_load",
                     {{"kind", one.kind}, {"blades", std::to_string(one.proposed)}}});
  return steps;
}

Steps of_a_year(const ShopFile& shop, const Given& given, Instant now) {
  const int this_year = static_cast<int>(load_settings(shop).zone.date_of(now).year());
  const std::string year = given_text(given, "year").value_or(std::to_string(this_year));
  return {{"Every line of it as a table", "ledger", {{"year", year}}},
          {"Note a rate of exchange", "note_rate", {}}};
}

}  // namespace

Steps next_steps(const ShopFile& shop, int question, const Given& given, Instant now) {
  switch (question) {
    case 31:
      return of_timers(shop, now);
    case 32:
      return of_promises(shop, now);
    case 35:
      return of_the_record(shop, given);
    case 39:
      return of_a_year(shop, given, now);
    default:
      return {};
  }
}

}  // namespace tangmark::db
