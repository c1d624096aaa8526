// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "db/actions/asked.h"
#include "db/actions/stock_action_list.h"
#include "db/store/billet_store.h"
#include "db/store/family_tree.h"
#include "db/store/piece_store.h"
#include "db/store/reservation_store.h"
#include "domain/stock/piece_in_hand.h"

namespace tangmark::db {
namespace {

using namespace stock;

struct WishedPart {
  KeptPiece piece;
  BilletRole role = BilletRole::layer;
  std::int64_t layers = 1;
};

// "17-2:5" is five layers of 17-2; "9-1:core" a core; "9-1" one layer.
std::optional<WishedPart> read_part(Work& work, Form& form, const std::string& text) {
  const auto colon = text.rfind(':');
  auto piece = piece_named(work.shop(), text.substr(0, colon), "pieces");
  if (!piece) {
    form.add(piece.problem());
    return std::nullopt;
  }
  WishedPart part{std::move(piece).value()};
  if (colon == std::string::npos) return part;
  const std::string what = text.substr(colon + 1);
  if (const auto role = of_word<BilletRole>(what, "pieces"); role && *role != BilletRole::charge) {
    part.role = *role;
    return part;
  }
  part.layers = form.take(number_named(what, "pieces"), std::int64_t{1});
  return part;
}

std::vector<WishedPart> read_parts(Work& work, Form& form) {
  std::vector<WishedPart> parts;
  for (const std::string& text : form.list("pieces"))
    if (auto part = read_part(work, form, text)) {
      const auto same = [&](const WishedPart& other) { return other.piece.id == part->piece.id; };
      if (std::any_of(parts.begin(), parts.end(), same))
        form.add({"pieces", "Piece " + part->piece.tag + " is named twice.",
                  "Give its layers together, such as 17-2:5."});
      parts.push_back(std::move(*part));
    }
  return parts;
}

void check_kind(Form& form, BilletKind kind, const std::vector<WishedPart>& parts) {
  if (kind == BilletKind::ingot || kind == BilletKind::smelted)
    form.add({"kind", "An ingot is melted, not stacked.", "Use melt_ingot."});
  std::int64_t layers = 0;
  bool core = false, cladding = false;
  for (const WishedPart& part : parts) {
    layers += part.layers;
    core = core || part.role == BilletRole::core;
    cladding = cladding || part.role == BilletRole::cladding;
  }
  if (!parts.empty() && layers < 2)
    form.add({"pieces", "A billet is welded from at least two layers.",
              "Name more pieces, or more layers of one."});
  if (kind == BilletKind::laminated && !parts.empty() && !(core && cladding))
    form.add({"pieces", "A laminated billet has a core and a cladding.",
              "Write 17-2:core,9-1:cladding."});
}

// Not there any more, or promised to an item while nobody says that this billet is for it.
Catches caught_at_stack(Work& work, const std::vector<WishedPart>& parts) {
  Catches all;
  for (const WishedPart& part : parts) {
    if (auto gone = used_twice(part.piece)) all.push_back(std::move(*gone));
    for (const KeptReservation& promised : reservations_of_piece(work.shop(), part.piece.id))
      all.push_back(
          {3, Weight::ask, "pieces",
           fmt::format("Piece {} is promised to item {}.", part.piece.tag, promised.item.row()),
           "Take another piece, or release the reservation."});
    for (const KeptLot& lot : ancestors_of(work.shop(), part.piece.id).lots)
      if (lot.owner)
        all.push_back(
            {25, Weight::ask, "pieces",
             fmt::format("Piece {} belongs to customer {}.", part.piece.tag, lot.owner->row()),
             "Say that the billet is for that customer's own work."});
  }
  return all;
}

Outcome<ActionResult> run_start_billet(Work& work, Form& form) {
  Billet billet;
  billet.kind = form.word<BilletKind>("kind", BilletKind::pattern_welded);
  billet.name = form.maybe_text("name");
  billet.made_by = form.maybe_text("made_by").value_or(work.settings().maker_name);
  billet.pattern = form.maybe_text("pattern");
  billet.note = form.maybe_text("note");
  billet.started_at = work.at();
  const auto parts = read_parts(work, form);
  if (parts.empty() && form.has("pieces") && !form.refused())
    form.add({"pieces", "No piece is named.", "Write 17-2:5,18-1:4."});
  check_kind(form, billet.kind, parts);
  if (form.refused()) return form.problems();
  if (!work.passes(caught_at_stack(work, parts))) return work.problems();

  billet.number = work.next_number("billet");
  const BilletId id = insert_billet(work.shop(), billet);
  std::int64_t position = 0, layers = 0;
  for (const WishedPart& part : parts) {
    insert_billet_part(work.shop(),
                       {id, ++position, part.piece.id, part.role, part.layers, part.piece.mass});
    store_piece_state(work.shop(), part.piece.id, PieceState::in_a_billet);
    layers += part.layers;
  }
  store_billet_layers(work.shop(), id, layers);
  return work.done(std::to_string(billet.number));
}

}  // namespace

const Action start_billet{"start_billet",
                          "Stack pieces to a billet, or a core between cladding.",
                          {{"kind",
                            "Kind",
                            FieldKind::choice,
                            true,
                            "pattern-welded",
                            "pattern-welded",
                            {"pattern-welded", "laminated"}},
                           {"pieces", "Pieces and layers", FieldKind::text, true,
                            "17-2:5,18-1:4 or 17-2:core,9-1:cladding"},
                           {"name", "Name", FieldKind::text, false, "twist for the hunters"},
                           {"pattern", "Pattern", FieldKind::text, false, "random"},
                           {"made_by", "Made by", FieldKind::text, false, "you, when not given"},
                           {"note", "Note", FieldKind::long_text}},
                          run_start_billet};

}  // namespace tangmark::db
