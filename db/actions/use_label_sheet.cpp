// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/shop_action_list.h"
#include "db/actions/work.h"
#include "db/store/label_stock_store.h"

namespace tangmark::db {
namespace {

std::optional<stock::LabelStock> usual(const std::string& name) {
  for (const stock::LabelStock& one : stock::usual_label_stock())
    if (one.name == name) return one;
  return std::nullopt;
}

// A usual sheet by its name, with whatever the maker measured otherwise.
Outcome<ActionResult> run_use_label_sheet(Work& work, Form& form) {
  const std::string name = form.text("name");
  const auto known = usual(name);
  stock::LabelStock sheet = known.value_or(stock::LabelStock{});
  sheet.name = name;
  const auto measure = [&](std::string_view field, Length& place) {
    const auto given = form.maybe_length(field);
    if (given) place = *given;
    if (!given && !known)
      form.add({std::string(field),
                "A sheet that is not among the usual ones needs all its measures.",
                "Measure it with a rule."});
  };
  const auto count = [&](std::string_view field, std::int64_t most, std::size_t& place) {
    const auto given = form.maybe_whole(field, 1, most);
    if (given) place = static_cast<std::size_t>(*given);
    if (!given && !known)
      form.add({std::string(field),
                "A sheet that is not among the usual ones needs all its measures.",
                "Count the labels."});
  };
  measure("sheet_width", sheet.sheet_width);
  measure("sheet_height", sheet.sheet_height);
  count("across", 20, sheet.across);
  count("down", 40, sheet.down);
  measure("left", sheet.left);
  measure("top", sheet.top);
  measure("width", sheet.width);
  measure("height", sheet.height);
  measure("pitch_across", sheet.pitch_across);
  measure("pitch_down", sheet.pitch_down);
  if (form.refused()) return form.problems();
  if (Problems problems = stock::label_stock_problems(sheet); !problems.empty()) return problems;
  store_label_stock(work.shop(), sheet);
  return work.done(name);
}

Field length(std::string_view name, std::string_view label, std::string_view help) {
  return {name, label, FieldKind::length, false, help};
}

}  // namespace

const Action use_label_sheet{
    "use_label_sheet",
    "Say which sheet of labels the shop prints on.",
    {{"name", "Name", FieldKind::text, true, "a usual one, or your own name for it"},
     length("sheet_width", "Sheet, width", "210 mm"),
     length("sheet_height", "Sheet, height", "297 mm"),
     {"across", "Labels across", FieldKind::number, false, "3"},
     {"down", "Labels down", FieldKind::number, false, "7"},
     length("left", "Free at the left", "7.2 mm"),
     length("top", "Free at the top", "15.2 mm"),
     length("width", "Label, width", "63.5 mm"),
     length("height", "Label, height", "38.1 mm"),
     length("pitch_across", "From label to label across", "left edge to left edge: 66 mm"),
     length("pitch_down", "From label to label down", "top edge to top edge: 38.1 mm")},
    run_use_label_sheet};

}  // namespace tangmark::db
