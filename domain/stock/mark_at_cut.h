// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/measure/caught.h"
#include "domain/stock/piece.h"

namespace tangmark::stock {

/// A bar is known by the paint or marker on one end. Cut the other end, or cut the marked end off,
/// and the remainder is mystery steel unless it is tagged there and then. Common practice, no
/// source.

/// Catch 1: a cut with no statement of which part kept the mark. Saying "neither" goes through with
/// a remark: both parts are then an identity gap. A piece that is a gap already has nothing to
/// lose.
Catch cut_without_mark(PieceMark parent, std::optional<MarkWentTo> mark_went_to);

/// What ties the blank, and what ties the rest, to what they are after the cut. The part that keeps
/// the supplier's mark carries it; the other gets a tag at once, as long as the mark was seen.
PieceMark mark_of_blank(PieceMark parent, MarkWentTo mark_went_to);
PieceMark mark_of_rest(PieceMark parent, MarkWentTo mark_went_to);

}  // namespace tangmark::stock
