// SPDX-License-Identifier: MIT
// Words that plan: firings of the shop or of a case, cuts of a lot or of a case.
#include <charconv>
#include <chrono>

#include "db/store/cutting_case.h"
#include "db/store/settings_store.h"
#include "domain/kiln/plan_json.h"
#include "domain/kiln/plan_search.h"
#include "domain/stock/cutting_json.h"
#include "domain/stock/cutting_plan.h"
#include "gui/command/about_plan_cases.h"
#include "gui/command/json_text.h"
#include "gui/command/search_options.h"
#include "gui/command/shop_of.h"
#include "gui/command/shop_plan.h"
#include "gui/command/word_list.h"
#include "gui/desk/paper/paper.h"
#include "reports/font_book.h"
#include "reports/pdf.h"

namespace tangmark::command {
namespace {

using Clock = std::chrono::steady_clock;

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
      text += (blank == cut.blanks.front() ? "" : "+") + std::to_string(lot.items[blank].id.row());
  }
  return text;
}

void say_cuts(const stock::CuttingPlan& plan, const stock::CuttingCase& cutting) {
  for (const auto& cut : plan.cuts) {
    std::string line = "  " + cutting.bars[cut.bar].id + ": ";
    for (const std::size_t blank : cut.blanks)
      line += cutting.blanks[blank].id + " (" + std::to_string(cutting.blanks[blank].length_mm) +
              " mm), ";
    say(line + std::to_string(cut.left_mm) + " mm left" + (cut.kept ? ", kept" : ", scrap"));
  }
  for (const std::size_t blank : plan.unplaced)
    say("  no bar is long enough for " + cutting.blanks[blank].id);
  say(plan.proven ? "No better plan exists." : "The best plan found in the time given.");
}

// An everyday case is answered at once; only a long one, or a wish for proof, takes the long bound.
constexpr std::size_t everyday_blanks = 20;
constexpr double everyday_s = 0.95, long_s = 10.0;

double usual_seconds(std::size_t blanks) {
  return blanks <= everyday_blanks ? everyday_s : long_s;
}

std::size_t blanks_in(const std::string& case_text) {
  const Json json = Json::parse(case_text, nullptr, false);
  const auto blanks = json.is_object() ? json.find("blanks") : json.end();
  return json.is_object() && blanks != json.end() && blanks->is_array() ? blanks->size() : 0;
}

// The sheet for the saw.
Outcome<Done> print_cuts(const Call& call, const db::ShopFile& shop, const stock::CuttingPlan& plan,
                         const std::string& path) {
  const auto fonts = reports::FontBook::load();
  auto document = desk::cutting_sheet_paper({shop, fonts, call.now}, call.words[1], plan);
  if (!document) return document.problems();
  return write_whole(path, reports::pdf_bytes(*document, fonts));
}

Exit show_cuts(const Call& call, const db::ShopFile& shop, const db::LotCutting& lot,
               const stock::CuttingPlan& plan) {
  if (const auto path = call.option("pdf")) {
    if (auto done = print_cuts(call, shop, plan, *path); !done)
      return refused(call, done.problems());
  }
  if (call.has("json")) {
    say(stock::to_json(plan, lot.cutting));
  } else {
    say_cuts(plan, lot.cutting);
    say("Cut it so with: tangmark do " + call.words[0] + " take_cuts lot=" + call.words[1] +
        " cuts=" + cuts_text(plan, lot));
  }
  return plan.unplaced.empty() ? Exit::done : Exit::answer_is_no;
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
    return show_cuts(call, shop, *lot, *plan);
  });
}

}  // namespace

std::vector<Word> planning_words() {
  return {
      {"plan",
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
       plan,
       about_plan_cases},
      {"cut",
       "which blank comes from which bar of a lot, or of a case",
       "[FILE LOT]",
       0,
       2,
       {{"case", "CASE.json", "plan this case and print the answer"},
        {"seconds", "S", "bound of the whole process; 10, or 1 for up to 20 blanks, unless given"},
        {"pdf", "OUT", "write the sheet for the saw, to scale"},
        {"json", "", "one JSON object on standard output"}},
       cut}};
}

}  // namespace tangmark::command
