// SPDX-License-Identifier: MIT
#include "gui/desk/cut_drawing.h"

#include <algorithm>
#include <chrono>

#include "db/store/cutting_case.h"
#include "domain/stock/cutting_plan.h"
#include "gui/desk/cut_search.h"

namespace tangmark::desk {
namespace {

constexpr auto patience = std::chrono::milliseconds(60);

Outcome<stock::CuttingPlan> planned_within(const stock::CuttingCase& cutting,
                                           std::chrono::milliseconds time,
                                           const std::function<bool()>& stop) {
  const auto began = std::chrono::steady_clock::now();
  return stock::cutting_plan(
      cutting, [&] { return stop() || std::chrono::steady_clock::now() - began > time; });
}

std::string mm_words(const Sight& sight, std::int64_t mm) {
  return words(sight, Length::millimetres(mm));
}

DrawnBar drawn(const Sight& sight, const db::LotCutting& lot, const stock::CutBar& cut) {
  const auto& bar = lot.cutting.bars[cut.bar];
  DrawnBar made{bar.id,  mm_words(sight, bar.length_mm), bar.length_mm, {}, cut.left_mm, "",
                cut.kept};
  std::int64_t at = 0;
  for (const std::size_t index : cut.blanks) {
    const auto& blank = lot.cutting.blanks[index];
    made.blanks.push_back({blank.id, mm_words(sight, blank.length_mm), at, blank.length_mm});
    at += blank.length_mm + lot.cutting.kerf_mm;
  }
  if (cut.left_mm > 0) made.left = mm_words(sight, cut.left_mm) + (cut.kept ? " kept" : " scrap");
  return made;
}

// As take_cuts reads it: "17-1:4+7,17-3:5".
std::string cuts_text(const db::LotCutting& lot, const stock::CuttingPlan& plan) {
  std::string text;
  for (const auto& cut : plan.cuts) {
    text += (text.empty() ? "" : ",") + lot.pieces[cut.bar].tag + ":";
    for (const std::size_t blank : cut.blanks)
      text += (blank == cut.blanks.front() ? "" : "+") + std::to_string(lot.items[blank].id.row());
  }
  return text;
}

Section section_of(const db::LotCutting& lot, const stock::CuttingPlan& plan,
                   const std::string& number, Currency currency) {
  Section section;
  section.title = "Cut it for the queue";
  const std::size_t placed = lot.items.size() - plan.unplaced.size();
  section.paragraphs = {
      std::to_string(placed) + " of " + std::to_string(lot.items.size()) + " blanks from " +
      std::to_string(plan.cuts.size()) + (plan.cuts.size() == 1 ? " bar" : " bars") +
      ", steel for " + to_text(Money(static_cast<std::int64_t>(plan.value_used + 0.5), currency)) +
      ". " +
      (plan.proven ? "No better plan exists."
                   : "The best plan found so far.")};
  for (const std::size_t blank : plan.unplaced)
    section.paragraphs.push_back("No bar is long enough for " + lot.cutting.blanks[blank].id + ".");
  if (placed > 0)
    section.offers = {{"Cut it so, with tags",
                       DoNow{"take_cuts", {{"lot", number}, {"cuts", cuts_text(lot, plan)}}}, "",
                       ""},
                      {"Sheet for the saw", ShowDocument{"cutting-sheet", number}, "", ""}};
  if (!plan.proven)
    section.offers.push_back({"Search longer", PlaceWork{"search cuts", number}, "", ""});
  section.proposed = true;
  return section;
}

}  // namespace

Outcome<stock::CuttingPlan> quick_cutting_plan(const Sight& sight, const std::string& number) {
  const auto lot = db::cutting_of_lot(sight.shop, number, sight.settings);
  if (!lot) return lot.problems();
  return planned_within(lot->cutting, patience, [] { return false; });
}

Outcome<SearchedCuts> searched_cuts(const Sight& sight, const std::string& number,
                                    const std::function<bool()>& stop) {
  const auto lot = db::cutting_of_lot(sight.shop, number, sight.settings);
  if (!lot) return lot.problems();
  auto plan = planned_within(lot->cutting, std::chrono::seconds(10), stop);
  if (!plan) return plan.problems();
  return SearchedCuts{lot->cutting, std::move(plan).value()};
}

std::optional<CutProposal> cut_proposal(const Sight& sight, const std::string& number,
                                        const std::optional<SearchedCuts>& searched) {
  const auto lot = db::cutting_of_lot(sight.shop, number, sight.settings);
  if (!lot) return std::nullopt;
  const auto plan = searched && searched->of == lot->cutting
                        ? Outcome<stock::CuttingPlan>(searched->plan)
                        : planned_within(lot->cutting, patience, [] { return false; });
  if (!plan) return std::nullopt;
  CutProposal proposal;
  proposal.drawing.title = "Lot " + number + ", cut for the queue";
  for (const auto& cut : plan->cuts) {
    proposal.drawing.bars.push_back(drawn(sight, *lot, cut));
    proposal.drawing.longest_mm =
        std::max(proposal.drawing.longest_mm, proposal.drawing.bars.back().length_mm);
  }
  proposal.section = section_of(*lot, *plan, number, sight.settings.currency);
  return proposal;
}

std::string in_words(const CutDrawing& drawing) {
  std::string text = drawing.title + ".";
  for (const DrawnBar& bar : drawing.bars) {
    text += " Bar " + bar.tag + ", " + bar.length + ":";
    for (const DrawnBlank& blank : bar.blanks) text += " " + blank.label + " " + blank.length + ",";
    text += bar.left.empty() ? " nothing left." : " " + bar.left + ".";
  }
  return text;
}

}  // namespace tangmark::desk
