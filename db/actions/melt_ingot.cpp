// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/stock_action_list.h"
#include "db/store/billet_store.h"
#include "db/store/piece_store.h"
#include "domain/stock/mass_balance.h"
#include "domain/stock/piece_in_hand.h"

namespace tangmark::db {
namespace {

using namespace stock;

std::vector<KeptPiece> read_charge_pieces(Work& work, Form& form) {
  std::vector<KeptPiece> pieces;
  for (const std::string& tag : form.list("pieces")) {
    auto piece = piece_named(work.shop(), tag, "pieces");
    if (piece)
      pieces.push_back(std::move(piece).value());
    else
      form.add(piece.problem());
  }
  return pieces;
}

Melt read_melt(Work& work, Form& form) {
  Melt melt{
      .billet = BilletId{1}, .at = work.at(), .entered_at = work.now()};  // the billet comes later
  melt.charge = form.text("charge");
  melt.charge_mass = form.mass("charge_mass");
  melt.lining = form.text("lining");
  melt.peak = form.temperature("peak");
  melt.at_peak = form.duration("at_peak");
  melt.cooled = form.maybe_text("cooled");
  melt.ingot_mass = form.mass("ingot_mass");
  melt.carbon = form.maybe_share("carbon");
  melt.carbon_how = form.maybe_text("carbon_how");
  melt.who = form.maybe_text("who");
  return melt;
}

void check_melt(Form& form, const Melt& melt) {
  for (const auto& [field, mass] :
       {std::pair{"charge_mass", melt.charge_mass}, std::pair{"ingot_mass", melt.ingot_mass}})
    if (form.has(field) && mass <= Mass())
      form.add({field, "That is no mass.", "Weigh it and give more than zero."});
  if (melt.carbon && *melt.carbon > Share::percent(10))
    form.add({"carbon", "No steel or iron holds so much carbon.", "Write 1.5 % or 0.015."});
  if (melt.carbon && !melt.carbon_how)
    form.add({"carbon_how", "How the carbon is known is not said.",
              "Say: from the charge, or measured by whom."});
}

Catches caught_at_melt(Work& work, const Melt& melt, const std::vector<KeptPiece>& pieces) {
  Catches all;
  for (const KeptPiece& piece : pieces)
    if (auto gone = used_twice(piece)) all.push_back(std::move(*gone));
  if (auto heavy = mass_at_melt(melt.charge_mass, melt.ingot_mass, work.settings().mass_unit))
    all.push_back(std::move(*heavy));
  return all;
}

// The ingot is a finished billet of one piece; its tag and billet come when it is stored.
Piece read_ingot(Form& form, const Melt& melt) {
  Piece ingot;
  ingot.length = form.maybe_length("length");
  ingot.diameter = form.maybe_length("diameter");
  ingot.mass = melt.ingot_mass;
  ingot.made_at = melt.at;
  return ingot;
}

void store_charge(const ShopFile& shop, BilletId billet, const std::vector<KeptPiece>& pieces) {
  std::int64_t position = 0;
  for (const KeptPiece& piece : pieces) {
    insert_billet_part(shop, {billet, ++position, piece.id, BilletRole::charge, 1, piece.mass});
    store_piece_state(shop, piece.id, PieceState::in_a_billet);
  }
}

Outcome<ActionResult> run_melt_ingot(Work& work, Form& form) {
  Melt melt = read_melt(work, form);
  Billet billet;
  billet.kind = form.word<BilletKind>("kind", BilletKind::ingot);
  billet.name = form.maybe_text("name");
  billet.made_by = melt.who.value_or(work.settings().maker_name);
  billet.started_at = work.at();
  billet.finished_at = work.at();
  const auto pieces = read_charge_pieces(work, form);
  Piece ingot = read_ingot(form, melt);
  check_melt(form, melt);
  if (form.refused()) return form.problems();
  if (!work.passes(caught_at_melt(work, melt, pieces))) return work.problems();

  billet.number = work.next_number("billet");
  melt.billet = insert_billet(work.shop(), billet);
  insert_melt(work.shop(), melt);
  store_charge(work.shop(), melt.billet, pieces);
  ingot.tag = "B" + std::to_string(billet.number) + "-1";
  ingot.billet = melt.billet;
  insert_piece(work.shop(), ingot);
  return work.done(std::to_string(billet.number));
}

}  // namespace

const Action melt_ingot{
    "melt_ingot",
    "Log a crucible melt or a smelt; it makes a billet with one piece, the ingot.",
    {{"kind", "Kind", FieldKind::choice, true, "ingot", "ingot", {"ingot", "smelted"}},
     {"name", "Name", FieldKind::text, false, "third melt of the winter"},
     {"charge", "Charge", FieldKind::long_text, true,
      "pure iron 1.5 kg, graphite 24 g, glass 60 g"},
     {"charge_mass", "Mass of the charge", FieldKind::mass, true, "1.6 kg"},
     {"pieces", "Pieces from the rack in it", FieldKind::text, false, "17-2C,17-2D"},
     {"lining", "Crucible and lining", FieldKind::text, true, "clay graphite, lined with alumina"},
     {"peak", "Peak temperature", FieldKind::temperature, true, "1520 C"},
     {"at_peak", "Time at the peak", FieldKind::duration, true, "40 min"},
     {"cooled", "Cooled how", FieldKind::text, false, "in the shut furnace overnight"},
     {"ingot_mass", "Ingot", FieldKind::mass, true, "1.51 kg"},
     {"length", "Height of the ingot", FieldKind::length, false, "45 mm"},
     {"diameter", "Diameter", FieldKind::length, false, "70 mm"},
     {"carbon", "Carbon", FieldKind::share, false, "1.5 %"},
     {"carbon_how", "How the carbon is known", FieldKind::text, false,
      "from the charge, not measured"},
     {"who", "By whom", FieldKind::text, false, "when not you"}},
    run_melt_ingot};

}  // namespace tangmark::db
