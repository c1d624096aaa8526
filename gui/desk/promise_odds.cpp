// SPDX-License-Identifier: MIT
// The promise date with its odds.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "db/store/named.h"
#include "db/store/promise_reader.h"
#include "db/store/promise_record.h"
#include "db/store/commission_store.h"
#include "gui/desk/quote_desk.h"

namespace tangmark::desk {
namespace {

constexpr commission::Runs runs{1000, 1};

double days_from(const Sight& sight, Instant at) {
  return std::max(0.0, static_cast<double>((at - sight.now).count()) / 86'400);
}

void add_harm(const Sight& sight, const commission::PromiseAnswer& answer, PromiseView& view) {
  for (const commission::Harm& harm : answer.harmed) {
    const auto harmed = db::load_commission(sight.shop, harm.commission);
    if (!harmed) continue;
    std::string note = "It moves commission " + std::to_string(harmed->number) + " from " +
                       day(sight, harm.before) + " to " + day(sight, harm.after);
    if (harm.breaks_promise && harm.promised)
      note += ", past its promise of " + day(sight, *harm.promised);
    view.notes.push_back(note + ".");
  }
}

// "Your last 23 blades took 1.08 times the plan." Nothing while the record is too short to say.
std::string pace_words(const Sight& sight) {
  const auto record = db::pace_on_record(sight.shop);
  if (record.n < 3) return {};
  return fmt::format(" Your last {} blades took {:.2f} times what is planned today; that is in it.",
                     record.n, record.pace.median);
}

// What it would be if it went before all others, and whom that harms.
void add_rush(const Sight& sight, const commission::KeptCommission& commission, PromiseView& view) {
  const auto rush =
      db::answer_promise(sight.shop, commission, sight.now, runs, db::QueuePlace::rush);
  if (!rush) return;
  std::string note = "As a rush: " + day(sight, rush->forecast.p80) + ", 8 times in 10";
  std::size_t broken = 0;
  for (const commission::Harm& harm : rush->harmed) broken += harm.breaks_promise ? 1 : 0;
  const std::string past =
      broken == 0 ? "none past its promise" : fmt::format("{} past what was promised", broken);
  note += rush->harmed.empty() ? ", and nobody is moved."
                               : fmt::format("; {} moved by it, {}.", rush->harmed.size(), past);
  view.notes.push_back(note);
}

}  // namespace

PromiseView promise_of(const Sight& sight, const std::string& number) {
  PromiseView view;
  const auto commission = db::commission_named(sight.shop, number, "commission");
  if (!commission) {
    view.sentence = commission.problem().sentence;
    return view;
  }
  const auto answer = db::answer_promise(sight.shop, *commission, sight.now, runs);
  if (!answer) {
    view.sentence = answer.problem().sentence + " " + answer.problem().remedy;
    return view;
  }
  const commission::Forecast& forecast = answer->forecast;
  view.day = day(sight, forecast.p80);
  view.sentence = "Ready by then 8 times in 10.";
  view.from = "From " + std::to_string(runs.count) +
              " runs over your queue, hours, kilns and losses." + pace_words(sight);
  const double d50 = days_from(sight, forecast.at50), d80 = days_from(sight, forecast.at80);
  const double d95 = days_from(sight, forecast.at95);
  view.curve = {{0, 0}, {d50, 0.5}, {d80, 0.8}, {d95, 0.95}, {d95 + (d95 - d80) / 2 + 1, 0.98}};
  view.marks = {{d50, 0.5, short_text(forecast.p50), "5 in 10", false},
                {d80, 0.8, short_text(forecast.p80), "8 in 10", true},
                {d95, 0.95, short_text(forecast.p95), "19 in 20", false}};
  if (!answer->causes.empty()) {
    const commission::LateShare& first = answer->causes.front();
    view.notes.push_back(
        "What most often makes it late: " + std::string(commission::sentence(first.cause)) + ", " +
        std::to_string(std::lround(first.part * 100)) + " in 100 late runs.");
  }
  add_harm(sight, *answer, view);
  add_rush(sight, *commission, view);
  return view;
}

}  // namespace tangmark::desk
