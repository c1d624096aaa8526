// SPDX-License-Identifier: MIT
#include "gui/desk/timer_offers.h"

#include "db/store/blade_store.h"
#include "db/store/timer_store.h"

namespace tangmark::desk {
namespace {

using blade::KeptTimer;
using blade::TimerState;

std::string blade_numbers(const Sight& sight, const KeptTimer& timer) {
  std::vector<std::string> numbers;
  for (const auto id : timer.blades)
    if (const auto blade = db::load_blade(sight.shop, id))
      numbers.push_back(std::to_string(blade->number));
  return listed(numbers);
}

bool is_done_without_timer(const std::string& operation) {
  return operation == "harden" || operation == "temper" || operation == "snap temper";
}

}  // namespace

std::string timer_words(const Sight& sight, const KeptTimer& timer) {
  const auto so_far = std::chrono::floor<std::chrono::minutes>(time_run(timer, sight.now));
  std::string text = "Timer " + std::to_string(timer.number) + ": " + timer.operation + " " +
                     blade_numbers(sight, timer) + ", " + std::string(word_of(timer.state)) + ", " +
                     to_text(Duration(so_far)) + " so far.";
  if (const auto lost = db::forgotten_timer(sight.shop, timer, sight.settings, sight.now))
    text += " It seems forgotten; stopping it as of " + when(sight, lost->ended) + " is proposed.";
  return text;
}

std::vector<Offer> timer_offers(const Sight& sight, const KeptTimer& timer) {
  const std::string number = std::to_string(timer.number);
  const auto lost = db::forgotten_timer(sight.shop, timer, sight.settings, sight.now);
  std::vector<Offer> offers;
  if (lost) {
    const std::string until = to_text(lost->ended, sight.zone());
    offers.push_back({"Stop it as of " + clock_text(lost->ended, sight.zone()),
                      DoNow{"stop_timer", {{"timer", number}, {"until", to_stored(lost->ended)}}},
                      "Enter", ""});
    offers.push_back({"Another time", OpenForm{"stop_timer", {{"timer", number}, {"until", until}}},
                      "Ctrl Enter", ""});
    return offers;
  }
  offers.push_back({"Stop and log it", DoNow{"stop_timer", {{"timer", number}}}, "Enter", ""});
  const bool runs = timer.state == TimerState::running;
  offers.push_back({runs ? "Pause" : "Go on",
                    DoNow{runs ? "pause_timer" : "resume_timer", {{"timer", number}}}, "Ctrl Enter",
                    ""});
  return offers;
}

Section timer_section(const Sight& sight, const db::BladeRow& row) {
  Section section;
  section.title = "Timer";
  const auto blade = db::find_blade(sight.shop, row.number);
  if (!blade || row.scrapped || row.delivered) return section;
  const std::string number = std::to_string(row.number);
  if (const auto timer = db::timer_of_blade(sight.shop, blade->id)) {
    section.paragraphs = {timer_words(sight, *timer)};
    section.offers = timer_offers(sight, *timer);
    section.offers.push_back(
        {"Throw it away",
         DoNow{"stop_timer", {{"timer", std::to_string(timer->number)}, {"discard", "yes"}}}, "",
         ""});
    for (Offer& offer : section.offers) offer.key.clear();
    return section;
  }
  if (!row.next_operation.empty() && !is_done_without_timer(row.next_operation))
    section.offers.push_back(
        {"Start the clock on " + row.next_operation,
         DoNow{"start_timer", {{"blades", number}, {"operation", row.next_operation}}}, "", ""});
  section.offers.push_back(
      {"Several blades, or another step",
       OpenForm{
           "start_timer",
           {{"blades", number},
            {"operation", is_done_without_timer(row.next_operation) ? "" : row.next_operation}}},
       "", ""});
  return section;
}

}  // namespace tangmark::desk
