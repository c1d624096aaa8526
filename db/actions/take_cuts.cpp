// SPDX-License-Identifier: MIT
// A cutting plan taken as it stands: every cut, its tags, and the blanks kept for their items.
#include <algorithm>

#include "db/actions/asked.h"
#include "db/actions/cut_parts.h"
#include "db/actions/item_catches.h"
#include "db/actions/stock_action_list.h"
#include "db/store/cutting_case.h"
#include "db/store/piece_store.h"
#include "db/store/reservation_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

// "A:1+4,B:2" names bars by tag and blanks by item number.
struct AskedCut {
  std::size_t bar;
  std::vector<std::size_t> blanks;
};

std::optional<std::size_t> bar_named(const LotCutting& cutting, const std::string& tag) {
  for (std::size_t i = 0; i < cutting.pieces.size(); ++i)
    if (cutting.pieces[i].tag == tag) return i;
  return std::nullopt;
}

std::optional<std::size_t> blank_named(const LotCutting& cutting, const std::string& item) {
  for (std::size_t i = 0; i < cutting.items.size(); ++i)
    if (std::to_string(cutting.items[i].id.row()) == item) return i;
  return std::nullopt;
}

std::vector<std::string> parts_of(const std::string& text, char between) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  while (from <= text.size()) {
    const auto to = std::min(text.find(between, from), text.size());
    parts.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return parts;
}

Outcome<std::vector<AskedCut>> read_cuts(const LotCutting& cutting, const std::string& text) {
  std::vector<AskedCut> cuts;
  std::vector<bool> taken(cutting.items.size(), false);
  for (const std::string& part : parts_of(text, ',')) {
    const auto colon = part.find(':');
    const auto bar = bar_named(cutting, part.substr(0, colon));
    if (!bar || colon == std::string::npos)
      return Problem{"cuts", "\"" + part + "\" names no free bar of this lot.",
                     "The shop has changed since the plan was made. Plan the cuts again."};
    AskedCut cut{*bar, {}};
    for (const std::string& item : parts_of(part.substr(colon + 1), '+')) {
      const auto blank = blank_named(cutting, item);
      if (!blank || taken[*blank])
        return Problem{"cuts", "Item " + item + " does not wait for a blank of this lot.",
                       "The shop has changed since the plan was made. Plan the cuts again."};
      taken[*blank] = true;
      cut.blanks.push_back(*blank);
    }
    cuts.push_back(std::move(cut));
  }
  return cuts;
}

// Without a plan given, the best one found is taken; the search is bounded by its own steps, so
// that the same shop always gives the same plan.
Outcome<std::vector<AskedCut>> planned_cuts(const LotCutting& cutting) {
  std::int64_t asked = 0;
  constexpr std::int64_t steps = 20'000;
  const auto plan = cutting_plan(cutting.cutting, [&asked] { return ++asked > steps; });
  if (!plan) return plan.problems();
  std::vector<AskedCut> cuts;
  for (const CutBar& cut : plan->cuts) cuts.push_back({cut.bar, cut.blanks});
  return cuts;
}

// The mark stays on what is left: blanks are tagged at once, the bar's end keeps its own mark.
Outcome<Done> cut_bar(Work& work, const LotCutting& cutting, const AskedCut& asked,
                      std::vector<std::string>& tags) {
  KeptPiece piece = cutting.pieces[asked.bar];
  for (const std::size_t blank : asked.blanks) {
    CutWish wish{piece,
                 cutting.items[blank],
                 Length::millimetres(cutting.cutting.blanks[blank].length_mm),
                 work.settings().kerf,
                 MarkWentTo::rest,
                 std::nullopt,
                 std::nullopt};
    // A last cut that leaves less than a kerf takes what is there.
    if (!wish.takes_all() && wish.length < *piece.length && wish.taken() > *piece.length)
      wish.kerf = *piece.length - wish.length;
    if (wish.takes_all()) wish.mark = MarkWentTo::blank;
    if (Problems problems = problems_of(wish, work.settings().length_unit); !problems.empty())
      return problems;
    Catches caught = piece_catches(work, *wish.item, piece);
    for (Caught& one : catches_before_work(work, *wish.item)) caught.push_back(std::move(one));
    if (!work.passes(caught)) return work.problems();
    if (auto begun = begin_work(work, *wish.item, "lot"); !begun) return begun.problems();
    const CutParts parts = store_cut(work.shop(), wish, masses_of(wish), work.at());
    Reservation kept{.item = wish.item->id, .at = work.at()};
    kept.piece = parts.blank;
    kept.length = wish.length;
    insert_reservation(work.shop(), kept);
    tags.push_back(parts.blank_tag + " for item " + std::to_string(wish.item->id.row()));
    if (!parts.rest) break;
    piece = *load_piece(work.shop(), *parts.rest);
  }
  return Done{};
}

Outcome<ActionResult> run_take_cuts(Work& work, Form& form) {
  const std::string lot = form.text("lot");
  const auto given = form.maybe_text("cuts");
  if (form.refused()) return form.problems();
  const auto cutting = cutting_of_lot(work.shop(), lot, work.settings());
  if (!cutting) return cutting.problems();
  const auto cuts = given ? read_cuts(*cutting, *given) : planned_cuts(*cutting);
  if (!cuts) return cuts.problems();
  std::vector<std::string> tags;
  for (const AskedCut& cut : *cuts)
    if (const auto done = cut_bar(work, *cutting, cut, tags); !done) return done.problems();
  if (tags.empty())
    return Problem{"lot", "No bar of it is long enough for a blank.", "Receive a longer one."};
  for (const std::string& tag : tags) work.warn("Write on the blank: " + tag + ".");
  return work.done(std::to_string(tags.size()));
}

}  // namespace

const Action take_cuts{
    "take_cuts",
    "Cut a lot for the queue as planned: every blank gets its tag and is kept for its item.",
    {{"lot", "Lot", FieldKind::lot, true, "17"},
     {"cuts", "Cuts, as the plan lists them", FieldKind::text, false,
      "17-1:4+7,17-3:5; the best plan when not given"}},
    run_take_cuts};

}  // namespace tangmark::db
