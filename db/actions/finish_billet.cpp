// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/billet_work.h"
#include "db/actions/stock_action_list.h"
#include "db/store/billet_store.h"
#include "db/store/piece_store.h"
#include "domain/stock/mass_balance.h"

namespace tangmark::db {
namespace {

using namespace stock;

struct Yield {
  std::int64_t count = 1;
  std::optional<Length> length, width, thickness;
  Mass mass;  ///< of all pieces
};

Yield read_yield(Form& form, const std::optional<KeptBillet>& billet, Work& work) {
  Yield yield{form.whole("count", 1, 50), form.maybe_length("length"), form.maybe_length("width"),
              form.maybe_length("thickness"), Mass()};
  const auto mass = form.maybe_mass("mass");
  if (billet) yield.mass = mass.value_or(mass_of_billet(work.shop(), billet->id));
  if (mass && *mass <= Mass())
    form.add({"mass", "A billet of no mass gives no pieces.", "Weigh it."});
  return yield;
}

Outcome<ActionResult> run_finish_billet(Work& work, Form& form) {
  const auto billet = asked(work, form, "billet", billet_named);
  const auto pattern = form.maybe_text("pattern");
  const Yield yield = read_yield(form, billet, work);
  if (billet) check_open(form, *billet, work.at());
  if (billet &&
      (billet->kind == BilletKind::pattern_welded || billet->kind == BilletKind::laminated) &&
      stages_of_billet(work.shop(), billet->id).empty())
    form.add(
        {"billet", "No weld of this billet is logged.", "Log its stages with weld_stage first."});
  if (form.refused()) return form.problems();

  const auto& settings = work.settings();
  const MassBalance balance{mass_of_billet(work.shop(), billet->id), yield.mass, {}, {}, {}};
  if (!work.passes(mass_at_cut(balance, settings.mass_gap_allowed, settings.mass_unit)))
    return work.problems();
  const std::string stem = "B" + std::to_string(billet->number) + "-";
  for (std::int64_t n = 1; n <= yield.count; ++n) {
    const std::int64_t whole = yield.mass.micrograms();
    Piece piece{.tag = stem + std::to_string(n),
                .lot = {},
                .billet = billet->id,
                .parent = {},
                .cut = {},
                .length = yield.length,
                .width = yield.width,
                .thickness = yield.thickness,
                .diameter = {},
                .mass = Mass::micrograms(whole * n / yield.count - whole * (n - 1) / yield.count),
                .mark = PieceMark::tagged,
                .state = PieceState::on_hand,
                .place = {},
                .made_at = work.at(),
                .note = {}};
    insert_piece(work.shop(), piece);
  }
  store_billet_finish(work.shop(), billet->id, work.at(), pattern);
  return work.done(stem + "1");
}

}  // namespace

const Action finish_billet{"finish_billet",
                           "Note that a billet is finished; it yields tagged pieces.",
                           {{"billet", "Billet", FieldKind::billet, true, "4"},
                            {"count", "Pieces", FieldKind::number, false, "1", "1"},
                            {"length", "Length of each", FieldKind::length, false, "320 mm"},
                            {"width", "Width", FieldKind::length, false, "40 mm"},
                            {"thickness", "Thickness", FieldKind::length, false, "5 mm"},
                            {"mass", "Mass of all, weighed", FieldKind::mass, false, "1.31 kg"},
                            {"pattern", "Pattern", FieldKind::text, false, "twist"}},
                           run_finish_billet};

}  // namespace tangmark::db
