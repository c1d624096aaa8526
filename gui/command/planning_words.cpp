// SPDX-License-Identifier: MIT
// Words that plan: firings of the shop or of a case, cuts of a lot or of a case.
#include <charconv>
#include <chrono>

#include "db/actions/action.h"
#include "db/row.h"
#include "db/store/cutting_case.h"
#include "db/store/plan_case.h"
#include "db/store/settings_store.h"
#include "domain/kiln/plan_json.h"
#include "domain/kiln/plan_search.h"
#include "domain/stock/cutting_json.h"
#include "domain/stock/cutting_plan.h"
#include "gui/command/json_text.h"
#include "gui/command/shop_of.h"
#include "gui/command/word_list.h"

namespace tangmark::command {
namespace {

using Clock = std::chrono::steady_clock;

// The whole process is bounded: what starting and writing take is left over.
constexpr double kept_back_s = 0.05;

Outcome<double> seconds_of(const Call& call, double usual) {
  const auto text = call.option("seconds");
  if (!text) return usual;
  double seconds = 0;
  const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), seconds);
  if (error != std::errc() || end != text->data() + text->size() || !(seconds > 0) || seconds > 86'400)
    return Problem{"--seconds", "\"" + *text + "\" is not a number of seconds.", "Write, for example: --seconds 5."};
  return seconds;
}

Outcome<std::int64_t> whole_of(const Call& call, std::string_view name, std::int64_t usual) {
  const auto text = call.option(name);
  if (!text) return usual;
  std::int64_t n = 0;
  const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), n);
  if (error != std::errc() || end != text->data() + text->size() || n < 0)
    return Problem{"--" + std::string(name), "\"" + *text + "\" is not a whole number.", "Write a whole number from 0 on."};
  return n;
}

struct Search {
  kiln::SearchLimits limits;
  std::uint64_t seed = 1;
};

Outcome<Search> search_of(const Call& call, double usual_seconds) {
  Gather gather;
  const double seconds = gather.take(seconds_of(call, usual_seconds));
  const std::int64_t iterations = gather.take(whole_of(call, "iterations", 0));
  const std::int64_t seed = gather.take(whole_of(call, "seed", 1));
  if (gather.refused()) return gather.problems();
  Search search;
  const auto began = Clock::now();
  const double allowed = std::max(0.01, seconds - kept_back_s);
  search.limits.time_used = [began, allowed] {
    return std::chrono::duration<double>(Clock::now() - began).count() / allowed;
  };
  search.limits.iterations = iterations;
  search.seed = static_cast<std::uint64_t>(seed);
  return search;
}

Exit plan_case(const Call& call) {
  const auto search = search_of(call, 5.0);
  if (!search) return refused(call, search.problems());
  const auto text = read_whole(*call.option("case"));
  if (!text) return refused(call, text.problems());
  const auto plan = kiln::plan_case_text(*text, search->limits, search->seed);
  if (!plan) return refused(call, plan.problems());
  say(plan->json);
  return plan->complete ? Exit::done : Exit::answer_is_no;
}

std::string_view word_of_change(db::PlanDifference::What what) {
  switch (what) {
    case db::PlanDifference::What::kept: return "kept";
    case db::PlanDifference::What::moved: return "moved";
    case db::PlanDifference::What::added: return "added";
    case db::PlanDifference::What::dropped: return "dropped";
  }
  return "";
}

std::string kiln_name(const db::ShopCase& shop, kiln::KilnId id) {
  for (const auto& [name, known] : shop.kilns)
    if (known == id) return name;
  return "?";
}

std::string blade_names(const db::ShopCase& shop, const kiln::Firing& firing) {
  std::string names;
  for (const auto& member : firing.blades)
    for (const auto& [name, chain] : shop.chains)
      if (chain.blade == member.blade) names += (names.empty() ? "" : " ") + name;
  return names;
}

Json changes_json(const db::ShopCase& shop, const db::PlanDifference& difference) {
  Json changes = Json::array();
  for (const auto& change : difference.changes) {
    Json one{{"what", word_of_change(change.what)}, {"kiln", kiln_name(shop, change.firing.kiln)},
             {"start", to_stored(change.firing.starts_at)}, {"end", to_stored(change.firing.ends_at)},
             {"temperature_c", change.firing.set.in_celsius()}, {"blades", blade_names(shop, change.firing)}};
    if (change.before) {
      one["firing"] = change.before->number;
      one["was"] = to_stored(change.before->starts_at);
    }
    changes.push_back(std::move(one));
  }
  return changes;
}

Json unplaced_json(const std::vector<kiln::Unplaced>& unplaced) {
  Json all = Json::array();
  for (const auto& u : unplaced)
    all.push_back({{"blade", u.blade}, {"op", u.operation}, {"rule", "R" + std::to_string(u.rule)}, {"why", u.why}, {"change", u.change}});
  return all;
}

void say_plan(const db::ShopFile& file, const db::ShopCase& shop, const db::PlanDifference& difference,
              const kiln::PlanAnswer& answer) {
  const auto settings = db::load_settings(file);
  for (const auto& change : difference.changes)
    say("  " + std::string(word_of_change(change.what)) + ": " + kiln_name(shop, change.firing.kiln) + ", " +
        to_text(change.firing.set, settings.temperature_unit) + ", " + to_text(change.firing.starts_at, settings.zone) +
        " to " + clock_text(change.firing.ends_at, settings.zone) + ", blades " + blade_names(shop, change.firing));
  for (const auto& late : difference.lateness) say("  " + db::in_words(late));
  say("Energy " + to_text(difference.energy_after) + " (booked now: " + to_text(difference.energy_before) +
      "), hands-on " + to_text(difference.hands_on_after) + ".");
  for (const auto& u : answer.unplaced) say("Blade " + u.blade + " cannot be placed: " + u.why + " " + u.change);
  for (const auto& line : shop.left_aside) say(line);
}

Exit plan_shop(const Call& call) {
  const auto search = search_of(call, 5.0);
  if (!search) return refused(call, search.problems());
  return with_shop(call, [&](db::ShopFile& file) {
    const auto settings = db::load_settings(file);
    Instant from = call.now;
    if (const auto given = call.option("from")) {
      const auto at = parse_instant(*given, settings.zone, call.now, "--from");
      if (!at) return refused(call, at.problems());
      from = *at;
    }
    const db::ShopCase shop = db::shop_case(file, from, db::Keep::locked_only);
    const kiln::PlanAnswer answer = kiln::plan_firings(shop.a_case, search->limits, search->seed);
    const db::PlanDifference difference = db::difference(shop, answer.plan);
    const std::string plan_text = kiln::write_firing_plan(answer.plan);
    if (call.has("store")) {
      auto stored = db::perform(file, "accept_plan", {{"from", to_stored(shop.origin)}, {"plan", plan_text}}, call.now);
      if (!stored) return refused(call, stored.problems());
    }
    if (call.has("json")) {
      Json json = Json::parse(plan_text);
      json["origin"] = to_stored(shop.origin);
      json["changes"] = changes_json(shop, difference);
      json["unplaced"] = unplaced_json(answer.unplaced);
      json["left_aside"] = shop.left_aside;
      json["objective"] = answer.cost.total_mc();
      json["lower_bound"] = answer.bound_mc;
      json["stored"] = call.has("store");
      say_json(json);
    } else {
      say_plan(file, shop, difference, answer);
      say(call.has("store") ? "The plan is booked." : "Nothing is stored yet: --store books it.");
    }
    return answer.unplaced.empty() ? Exit::done : Exit::answer_is_no;
  });
}

Exit plan(const Call& call) {
  if (call.has("case")) return plan_case(call);
  if (call.words.empty()) {
    tell("tangmark plan takes a shop FILE or --case CASE.json.");
    return Exit::usage;
  }
  return plan_shop(call);
}

// "17-1:4+7,17-3:5", as take_cuts reads it.
std::string cuts_text(const stock::CuttingPlan& plan, const db::LotCutting& lot) {
  std::string text;
  for (const auto& cut : plan.cuts) {
    text += (text.empty() ? "" : ",") + lot.pieces[cut.bar].tag + ":";
    for (const std::size_t blank : cut.blanks)
      text += (blank == cut.blanks.front() ? "" : "+") +
              std::to_string(lot.items[blank].id.row());
  }
  return text;
}

void say_cuts(const stock::CuttingPlan& plan, const stock::CuttingCase& cutting) {
  for (const auto& cut : plan.cuts) {
    std::string line = "  " + cutting.bars[cut.bar].id + ": ";
    for (const std::size_t blank : cut.blanks) line += cutting.blanks[blank].id + " (" + std::to_string(cutting.blanks[blank].length_mm) + " mm), ";
    say(line + std::to_string(cut.left_mm) + " mm left" + (cut.kept ? ", kept" : ", scrap"));
  }
  for (const std::size_t blank : plan.unplaced) say("  no bar is long enough for " + cutting.blanks[blank].id);
  say(plan.proven ? "No better plan exists." : "The best plan found in the time given.");
}

// An everyday case is answered at once; only a long one, or a wish for proof, takes the long bound.
constexpr std::size_t everyday_blanks = 20;
constexpr double everyday_s = 0.95, long_s = 10.0;

double usual_seconds(std::size_t blanks) { return blanks <= everyday_blanks ? everyday_s : long_s; }

std::size_t blanks_in(const std::string& case_text) {
  const Json json = Json::parse(case_text, nullptr, false);
  const auto blanks = json.is_object() ? json.find("blanks") : json.end();
  return json.is_object() && blanks != json.end() && blanks->is_array() ? blanks->size() : 0;
}

Exit cut(const Call& call) {
  const auto seconds = seconds_of(call, long_s);
  if (!seconds) return refused(call, seconds.problems());
  const auto began = Clock::now();
  double allowed = *seconds;
  const bool stated = call.has("seconds");
  const auto out_of_time = [began, &allowed] {
    return std::chrono::duration<double>(Clock::now() - began).count() >=
           std::max(0.01, allowed - kept_back_s);
  };
  if (const auto path = call.option("case")) {
    const auto text = read_whole(*path);
    if (!text) return refused(call, text.problems());
    if (!stated) allowed = usual_seconds(blanks_in(*text));
    const auto answer = stock::cut_case_text(*text, out_of_time);
    if (!answer) return refused(call, answer.problems());
    say(*answer);
    return Json::parse(*answer).at("unplaced").empty() ? Exit::done : Exit::answer_is_no;
  }
  if (call.words.size() < 2) {
    tell("tangmark cut takes FILE LOT or --case CASE.json.");
    return Exit::usage;
  }
  return with_shop(call, [&](db::ShopFile& shop) {
    const auto lot = db::cutting_of_lot(shop, call.words[1], db::load_settings(shop));
    if (!lot) return refused(call, lot.problems());
    if (!stated) allowed = usual_seconds(lot->items.size());
    const auto plan = stock::cutting_plan(lot->cutting, out_of_time);
    if (!plan) return refused(call, plan.problems());
    if (call.has("json")) {
      say(stock::to_json(*plan, lot->cutting));
    } else {
      say_cuts(*plan, lot->cutting);
      say("Cut it so with: tangmark do " + call.words[0] + " take_cuts lot=" + call.words[1] +
          " cuts=" + cuts_text(*plan, *lot));
    }
    return plan->unplaced.empty() ? Exit::done : Exit::answer_is_no;
  });
}

}  // namespace

std::vector<Word> planning_words() {
  return {{"plan",
           "plan the kilns of a shop, or a case",
           "[FILE]",
           0,
           1,
           {{"case", "CASE.json", "plan this case and print the plan"},
            {"from", "WHEN", "plan from then on (else now)"},
            {"seconds", "S", "bound of the whole process, 5 unless given"},
            {"iterations", "N", "steps of the search; with the same seed the same plan"},
            {"seed", "K", "for chance"},
            {"store", "", "book the plan"},
            {"json", "", "one JSON object on standard output"}},
           plan},
          {"cut", "which blank comes from which bar of a lot, or of a case", "[FILE LOT]", 0, 2,
           {{"case", "CASE.json", "plan this case and print the answer"}, {"seconds", "S", "bound of the whole process; 10, or 1 for up to 20 blanks, unless given"},
            {"json", "", "one JSON object on standard output"}},
           cut}};
}

}  // namespace tangmark::command
