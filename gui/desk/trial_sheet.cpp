// SPDX-License-Identifier: MIT
#include "gui/desk/trial_sheet.h"

#include "db/store/settings_store.h"
#include "db/store/trial_report.h"
#include "gui/desk/papers.h"

namespace tangmark::desk {

PlaceView trial_view(const Sight& sight, const std::string& number) {
  PlaceView view;
  const auto trial = db::trial_named(sight.shop, number, "trial");
  if (!trial) {
    view.next = {trial.problem().sentence,
                 "",
                 {{"Start a trial", OpenForm{"start_trial", {}}, "Enter", ""}}};
    return view;
  }
  const auto blades = db::blades_of_trial(sight.shop, *trial);
  const auto degrees = db::load_settings(sight.shop).temperature_unit;
  view.next = {
      "Trial " + number + ": " + trial->question,
      std::to_string(blades.size()) + (blades.size() == 1 ? " blade" : " blades") + " in it.",
      {{"Put blades into it", OpenForm{"add_to_trial", {{"trial", number}}}, "Enter", ""},
       {"End it", OpenForm{"end_trial", {{"trial", number}}}, "Ctrl Enter", ""}}};
  if (trial->ended_at)
    view.next.offers = {{"Start another trial", OpenForm{"start_trial", {}}, "Enter", ""}};
  view.sheet.title = "Trial " + number;
  view.sheet.under = trial->question;
  Section shown;
  shown.title = "What it shows";
  shown.paragraphs = db::trial_sentences(*trial, blades, degrees);
  shown.offers = {{"The page as it prints", ShowDocument{"trial", number}, "", ""}};
  Section figures;
  figures.title = "Blades";
  for (const std::string& head : db::trial_heads(*trial, degrees))
    figures.table.columns.push_back({head, Align::right});
  for (auto& row : db::trial_rows(*trial, blades)) {
    TableRow line{std::move(row), false, {}};
    line.offers = {{"See", GoTo{Place::blades, line.cells.front()}, "", ""}};
    figures.table.rows.push_back(std::move(line));
  }
  view.sheet.sections = {std::move(shown), std::move(figures)};
  if (auto page = paper_of(sight, "trial", number)) view.picture = std::move(page).value();
  return view;
}

}  // namespace tangmark::desk
