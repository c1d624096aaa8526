// SPDX-License-Identifier: MIT
#include "db/actions/work.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

// Typing up a firing takes about this long; anything older was not logged live.
constexpr auto live_within = std::chrono::minutes(15);

}  // namespace

Work::Work(ShopFile& shop, const Action& action, Instant now, Instant at,
           std::string override_reason)
    : shop_(shop),
      action_(action),
      now_(now),
      at_(at),
      override_reason_(std::move(override_reason)),
      settings_(load_settings(shop)) {}

CalendarDate Work::today() const {
  return settings_.zone.date_of(now_);
}
bool Work::entered_later() const {
  return now_ - at_ > live_within;
}

std::int64_t Work::next_number(std::string_view kind) {
  Query last(shop_, "SELECT id, last FROM counter WHERE kind = ?");
  last.bind(kind);
  if (last.next()) {
    const std::int64_t number = last.integer("last") + 1;
    Row("counter").set("last", number).update(shop_, last.integer("id"));
    return number;
  }
  // A blade number is stamped into a tang: two to four digits, so it starts at 11.
  const std::int64_t first = kind == "blade" ? 11 : 1;
  Row("counter").set("kind", kind).set("last", first).insert(shop_);
  return first;
}

bool Work::passes(const Catch& caught) {
  if (!caught) return true;
  const Problem problem{caught->field, caught->sentence, caught->remedy};
  switch (caught->weight) {
    case Weight::remark:
      warn(caught->sentence + (caught->remedy.empty() ? "" : " " + caught->remedy));
      return true;
    case Weight::stop:
      problems_.push_back(problem);
      return false;
    case Weight::ask:
      if (override_reason_.empty()) {
        problems_.push_back(
            {problem.field, problem.sentence, problem.remedy + std::string(may_override)});
        return false;
      }
      set_aside_.push_back(Row("override")
                               .set("at", now_)
                               .set("action", action_.name)
                               .set("catch", caught->number)
                               .set("sentence", caught->sentence)
                               .set("reason", override_reason_)
                               .insert(shop_));
      warn("Set aside, because " + override_reason_ + ": " + caught->sentence);
      return true;
  }
  return false;
}

bool Work::set_aside_for(std::string_view subject, std::int64_t id) {
  for (const std::int64_t row : set_aside_)
    Row("override").set("subject", subject).set("subject_id", id).update(shop_, row);
  return !set_aside_.empty();
}

bool Work::passes(const Catches& caught) {
  bool all = true;
  for (const Caught& one : caught) all = passes(Catch(one)) && all;
  return all;
}

void Work::advise(const std::vector<steel::Advice>& advice) {
  for (const steel::Advice& one : advice) {
    const bool said = std::any_of(advice_.begin(), advice_.end(), [&](const steel::Advice& other) {
      return other.sentence == one.sentence;
    });
    if (said) continue;
    advice_.push_back(one);
    if (one.heed) warn(one.sentence);
  }
}

}  // namespace tangmark::db
