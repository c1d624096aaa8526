// SPDX-License-Identifier: MIT
#include "db/actions/lot_bars.h"

#include "db/store/piece_store.h"
#include "domain/stock/lot_mass.h"
#include "domain/stock/piece.h"

namespace tangmark::db {
namespace {

using namespace stock;

void need_sizes(Form& form, const Lot& lot) {
  const auto need = [&](std::string_view field, const std::optional<Length>& size) {
    if (!size || *size <= Length())
      form.add({std::string(field),
                "A " + std::string(word_of(*lot.section)) + " bar needs this size.",
                "Measure the bar and give it."});
  };
  need("length", lot.length);
  if (*lot.section == Section::flat) {
    need("thickness", lot.thickness);
    need("width", lot.width);
  } else {
    need("diameter", lot.diameter);
  }
}

}  // namespace

void check_bars(Form& form, const Lot& lot) {
  if (lot.section)
    need_sizes(form, lot);
  else if (!lot.mass)
    form.add({"section", "Neither a section nor a mass is given.",
              "Give section flat or round with its sizes, or weigh it and give mass."});
  const auto one = mass_of_bar_by_sizes(lot);
  if (!one || !lot.mass) return;
  const double expected = one->in_grams() * static_cast<double>(lot.count);
  const double weighed = lot.mass->in_grams();
  if (weighed < 0.75 * expected || weighed > 1.25 * expected)
    form.add({"mass",
              "By its sizes the lot weighs " +
                  to_text(Mass::nearest_grams(expected), MassUnit::gram) + ", not " +
                  to_text(*lot.mass, MassUnit::gram) + ".",
              "Check sizes, count and mass; mass is that of all bars together."});
}

void insert_bars(const ShopFile& shop, const KeptLot& lot) {
  const auto by_sizes = mass_of_bar_by_sizes(lot);
  for (std::int64_t n = 1; n <= lot.count; ++n) {
    Piece bar{.tag = std::to_string(lot.number) + "-" + std::to_string(n),
              .lot = lot.id,
              .billet = {},
              .parent = {},
              .cut = {},
              .length = lot.length,
              .width = lot.width,
              .thickness = lot.thickness,
              .diameter = lot.diameter,
              .mass = by_sizes.value_or(Mass()),
              .mark = lot.mark_words || lot.mark_matched ? PieceMark::carries_the_mark
                                                         : PieceMark::tagged,
              .state = PieceState::on_hand,
              .place = {},
              .made_at = lot.received_at,
              .note = {}};
    if (lot.mass) {
      const std::int64_t whole = lot.mass->micrograms();
      bar.mass = Mass::micrograms(whole * n / lot.count - whole * (n - 1) / lot.count);
    }
    insert_piece(shop, bar);
  }
}

}  // namespace tangmark::db
