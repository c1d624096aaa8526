// SPDX-License-Identifier: MIT
#include "reports/cutting_sheet.h"

#include "db/store/cutting_case.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"

namespace tangmark::desk {
namespace {

reports::BarToCut bar_of(const db::LotCutting& lot, const stock::CutBar& cut, LengthUnit unit) {
  const auto& bar = lot.cutting.bars[cut.bar];
  const auto mm = [](std::int64_t n) { return Length::millimetres(n); };
  reports::BarToCut made;
  made.tag = bar.id;
  made.size = mm(bar.length_mm);
  made.length = to_text(made.size, unit);
  std::int64_t at = 0;
  for (const std::size_t index : cut.blanks) {
    const auto& blank = lot.cutting.blanks[index];
    made.blanks.push_back(
        {blank.id, to_text(mm(blank.length_mm), unit), mm(at), mm(blank.length_mm)});
    at += blank.length_mm + lot.cutting.kerf_mm;
  }
  if (cut.left_mm > 0) {
    made.left = to_text(mm(cut.left_mm), unit) + (cut.kept ? " kept" : " scrap");
    made.left_size = mm(cut.left_mm);
    made.left_from = mm(bar.length_mm - cut.left_mm);
    made.kept = cut.kept;
  }
  return made;
}

}  // namespace

Outcome<reports::Document> cutting_sheet_paper(const Press& press, std::string_view number,
                                               const stock::CuttingPlan& plan) {
  const auto settings = db::load_settings(press.shop);
  const auto lot = db::cutting_of_lot(press.shop, number, settings);
  if (!lot) return lot.problems();
  reports::CuttingSheet sheet;
  sheet.title = "Lot " + std::string(number) + ", cut for the queue";
  sheet.under =
      std::to_string(lot->items.size() - plan.unplaced.size()) + " of " +
      std::to_string(lot->items.size()) + " blanks, steel for " +
      to_text(Money(static_cast<std::int64_t>(plan.value_used + 0.5), settings.currency)) + ". " +
      (plan.proven ? "No better plan exists." : "The best plan found.");
  sheet.kerf = to_text(Length::millimetres(lot->cutting.kerf_mm), settings.length_unit);
  for (const auto& cut : plan.cuts) sheet.bars.push_back(bar_of(*lot, cut, settings.length_unit));
  for (const std::size_t blank : plan.unplaced)
    sheet.notes.push_back("No bar is long enough for " + lot->cutting.blanks[blank].id + ".");
  sheet.printed = press.now;
  return reports::cutting_sheet_document(sheet, look_of(settings), press.fonts);
}

}  // namespace tangmark::desk
