// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "db/store/blade_state.h"
#include "db/store/blade_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "domain/blade/operation.h"

namespace tangmark::db {
namespace {

using namespace blade;

struct Ready {
  std::int64_t blade;
  std::string title, operation, where;
  Duration needs;
  bool urgent;  // a quenched blade waits for it
  std::optional<CalendarDate> due;
};

std::string where_of(const std::string& operation) {
  const auto known = trade_operation(operation);
  if (!known) return "bench";
  if (known->heat != Heat::none || operation == "hold warm") return "kiln";
  return known->hot ? "forge" : "bench";
}

std::optional<Ready> ready_work(const ShopFile& shop, const KeptBlade& blade,
                                const commission::ShopSettings& settings) {
  const BladeOnRecord record = load_record(shop, blade);
  const auto next = next_step(record.state, record.route, temper_clock(settings), settings.zone);
  if (!next) return std::nullopt;
  Ready ready{blade.number,    blade.title,
              next->operation, where_of(next->operation),
              Duration(),      record.state.stage == HeatStage::quenched,
              blade.due};
  for (const KeptRouteStep& step : record.route)
    if (next->step && step.id == *next->step) ready.needs = step.hands_on + step.attended;
  return ready;
}

bool before(const Ready& a, const Ready& b) {
  if (a.urgent != b.urgent) return a.urgent;
  if (a.due.has_value() != b.due.has_value()) return a.due.has_value();
  if (a.due && *a.due != *b.due) return *a.due < *b.due;
  return a.blade < b.blade;
}

Outcome<bool> kiln_is_on(const Given& given) {
  const auto text = given_text(given, "kiln").value_or("yes");
  if (text == "yes" || text == "on") return true;
  if (text == "no" || text == "off") return false;
  return Problem{"kiln", "\"" + text + "\" is neither yes nor no.", "Write kiln=yes or kiln=no."};
}

Outcome<Answer> answer_16(const ShopFile& shop, const Given& given, Instant) {
  const auto settings = load_settings(shop);
  const auto free = parse_duration(given_text(given, "free").value_or("3 h"), "free");
  const auto kiln = kiln_is_on(given);
  if (!free) return free.problems();
  if (!kiln) return kiln.problems();
  std::vector<Ready> work;
  for (const KeptBlade& blade : blades_in_work(shop)) {
    const auto ready = ready_work(shop, blade, settings);
    if (ready && ready->needs <= *free && (*kiln || ready->where != "kiln")) work.push_back(*ready);
  }
  std::sort(work.begin(), work.end(), before);
  Answer answer{fmt::format("What can be done in {}?", to_text(*free)),
                {},
                {"Blade", "Title", "Operation", "Where", "Hands-on and attended", "Due"},
                {}};
  Duration all{};
  for (const Ready& ready : work) {
    all += ready.needs;
    answer.rows.push_back({std::to_string(ready.blade), ready.title, ready.operation, ready.where,
                           ready.needs > Duration() ? to_text(ready.needs) : "",
                           ready.due ? to_stored(*ready.due) : ""});
  }
  if (work.empty())
    answer.sentences.push_back("Nothing that is ready fits.");
  else
    answer.sentences.push_back(
        fmt::format("{} ready, {} of work in all; what is most pressing stands first.", work.size(),
                    to_text(all)));
  return answer;
}

}  // namespace

const Question question_16{16,
                           "What do I do today with three free hours and the kiln on?",
                           {{"free", "Free time", FieldKind::duration, false, "3 h", "3 h"},
                            {"kiln", "Kiln on", FieldKind::yes_no, false, "yes", "yes"}},
                           answer_16};

}  // namespace tangmark::db
