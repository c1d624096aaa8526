// SPDX-License-Identifier: MIT
#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "db/store/timer_store.h"

namespace tangmark::db {
namespace {

std::string blades_on(const ShopFile& shop, const blade::Timer& timer) {
  std::string numbers;
  for (const auto id : timer.blades)
    if (const auto one = load_blade(shop, id))
      numbers += (numbers.empty() ? "" : ", ") + std::to_string(one->number);
  return numbers;
}

Outcome<Answer> answer_31(const ShopFile& shop, const Given&, Instant now) {
  const auto settings = load_settings(shop);
  Answer answer{
      "Which timers run?",
      {},
      {"Timer", "Operation", "Blades", "State", "Since", "So far", "Forgotten; proposed end"},
      {}};
  int lost_ones = 0;
  for (const auto& timer : open_timers(shop)) {
    const auto lost = forgotten_timer(shop, timer, settings, now);
    if (lost) ++lost_ones;
    answer.rows.push_back(
        {std::to_string(timer.number), timer.operation, blades_on(shop, timer),
         std::string(word_of(timer.state)), to_text(timer.started_at(), settings.zone),
         to_text(time_run(timer, now)), lost ? to_text(lost->ended, settings.zone) : ""});
  }
  if (answer.rows.empty()) answer.sentences.push_back("No timer runs.");
  if (lost_ones > 0)
    answer.sentences.push_back(
        (lost_ones == 1 ? "One seems forgotten: stop it"
                        : std::to_string(lost_ones) + " seem forgotten: stop them") +
        std::string(" as of when the work ended. The last column proposes the time."));
  return answer;
}

}  // namespace

const Question question_31{31, "Which timers run, and was one forgotten?", {}, answer_31};

}  // namespace tangmark::db
