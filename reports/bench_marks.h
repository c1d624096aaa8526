// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "reports/block.h"
#include "reports/font_book.h"
#include "reports/look.h"
#include "reports/type.h"

namespace tangmark::reports {

/// A square for the pencil, ticked when the thing is done.
enum class Tick { open, done };
std::vector<Element> tick_box(Place corner, Points side, Tick tick);

/// A field to fill in: its name in grey, and a line to write on.
struct PencilField {
  std::string name;
  Points line = 46;  ///< room to write
};

/// Fields in rows of this width, each row 20 points high, for blunt pencils.
Block pencil_fields(const FontBook& fonts, const std::vector<PencilField>& fields, Points width,
                    const Font& font);

/// Cautions in a frame with a heavy left edge, as high as they need. Several blocks, one for each
/// caution, so that a long list may break over a page.
Flow caution_flow(const FontBook& fonts, const TypeScale& type,
                  const std::vector<std::string>& cautions, Points width);

/// Pairs of a name and what it says in columns beside each other, wrapped.
Flow fact_flow(const FontBook& fonts, const TypeScale& type,
               const std::vector<std::pair<std::string, std::string>>& facts, Points width,
               int columns);

/// "150–210 °C", in the maker's unit.
std::string window_text(const Temperature& low, const Temperature& high, TemperatureUnit unit);

}  // namespace tangmark::reports
